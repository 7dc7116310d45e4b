using System.Collections.Frozen;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Checking;

/// <summary>One cause, one finding: what only follows from a finding, or says it again, is left out.</summary>
internal static class Causes
{
    /// <summary>What the worked row shows is no news where the words of that row are known to be wrong.</summary>
    private static readonly FrozenSet<string> ExplainTheRow = FrozenSet.Create(FindingCodes.RepeatWithoutStar, FindingCodes.SizeListLength, FindingCodes.TooLarge);

    /// <summary>All findings that are a cause of their own.</summary>
    /// <param name="pattern">The tree.</param>
    /// <param name="ofWords">Findings of the text itself.</param>
    /// <param name="ofWork">Findings of the worked rows.</param>
    public static IEnumerable<Finding> Of(Pattern pattern, IReadOnlyList<Finding> ofWords, IReadOnlyList<Finding> ofWork)
    {
        var rows = new RowsOfText(pattern);
        var explained = ofWords.Where(finding => ExplainTheRow.Contains(finding.Code)).Select(finding => rows.At(finding.Span.Start)).OfType<RowInstruction>().ToHashSet(ReferenceEqualityComparer.Instance);
        IEnumerable<Finding> worked = ofWork.Where(finding => rows.At(finding.Span.Start) is not { } row || !explained.Contains(row));
        return WithoutDoubles(ofWords.Where(finding => !IsUnreadForKnownCause(finding, ofWords)).Concat(WithoutGapBehindDouble(worked)));
    }

    /// <summary>Words that could not be read because a number in them is too large, or a mark is missing.</summary>
    private static bool IsUnreadForKnownCause(Finding finding, IReadOnlyList<Finding> ofWords) =>
        finding.Code == FindingCodes.NotRead && ofWords.Any(cause => ExplainTheRow.Contains(cause.Code) && (finding.Span.Contains(cause.Span) || cause.Span.Contains(finding.Span)));

    private static IEnumerable<Finding> WithoutDoubles(IEnumerable<Finding> findings)
    {
        var said = new HashSet<(string, TextSpan)>();
        return findings.Where(finding => said.Add((finding.Code, finding.Span)));
    }

    /// <summary>'Row 3, Row 3, Row 5': the second Row 3 is the cause, the missing Row 4 only follows.</summary>
    private static IEnumerable<Finding> WithoutGapBehindDouble(IEnumerable<Finding> findings)
    {
        bool doubled = false;
        foreach (Finding finding in findings)
        {
            if (!(doubled && finding.Code == FindingCodes.RowNumberMissing)) yield return finding;
            if (finding.Code is FindingCodes.RowNumberRepeated or FindingCodes.RowNumberMissing) doubled = finding.Code == FindingCodes.RowNumberRepeated;
        }
    }
}
