using PatternStudio.Craft.Charting;

namespace PatternStudio.Craft.Tests.Charting;

/// <summary>
/// The outline of a drawn symbol: the convex hull of its strokes, so that a leaning stitch has a leaning outline; a run of chains has one for each chain, since an arch is
/// empty below.
/// </summary>
internal sealed class Outline
{
    private readonly Outline[] parts;

    private Outline(Point[] corners, Outline[] parts)
    {
        Corners = corners;
        this.parts = parts.Length == 0 ? [this] : parts;
        Box = corners.Aggregate(Box.Empty, (box, at) => box.With(at));
        Area = parts.Length == 0 ? AreaOf(corners) : parts.Sum(part => part.Area);
    }

    public Point[] Corners { get; }

    public Box Box { get; }

    public Point Middle => new((Box.Left + Box.Right) / 2, (Box.Top + Box.Bottom) / 2);

    public double Area { get; }

    public static Outline Of(IReadOnlyList<Shape> shapes) => new(
        Hull([.. shapes.SelectMany(Points)]),
        [.. PartsOf(shapes).Select(part => new Outline(Hull([.. part.SelectMany(Points)]), []))]);

    /// <summary>Chains of a run one by one; legs of stitches worked together one by one, each with the head.</summary>
    private static IEnumerable<IReadOnlyList<Shape>> PartsOf(IReadOnlyList<Shape> shapes)
    {
        if (shapes.Count > 1 && shapes.All(shape => shape is Oval { Filled: false })) return shapes.Select(shape => (IReadOnlyList<Shape>)[shape]);
        Line[] legs = [.. shapes.OfType<Line>().Where(line => (line.To - line.From).Length > Leg)];
        return legs.Length > 1 && legs.All(leg => leg.To == legs[0].To) ? legs.Select(leg => (IReadOnlyList<Shape>)[leg, shapes[^1]]) : [];
    }

    private const double Leg = 0.7;

    /// <summary>Share of the smaller outline that the other covers.</summary>
    public double Overlap(Outline other)
    {
        double smaller = Math.Min(Area, other.Area);
        return smaller < 1e-3 || !Meet(Box, other.Box) ? 0 : parts.Sum(part => other.parts.Sum(piece => Meet(part.Box, piece.Box) ? AreaOf(Common(part.Corners, piece.Corners)) : 0)) / smaller;
    }

    /// <summary>How far apart two outlines are; 0 where they meet.</summary>
    public double Distance(Outline other)
    {
        if (Overlap(other) > 0) return 0;
        return parts.Min(part => other.parts.Min(piece => Math.Min(Nearest(part.Corners, piece), Nearest(piece.Corners, part))));
    }

    private static double Nearest(Point[] from, Outline to) => from.Min(at => Enumerable.Range(0, to.Corners.Length).Min(i => ToSide(at, to.Corners[i], to.Corners[(i + 1) % to.Corners.Length])));

    private static double ToSide(Point at, Point from, Point to)
    {
        Point way = to - from;
        double square = (way.X * way.X) + (way.Y * way.Y);
        double share = square < 1e-12 ? 0 : Math.Clamp((((at.X - from.X) * way.X) + ((at.Y - from.Y) * way.Y)) / square, 0, 1);
        return (at - from.Toward(to, share)).Length;
    }

    private static bool Meet(Box one, Box other) => one.Left < other.Right && other.Left < one.Right && one.Top < other.Bottom && other.Top < one.Bottom;

    private static IEnumerable<Point> Points(Shape shape) => shape switch
    {
        Line line => [line.From, line.To],
        Curve curve => Enumerable.Range(0, 7).Select(i => curve.From.Toward(curve.Toward, i / 6.0).Toward(curve.Toward.Toward(curve.To, i / 6.0), i / 6.0)),
        Oval oval => Enumerable.Range(0, 12).Select(i => Around(oval, i * Math.PI / 6)),
        _ => [new Point(shape.Bounds.Left, shape.Bounds.Top), new Point(shape.Bounds.Right, shape.Bounds.Top), new Point(shape.Bounds.Left, shape.Bounds.Bottom), new Point(shape.Bounds.Right, shape.Bounds.Bottom)],
    };

    private static Point Around(Oval oval, double angle)
    {
        double turn = oval.Turn * Math.PI / 180;
        double along = oval.Along * Math.Cos(angle);
        double across = oval.Across * Math.Sin(angle);
        return oval.Centre + new Point((along * Math.Cos(turn)) - (across * Math.Sin(turn)), (along * Math.Sin(turn)) + (across * Math.Cos(turn)));
    }

    private static double Cross(Point origin, Point one, Point other) => ((one.X - origin.X) * (other.Y - origin.Y)) - ((one.Y - origin.Y) * (other.X - origin.X));

    private static Point[] Hull(Point[] points)
    {
        Point[] sorted = [.. points.Distinct().OrderBy(at => at.X).ThenBy(at => at.Y)];
        return sorted.Length < 3 ? sorted : [.. Half(sorted), .. Half([.. sorted.Reverse()])];
    }

    private static IEnumerable<Point> Half(Point[] sorted)
    {
        var hull = new List<Point>();
        foreach (Point at in sorted)
        {
            while (hull.Count >= 2 && Cross(hull[^2], hull[^1], at) <= 1e-12) hull.RemoveAt(hull.Count - 1);
            hull.Add(at);
        }
        return hull.Take(hull.Count - 1);
    }

    private static double AreaOf(IReadOnlyList<Point> corners)
    {
        double sum = 0;
        for (int i = 0; i < corners.Count; i++)
        {
            Point next = corners[(i + 1) % corners.Count];
            sum += (corners[i].X * next.Y) - (next.X * corners[i].Y);
        }
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
                double here = Cross(from, to, at);
                double there = Cross(from, to, next);
                if (here >= 0) kept.Add(at);
                if (here * there < 0) kept.Add(at.Toward(next, here / (here - there)));
            }
            left = kept;
        }
        return left;
    }
}
