namespace PatternStudio.Craft.Charting.Layout;

/// <summary>Draws the two edges of a waving piece straight: each row is stretched a little between them.</summary>
internal static class StraightEdges
{
    /// <summary>Ends nearer than this to the line are on it.</summary>
    private const double Even = 0.02;

    public static List<LaidRow> Of(IReadOnlyList<LaidRow> rows)
    {
        double[] left = [.. rows.Where(row => row.Cells.Length > 1).Select(row => Ends(row).Left)];
        double[] right = [.. rows.Where(row => row.Cells.Length > 1).Select(row => Ends(row).Right)];
        if (left.Length == 0) return [.. rows];
        (double from, double to) = (left.Average(), right.Average());
        return [.. rows.Select(row => row.Cells.Length > 1 ? Stretched(row, from, to) : row)];
    }

    private static (double Left, double Right) Ends(LaidRow row)
    {
        double[] along = [.. row.Cells.Where(cell => cell.Width > 0).Select(cell => cell.Top.X).DefaultIfEmpty(0)];
        return (along.Min(), along.Max());
    }

    private static LaidRow Stretched(LaidRow row, double from, double to)
    {
        (double left, double right) = Ends(row);
        if (Math.Abs(left - from) < Even && Math.Abs(right - to) < Even) return row;
        double scale = right - left < 1e-6 ? 1 : (to - from) / (right - left);
        LaidCell[] cells = [.. row.Cells.Select(cell => cell with { Top = new Point(from + ((cell.Top.X - left) * scale), cell.Top.Y) })];
        return Labels.On(Uprights.Of(row with { Cells = cells }));
    }
}
