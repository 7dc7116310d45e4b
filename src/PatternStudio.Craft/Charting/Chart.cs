using PatternStudio.Craft.Charting.InSpace;
using PatternStudio.Craft.Charting.Layout;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>Draws the chart of a pattern from its worked fabric.</summary>
public static class Chart
{
    private const double Margin = 1;
    private const double BetweenPieces = 3;

    /// <summary>Fewer rows than a foundation and two repeats of two rows don't show a pattern.</summary>
    private const int FewestRows = 5;

    /// <summary>
    /// Draws one size. Never throws on any pattern: rows that were not checked are shown as a gap, pieces too large as an outline.
    /// </summary>
    /// <param name="pattern">The checked pattern.</param>
    /// <param name="size">0-based index into <see cref="CheckedPattern.Sizes"/>.</param>
    /// <param name="style">What may be chosen; null for the usual.</param>
    public static Drawing Draw(CheckedPattern pattern, int size = 0, ChartStyle? style = null) => Draw(pattern, size, style, null);

    /// <summary>Draws one size of an edited design from where it lay: rows that are worked as before stay where they are, as far as the others let them.</summary>
    /// <param name="pattern">The checked pattern.</param>
    /// <param name="size">0-based index into <see cref="CheckedPattern.Sizes"/>.</param>
    /// <param name="style">What may be chosen; null for the usual.</param>
    /// <param name="former">The drawing before the edit; null to draw anew.</param>
    public static Drawing Draw(CheckedPattern pattern, int size, ChartStyle? style, Drawing? former)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        ArgumentOutOfRangeException.ThrowIfNegative(size);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(size, pattern.Sizes.Count);
        style ??= ChartStyle.Usual;
        var forms = new StitchForms(pattern.Pattern);
        var names = new ChartNames(pattern.Pattern.Terms.Terminology);
        var key = new KeyMaker(forms, names, style.Symbols);
        Fabric fabric = pattern.Sizes[size].Fabric;
        var rows = new List<DrawnRow>();
        var notes = new List<string>();
        var colours = new Colours(style.YarnColours);
        var places = new List<(int, string, IReadOnlyList<LaidRow>)>();
        for (int i = 0; i < fabric.Pieces.Count; i++)
            if ((style.Piece ?? i) == i && !fabric.Pieces[i].Rows.IsEmpty)
                Stack(rows, DrawPiece(fabric.Pieces[i], i, style, forms, names, key, colours, notes, former?.Places, places), fabric.Pieces[i].Name);
        return Finish(pattern, fabric, style, rows, key, notes) with
        {
            Places = new ChartPlaces(places),
            KeysDiffer = key.KeysDiffer,
            Colours = style.InColour ? colours.Known.ToEquatableArray() : [],
            Flatness = !style.TellsFlatness ? [] : FlatnessFinder.FindAll(fabric.Pieces.Where((_, i) => (style.Piece ?? i) == i), forms),
        };
    }

    private static List<DrawnRow> DrawPiece(WorkedPiece piece, int number, ChartStyle style, StitchForms forms, ChartNames names, KeyMaker key, Colours colours, List<string> notes, ChartPlaces? former, List<(int, string, IReadOnlyList<LaidRow>)> places)
    {
        string name = piece.Name.Length == 0 ? "The piece" : piece.Name;
        long cells = piece.Rows.Sum(row => row.Length);
        if (cells <= style.MostCells)
        {
            var chart = new PieceChart(piece, number, forms, names, key, style, colours) { Former = former?.Of(number, piece.Name) };
            List<DrawnRow> drawn = [.. chart.Draw()];
            places.Add((number, piece.Name, chart.Laid));
            return drawn;
        }
        int fitting = Fitting(piece, style.MostCells / 2);
        string much = $"{name} has {cells} stitches and chains, more than a page can show one by one ({style.MostCells}).";
        bool excerpt = fitting > FewestRows && (style.RepeatOnly || !style.AllRows);
        notes.Add($"{much} {(excerpt ? "Only its first rows are drawn." : "Each row is drawn as a block as long as its count.")}");
        return excerpt ? [.. new PieceChart(piece, number, forms, names, key, style, colours, fitting).Draw()] : [.. new Overview(piece, number, forms).Draw()];
    }

    /// <summary>How many of the first rows have so many cells together.</summary>
    private static int Fitting(WorkedPiece piece, long cells)
    {
        int rows = 0;
        while (rows < piece.Rows.Count && (cells -= piece.Rows[rows].Length) >= 0) rows++;
        return rows;
    }

    /// <summary>Puts a piece under those drawn before it, its name above it.</summary>
    private static void Stack(List<DrawnRow> drawn, List<DrawnRow> piece, string name)
    {
        Box bounds = BoundsOf(piece);
        if (name.Length > 0) piece[0] = piece[0] with { Marks = [.. piece[0].Marks, new Words(new Point((bounds.Left + bounds.Right) / 2, bounds.Top - 1.5), name, 1)] };
        if (drawn.Count == 0)
        {
            drawn.AddRange(piece);
            return;
        }
        Box above = BoundsOf(drawn);
        var by = new Point(above.Left - bounds.Left, above.Bottom - bounds.Top + BetweenPieces);
        drawn.AddRange(piece.Select(row => Moved(row, by)));
    }

    private static DrawnRow Moved(DrawnRow row, Point by) => row with
    {
        Symbols = row.Symbols.Select(symbol => symbol with { Shapes = Moved(symbol.Shapes, by) }).ToEquatableArray(),
        Marks = Moved(row.Marks, by),
    };

    private static EquatableArray<Shape> Moved(EquatableArray<Shape> shapes, Point by) => shapes.Select(shape => shape.Moved(by)).ToEquatableArray();

    private static Box BoundsOf(IEnumerable<DrawnRow> rows) =>
        rows.SelectMany(row => row.Symbols.SelectMany(symbol => symbol.Shapes).Concat(row.Marks)).Aggregate(Box.Empty, (box, shape) => box.With(shape.Bounds));

    private static Drawing Finish(CheckedPattern pattern, Fabric fabric, ChartStyle style, List<DrawnRow> rows, KeyMaker key, List<string> notes)
    {
        Box bounds = rows.Count == 0 ? new Box(0, 0, 1, 1) : BoundsOf(rows);
        bool inRounds = fabric.Pieces.Any(Tones.InRounds);
        string title = style.Title ?? pattern.Pattern.Statements.FirstOrDefault(statement => statement.Kind == StatementKind.Title)?.Text ?? "Chart";
        if (fabric.Size.Length > 0) title += ", " + fabric.Size;
        if (rows.Count == 0) notes.Add("There is nothing to draw yet: no rows were found in the text.");
        return new Drawing(title, ChartWords.Describe(fabric, style.Piece), bounds.Grow(Margin), rows.ToEquatableArray(), key.Entries, Tones.Meanings(rows, inRounds), notes.ToEquatableArray())
        {
            KeyTitle = pattern.Pattern.Terms.Terminology == Terminology.Us ? "Key: US terms (UK terms)" : "Key: UK terms (US terms)",
            IsOverview = rows.Exists(row => row.Marks.Any(mark => mark is Block)),
        };
    }
}
