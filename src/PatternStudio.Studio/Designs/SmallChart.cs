using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Text;
using PatternStudio.Publishing;

namespace PatternStudio.Studio.Designs;

/// <summary>A chart as small as a stamp: the fabric alone, without key, captions and row numbers.</summary>
public static class SmallChart
{
    /// <summary>Pixels of the longer side, for screens with two pixels to a point.</summary>
    private const double Side = 440;

    /// <summary>More symbols than this are a grey spot at that size: rows are drawn as blocks then.</summary>
    private static readonly ChartStyle Style = new() { MostCells = 1_600, TellsFlatness = false };

    /// <summary>The chart of the first size as a PNG on white; null where there is nothing to draw.</summary>
    public static byte[]? Draw(CheckedPattern pattern)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        if (pattern.Sizes[0].Fabric.IsEmpty) return null;
        Drawing chart = Chart.Draw(pattern, 0, Style);
        DrawnRow[] rows = [.. chart.Rows.Select(WithoutWords)];
        Shape[] shapes = [.. rows.SelectMany(ShapesOf)];
        if (shapes.Length == 0) return null;
        Box bounds = shapes.Aggregate(Box.Empty, (box, shape) => box.With(shape.Bounds));
        Drawing bare = chart with { Bounds = bounds, Rows = rows.ToEquatableArray(), Key = [], Tones = [], Notes = [] };
        return PngPainter.Paint(bare, Math.Min(28, Side / Math.Max(1, Math.Max(bounds.Width, bounds.Height))));
    }

    private static DrawnRow WithoutWords(DrawnRow row) =>
        row with { Marks = row.Marks.Where(mark => mark is not Words && row.Tone != RowTone.Gap).ToEquatableArray() };

    private static IEnumerable<Shape> ShapesOf(DrawnRow row) => row.Symbols.SelectMany(symbol => symbol.Shapes).Concat(row.Marks);
}
