using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Checking;

/// <summary>A row as every screen and file shows it.</summary>
/// <param name="Piece">The section it stands under; empty where there is none.</param>
/// <param name="Number">Its number; 0 for a foundation.</param>
/// <param name="Heading">'Row 3'.</param>
/// <param name="Line">1-based line of the words that call for it.</param>
/// <param name="Status">How much of it is known.</param>
/// <param name="Side">'RS' or 'WS'.</param>
/// <param name="Stitches">The total by the pattern's own convention; null where not checked.</param>
/// <param name="Stated">The count that the row states, as written; null for none.</param>
/// <param name="CountAgrees">Null where nothing comparable is stated or the row is not checked.</param>
/// <param name="Counts">By kind of stitch.</param>
/// <param name="Spaces">Chain spaces by length.</param>
public sealed record RowReport(
    string Piece,
    int Number,
    string Heading,
    int Line,
    RowStatus Status,
    string Side,
    long? Stitches,
    string? Stated,
    bool? CountAgrees,
    IReadOnlyDictionary<string, long> Counts,
    IReadOnlyDictionary<string, long> Spaces)
{
    /// <summary>Chains of the sample foundation that the row's counts hold for, where the text leaves the length to the maker; null where it tells the length.</summary>
    public int? SampleChains { get; init; }
}
