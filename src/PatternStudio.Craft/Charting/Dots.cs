namespace PatternStudio.Craft.Charting;

/// <summary>Chains and slip stitches: ovals along a line, and dots.</summary>
internal static class Dots
{
    /// <summary>Radius of a slip stitch, in stitch widths.</summary>
    public const double Radius = 0.14;
    private const double Breadth = 0.17;
    /// <summary>Where a few chains span a wide place they are drawn longer, as yarn gives.</summary>
    private const double Longest = 0.8;

    /// <summary>A single chain stays as short as chains are.</summary>
    private const double Single = 0.45;

    /// <summary>Half the length of a chain of the foundation.</summary>
    public const double OfFoundation = 0.4;

    /// <summary>A slip stitch.</summary>
    public static Oval At(Point at) => new(at, Radius, Radius, 0, Filled: true);

    /// <summary>So many chains end to end on a path.</summary>
    /// <param name="chains">How many; at least 1.</param>
    /// <param name="path">The place for a share of the way, 0 to 1.</param>
    /// <param name="longest">Half the length of the longest chain drawn.</param>
    public static IEnumerable<Shape> Chain(int chains, Func<double, Point> path, double longest = Longest)
    {
        for (int i = 0; i < chains; i++)
        {
            Point from = path((double)i / chains);
            Point to = path((i + 1.0) / chains);
            double half = Math.Clamp((to - from).Length * 0.46, 0.12, chains == 1 ? Math.Min(longest, Single) : longest);
            yield return new Oval(path((i + 0.5) / chains), half, Math.Min(Breadth, half * 0.6), Turn(to - from));
        }
    }

    /// <summary>A direction in degrees, from 0 up to, not including, 180: an oval has no front.</summary>
    public static double Turn(Point direction)
    {
        double degrees = Math.Atan2(direction.Y, direction.X) * 180 / Math.PI;
        return ((degrees % 180) + 180) % 180;
    }
}
