using System.Globalization;
using System.Net;
using System.Text;
using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Text;

namespace PatternStudio.Publishing;

/// <summary>Writes SVG elements. Ten user units are one stitch width; numbers keep one decimal, a hundredth of a stitch.</summary>
internal sealed class SvgWriter(string id)
{
    private const double Scale = 10;
    private readonly StringBuilder text = new();

    public void Open(Drawing drawing, Box bounds, double stitchMillimetres)
    {
        text.Append($"<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"chart\" role=\"img\" aria-labelledby=\"{Escape(id)}-title {Escape(id)}-desc\" viewBox=\"{N(bounds.Left)} {N(bounds.Top)} {N(bounds.Width)} {N(bounds.Height)}\" width=\"{Millimetres(bounds.Width)}\" height=\"{Millimetres(bounds.Height)}\">\n");
        text.Append($"<title id=\"{Escape(id)}-title\">{Escape(drawing.Title)}</title>\n<desc id=\"{Escape(id)}-desc\">{Escape(drawing.Description)}</desc>\n<style>{SvgStyle.Sheet}</style>\n");
        string Millimetres(double stitches) => (stitches * stitchMillimetres).ToString("0.#", CultureInfo.InvariantCulture) + "mm";
    }

    public void OpenSmall(Box bounds) => text.Append(CultureInfo.InvariantCulture,
        $"<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"symbol\" aria-hidden=\"true\" viewBox=\"{N(bounds.Left)} {N(bounds.Top)} {N(bounds.Width)} {N(bounds.Height)}\" width=\"{bounds.Width:0.##}em\" height=\"{bounds.Height:0.##}em\">");

    public string Close() => text.Append("</svg>\n").ToString();

    public void OpenGroup(string ending, string classes, string label) =>
        text.Append($"<g id=\"{Escape(id)}{ending}\" class=\"{classes}\" aria-label=\"{Escape(label)}\">\n");

    public void OpenGroup(string classes) => text.Append($"<g class=\"{classes}\">\n");

    public void CloseGroup() => text.Append("</g>\n");

    /// <summary>All strokes of a symbol in one path where they can be; the words it came from as data.</summary>
    public void Symbol(Symbol symbol)
    {
        string data = $" data-cell=\"{symbol.Cell}\" data-from=\"{symbol.Source.Start}\" data-to=\"{symbol.Source.End}\"";
        string path = Path(symbol.Shapes);
        string title = $"<title>{Escape(symbol.Name)}</title>";
        if (path.Length > 0) text.Append($"<path{data} d=\"{path}\">{title}</path>\n");
        Others(symbol.Shapes, path.Length > 0 ? "" : data, title);
    }

    public void Shapes(EquatableArray<Shape> shapes)
    {
        string path = Path(shapes);
        if (path.Length > 0) text.Append($"<path d=\"{path}\"/>\n");
        Others(shapes, "", "");
    }

    private static string Path(EquatableArray<Shape> shapes) => string.Concat(shapes.Select(shape => shape switch
    {
        Line line => $"M{P(line.From)}L{P(line.To)}",
        Curve curve => $"M{P(curve.From)}Q{P(curve.Toward)} {P(curve.To)}",
        Oval { Filled: false } oval => OvalPath(oval),
        _ => "",
    }));

    /// <summary>Two half ovals.</summary>
    private static string OvalPath(Oval oval)
    {
        double angle = oval.Turn * Math.PI / 180;
        var half = new Point(Math.Cos(angle) * oval.Along, Math.Sin(angle) * oval.Along);
        string radii = $"{N(oval.Along)} {N(oval.Across)} {oval.Turn.ToString("0", CultureInfo.InvariantCulture)}";
        return $"M{P(oval.Centre - half)}A{radii} 1 0 {P(oval.Centre + half)}A{radii} 1 0 {P(oval.Centre - half)}Z";
    }

    private void Others(EquatableArray<Shape> shapes, string data, string title)
    {
        foreach (Shape shape in shapes)
            text.Append(shape switch
            {
                Oval { Filled: true } dot => $"<circle class=\"dot\"{data} cx=\"{N(dot.Centre.X)}\" cy=\"{N(dot.Centre.Y)}\" r=\"{N(dot.Along)}\">{title}</circle>\n",
                Block block => $"<rect class=\"block\" x=\"{N(block.Area.Left)}\" y=\"{N(block.Area.Top)}\" width=\"{N(block.Area.Width)}\" height=\"{N(block.Area.Height)}\"/>\n",
                Patch patch => $"<path{data} stroke=\"none\" fill=\"{Escape(patch.Hex)}\" d=\"M{string.Join('L', patch.Corners.Select(P))}Z\"/>\n",
                Words words => Text(words, data),
                _ => "",
            });
    }

    private static string Text(Words words, string data)
    {
        string anchor = words.Anchor switch { Anchor.Start => "start", Anchor.Middle => "middle", _ => "end" };
        string ink = words.Ink is null ? "" : $" style=\"fill:{Escape(words.Ink)};stroke:none\"";
        return $"<text{data} x=\"{N(words.At.X)}\" y=\"{N(words.At.Y + (words.Size * 0.35))}\" font-size=\"{N(words.Size)}\" text-anchor=\"{anchor}\"{ink}>{Escape(words.Text)}</text>\n";
    }

    private static string P(Point point) => N(point.X) + " " + N(point.Y);

    private static string N(double stitches)
    {
        string number = (stitches * Scale).ToString("0.#", CultureInfo.InvariantCulture);
        return number == "-0" ? "0" : number;
    }

    /// <summary>Markup signs become entities; control characters, which XML can't hold, are left out.</summary>
    private static string Escape(string words) =>
        WebUtility.HtmlEncode(string.Concat(words.Where(letter => !char.IsControl(letter) || letter is '\n' or '\t')));
}
