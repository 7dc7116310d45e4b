using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>The line that a run of chains lies on: from one neighbour to the other, under the tops of the row; three and more rise in an arch.</summary>
internal readonly struct ChainPath
{
    private const double BelowTops = 0.2;
    private const double ArchOfChain = 0.14;
    private const double HighestArch = 1.2;

    private readonly Point from;
    private readonly Point toward;
    private readonly Point to;

    public ChainPath(LaidRow row, int at)
    {
        LaidCell cell = row.Cells[at];
        double arch = Rise(cell.Cell);
        Point drop = cell.Up * -BelowTops;
        LaidCell? before = row.Beside(at, -1);
        LaidCell? after = row.Beside(at, 1);
        Point left = before is { } previous ? End(previous, cell) : default;
        Point right = after is { } next ? End(next, cell) : default;
        from = (before is null ? after is null ? cell.Top - (cell.Up.Right() * (cell.Width / 2)) : cell.Top - (right - cell.Top) : left) + drop;
        to = (after is null ? before is null ? cell.Top + (cell.Up.Right() * (cell.Width / 2)) : cell.Top - (left - cell.Top) : right) + drop;
        Point middle = cell.Top + drop + (cell.Up * arch);
        toward = (middle * 2) - from.Toward(to, 0.5);
    }

    /// <summary>How high the middle of a run of chains rises; 0 for what lies flat.</summary>
    public static double Rise(Cell cell) =>
        cell.Kind != CellKind.Chains || cell.Chains < 3 ? 0 : Math.Min(HighestArch, cell.Chains * ArchOfChain);

    /// <summary>The place at a share of the way, 0 to 1, in the order worked.</summary>
    public Point At(double share) => from.Toward(toward, share).Toward(toward.Toward(to, share), share);

    /// <summary>The share of the way that lies under a place.</summary>
    public double Under(Point place)
    {
        Point way = to - from;
        double square = (way.X * way.X) + (way.Y * way.Y);
        return square < 1e-9 ? 0.5 : Math.Clamp((((place.X - from.X) * way.X) + ((place.Y - from.Y) * way.Y)) / square, 0, 1);
    }

    /// <summary>Where two cells of a row meet.</summary>
    private static Point End(LaidCell beside, LaidCell cell) =>
        cell.Top.Toward(beside.Top, cell.Width / Math.Max(0.1, cell.Width + beside.Width));
}
