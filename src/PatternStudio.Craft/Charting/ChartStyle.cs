using PatternStudio.Craft.Text;

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

    /// <summary>
    /// True to show all of a piece that has more cells than <see cref="MostCells"/>, each row a block, rather than its first rows stitch by stitch. The repeat alone is still
    /// drawn stitch by stitch.
    /// </summary>
    public bool AllRows { get; init; }

    /// <summary>0-based index of the only piece to draw; null for all, one under the other.</summary>
    public int? Piece { get; init; }

    /// <summary>Whose key decides the form of symbols.</summary>
    public SymbolStyle Symbols { get; init; }

    /// <summary>True for a left-hander's chart, which mirrors a right-hander's.</summary>
    public bool LeftHanded { get; init; }

    /// <summary>True for the repeat alone, where something repeats: 'rep 6 sts' and its edges.</summary>
    public bool RepeatOnly { get; init; }

    /// <summary>True for stitches as patches in their yarns' colours, a letter in each, in place of symbols.</summary>
    public bool InColour { get; init; }

    /// <summary>The yarns of the pattern's colours, by the colours' names in the pattern. Those not told get a colour of ours.</summary>
    public EquatableArray<YarnColour> YarnColours { get; init; } = [];

    /// <summary>False to leave out whether pieces lie flat: for small pieces that takes longer than all the rest.</summary>
    public bool TellsFlatness { get; init; } = true;

    /// <summary>The caption; null to take the pattern's title.</summary>
    public string? Title { get; init; }
}
