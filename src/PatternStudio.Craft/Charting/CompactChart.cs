using PatternStudio.Craft.Charting.Layout;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Charting;

/// <summary>A chart of the repeat alone.</summary>
internal interface ICompactChart
{
    /// <summary>The bracket about the one repeat that is left.</summary>
    EquatableArray<Shape> Bracket(IReadOnlyList<LaidRow> rows);

    /// <summary>True for a row that is kept.</summary>
    bool Keeps(int row);

    /// <summary>A row without what is left out.</summary>
    DrawnRow Of(DrawnRow row, LaidRow laid);
}

/// <summary>
/// The repeat alone: both edges and one repeat between them, as many rows as it takes to see the rows repeat. What is left out is whole repeats, so what remains closes up
/// without a seam.
/// </summary>
internal sealed class CompactChart : ICompactChart
{
    /// <summary>Rows kept after the first turn of the repeated rows, so that it is seen to start again.</summary>
    private const int RowsAfter = 1;

    /// <summary>So far from every stitch's middle a cut is surely between the same two stitches at both ends; so many places to each side are tried.</summary>
    private const double Clear = 0.15;
    private const int Moves = 24;

    private readonly double cutFrom;
    private readonly double cutBy;
    private readonly int lastRow;

    private readonly double width;
    private readonly AcrossRepeat? across;

    private CompactChart(double cutFrom, double cutBy, int lastRow, AcrossRepeat? across)
    {
        (this.cutFrom, this.cutBy, this.lastRow, this.across) = (cutFrom, cutBy, lastRow, across);
        width = across is null ? 0 : cutBy / (across.Times - 1);
    }

    /// <summary>What to leave out of a piece; null where nothing repeats.</summary>
    public static CompactChart? Of(PieceCells piece, IReadOnlyList<LaidRow> rows)
    {
        if (piece.InRounds || rows.Any(row => row.Closed)) return null;
        AcrossRepeat? across = Repeats.Across(piece);
        UpRepeat? up = Repeats.Up(piece.Piece);
        (double from, double by) = across is { Times: > 1 } && Cut(across, rows) is { } cut ? cut : (double.MaxValue, 0);
        int last = up is null ? rows.Count - 1 : Math.Min(rows.Count - 1, up.First + up.Rows - 1 + RowsAfter);
        return by <= 0 && last == rows.Count - 1 ? null : new CompactChart(from, by, last, by > 0 ? across : null);
    }

    private static (double From, double By)? Cut(AcrossRepeat repeat, IReadOnlyList<LaidRow> rows)
    {
        LaidRow row = rows[repeat.Row];
        double step = row.Cells[repeat.First + repeat.Cells].Top.X - row.Cells[repeat.First].Top.X;
        if (Math.Abs(step) < 1) return null;
        double start = row.Cells[repeat.First].Top.X - (Math.Sign(step) * row.Cells[repeat.First].Width / 2);
        double left = step > 0 ? start : start + (step * repeat.Times);
        (double from, double by) = (left + Math.Abs(step), Math.Abs(step) * (repeat.Times - 1));
        return (from + Between(rows, from, by, Math.Abs(step)), by);
    }

    /// <summary>How far to move both cuts so that neither goes through a stitch of any row: a repeat may begin anywhere.</summary>
    private static double Between(IReadOnlyList<LaidRow> rows, double from, double by, double step)
    {
        double[] tops = [.. rows.SelectMany(row => row.Cells).Where(cell => cell.Width > 0).Select(cell => cell.Top.X).Order()];
        double[] moves = [.. Enumerable.Range(0, Moves + 1).SelectMany(i => new[] { i, -i }).Select(i => i * step / (2.0 * Moves))];
        return moves.FirstOrDefault(move => Room(move) >= Clear, moves.MaxBy(Room));

        double Room(double move) => Math.Min(Nearest(tops, from + move), Nearest(tops, from + by + move));
    }

    private static double Nearest(double[] sorted, double at)
    {
        int next = Array.BinarySearch(sorted, at);
        if (next >= 0) return 0;
        next = ~next;
        return Math.Min(next < sorted.Length ? sorted[next] - at : double.MaxValue, next > 0 ? at - sorted[next - 1] : double.MaxValue);
    }

    /// <summary>The bracket under the one repeat that is left: 'rep 6 sts'.</summary>
    public EquatableArray<Shape> Bracket(IReadOnlyList<LaidRow> rows) =>
        across is null ? [] : [.. RepeatMarks.Lying(cutFrom - width, cutFrom, rows.SelectMany(row => row.Cells).Aggregate(Box.Empty, (all, cell) => all.With(cell.Top)).Bottom + RepeatMarks.Below, $"rep {across.Stitches} sts")];

    /// <summary>True for a row that is kept.</summary>
    public bool Keeps(int row) => row <= lastRow;

    /// <summary>The row without what is left out, closed up.</summary>
    public DrawnRow Of(DrawnRow row, LaidRow laid)
    {
        var symbols = new List<Symbol>();
        foreach (Symbol symbol in row.Symbols)
            if (Shift(laid.Cells[symbol.Cell].Top.X) is { } by)
                symbols.Add(by == 0 ? symbol : symbol with { Shapes = Moved(symbol.Shapes, by) });
        return row with { Symbols = symbols.ToEquatableArray(), Marks = row.Marks.Select(mark => mark.Moved(new Point(Shift(mark.Bounds.Left) ?? 0, 0))).ToEquatableArray() };
    }

    private double? Shift(double x) => x < cutFrom ? 0 : x < cutFrom + cutBy ? null : -cutBy;

    private static EquatableArray<Shape> Moved(EquatableArray<Shape> shapes, double by) => shapes.Select(shape => shape.Moved(new Point(by, 0))).ToEquatableArray();
}
