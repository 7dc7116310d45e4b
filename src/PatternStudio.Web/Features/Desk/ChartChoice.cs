using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Text;

namespace PatternStudio.Web.Features.Desk;

/// <summary>What the designer chose to see of a chart.</summary>
public sealed record ChartChoice
{
    /// <summary>
    /// Above so many stitches and chains rows are shown as blocks: laying out and drawing more takes longer than anybody waits, and nobody follows so many symbols with a finger.
    /// </summary>
    private const int MostSymbols = 60_000;

    /// <summary>True for the outline with its measures in place of the stitches.</summary>
    public bool Outline { get; init; }

    public SymbolStyle Symbols { get; init; }

    public bool LeftHanded { get; init; }

    public bool RepeatOnly { get; init; }

    public bool InColour { get; init; }

    /// <summary>The only piece shown, 0-based; null for all.</summary>
    public int? Piece { get; init; }

    /// <summary>The same as the engine asks for it.</summary>
    /// <param name="yarns">The yarns of the pattern's colours.</param>
    public ChartStyle ToStyle(string title, EquatableArray<YarnColour> yarns = default) => new()
    {
        MostCells = MostSymbols, AllRows = true, Symbols = Symbols, LeftHanded = LeftHanded, RepeatOnly = RepeatOnly, InColour = InColour, Piece = Piece,
        Title = title.Length == 0 ? null : title, TellsFlatness = false, YarnColours = yarns,
    };
}
