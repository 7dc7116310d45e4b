namespace PatternStudio.Craft.Charting;

/// <summary>The outline of a symbol, as convex hulls: one for each chain of a run, since an arch is empty below; one for all strokes of a stitch.</summary>
internal sealed class SymbolOutline
{
    private const int Sides = 12;
    private static readonly Point[] Circle = [.. Enumerable.Range(0, Sides).Select(i => i * 2 * Math.PI / Sides).Select(angle => new Point(Math.Cos(angle), Math.Sin(angle)))];
    private readonly Point[][] hulls;
    private readonly Box[] boxes;

    public SymbolOutline(IReadOnlyList<Shape> shapes)
    {
        bool chains = shapes.Count > 1 && shapes.All(shape => shape is Oval { Filled: false });
        hulls = chains ? [.. shapes.Cast<Oval>().Select(Around)] : [Hull(shapes)];
        boxes = Array.ConvertAll(hulls, BoxOf);
        Box = boxes.Aggregate(Box.Empty, (all, box) => all.With(box));
        foreach (Point[] hull in hulls) Area += AreaOf(hull);
    }

    public Box Box { get; }

    public double Area { get; }

    /// <summary>Share of the smaller outline that both have in common, and the shortest move of the other that parts them.</summary>
    public (double Share, Point Move) Overlap(SymbolOutline other)
    {
        double smaller = Math.Min(Area, other.Area);
        if (smaller < 1e-3 || !Meet(Box, other.Box)) return (0, default);
        double common = 0;
        var move = new Point(0, 0);
        for (int i = 0; i < hulls.Length; i++)
            for (int j = 0; j < other.hulls.Length; j++)
            {
                if (!Meet(boxes[i], other.boxes[j])) continue;
                double area = AreaOf(Common(hulls[i], other.hulls[j]));
                if (area <= 0) continue;
                common += area;
                Point apart = Apart(hulls[i], other.hulls[j]);
                if (apart.Length > move.Length) move = apart;
            }
        return (common / smaller, move);
    }

    /// <summary>The least move of the second that parts two convex outlines, at a right angle to a side of one.</summary>
    private static Point Apart(Point[] one, Point[] other)
    {
        (double least, Point way) = (double.MaxValue, default);
        foreach (Point side in SidesOf(one).Concat(SidesOf(other).Select(side => side * -1)))
        {
            double depth = one.Max(at => Dot(at, side)) - other.Min(at => Dot(at, side));
            if (depth < least) (least, way) = (depth, side);
        }
        return least is double.MaxValue or <= 0 ? default : way * least;
    }

    private static IEnumerable<Point> SidesOf(Point[] hull) =>
        Enumerable.Range(0, hull.Length).Select(i => hull[(i + 1) % hull.Length] - hull[i]).Where(side => side.Length > 1e-6).Select(side => new Point(side.Y, -side.X).Unit());

    private static double Dot(Point one, Point other) => (one.X * other.X) + (one.Y * other.Y);

    private static bool Meet(Box one, Box other) => one.Left < other.Right && other.Left < one.Right && one.Top < other.Bottom && other.Top < one.Bottom;

    private static Box BoxOf(Point[] hull)
    {
        Box box = Box.Empty;
        foreach (Point at in hull) box = box.With(at);
        return box;
    }

    private static void AddPoints(List<Point> points, Shape shape)
    {
        switch (shape)
        {
            case Line line:
                points.Add(line.From);
                points.Add(line.To);
                break;
            case Curve curve:
                for (int i = 0; i <= 6; i++) points.Add(curve.From.Toward(curve.Toward, i / 6.0).Toward(curve.Toward.Toward(curve.To, i / 6.0), i / 6.0));
                break;
            case Oval oval:
                points.AddRange(Around(oval));
                break;
            default:
                Box box = shape.Bounds;
                points.AddRange([new Point(box.Left, box.Top), new Point(box.Right, box.Top), new Point(box.Left, box.Bottom), new Point(box.Right, box.Bottom)]);
                break;
        }
    }

    /// <summary>Places around an oval in turn: a convex outline already.</summary>
    private static Point[] Around(Oval oval)
    {
        (double sin, double cos) = Math.SinCos(oval.Turn * Math.PI / 180);
        var around = new Point[Sides];
        for (int i = 0; i < Sides; i++)
        {
            (double along, double across) = (oval.Along * Circle[i].X, oval.Across * Circle[i].Y);
            around[i] = oval.Centre + new Point((along * cos) - (across * sin), (along * sin) + (across * cos));
        }
        return around;
    }

    private static double Cross(Point origin, Point one, Point other) => ((one.X - origin.X) * (other.Y - origin.Y)) - ((one.Y - origin.Y) * (other.X - origin.X));

    /// <summary>The convex hull: the points from left to right along its one side and back along the other.</summary>
    private static Point[] Hull(IReadOnlyList<Shape> shapes)
    {
        var points = new List<Point>();
        foreach (Shape shape in shapes) AddPoints(points, shape);
        points.Sort(static (one, other) => one.X != other.X ? one.X.CompareTo(other.X) : one.Y.CompareTo(other.Y));
        var hull = new List<Point>(points.Count);
        int kept = 1;
        for (int i = 0; i < points.Count; i++) Turn(hull, kept, points[i]);
        kept = hull.Count;
        for (int i = points.Count - 2; i >= 0; i--) Turn(hull, kept, points[i]);
        if (hull.Count > 1) hull.RemoveAt(hull.Count - 1);
        return [.. hull];
    }

    /// <summary>Goes on to the next point and leaves out those that are then inside.</summary>
    private static void Turn(List<Point> hull, int kept, Point next)
    {
        while (hull.Count > kept && Cross(hull[^2], hull[^1], next) <= 1e-12) hull.RemoveAt(hull.Count - 1);
        hull.Add(next);
    }

    private static double AreaOf(IReadOnlyList<Point> corners)
    {
        double sum = 0;
        for (int i = 0; i < corners.Count; i++) sum += (corners[i].X * corners[(i + 1) % corners.Count].Y) - (corners[(i + 1) % corners.Count].X * corners[i].Y);
        return Math.Abs(sum) / 2;
    }

    /// <summary>What two convex outlines have in common: one cut by each side of the other.</summary>
    private static List<Point> Common(Point[] one, Point[] other)
    {
        List<Point> left = [.. one];
        for (int i = 0; i < other.Length && left.Count > 0; i++)
        {
            (Point from, Point to) = (other[i], other[(i + 1) % other.Length]);
            var kept = new List<Point>();
            for (int j = 0; j < left.Count; j++)
            {
                (Point at, Point next) = (left[j], left[(j + 1) % left.Count]);
                (double here, double there) = (Cross(from, to, at), Cross(from, to, next));
                if (here >= 0) kept.Add(at);
                if (here * there < 0) kept.Add(at.Toward(next, here / (here - there)));
            }
            left = kept;
        }
        return left;
    }
}
