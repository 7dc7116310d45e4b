using System.Xml.Linq;
using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Tests.Charting;

namespace PatternStudio.Publishing.Tests;

public sealed class SvgPainterTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static XElement Paint(FabricBuilder fabric, string title = "Trial") =>
        XElement.Parse(SvgPainter.Paint(Chart.Draw(fabric.Pattern(), 0, new ChartStyle { Title = title })));

    [Fact]
    public void The_picture_has_a_title_and_a_description_that_it_is_labelled_by()
    {
        XElement svg = Paint(Fabrics.Straight("sc", 3, 2));
        Assert.Equal("Trial", svg.Element(Svg + "title")!.Value);
        Assert.Contains("Row 2: 3 stitches.", svg.Element(Svg + "desc")!.Value, StringComparison.Ordinal);
        Assert.Equal("img", svg.Attribute("role")!.Value);
    }

    [Fact]
    public void Each_row_is_a_group_with_an_id_a_label_and_the_class_of_its_tone()
    {
        XElement row = Paint(Fabrics.Straight("sc", 3, 2)).Elements(Svg + "g").Single(group => group.Attribute("id")?.Value == "chart-p0r2");
        Assert.Equal(("Row 2", "tone-second"), (row.Attribute("aria-label")!.Value, row.Attribute("class")!.Value));
        Assert.Equal(["0", "1", "2", "3"], row.Elements(Svg + "path").Select(path => path.Attribute("data-cell")?.Value).OfType<string>());
        Assert.Equal("2", row.Element(Svg + "text")!.Value);
    }

    [Fact]
    public void Signs_of_markup_in_a_title_are_words()
    {
        Assert.Equal("A & B <c> \"d\"", Paint(Fabrics.Straight("sc", 2, 1), "A & B <c> \"d\"").Element(Svg + "title")!.Value);
        Assert.Equal("bell", Paint(Fabrics.Straight("sc", 2, 1), "be\u0007ll").Element(Svg + "title")!.Value);
    }

    [Fact]
    public void Nothing_is_fetched_and_nothing_runs()
    {
        string svg = SvgPainter.Paint(Chart.Draw(Fabrics.Sampler().Pattern()));
        Assert.DoesNotContain("href", svg, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("url(", svg, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<script", svg, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>Every number that a painter writes lies within the view box, text by an estimate of its width.</summary>
    [Fact]
    public void The_view_box_holds_every_shape()
    {
        Drawing drawing = Chart.Draw(Fabrics.Shells(3, 5).Pattern());
        Box all = drawing.Rows.SelectMany(row => row.Symbols.SelectMany(symbol => symbol.Shapes).Concat(row.Marks)).Aggregate(Box.Empty, (box, shape) => box.With(shape.Bounds));
        Assert.True(drawing.Bounds.Left <= all.Left && drawing.Bounds.Top <= all.Top && drawing.Bounds.Right >= all.Right && drawing.Bounds.Bottom >= all.Bottom);
    }

    [Fact]
    public void The_printed_width_follows_the_width_of_a_stitch()
    {
        Drawing drawing = Chart.Draw(Fabrics.Straight("sc", 60, 2).Pattern());
        XElement four = XElement.Parse(SvgPainter.Paint(drawing, 4));
        XElement eight = XElement.Parse(SvgPainter.Paint(drawing, 8));
        Assert.Equal(2, Millimetres(eight) / Millimetres(four), 2);
    }

    private static double Millimetres(XElement svg) =>
        double.Parse(svg.Attribute("width")!.Value.Replace("mm", "", StringComparison.Ordinal), System.Globalization.CultureInfo.InvariantCulture);
}
