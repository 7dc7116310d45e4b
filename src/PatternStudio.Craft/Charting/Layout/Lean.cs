using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>How far stitches lean from right above their feet. Where rows lie even, stitches that share a place lean both ways and those between stand upright; in a ripple all lean.</summary>
internal static class Lean
{
    /// <summary>Root mean square over places of the lean of all that stands in one, in stitch widths.</summary>
    public static double Of(IReadOnlyList<LaidRow> rows)
    {
        var standing = new Standing(rows);
        double sum = 0;
        int count = 0;
        foreach (LaidRow row in rows)
            for (int first = 0, next; first < row.Cells.Length; first = next)
            {
                next = End(row.Cells, first);
                if (row.Cells[first].Cell.Kind != CellKind.Stitch || Feet(row.Cells[first], standing) is not { } foot) continue;
                Point top = row.Cells[first].Top.Toward(row.Cells[next - 1].Top, 0.5);
                Point along = row.Cells[first].Up.Right();
                double lean = ((top.X - foot.X) * along.X) + ((top.Y - foot.Y) * along.Y);
                sum += lean * lean;
                count++;
            }
        return count == 0 ? 0 : Math.Sqrt(sum / count);
    }

    /// <summary>The index after the last stitch in the same place, chains between them included.</summary>
    private static int End(LaidCell[] cells, int first)
    {
        int last = first;
        for (int next = first + 1; next < cells.Length && (cells[next].Cell.Kind == CellKind.Chains || Fans.SameFoot(cells[next].Cell, cells[first].Cell)); next++)
            if (cells[next].Cell.Kind != CellKind.Chains) last = next;
        return last + 1;
    }

    private static Point? Feet(LaidCell cell, Standing standing)
    {
        Point[] feet = [.. cell.Cell.Feet.Select(foot => standing.Of(foot, cell.Top)).OfType<Point>()];
        return feet.Length == 0 ? null : feet.Aggregate((sum, at) => sum + at) * (1.0 / feet.Length);
    }
}
