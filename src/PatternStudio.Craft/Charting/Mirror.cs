using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Charting;

/// <summary>Turns a right-hander's chart into a left-hander's: the same fabric, seen in a mirror, with the words still readable.</summary>
internal static class Mirror
{
    public static DrawnRow Of(DrawnRow row) => row with
    {
        Symbols = row.Symbols.Select(symbol => symbol with { Shapes = Of(symbol.Shapes) }).ToEquatableArray(),
        Marks = Of(row.Marks),
    };

    private static EquatableArray<Shape> Of(EquatableArray<Shape> shapes) => shapes.Select(Of).ToEquatableArray();

    private static Shape Of(Shape shape) => shape switch
    {
        Line line => new Line(Of(line.From), Of(line.To)),
        Curve curve => new Curve(Of(curve.From), Of(curve.Toward), Of(curve.To)),
        Oval oval => oval with { Centre = Of(oval.Centre), Turn = (180 - oval.Turn) % 180 },
        Block block => block with { Area = new Box(-block.Area.Right, block.Area.Top, -block.Area.Left, block.Area.Bottom) },
        Patch patch => patch with { Corners = patch.Corners.Select(Of).ToEquatableArray() },
        Words words => words with { At = Of(words.At), Anchor = words.Anchor switch { Anchor.Start => Anchor.End, Anchor.End => Anchor.Start, _ => Anchor.Middle } },
        _ => shape,
    };

    private static Point Of(Point at) => new(-at.X, at.Y);
}
