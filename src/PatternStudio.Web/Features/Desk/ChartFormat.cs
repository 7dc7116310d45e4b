using System.Text;
using PatternStudio.Craft.Charting;
using PatternStudio.Publishing;

namespace PatternStudio.Web.Features.Desk;

/// <summary>As what a chart may be taken along.</summary>
public enum ChartFormat { Svg, Png, Pdf }

/// <summary>Makes files of a chart.</summary>
public static class ChartFormats
{
    public static byte[] Paint(Drawing drawing, ChartFormat format) => format switch
    {
        ChartFormat.Svg => Encoding.UTF8.GetBytes(SvgPainter.Paint(drawing)),
        ChartFormat.Png => PngPainter.Paint(drawing),
        _ => PdfPainter.Paint(drawing),
    };

    public static string NameOf(string title, ChartFormat format) => $"{title}.{format.ToString().ToLowerInvariant()}";

    public static string TypeOf(ChartFormat format) => format switch
    {
        ChartFormat.Svg => "image/svg+xml",
        ChartFormat.Png => "image/png",
        _ => "application/pdf",
    };
}
