using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Measuring;

/// <summary>
/// Tells rows that are shaped at their edges, and so stay straight, from rows shaped in the middle, which bend: a shawl increased at its centre, a
/// mitred square.
/// </summary>
internal static class Bending
{
    /// <summary>Rows longer than this are not unrolled to look.</summary>
    private const long Limit = 20_000;

    /// <summary>Rows with fewer stitches have no middle.</summary>
    private const long Fewest = 8;

    /// <summary>Share of all growth that may lie in the middle, and the stitches that any pattern stitch may stray by.</summary>
    private const double Share = 0.25;
    private const double Stray = 3;

    private const string Why = "Stitches or chains are added or taken away in the middle of the rows, so the rows bend or arch and their count does not give the piece's width. Measure a worked piece.";

    /// <summary>Why the rows bend; null where they are straight.</summary>
    public static string? Reason(List<WorkedRow> rows, List<RowTally> tallies)
    {
        double inside = 0;
        double all = 0;
        for (int i = 1; i < rows.Count; i++)
        {
            long change = tallies[i].Places - tallies[i - 1].Places;
            if (change == 0 || tallies[i - 1].Places < Fewest || rows[i].Length > Limit || rows[i - 1].Length > Limit || rows[i].Into != rows[i - 1].Index) continue;
            double middle = MiddleGrowth(rows[i], rows[i - 1]);
            if (Math.Abs(middle) > Math.Max(Stray, Share * Math.Abs(change))) return Why;
            inside += Math.Abs(middle);
            all += Math.Abs(change);
        }
        return inside > Stray && inside > Share * all ? Why : null;
    }

    /// <summary>By how many stitches the middle three fifths of a row are more than what they stand on.</summary>
    private static double MiddleGrowth(WorkedRow row, WorkedRow below)
    {
        Cell[] cells = [.. row.Cells()];
        double[] at = Positions(cells);
        double[] under = Positions([.. below.Cells()]);
        int[] standing = [.. Enumerable.Range(0, cells.Length).Where(i => cells[i].Kind == CellKind.Stitch && cells[i].Feet.Count > 0 && cells[i].Feet[0].Row == below.Index && cells[i].Feet[0].Place < under.Length)];
        if (standing.Length < 4) return 0;
        int first = standing[standing.Length / 5];
        int last = standing[standing.Length - 1 - (standing.Length / 5)];
        return (at[last] - at[first]) - Math.Abs(under[cells[last].Feet[0].Place] - under[cells[first].Feet[0].Place]);
    }

    private static double[] Positions(Cell[] cells)
    {
        var at = new double[cells.Length];
        double sum = 0;
        for (int i = 0; i < cells.Length; i++)
        {
            int width = RowTally.Width(cells[i]);
            at[i] = sum + (width / 2.0);
            sum += width;
        }
        return at;
    }
}
