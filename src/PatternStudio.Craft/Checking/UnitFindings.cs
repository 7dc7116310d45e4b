using PatternStudio.Craft.Checking.Sentences;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Checking;

/// <summary>Compares lengths that are stated in centimetres and in inches.</summary>
internal static class UnitFindings
{
    public static IEnumerable<Finding> Of(Pattern pattern) =>
        pattern.Statements.Where(statement => statement.Kind is StatementKind.Gauge or StatementKind.FinishedSize or StatementKind.Yarn or StatementKind.Sizes)
            .Select(statement => statement.Span).Distinct()
            .SelectMany(span => Of(pattern.Source, span));

    private static IEnumerable<Finding> Of(SourceText source, TextSpan span)
    {
        foreach (PairOfLengths pair in PairsOfLengths.In(source.Slice(span)))
        {
            if (pair.Agrees) continue;
            var place = new TextSpan(span.Start + pair.Span.Start, pair.Span.Length);
            yield return Finding.Of(FindingCodes.CmInchesDiffer, place, StatementSentences.CmInches(pair.Metric.Text, pair.Inches.Text, pair.MetricInInches, pair.InchesInMetric));
        }
    }
}
