namespace PatternStudio.Craft.Charting.Layout;

/// <summary>
/// A rectangle that a border goes round. Places along it are counted from its upper right corner, along the top to the left, down, along the bottom and up again: the way a
/// right-hander's rounds run.
/// </summary>
internal readonly record struct Frame(double Left, double Top, double Right, double Bottom)
{
    private double Width => Right - Left;

    private double Height => Bottom - Top;

    public Point Middle => new((Left + Right) / 2, (Top + Bottom) / 2);

    /// <summary>The whole way round.</summary>
    public double Around => 2 * (Width + Height);

    /// <summary>Where its four corners are along it.</summary>
    public double[] Corners => [0, Width, Width + Height, (2 * Width) + Height];

    public Frame Grow(double by) => new(Left - by, Top - by, Right + by, Bottom + by);

    /// <summary>The place on paper.</summary>
    public Point At(double along)
    {
        double at = along - (Around * Math.Floor(along / Around));
        if (at < Width) return new Point(Right - at, Top);
        if (at < Width + Height) return new Point(Left, Top + at - Width);
        return at < (2 * Width) + Height ? new Point(Left + at - Width - Height, Bottom) : new Point(Right, Bottom - (at - (2 * Width) - Height));
    }

    /// <summary>The way out from a place along it.</summary>
    public Point Out(double along)
    {
        double at = along - (Around * Math.Floor(along / Around));
        if (at < Width) return new Point(0, -1);
        if (at < Width + Height) return new Point(-1, 0);
        return at < (2 * Width) + Height ? new Point(0, 1) : new Point(1, 0);
    }

    /// <summary>Where along it a place lies that grows a given way.</summary>
    public double Along(Point at, Point up)
    {
        if (Math.Abs(up.Y) >= Math.Abs(up.X)) return up.Y < 0 ? Math.Clamp(Right - at.X, 0, Width) : Width + Height + Math.Clamp(at.X - Left, 0, Width);
        return up.X < 0 ? Width + Math.Clamp(at.Y - Top, 0, Height) : (2 * Width) + Height + Math.Clamp(Bottom - at.Y, 0, Height);
    }

    /// <summary>The corner nearest to a place, along the frame.</summary>
    public double Corner(Point at)
    {
        Frame frame = this;
        return Corners.MinBy(corner => (frame.At(corner) - at).Length);
    }

    /// <summary>The shortest way from one place along it to another.</summary>
    public double Way(double from, double to)
    {
        double way = to - from;
        return way - (Around * Math.Round(way / Around));
    }
}
