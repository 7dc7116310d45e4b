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
        Finding[] words = [.. ofWords.Where(finding => !HasMarkAfterAll(finding, pattern.Source, rows))];
        Finding[] numbers = [.. WithoutGapBehindDouble(ofWork.Where(IsOfNumbers))];
        var explained = words.Where(finding => ExplainTheRow.Contains(finding.Code)).Concat(numbers.Where(finding => finding.Code == FindingCodes.RowNumberMissing))
            .Select(finding => rows.At(finding.Span.Start)).OfType<RowInstruction>().ToHashSet(ReferenceEqualityComparer.Instance);
        IEnumerable<Finding> worked = ofWork.Where(finding => !IsOfNumbers(finding) && !(rows.At(finding.Span.Start) is { } row && explained.Contains(row))).Concat(numbers)
            .Where(finding => rows.At(finding.Span.Start) is not { } row || !IsDoubtfulNumber(finding, row, rows));
        return WithoutDoubles(words.Where(finding => !IsUnreadForKnownCause(finding, words)).Concat(worked));
    }

    private static bool IsOfNumbers(Finding finding) => finding.Code is FindingCodes.RowNumberMissing or FindingCodes.RowNumberRepeated;

    /// <summary>'*' stands in the row before its repeat, but among words that are not read: the mark is not what is wrong.</summary>
    private static bool HasMarkAfterAll(Finding finding, SourceText source, RowsOfText rows) =>
        finding.Code == FindingCodes.RepeatWithoutStar && rows.At(finding.Span.Start) is { } row
        && source.Content.AsSpan(row.Heading.Span.End, Math.Max(0, finding.Span.Start - row.Heading.Span.End)).IndexOfAny('*', '†') >= 0;

    /// <summary>Words that could not be read because a number in them is too large, or a mark is missing.</summary>
    private static bool IsUnreadForKnownCause(Finding finding, IReadOnlyList<Finding> ofWords) =>
        finding.Code == FindingCodes.NotRead && ofWords.Any(cause => ExplainTheRow.Contains(cause.Code) && (finding.Span.Contains(cause.Span) || cause.Span.Contains(finding.Span)));

    /// <summary>
    /// Numbers are certain only where the rows before are: unread words may tell rows ('then work 1 row even'), a part may begin anew with a first row that has
    /// no number, and 'Rows 15 and 17' with 'Rows 16 and 18' behind them are told in turn.
    /// </summary>
    private static bool IsDoubtfulNumber(Finding finding, RowInstruction row, RowsOfText rows) => finding.Code switch
    {
        FindingCodes.RowNumberMissing => rows.HasOpenRowsBefore(row) || rows.Before(row) is { } above && MayTellRows(above),
        FindingCodes.NoSuchRow => rows.AllBefore(row).Any(MayTellRows),
        FindingCodes.RowNumberRepeated => row.Heading.Numbers.Count > 1 || rows.HasOpenRepeatBefore(row) || rows.Before(row) is { Heading.Numbering: RowNumbering.None },
        _ => false,
    };

    private static bool MayTellRows(RowInstruction row) => row.Steps.SelectMany(TreeSteps.WithInner).Any(step => step is UnreadStep or UncountedStep);

    private static IEnumerable<Finding> WithoutDoubles(IEnumerable<Finding> findings)
    {
        var said = new HashSet<(string, TextSpan)>();
        return findings.Where(finding => said.Add((finding.Code, finding.Span)));
    }

    /// <summary>'Row 3, Row 3, Row 5': the second Row 3 is the cause, the missing Row 4 only follows.</summary>
    private static IEnumerable<Finding> WithoutGapBehindDouble(IEnumerable<Finding> numbers)
    {
        bool doubled = false;
        foreach (Finding finding in numbers.OrderBy(finding => finding.Span.Start))
        {
            if (!(doubled && finding.Code == FindingCodes.RowNumberMissing)) yield return finding;
            doubled = finding.Code == FindingCodes.RowNumberRepeated;
        }
    }
}
