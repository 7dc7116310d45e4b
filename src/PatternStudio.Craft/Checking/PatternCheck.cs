using PatternStudio.Craft.Checking.Fixes;
using PatternStudio.Craft.Checking.Sentences;
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
        CheckedPattern found = CheckWithoutProof(text, told);
        return found with { Findings = FixProof.Keep(found, edited => CheckWithoutProof(edited, told).Findings) };
    }

    /// <summary>Checks a text; the fixes of its findings are as yet no more than proposed.</summary>
    private static CheckedPattern CheckWithoutProof(string text, Terminology? told)
    {
        Pattern pattern = PatternReader.Read(text, told);
        PatternWork[] works = [.. Enumerable.Range(0, pattern.Sizes.Count).Select(size => PatternWorker.Work(pattern, size))];
        return new CheckedPattern(pattern, works.Select(work => Size(work, pattern.Source)).ToEquatableArray(), Findings(pattern, works));
    }

    private static EquatableArray<Finding> Findings(Pattern pattern, PatternWork[] works) =>
        Causes.Of(
                pattern,
                [.. ReadingFindings.Of(pattern), .. TermsFindings.Of(pattern), .. DefinitionFindings.Of(pattern), .. StitchUseFindings.Of(pattern), .. UnitFindings.Of(pattern), .. MultipleFindings.Of(pattern, works), .. FoundationFindings.Of(pattern, works), .. SampleFindings.Of(pattern, works), .. NothingToCheck(pattern, works)],
                [.. WorkFindings.Of(pattern.Source, works)])
            .OrderBy(finding => finding.Span.Start).ThenBy(finding => finding.Severity).ThenBy(finding => finding.Code, StringComparer.Ordinal)
            .ToEquatableArray();

    private static CheckedSize Size(PatternWork work, SourceText source)
    {
        return new CheckedSize(work.Fabric, new RowReports(work.Fabric, source), RowReports.Summary(work.Fabric)) { Laws = GrowthLaws.Of(work.Fabric) };
    }

    private static IEnumerable<Finding> NothingToCheck(Pattern pattern, PatternWork[] works)
    {
        if (pattern.Troubles.Count > 0 || works.Any(work => work.Fabric.Pieces.Any(piece => piece.Rows.Count > 0))) yield break;
        yield return Finding.Of(FindingCodes.NothingToCheck, new TextSpan(0, Math.Min(1, pattern.Source.Content.Length)), ReadingSentences.NothingToCheck);
    }
}
