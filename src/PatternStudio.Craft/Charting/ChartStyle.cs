namespace PatternStudio.Craft.Charting;

/// <summary>What may be chosen about a chart.</summary>
public sealed record ChartStyle
{
    /// <summary>The usual chart.</summary>
    public static readonly ChartStyle Usual = new();

    /// <summary>
    /// Above so many cells only the first rows of a piece are drawn (or, where even they are too long, its outline): a page with more symbols answers no
    /// reader's question and is slow to show.
    /// </summary>
    public int MostCells { get; init; } = 10_000;

    /// <summary>0-based index of the only piece to draw; null for all, one under the other.</summary>
    public int? Piece { get; init; }

    /// <summary>The caption; null to take the pattern's title.</summary>
    public string? Title { get; init; }
}
