using PatternStudio.Craft.Charting.Layout;

namespace PatternStudio.Craft.Charting;

/// <summary>
/// How the pieces of a chart came to lie, so that an edited design is drawn from there and only what must move moves. It is no part of a drawing's value: drawings that look alike are
/// equal, however they came about.
/// </summary>
public sealed class ChartPlaces : IEquatable<ChartPlaces>
{
    internal static readonly ChartPlaces None = new([]);

    private readonly IReadOnlyList<(int Number, string Name, IReadOnlyList<LaidRow> Rows)> pieces;

    internal ChartPlaces(IReadOnlyList<(int Number, string Name, IReadOnlyList<LaidRow> Rows)> pieces) => this.pieces = pieces;

    /// <summary>The rows of the piece of that name; else of that number; null where there was none.</summary>
    internal IReadOnlyList<LaidRow>? Of(int number, string name) =>
        pieces.Where(piece => piece.Name == name).OrderBy(piece => Math.Abs(piece.Number - number)).Select(piece => piece.Rows).FirstOrDefault()
        ?? pieces.Where(piece => piece.Number == number).Select(piece => piece.Rows).FirstOrDefault();

    /// <inheritdoc/>
    public bool Equals(ChartPlaces? other) => other is not null;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is ChartPlaces;

    /// <inheritdoc/>
    public override int GetHashCode() => 0;
}
