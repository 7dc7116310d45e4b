using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Charting;

/// <summary>One stroke of a symbol. Sizes are in stitch widths; colours and line weights are the painter's.</summary>
public abstract record Shape
{
    /// <summary>The points that bound it, near enough to size the drawing.</summary>
    public abstract Box Bounds { get; }

    /// <summary>The same shape elsewhere.</summary>
    public abstract Shape Moved(Point by);
}

/// <summary>A straight stroke.</summary>
public sealed record Line(Point From, Point To) : Shape
{
    public override Box Bounds => Box.Empty.With(From).With(To);

    public override Shape Moved(Point by) => new Line(From + by, To + by);
}

/// <summary>A bent stroke: from one point to another, drawn toward a third (a quadratic curve).</summary>
public sealed record Curve(Point From, Point Toward, Point To) : Shape
{
    public override Box Bounds => Box.Empty.With(From).With(From.Toward(To, 0.5).Toward(Toward, 0.5)).With(To);

    public override Shape Moved(Point by) => new Curve(From + by, Toward + by, To + by);
}

/// <summary>An oval; a circle where both radii are equal.</summary>
/// <param name="Along">Half its length.</param>
/// <param name="Across">Half its breadth.</param>
/// <param name="Turn">Direction of its length in degrees, clockwise from the x axis as seen on paper.</param>
/// <param name="Filled">True for a dot.</param>
public sealed record Oval(Point Centre, double Along, double Across, double Turn, bool Filled = false) : Shape
{
    public override Box Bounds => Box.Empty.With(Centre).Grow(Math.Max(Along, Across));

    public override Shape Moved(Point by) => this with { Centre = Centre + by };
}

/// <summary>A filled rectangle: a row in an overview.</summary>
public sealed record Block(Box Area) : Shape
{
    public override Box Bounds => Area;

    public override Shape Moved(Point by) => new Block(new Box(Area.Left + by.X, Area.Top + by.Y, Area.Right + by.X, Area.Bottom + by.Y));
}

/// <summary>A filled area in a yarn's colour.</summary>
/// <param name="Corners">At least three, in order.</param>
/// <param name="Hex">'#rrggbb'.</param>
public sealed record Patch(EquatableArray<Point> Corners, string Hex) : Shape
{
    public override Box Bounds => Corners.Aggregate(Box.Empty, (box, corner) => box.With(corner));

    public override Shape Moved(Point by) => this with { Corners = Corners.Select(corner => corner + by).ToEquatableArray() };
}

/// <summary>Which end of a text stands at its point.</summary>
public enum Anchor { Start, Middle, End }

/// <summary>Words.</summary>
/// <param name="At">Middle of their height.</param>
/// <param name="Size">Height of the letters' line.</param>
public sealed record Words(Point At, string Text, double Size, Anchor Anchor = Anchor.Middle) : Shape
{
    /// <summary>The colour of the letters; null for that of their row.</summary>
    public string? Ink { get; init; }

    /// <summary>Mean width of a letter beside its height; enough to keep words inside the drawing.</summary>
    private const double LetterWidth = 0.6;

    public override Box Bounds
    {
        get
        {
            double width = Text.Length * Size * LetterWidth;
            double left = Anchor switch { Anchor.Start => 0, Anchor.Middle => width / 2, _ => width };
            return new Box(At.X - left, At.Y - (Size / 2), At.X - left + width, At.Y + (Size / 2));
        }
    }

    public override Shape Moved(Point by) => this with { At = At + by };
}
