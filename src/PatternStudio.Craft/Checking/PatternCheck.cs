using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Checking;

/// <summary>The whole way from a written pattern to its findings: reads it, works every size, checks.</summary>
public static class PatternCheck
{
    /// <summary>Checks a text. Never throws on any text; what is wrong with it is in the findings.</summary>
    /// <param name="text">The pattern as written.</param>
    /// <param name="told">The terminology, where known; null to find it from the text.</param>
    public static CheckedPattern Check(string text, Terminology? told = null)
    {
        Pattern pattern = PatternReader.Read(text, told);
        PatternWork[] works = [.. Enumerable.Range(0, pattern.Sizes.Count).Select(size => PatternWorker.Work(pattern, size))];
        IEnumerable<Finding> findings = ReadingFindings.Of(pattern)
            .Concat(WorkFindings.Of(pattern.Source, works))
            .Concat(NothingToCheck(pattern, works));
        return new CheckedPattern(
            pattern,
            works.Select(work => Size(work, pattern.Source)).ToEquatableArray(),
            findings.Distinct().OrderBy(finding => finding.Span.Start).ThenBy(finding => finding.Severity).ToEquatableArray());
    }

    private static CheckedSize Size(PatternWork work, SourceText source)
    {
        EquatableArray<RowReport> rows = RowReports.Of(work.Fabric, source);
        return new CheckedSize(work.Fabric, rows, RowReports.Summary(rows));
    }

    private static IEnumerable<Finding> NothingToCheck(Pattern pattern, PatternWork[] works)
    {
        if (pattern.Troubles.Count > 0 || works.Any(work => work.Fabric.Pieces.Any(piece => piece.Rows.Count > 0))) yield break;
        yield return new Finding(
            FindingCodes.NothingToCheck, FindingCodes.SeverityOf(FindingCodes.NothingToCheck), new TextSpan(0, Math.Min(1, pattern.Source.Content.Length)),
            "There are no rows here yet. Begin with a chain or a ring, such as 'Ch 21.', and write a row under it, such as 'Row 1: Sc in 2nd ch from hook and in each ch across. (20 sc)'.");
    }
}
