using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>Finds what pulls the cells of a row from their even places.</summary>
internal static class Pull
{
    /// <summary>A stitch, or a fan, may lean so many stitch widths before the row's even steps give way.</summary>
    private const double Lean = 1;
    private const double LeanOfFan = 1.6;

    /// <summary>
    /// What pulls at the row: each cell's own feet. Stitches fanned out of one place are drawn together, and only from afar; where all are near enough above
    /// their feet, nothing pulls, and the row stays even.
    /// </summary>
    public static double?[] Of(Cell[] cells, double?[] feet, double[] even, double unit)
    {
        var pulls = (double?[])feet.Clone();
        bool far = false;
        for (int first = 0, next; first < cells.Length; first = next)
        {
            next = Fans.End(cells, first);
            double middle = (even[first] + even[next - 1]) / 2;
            bool strays = feet[first] is { } foot && Math.Abs(foot - middle) > unit * (next - first == 1 ? Lean : LeanOfFan);
            for (int i = first; i < next; i++) pulls[i] = next - first == 1 ? feet[i] : strays ? feet[i] + even[i] - middle : null;
            far |= strays;
        }
        return far ? pulls : new double?[pulls.Length];
    }
}
