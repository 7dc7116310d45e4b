using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Measuring;

/// <summary>Rows that keep their count while they wander sideways, one stitch more at one end and one less at the other: the middle of a rectangle on the bias.</summary>
internal static class Slant
{
    /// <summary>Rows longer than this are not unrolled to look.</summary>
    private const long Limit = 20_000;

    /// <summary>How many stitches at each end are looked at.</summary>
    private const int Edge = 3;

    /// <summary>True where most of the rows from one index to another (both included) gain at one end and lose at the other.</summary>
    public static bool Leans(IReadOnlyList<WorkedRow> rows, int from, int to)
    {
        int leaning = Enumerable.Range(from, to - from + 1).Count(i => rows[i].Length <= Limit && Leans([.. rows[i].Cells().Where(cell => cell.Kind == CellKind.Stitch)]));
        return leaning * 2 > to - from + 1;
    }

    private static bool Leans(Cell[] stitches)
    {
        if (stitches.Length < 2 * Edge) return false;
        Cell[] start = stitches[..Edge];
        Cell[] end = stitches[^Edge..];
        return (Gains(start) && Loses(end)) || (Loses(start) && Gains(end));
    }

    private static bool Gains(Cell[] edge) =>
        edge.Zip(edge.Skip(1)).Any(pair => pair is { First.Feet.Count: 1, Second.Feet.Count: 1 } && pair.First.Feet[0] == pair.Second.Feet[0]);

    private static bool Loses(Cell[] edge) => edge.Any(cell => cell.Feet.Count > 1);
}
