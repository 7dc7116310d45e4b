using PatternStudio.Craft.Charting;

namespace PatternStudio.Publishing;

/// <summary>Paints a drawing as SVG: one group for each row, text as text, a title and a description for screen readers.</summary>
public static class SvgPainter
{
    /// <summary>Paints a chart with its key beneath it.</summary>
    /// <param name="drawing">The chart.</param>
    /// <param name="stitchMillimetres">Printed width of one stitch, in millimetres; above 0.</param>
    /// <param name="id">Begins every id in the picture ('chart-p0r3' is the row with index 3 of the first piece), so that one page can hold several.</param>
    /// <returns>A whole SVG document, without an XML declaration, so that a page can hold it.</returns>
    public static string Paint(Drawing drawing, double stitchMillimetres = 4, string id = "chart")
    {
        ArgumentNullException.ThrowIfNull(drawing);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(stitchMillimetres);
        ArgumentException.ThrowIfNullOrWhiteSpace(id);
        var svg = new SvgWriter(id);
        KeyLayout key = KeyLayout.Under(drawing);
        svg.Open(drawing, key.Bounds, stitchMillimetres);
        foreach (DrawnRow row in drawing.Rows) PaintRow(svg, row);
        key.Paint(svg);
        return svg.Close();
    }

    /// <summary>Paints a symbol of the key, as large as the words beside it: one stitch width is one em.</summary>
    /// <returns>An SVG element that says nothing of its own to screen readers: its words stand beside it.</returns>
    public static string PaintSymbol(IReadOnlyCollection<Shape> shapes)
    {
        ArgumentNullException.ThrowIfNull(shapes);
        var svg = new SvgWriter("symbol");
        svg.OpenSmall(shapes.Aggregate(Box.Empty, (box, shape) => box.With(shape.Bounds)).Grow(0.15));
        svg.Shapes([.. shapes]);
        return svg.Close();
    }

    private static void PaintRow(SvgWriter svg, DrawnRow row)
    {
        svg.OpenGroup($"-p{row.Piece}r{row.Row}", SvgStyle.ClassOf(row.Tone), row.Label);
        foreach (Symbol symbol in row.Symbols) svg.Symbol(symbol);
        svg.Shapes(row.Marks);
        svg.CloseGroup();
    }
}
