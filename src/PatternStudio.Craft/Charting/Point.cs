namespace PatternStudio.Craft.Charting;

/// <summary>A place on the drawing, in stitch widths; y grows downward, as on paper.</summary>
public readonly record struct Point(double X, double Y)
{
    public static Point operator +(Point point, Point by) => new(point.X + by.X, point.Y + by.Y);

    public static Point operator -(Point point, Point by) => new(point.X - by.X, point.Y - by.Y);

    public static Point operator *(Point point, double times) => new(point.X * times, point.Y * times);

    /// <summary>Distance from the origin, where the point is taken as a direction.</summary>
    public double Length => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>The same direction, one long; upward where there is no direction.</summary>
    public Point Unit() => Length < 1e-9 ? new Point(0, -1) : this * (1 / Length);

    /// <summary>A quarter turn to the right, as seen on paper.</summary>
    public Point Right() => new(-Y, X);

    /// <summary>The place a share of the way to another.</summary>
    /// <param name="share">0 here, 1 there.</param>
    public Point Toward(Point other, double share) => this + ((other - this) * share);
}

/// <summary>The rectangle that holds a drawing.</summary>
public readonly record struct Box(double Left, double Top, double Right, double Bottom)
{
    public double Width => Right - Left;

    public double Height => Bottom - Top;

    /// <summary>Holds no point yet.</summary>
    public static readonly Box Empty = new(double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);

    public bool IsEmpty => Right < Left;

    /// <summary>The box grown to hold a point.</summary>
    public Box With(Point point) =>
        new(Math.Min(Left, point.X), Math.Min(Top, point.Y), Math.Max(Right, point.X), Math.Max(Bottom, point.Y));

    /// <summary>The box grown to hold another.</summary>
    public Box With(Box other) => other.IsEmpty ? this : With(new Point(other.Left, other.Top)).With(new Point(other.Right, other.Bottom));

    /// <summary>The box with a margin all round.</summary>
    public Box Grow(double margin) => IsEmpty ? this : new(Left - margin, Top - margin, Right + margin, Bottom + margin);
}
