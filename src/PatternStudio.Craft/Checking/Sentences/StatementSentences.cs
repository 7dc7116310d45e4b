using static PatternStudio.Craft.Checking.Sentences.English;

namespace PatternStudio.Craft.Checking.Sentences;

/// <summary>What is said of numbers that the front matter states.</summary>
internal static class StatementSentences
{
    /// <summary>Two units of one length that disagree.</summary>
    /// <param name="metric">As written, in centimetres.</param>
    /// <param name="imperial">As written, in inches.</param>
    /// <param name="metricInInches">The centimetres in inches, to the quarter: '8'.</param>
    /// <param name="imperialInMetric">The inches in centimetres, to the half: '23'.</param>
    public static string CmInches(string metric, string imperial, string metricInInches, string imperialInMetric) =>
        $"{metric} and {imperial} are not the same length: {metric} is about {metricInInches} in, and {imperial} is about {imperialInMetric} cm. Correct one of them.";

    /// <summary>That rows stand on a foundation that the text leaves to the maker.</summary>
    public static string Sample(int chains) =>
        $"The text leaves the length of the foundation to the maker. The rows are worked over a sample of {chains} ch: their counts hold for that length only.";

    /// <summary>A multiple that the foundation chain does not fit.</summary>
    /// <param name="multiple">'6 + 2'.</param>
    /// <param name="chains">The foundation chain.</param>
    /// <param name="first">Stitches of the first row; null where not known.</param>
    /// <param name="firstRow">The first row's label.</param>
    /// <param name="lower">The nearest chain below that fits, counted in chains; null for none.</param>
    /// <param name="upper">The nearest above.</param>
    public static string Multiple(string multiple, long chains, long? first, string firstRow, long? lower, long upper) =>
        $"The pattern states a multiple of {multiple}, but {(first is null ? $"the foundation of {Count(chains, "ch")} does not fit it" : $"neither the foundation of {Count(chains, "ch")} nor the {Stitches(first.Value)} of {firstRow} fits it")}."
        + $" Counted in chains, {(lower is null ? $"{upper} would fit" : $"{lower} or {upper} would fit")}. Correct the chain, or the multiple.";
}
