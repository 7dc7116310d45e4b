using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Text;
using PatternStudio.Publishing;

namespace PatternStudio.Web.Features.Designs;

/// <summary>A chart as small as a stamp: the fabric alone, without key, captions and row numbers.</summary>
internal static class ChartThumbnail
{
    /// <summary>More symbols than this are a grey spot at that size: rows are drawn as blocks then.</summary>
    private static readonly ChartStyle Style = new() { MostCells = 2_000 };

    /// <summary>The drawing as SVG; null where there is nothing to draw.</summary>
    public static string? Draw(string text)
    {
        Drawing chart = Chart.Draw(PatternCheck.Check(text), 0, Style);
        DrawnRow[] rows = [.. chart.Rows.Select(WithoutWords)];
        Box bounds = rows.SelectMany(ShapesOf).Aggregate(Box.Empty, (box, shape) => box.With(shape.Bounds));
        return rows.Any(row => ShapesOf(row).Any())
            ? SvgPainter.Paint(chart with { Bounds = bounds, Rows = rows.ToEquatableArray(), Key = [], Tones = [], Notes = [] })
            : null;
    }

    private static DrawnRow WithoutWords(DrawnRow row) =>
        row with { Marks = row.Marks.Where(mark => mark is not Words && row.Tone != RowTone.Gap).ToEquatableArray() };

    private static IEnumerable<Shape> ShapesOf(DrawnRow row) => row.Symbols.SelectMany(symbol => symbol.Shapes).Concat(row.Marks);
}
