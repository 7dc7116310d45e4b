namespace PatternStudio.Craft.Charting.Layout;

/// <summary>The line of a scallop's row: from below its loop, out round the tip, to above the loop.</summary>
/// <param name="Centre">Where the loop is, on the strip's edge.</param>
/// <param name="Side">+1 for a scallop to the right of the strip, -1 to the left.</param>
/// <param name="Out">How far the tip is from the edge.</param>
/// <param name="Below">How far it reaches down along the edge.</param>
/// <param name="Above">How far it reaches up.</param>
internal readonly record struct HalfOval(Point Centre, int Side, double Out, double Below, double Above)
{
    private const int Steps = 96;

    public double Length => Lengths()[^1];

    /// <summary>A place on it, and the way outward there.</summary>
    /// <param name="share">0 at its lower end, 1 at its upper.</param>
    public (Point Place, Point Outward) At(double share)
    {
        double angle = AngleAt(share);
        double along = angle < 0 ? Below : Above;
        return (Place(angle), new Point(Side * Math.Cos(angle) * along, -Math.Sin(angle) * Out).Unit());
    }

    /// <summary>The angle, from -π/2 at its lower end to π/2 at its upper, at a share of its length.</summary>
    public double AngleAt(double share)
    {
        double[] lengths = Lengths();
        double way = Math.Clamp(share, 0, 1) * lengths[^1];
        int step = Math.Clamp(Array.FindIndex(lengths, length => length >= way), 1, Steps);
        return Angle(step - 1 + ((way - lengths[step - 1]) / Math.Max(1e-9, lengths[step] - lengths[step - 1])));
    }

    /// <summary>The share of its length at an angle.</summary>
    public double ShareAt(double angle)
    {
        double[] lengths = Lengths();
        double at = Math.Clamp(((angle / Math.PI) + 0.5) * Steps, 0, Steps);
        int step = Math.Min((int)at, Steps - 1);
        return (lengths[step] + ((at - step) * (lengths[step + 1] - lengths[step]))) / lengths[^1];
    }

    private static double Angle(double step) => Math.PI * ((step / Steps) - 0.5);

    private Point Place(double angle) => Centre + new Point(Side * Out * Math.Cos(angle), -Math.Sin(angle) * (angle < 0 ? Below : Above));

    private double[] Lengths()
    {
        var lengths = new double[Steps + 1];
        for (int i = 1; i <= Steps; i++) lengths[i] = lengths[i - 1] + (Place(Angle(i)) - Place(Angle(i - 1))).Length;
        return lengths;
    }
}
