using PatternStudio.Craft.Checking.Sentences;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Checking;

/// <summary>Says where rows are worked over a sample, because the text leaves the length of the foundation to the maker.</summary>
internal static class SampleFindings
{
    public static IEnumerable<Finding> Of(Pattern pattern, IReadOnlyList<PatternWork> works)
    {
        if (SampleFoundation.Of(pattern) is not { } open) yield break;
        int? chains = works.SelectMany(work => work.Fabric.Pieces).SelectMany(piece => piece.Rows).FirstOrDefault(row => row is { Status: RowStatus.Checked, SampleChains: not null })?.SampleChains;
        if (chains is { } sample) yield return Finding.Of(FindingCodes.SampleFoundation, open.Span, StatementSentences.Sample(sample));
    }
}
