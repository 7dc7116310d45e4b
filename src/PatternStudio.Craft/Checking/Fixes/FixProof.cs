using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Checking.Fixes;

/// <summary>Keeps a proposed fix only where the pattern, checked again with it, has lost that finding and gained none.</summary>
internal static class FixProof
{
    /// <summary>Proofs cost a check each, so only the first few fixes of a text are tried; the rest wait until those are mended.</summary>
    private const int MostTried = 6;

    /// <summary>The findings with the fixes that hold.</summary>
    /// <param name="text">The pattern as checked.</param>
    /// <param name="found">Its findings, with fixes as proposed.</param>
    /// <param name="check">Checks a text again.</param>
    public static EquatableArray<Finding> Keep(string text, EquatableArray<Finding> found, Func<string, EquatableArray<Finding>> check)
    {
        Finding[] tried = [.. found.Where(finding => finding.Fix is not null).Take(MostTried)];
        HashSet<Finding> hold = new(ReferenceEqualityComparer.Instance);
        // A stated count changes nothing but what its row is compared with: where all of them together hold, each of them does.
        Finding[] counts = [.. tried.Where(finding => finding.Code == FindingCodes.CountDiffers)];
        if (counts.Length > 1 && Holds(text, found, counts, check)) hold.UnionWith(counts);
        hold.UnionWith(tried.Where(finding => !hold.Contains(finding) && Holds(text, found, [finding], check)));
        return found.Select(finding => hold.Contains(finding) ? finding : finding with { Fix = null }).ToEquatableArray();
    }

    /// <summary>True where the text with these fixes has lost their findings, and gained none.</summary>
    private static bool Holds(string text, EquatableArray<Finding> found, Finding[] mended, Func<string, EquatableArray<Finding>> check)
    {
        Dictionary<string, int> before = Codes(found), after = Codes(check(With(text, mended)));
        return mended.CountBy(finding => finding.Code).All(code => after.GetValueOrDefault(code.Key) == before[code.Key] - code.Value)
            && after.All(code => code.Value <= before.GetValueOrDefault(code.Key));
    }

    private static Dictionary<string, int> Codes(EquatableArray<Finding> findings) => findings.CountBy(finding => finding.Code).ToDictionary();

    /// <summary>The text with fixes made, from the last to the first, so that places before stay where they are.</summary>
    private static string With(string text, Finding[] mended) =>
        mended.OrderByDescending(finding => finding.Fix!.Value.Span.Start).Aggregate(text, (words, finding) => finding.Fix!.Value.ApplyTo(words));
}
