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
        return Prove(Find(text, told));
    }

    /// <summary>Checks a text, for whoever wants the findings at once: they offer no fixes before <see cref="Prove"/>.</summary>
    /// <param name="text">The pattern as written.</param>
    /// <param name="told">The terminology, where known; null to find it from the text.</param>
    public static CheckedPattern Find(string text, Terminology? told = null)
    {
        (Pattern pattern, PatternWork[] works) = Work(text, told);
        EquatableArray<Finding> findings = Findings(pattern, works);
        return new CheckedPattern(pattern, works.Select(work => Size(work, pattern.Source)).ToEquatableArray(), findings.Select(finding => finding with { Fix = null }).ToEquatableArray())
        {
            Proposed = findings.Any(finding => finding.Fix is not null) ? new Proposals(findings, told) : null,
        };
    }

    /// <summary>The same with the fixes that hold: each is tried, and the text with it checked again.</summary>
    /// <param name="found">What <see cref="Find"/> gave.</param>
    public static CheckedPattern Prove(CheckedPattern found)
    {
        ArgumentNullException.ThrowIfNull(found);
        return found.Proposed is { } proposed
            ? found with { Findings = FixProof.Keep(found.Pattern.Source.Content, proposed.Findings, edited => FindingsOf(edited, proposed.Told)), Proposed = null }
            : found;
    }

    /// <summary>The findings alone: a proof looks at nothing else.</summary>
    private static EquatableArray<Finding> FindingsOf(string text, Terminology? told)
    {
        (Pattern pattern, PatternWork[] works) = Work(text, told);
        return Findings(pattern, works);
    }

    private static (Pattern Pattern, PatternWork[] Works) Work(string text, Terminology? told)
    {
        Pattern pattern = PatternReader.Read(text, told);
        return (pattern, [.. Enumerable.Range(0, pattern.Sizes.Count).Select(size => PatternWorker.Work(pattern, size))]);
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
