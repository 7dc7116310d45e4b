using PatternStudio.Craft.Charting.Layout;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Charting;

/// <summary>Brackets with counts: one repeat across under the chart, the repeated rows beside it.</summary>
internal static class RepeatMarks
{
    /// <summary>How far under the chart the bracket lies.</summary>
    public const double Below = 1.3;
    private const double Beside = 2.2;
    private const double Tick = 0.35;
    private const double Size = 0.8;

    /// <summary>The brackets of a piece in rows; none for rounds, which show their repeat by going round.</summary>
    public static EquatableArray<Shape> Of(PieceCells piece, IReadOnlyList<LaidRow> rows)
    {
        if (piece.InRounds || rows.Count == 0 || rows.Any(row => row.Closed)) return [];
        Box box = rows.SelectMany(row => row.Cells).Aggregate(Box.Empty, (all, cell) => all.With(cell.Top));
        if (box.IsEmpty) return [];
        var marks = new List<Shape>();
        if (Repeats.Across(piece) is { } across && Span(across, rows) is { } span) marks.AddRange(Lying(span.Left, span.Right, box.Bottom + Below, $"rep {across.Stitches} sts, {across.Times} times"));
        if (Repeats.Up(piece.Piece) is { } up) marks.AddRange(Standing(up, rows, box.Right + Beside));
        return marks.ToEquatableArray();
    }

    /// <summary>Where one repeat lies: the one nearest the left edge, whichever way its row runs.</summary>
    private static (double Left, double Right)? Span(AcrossRepeat repeat, IReadOnlyList<LaidRow> rows)
    {
        LaidRow row = rows[repeat.Row];
        double At(long number) => row.Cells[repeat.First + (number * repeat.Cells)] is var cell ? cell.Top.X : 0;
        double step = At(1) - At(0);
        if (Math.Abs(step) < 1) return null;
        LaidCell first = row.Cells[repeat.First];
        double start = first.Top.X - (Math.Sign(step) * first.Width / 2);
        double last = start + (step * (repeat.Times - 1));
        return step > 0 ? (start, start + step) : (last + step, last);
    }

    /// <summary>A bracket that lies under one repeat.</summary>
    public static IEnumerable<Shape> Lying(double left, double right, double y, string text) =>
    [
        new Line(new Point(left, y - Tick), new Point(left, y)), new Line(new Point(left, y), new Point(right, y)), new Line(new Point(right, y), new Point(right, y - Tick)),
        new Words(new Point(left, y + 0.7), text, Size, Anchor.Start),
    ];

    private static IEnumerable<Shape> Standing(UpRepeat repeat, IReadOnlyList<LaidRow> rows, double x)
    {
        LaidRow[] once = [.. rows.Skip(repeat.First).Take(repeat.Rows)];
        Box box = once.SelectMany(row => row.Cells).Where(cell => cell.Width > 0).Aggregate(Box.Empty, (all, cell) => all.With(cell.Top).With(cell.Top - (cell.Up * Math.Max(0.8, cell.Form.Height))));
        if (box.IsEmpty) return [];
        string text = repeat.Rows == 1 ? $"rep {repeat.Times} times" : $"rep {repeat.Rows} rows, {repeat.Times} times";
        return
        [
            new Line(new Point(x - Tick, box.Top), new Point(x, box.Top)), new Line(new Point(x, box.Top), new Point(x, box.Bottom)), new Line(new Point(x, box.Bottom), new Point(x - Tick, box.Bottom)),
            new Words(new Point(x + 0.4, (box.Top + box.Bottom) / 2), text, Size, Anchor.Start),
        ];
    }
}
