using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Charting;

/// <summary>Draws the outline of a measured piece with its finished measures, in centimetres and inches.</summary>
public static class Schematic
{
    /// <summary>The longer side of the outline, in the drawing's units.</summary>
    private const double Longest = 30;
    private const double Room = 1.6;
    private const double Tick = 0.5;
    private const double Size = 1.2;

    private const double BetweenPieces = 3;

    /// <summary>The schematics of all pieces whose measures are known, one under the other; null where none are.</summary>
    /// <param name="schedule">The pieces as measured by a swatch.</param>
    public static Drawing? Draw(RowSchedule schedule)
    {
        ArgumentNullException.ThrowIfNull(schedule);
        Drawing[] drawn = [.. schedule.Pieces.Select(Draw).OfType<Drawing>()];
        if (drawn.Length < 2) return drawn.FirstOrDefault();
        var rows = new List<DrawnRow>();
        Box bounds = Box.Empty;
        foreach (Drawing piece in drawn)
        {
            var by = new Point(0, bounds.IsEmpty ? 0 : bounds.Bottom + BetweenPieces - piece.Bounds.Top);
            var name = new Words(new Point((piece.Bounds.Left + piece.Bounds.Right) / 2, piece.Bounds.Top - 1), piece.Title, Size);
            DrawnRow row = piece.Rows[0] with { Row = rows.Count, Marks = [.. piece.Rows[0].Marks.Append(name).Select(mark => mark.Moved(by))] };
            rows.Add(row);
            bounds = row.Marks.Aggregate(bounds, (box, mark) => box.With(mark.Bounds));
        }
        return new Drawing("Finished measures", string.Join(' ', drawn.Select(piece => piece.Description)), bounds.Grow(1), [.. rows], [], [], []);
    }

    /// <summary>The schematic of a piece; null where its width or height is not known.</summary>
    /// <param name="piece">The piece as measured by a swatch.</param>
    public static Drawing? Draw(PieceSchedule piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        if (!piece.Width.IsKnown || !piece.Height.IsKnown || piece.Width.Value.Millimetres <= 0 || piece.Height.Value.Millimetres <= 0) return null;
        double scale = Longest / Math.Max(piece.Width.Value.Millimetres, piece.Height.Value.Millimetres);
        (double width, double height) = (piece.Width.Value.Millimetres * scale, piece.Height.Value.Millimetres * scale);
        Shape[] shapes = [.. Outline(piece, scale, width, height), .. Across(width, piece.Width.Value), .. Up(width, height, piece.Height.Value)];
        Box bounds = shapes.Aggregate(Box.Empty, (box, shape) => box.With(shape.Bounds)).Grow(1);
        string title = piece.Name.Length == 0 ? "Finished measures" : $"{piece.Name}: finished measures";
        var row = new DrawnRow(0, 0, title, RowTone.Foundation, [], shapes.ToEquatableArray());
        return new Drawing(title, $"{title}: {piece.Width.Value} wide, {piece.Height.Value} high.", bounds, [row], [], [], []);
    }

    private static IEnumerable<Shape> Outline(PieceSchedule piece, double scale, double width, double height) => piece.Construction.Kind switch
    {
        ConstructionKind.Circle => [new Oval(new Point(0, -height / 2), width / 2, height / 2, 0)],
        ConstructionKind.HalfCircle => [new Curve(new Point(-width / 2, 0), new Point(-width / 2, -height * 1.1), new Point(0, -height)), new Curve(new Point(0, -height), new Point(width / 2, -height * 1.1), new Point(width / 2, 0)), new Line(new Point(-width / 2, 0), new Point(width / 2, 0))],
        ConstructionKind.ShapedRows => Shaped([.. piece.Rows.Select(row => row.Width).OfType<Length>().Select(length => length.Millimetres * scale)], height),
        _ => Around([new(-width / 2, 0), new(width / 2, 0), new(width / 2, -height), new(-width / 2, -height)]),
    };

    /// <summary>Rows as wide as they are, each above the middle of the one below.</summary>
    private static IEnumerable<Shape> Shaped(double[] widths, double height)
    {
        if (widths.Length < 2) return [];
        double step = height / (widths.Length - 1);
        return Around([.. widths.Select((width, i) => new Point(width / 2, -i * step)), .. widths.Select((width, i) => new Point(-width / 2, -i * step)).Reverse()]);
    }

    private static IEnumerable<Shape> Around(Point[] corners) => corners.Select((corner, i) => new Line(corner, corners[(i + 1) % corners.Length]));

    private static IEnumerable<Shape> Across(double width, Length length) => Measure(new Point(-width / 2, Room), new Point(width / 2, Room), new Point(0, Tick), new Words(new Point(0, Room + Size), length.ToString(), Size));

    private static IEnumerable<Shape> Up(double width, double height, Length length) =>
        Measure(new Point((width / 2) + Room, 0), new Point((width / 2) + Room, -height), new Point(Tick, 0), new Words(new Point((width / 2) + Room + 0.6, -height / 2), length.ToString(), Size, Anchor.Start));

    private static IEnumerable<Shape> Measure(Point from, Point to, Point tick, Words words) => [new Line(from, to), new Line(from - tick, from + tick), new Line(to - tick, to + tick), words];
}
