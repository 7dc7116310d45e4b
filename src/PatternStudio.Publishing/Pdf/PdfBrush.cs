using PatternStudio.Craft.Charting;
using PdfSharp.Drawing;

namespace PatternStudio.Publishing.Pdf;

/// <summary>Draws shapes on a page whose unit is one stitch width.</summary>
internal sealed class PdfBrush(XGraphics page)
{
    private const double Baseline = 0.35;

    /// <summary>How far the handles of a quarter of an ellipse reach, as a share of its radius.</summary>
    private const double Quarter = 0.5523;

    private readonly Dictionary<double, XFont> fonts = [];
    private XPen pen = XPens.Black;
    private XSolidBrush fill = XBrushes.Black;
    private XColor ink = XColors.Black;

    public void Take(PngStyle style)
    {
        ink = XColor.FromArgb(style.Ink.Red, style.Ink.Green, style.Ink.Blue);
        pen = new XPen(ink, style.Weight) { LineCap = XLineCap.Round, LineJoin = XLineJoin.Round };
        if (style.Dashed) pen.DashPattern = [0.4 / style.Weight, 0.3 / style.Weight];
        fill = new XSolidBrush(ink);
    }

    public void Paint(IEnumerable<Shape> shapes)
    {
        foreach (Shape shape in shapes) Paint(shape);
    }

    public void Paint(Shape shape)
    {
        switch (shape)
        {
            case Line line: page.DrawLine(pen, At(line.From), At(line.To)); break;
            case Curve curve: page.DrawBezier(pen, At(curve.From), At(curve.From.Toward(curve.Toward, 2.0 / 3)), At(curve.To.Toward(curve.Toward, 2.0 / 3)), At(curve.To)); break;
            case Oval { Filled: true } dot: page.DrawEllipse(fill, dot.Centre.X - dot.Along, dot.Centre.Y - dot.Along, 2 * dot.Along, 2 * dot.Along); break;
            case Oval oval: page.DrawBeziers(pen, Round(oval)); break;
            case Block block: page.DrawRectangle(new XSolidBrush(XColor.FromArgb(0x66, ink)), block.Area.Left, block.Area.Top, block.Area.Width, block.Area.Height); break;
            case Patch patch: page.DrawPolygon(new XSolidBrush(Of(patch.Hex)), [.. patch.Corners.Select(At)], XFillMode.Winding); break;
            case Words words: Write(words); break;
        }
    }

    private static XPoint[] Round(Oval oval)
    {
        double turn = oval.Turn * Math.PI / 180;
        var along = new Point(Math.Cos(turn) * oval.Along, Math.Sin(turn) * oval.Along);
        var across = new Point(-Math.Sin(turn) * oval.Across, Math.Cos(turn) * oval.Across);
        var points = new List<XPoint> { At(oval.Centre + along) };
        for (int quarter = 0; quarter < 4; quarter++)
        {
            Point next = across;
            points.AddRange([At(oval.Centre + along + (next * Quarter)), At(oval.Centre + next + (along * Quarter)), At(oval.Centre + next)]);
            (along, across) = (across, along * -1);
        }
        return [.. points];
    }

    private void Write(Words words)
    {
        if (!fonts.TryGetValue(words.Size, out XFont? font)) fonts[words.Size] = font = PdfFonts.Of(words.Size);
        double left = words.Anchor == Anchor.Start ? 0 : page.MeasureString(words.Text, font).Width * (words.Anchor == Anchor.Middle ? 0.5 : 1);
        page.DrawString(words.Text, font, words.Ink is { } own ? new XSolidBrush(Of(own)) : fill, words.At.X - left, words.At.Y + (words.Size * Baseline));
    }

    private static XColor Of(string hex) => hex.Length == 7 ? XColor.FromArgb(Part(hex, 1), Part(hex, 3), Part(hex, 5)) : XColors.White;

    private static int Part(string hex, int at) => Convert.ToInt32(hex.Substring(at, 2), 16);

    private static XPoint At(Point point) => new(point.X, point.Y);
}
