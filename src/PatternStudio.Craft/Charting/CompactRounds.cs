using PatternStudio.Craft.Charting.Layout;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>The repeat alone of rounds: how each round begins, and the first of the equal parts that it is made of, like a slice of a cake.</summary>
internal sealed class CompactRounds : ICompactChart
{
    private const int MostTimes = 24;
    private const int FewestTimes = 3;
    private const double Beyond = 0.9;
    private const double Tick = 0.35;
    private const double Size = 0.8;

    private readonly int times;
    private readonly int[] ends;

    private CompactRounds(int times, int[] ends) => (this.times, this.ends) = (times, ends);

    /// <summary>The slice of a piece; null where its rounds have no number of equal parts in common.</summary>
    public static CompactRounds? Of(IReadOnlyList<LaidRow> rows)
    {
        if (rows.Count < 2 || !rows[0].IsCentre || rows.Skip(1).Any(row => !row.Closed || row.Cells.Length == 0)) return null;
        int[][] standing = [.. rows.Skip(1).Select(row => Enumerable.Range(0, row.Cells.Length).Where(i => Stands(row.Cells[i].Cell)).ToArray())];
        for (int times = MostTimes; times >= FewestTimes; times--)
            if (Enumerable.Range(0, standing.Length).All(i => Repeats(rows[i + 1], standing[i], times)))
                return new CompactRounds(times, [0, .. standing.Select(cells => cells[(cells.Length / times) - 1])]);
        return null;
    }

    /// <summary>A chain that counts is a stitch of the repeat; slip stitches that join and chains that don't count are how the round begins.</summary>
    private static bool Stands(Cell cell) => cell.Kind is CellKind.Stitch or CellKind.Chains or CellKind.Picot || cell is { Kind: CellKind.TurningChain, Counts: true };

    private static bool Repeats(LaidRow row, int[] standing, int times)
    {
        if (standing.Length == 0 || standing.Length % times != 0) return false;
        int part = standing.Length / times;
        return Enumerable.Range(0, standing.Length - part).All(i => Alike(row.Cells[standing[i]].Cell, row.Cells[standing[i + part]].Cell));
    }

    private static bool Alike(Cell one, Cell other) => one.Stitch == other.Stitch && one.Feet.Count == other.Feet.Count && Chains(one) == Chains(other) && (one.Kind == CellKind.Chains) == (other.Kind == CellKind.Chains);

    private static int Chains(Cell cell) => cell.Kind == CellKind.TurningChain ? 0 : cell.Chains;

    /// <summary>An arc of strokes about the last round's repeat: 'rep 8 sts, 6 times'.</summary>
    public EquatableArray<Shape> Bracket(IReadOnlyList<LaidRow> rows)
    {
        LaidRow last = rows[^1];
        LaidCell[] part = [.. last.Cells.Take(ends[^1] + 1).Where(cell => cell.Width > 0)];
        if (part.Length == 0) return [];
        Point way = part.Length > 1 ? (part[1].Top - part[0].Top).Unit() : part[0].Up.Right();
        Point back = part.Length > 1 ? (part[^1].Top - part[^2].Top).Unit() : way;
        Point[] line =
        [
            part[0].Top - (way * (part[0].Width / 2)) + (part[0].Up * Beyond),
            .. part.Select(cell => cell.Top + (cell.Up * Beyond)),
            part[^1].Top + (back * (part[^1].Width / 2)) + (part[^1].Up * Beyond),
        ];
        var marks = new List<Shape> { new Line(line[0] - (part[0].Up * Tick), line[0]), new Line(line[^1] - (part[^1].Up * Tick), line[^1]) };
        for (int i = 0; i + 1 < line.Length; i++) marks.Add(new Line(line[i], line[i + 1]));
        LaidCell middle = part[part.Length / 2];
        Point at = middle.Top + (middle.Up * (Beyond + Size));
        int stitches = (int)Math.Round(part.Sum(cell => cell.Cell.Kind == CellKind.Chains ? cell.Cell.Chains : 1.0));
        marks.Add(new Words(at, $"rep {stitches} sts, {times} times", Size, middle.Up.X > 0.3 ? Anchor.Start : middle.Up.X < -0.3 ? Anchor.End : Anchor.Middle));
        return marks.ToEquatableArray();
    }

    public bool Keeps(int row) => true;

    public DrawnRow Of(DrawnRow row, LaidRow laid) =>
        laid.IsCentre ? row : row with { Symbols = row.Symbols.Where(symbol => symbol.Cell <= ends[row.Row]).ToEquatableArray() };
}
