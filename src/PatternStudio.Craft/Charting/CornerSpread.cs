using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>Spreads a round with corners: corners stand in the corners, the rest evenly between.</summary>
internal static class CornerSpread
{
    /// <summary>The places along the round; null for rounds or grounds without that number of corners.</summary>
    /// <param name="centres">Middle of each cell in stitch widths from the round's start.</param>
    /// <param name="total">Stitch widths in all.</param>
    /// <param name="feet">Where each cell's feet are; null where not known.</param>
    /// <param name="corners">How many corners the piece has.</param>
    /// <param name="direction">+1 anticlockwise, -1 where the round was turned.</param>
    public static double[]? Of(Ground ground, WorkedRow row, double[] centres, double total, double?[] feet, int corners, int direction)
    {
        if (ground is not PolygonGround polygon) return null;
        IReadOnlyList<int> found = Corners.Of(row);
        if (found.Count != corners) found = EachStitch(row);
        if (found.Count != corners) return null;
        double first = FirstCorner(polygon, feet[found[0]] ?? FootBeside(feet, found[0]), corners);
        return [.. centres.Select(centre => first + (direction * Sides(centre, centres, found, total) / corners))];
    }

    /// <summary>Four stitches in the ring are the corners that the next round makes of them.</summary>
    private static int[] EachStitch(WorkedRow row) =>
        [.. row.Cells().Select((cell, i) => (cell, i)).Where(at => at.cell.Kind == CellKind.Stitch || at.cell.Counts).Select(at => at.i)];

    private static double? FootBeside(double?[] feet, int corner) => corner > 0 ? feet[corner - 1] : null;

    private static double FirstCorner(PolygonGround polygon, double? foot, int corners) =>
        foot is { } below ? polygon.FirstCorner + (Math.Round((below - polygon.FirstCorner) * corners) / corners) : polygon.FirstCorner;

    /// <summary>How many sides past the first corner a place is; below 0 before it.</summary>
    private static double Sides(double centre, double[] centres, IReadOnlyList<int> corners, double total)
    {
        int next = 0;
        while (next < corners.Count && centres[corners[next]] <= centre) next++;
        double from = next == 0 ? centres[corners[^1]] - total : centres[corners[next - 1]];
        double to = next == corners.Count ? centres[corners[0]] + total : centres[corners[next]];
        return next - 1 + ((centre - from) / (to - from));
    }
}
