using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Checking.Fixes;

/// <summary>Keeps a proposed fix only where the pattern, checked again with it, has lost that finding and gained none.</summary>
internal static class FixProof
{
    /// <summary>Proofs cost a check each, so only the first few fixes of a text are tried; the rest wait until those are mended.</summary>
    private const int MostTried = 6;

    /// <summary>The findings with the fixes that hold.</summary>
    /// <param name="found">The pattern as checked.</param>
    /// <param name="check">Checks a text again.</param>
    public static EquatableArray<Finding> Keep(CheckedPattern found, Func<string, EquatableArray<Finding>> check)
    {
        int tried = 0;
        return found.Findings.Select(finding => finding.Fix is null || (tried++ < MostTried && Holds(found, finding, check)) ? finding : finding with { Fix = null }).ToEquatableArray();
    }

    private static bool Holds(CheckedPattern found, Finding finding, Func<string, EquatableArray<Finding>> check)
    {
        Dictionary<string, int> before = found.Findings.CountBy(other => other.Code).ToDictionary(), after = check(finding.Fix!.Value.ApplyTo(found.Pattern.Source.Content)).CountBy(other => other.Code).ToDictionary();
        return after.GetValueOrDefault(finding.Code) == before[finding.Code] - 1 && after.All(code => code.Value <= before.GetValueOrDefault(code.Key));
    }
}
