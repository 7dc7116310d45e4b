using PatternStudio.Craft.Charting.Layout;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>Draws one piece stitch by stitch.</summary>
/// <param name="mostRows">How many rows to draw; the rest is named in a gap.</param>
internal sealed class PieceChart(WorkedPiece piece, int number, StitchForms forms, ChartNames names, KeyMaker key, ChartStyle style, Colours colours, int mostRows = int.MaxValue)
{
    /// <summary>Where the piece lay before it was edited; null for a new one.</summary>
    public IReadOnlyList<LaidRow>? Former { get; init; }

    /// <summary>Where its rows lie, once drawn.</summary>
    public IReadOnlyList<LaidRow> Laid { get; private set; } = [];

    public IEnumerable<DrawnRow> Draw()
    {
        var layouts = new Layouts(piece with { Rows = piece.Rows.Take(mostRows).ToEquatableArray() }, forms);
        IReadOnlyList<LaidRow> rows = Laid = layouts.Lay(Former);
        ICompactChart? compact = !style.RepeatOnly ? null : layouts.Cells.InRounds ? CompactRounds.Of(rows) : CompactChart.Of(layouts.Cells, rows);
        EquatableArray<Shape> brackets = compact?.Bracket(rows) ?? RepeatMarks.Of(layouts.Cells, rows);
        return Draw(rows, brackets).Where(row => compact?.Keeps(row.Row) ?? true).Select(row => compact is null || row.Row >= rows.Count ? row : compact.Of(row, rows[row.Row])).Select(row => style.LeftHanded ? Mirror.Of(row) : row);
    }

    private IEnumerable<DrawnRow> Draw(IReadOnlyList<LaidRow> rows, EquatableArray<Shape> brackets)
    {
        var symbols = new CellSymbols(rows, names, style.Symbols);
        ColourPatches? patches = style.InColour ? new ColourPatches(rows, colours) : null;
        EquatableArray<Symbol>[] drawn = [.. rows.Select(row => row.Row.Status == RowStatus.Checked ? symbols.Of(row, patches) : [])];
        Point[] numbers = RowNumbers.Of(rows, drawn);
        for (int i = 0; i < rows.Count; i++)
        {
            if (rows[i].Row.Status == RowStatus.Checked)
            {
                if (!style.InColour) key.Add(rows[i]);
                yield return new DrawnRow(number, i, LabelOf(rows[i].Row), Tones.Of(rows[i].Row, InRounds), drawn[i], i == 0 ? [.. Marks(rows[i], numbers[i]), .. brackets] : Marks(rows[i], numbers[i]));
                continue;
            }
            int last = i;
            while (last + 1 < rows.Count && rows[last + 1].Row.Status != RowStatus.Checked) last++;
            yield return Gap(rows, i, NotDrawn(rows[i].Row, rows[last].Row, "not checked, not drawn"));
            i = last;
        }
        if (rows.Count < piece.Rows.Count)
            yield return Gap(rows, rows.Count, NotDrawn(piece.Rows[rows.Count], piece.Rows[^1], "not drawn here"));
    }

    private static string NotDrawn(WorkedRow first, WorkedRow last, string why) =>
        first == last ? $"{LabelOf(first)}: {why}" : $"{LabelOf(first)} to {LabelOf(last)}: {why}";

    private bool InRounds => Tones.InRounds(piece);

    private static string LabelOf(WorkedRow row) =>
        row.Label.Length > 0 ? row.Label : row.Kind == RowKind.Foundation ? "Foundation" : $"{(row.Kind == RowKind.Round ? "Rnd" : "Row")} {row.Number}";

    private static EquatableArray<Shape> Marks(LaidRow row, Point number) =>
        RowNumbers.IsNumbered(row) ? [new Words(number, row.Row.Number.ToString(), RowNumbers.Size)] : [];

    private DrawnRow Gap(IReadOnlyList<LaidRow> rows, int first, string label)
    {
        Box below = rows.Take(first).SelectMany(row => row.Cells).Aggregate(Box.Empty, (box, cell) => box.With(cell.Top));
        if (below.IsEmpty) below = new Box(0, 0, 0, 0);
        var at = new Point((below.Left + below.Right) / 2, below.Top - 1.4);
        var words = new Words(at, label, RowNumbers.Size);
        Box around = words.Bounds.Grow(0.3);
        return new DrawnRow(number, first, label, RowTone.Gap, [], [
            new Line(new Point(around.Left, around.Bottom), new Point(around.Right, around.Bottom)), words,
            new Line(new Point(around.Left, around.Top), new Point(around.Right, around.Top))]);
    }
}
