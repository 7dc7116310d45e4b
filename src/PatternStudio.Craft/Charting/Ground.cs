namespace PatternStudio.Craft.Charting;

/// <summary>
/// The ground a piece is laid out on. Places are given along the row (<c>u</c>) and across the rows (<c>t</c>, stitch widths from the foundation
/// or the centre), so that rows, circles and squares share one way of placing stitches.
/// </summary>
internal abstract class Ground
{
    /// <summary>The place on paper.</summary>
    public abstract Point At(double u, double t);

    /// <summary>True where u is a share of a turn and 1 is the same as 0.</summary>
    public virtual bool Wraps => false;

    /// <summary>Where u is counted in turns, the share of a turn that a row fills; null where u is counted in stitch widths.</summary>
    public virtual double? Span => null;

    /// <summary>The shortest way from one u to another.</summary>
    public double Difference(double from, double to)
    {
        double way = to - from;
        return Wraps ? way - Math.Round(way) : way;
    }
}

/// <summary>Rows: u in stitch widths to the right, t upward.</summary>
internal sealed class FlatGround : Ground
{
    public override Point At(double u, double t) => new(u, -t);
}

/// <summary>Rounds of a circle: u in turns, anticlockwise from the right, t is the radius.</summary>
internal sealed class RoundGround : Ground
{
    public override bool Wraps => true;

    public override double? Span => 1;

    public override Point At(double u, double t)
    {
        double angle = 2 * Math.PI * u;
        return new Point(t * Math.Cos(angle), -t * Math.Sin(angle));
    }
}

/// <summary>Rows back and forth round a centre: a half circle above its straight edge.</summary>
internal sealed class HalfRoundGround : Ground
{
    public override double? Span => 0.5;

    /// <summary>Rows that run to the right have u growing: from the left end of the straight edge over the top.</summary>
    public override Point At(double u, double t)
    {
        double angle = Math.PI - (2 * Math.PI * u);
        return new Point(t * Math.Cos(angle), -t * Math.Sin(angle));
    }
}

/// <summary>Rounds with corners: u in turns with equal shares for equal sides, t from the centre to the middle of a side; one side lies flat at the bottom.</summary>
internal sealed class PolygonGround(int corners) : Ground
{
    /// <summary>The bottom of the drawing, in turns.</summary>
    public const double Bottom = 0.75;

    public override bool Wraps => true;

    public override double? Span => 1;

    /// <summary>The first corner that is reached from the bottom, going anticlockwise.</summary>
    public double FirstCorner => Bottom + (0.5 / corners);

    public override Point At(double u, double t)
    {
        double sides = (u - FirstCorner) * corners;
        double side = Math.Floor(sides);
        return Corner(side, t).Toward(Corner(side + 1, t), sides - side);
    }

    private Point Corner(double number, double t)
    {
        double angle = 2 * Math.PI * (FirstCorner + (number / corners));
        double radius = t / Math.Cos(Math.PI / corners);
        return new Point(radius * Math.Cos(angle), -radius * Math.Sin(angle));
    }
}
