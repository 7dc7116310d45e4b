using PatternStudio.Craft.Charting.InSpace;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Charting;

/// <summary>How a row is told from its neighbours; painters give each a colour and a line weight of its own, so that print shows it too.</summary>
public enum RowTone
{
    /// <summary>The foundation or the ring.</summary>
    Foundation,

    /// <summary>Right-side rows; odd rounds where the work is never turned.</summary>
    First,

    /// <summary>Wrong-side rows; even rounds.</summary>
    Second,

    /// <summary>A row that was not checked and so can't be drawn.</summary>
    Gap,
}

/// <summary>One drawn stitch.</summary>
/// <param name="Row">Index of its row in its piece.</param>
/// <param name="Cell">Index of its cell in that row, in the order worked.</param>
/// <param name="Stitch">Which stitch.</param>
/// <param name="Name">Its name in the pattern's terminology.</param>
/// <param name="Source">The words that made it.</param>
/// <param name="Shapes">Its strokes.</param>
public sealed record Symbol(int Row, long Cell, StitchId Stitch, string Name, TextSpan Source, EquatableArray<Shape> Shapes);

/// <summary>One drawn row.</summary>
/// <param name="Piece">Index of its piece.</param>
/// <param name="Row">Index of the row in its piece; the first of them for a gap of several.</param>
/// <param name="Label">'Row 3', for captions and screen readers.</param>
/// <param name="Tone">How it is told from its neighbours.</param>
/// <param name="Symbols">Its stitches in the order worked.</param>
/// <param name="Marks">Row number, gap line and the like.</param>
public sealed record DrawnRow(int Piece, int Row, string Label, RowTone Tone, EquatableArray<Symbol> Symbols, EquatableArray<Shape> Marks);

/// <summary>One line of the key: a symbol and what it stands for.</summary>
/// <param name="Shapes">The symbol, in a box of three stitch widths either way with its foot at (0, 0).</param>
/// <param name="Name">Abbreviation and full name in the pattern's terminology.</param>
/// <param name="OtherName">The same in the other terminology; empty where it is the designer's own stitch.</param>
public sealed record KeyEntry(EquatableArray<Shape> Shapes, string Name, string OtherName);

/// <summary>What a tone means in this drawing: 'right-side rows'.</summary>
public sealed record ToneMeaning(RowTone Tone, string Text);

/// <summary>A chart, ready for any painter.</summary>
/// <param name="Title">Its caption.</param>
/// <param name="Description">What it shows, in words that replace the picture for those who don't see it.</param>
/// <param name="Bounds">The rectangle that holds the rows.</param>
/// <param name="Rows">Row by row, in the order worked.</param>
/// <param name="Key">Only the symbols used, in the order of their first use.</param>
/// <param name="Tones">Only the tones used.</param>
/// <param name="Notes">What the reader must know: an overview instead of every stitch, rows not drawn.</param>
public sealed record Drawing(
    string Title,
    string Description,
    Box Bounds,
    EquatableArray<DrawnRow> Rows,
    EquatableArray<KeyEntry> Key,
    EquatableArray<ToneMeaning> Tones,
    EquatableArray<string> Notes)
{
    /// <summary>Whose terms the key uses: 'Key: US terms (UK terms)'.</summary>
    public string KeyTitle { get; init; } = "Key";

    /// <summary>True where the published keys (<see cref="SymbolStyle"/>) draw one of its symbols in different ways.</summary>
    public bool KeysDiffer { get; init; }

    /// <summary>Colours with their letters, where stitches are drawn in colour.</summary>
    public EquatableArray<ChartColour> Colours { get; init; }

    /// <summary>Whether each piece in rounds lies flat.</summary>
    public EquatableArray<PieceFlatness> Flatness { get; init; }

    /// <summary>How it came to lie, for drawing an edited design from there: see <see cref="Chart.Draw(Checking.CheckedPattern, int, ChartStyle?, Drawing?)"/>.</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public ChartPlaces Places { get; init; } = ChartPlaces.None;

    /// <summary>True where the piece is too large for every stitch to be drawn and rows are shown as blocks.</summary>
    public bool IsOverview { get; init; }
}
