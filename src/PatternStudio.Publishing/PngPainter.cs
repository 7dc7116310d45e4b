using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Text;
using SkiaSharp;

namespace PatternStudio.Publishing;

/// <summary>Paints a drawing as PNG: the same picture as the SVG, for places that take no drawings.</summary>
public static class PngPainter
{
    /// <summary>No picture is wider or higher than this; larger charts are painted smaller.</summary>
    private const int MostPixels = 12_000;

    /// <summary>Nor has it more pixels than this in all: each takes 4 bytes while it is painted.</summary>
    private const double MostInAll = 48e6;

    /// <summary>Paints a chart with its key beneath it on white.</summary>
    /// <param name="drawing">The chart.</param>
    /// <param name="stitchPixels">Width of one stitch in pixels; above 0. Less where the picture would be larger than 12 000 pixels either way, or 48 million in all.</param>
    /// <returns>A PNG file.</returns>
    public static byte[] Paint(Drawing drawing, double stitchPixels = 24)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(stitchPixels);
        KeyLayout key = KeyLayout.Under(drawing);
        double scale = Math.Min(stitchPixels, MostPixels / Math.Max(1, Math.Max(key.Bounds.Width, key.Bounds.Height)));
        scale = Math.Min(scale, Math.Sqrt(MostInAll / Math.Max(1, key.Bounds.Width * key.Bounds.Height)));
        var size = new SKImageInfo(Math.Max(1, (int)Math.Ceiling(key.Bounds.Width * scale)), Math.Max(1, (int)Math.Ceiling(key.Bounds.Height * scale)));
        using var bitmap = new SKBitmap(size);
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(SKColors.White);
        canvas.Scale((float)scale);
        canvas.Translate((float)-key.Bounds.Left, (float)-key.Bounds.Top);
        using var brush = new ShapeBrush(canvas);
        foreach (DrawnRow row in drawing.Rows)
            brush.Paint(row.Symbols.SelectMany(symbol => symbol.Shapes).Concat(row.Marks), PngStyle.Of(row.Tone));
        brush.Paint(key.Symbols, PngStyle.Key);
        foreach ((RowTone tone, EquatableArray<Shape> shapes) in key.Tones) brush.Paint(shapes, PngStyle.Of(tone));
        using SKData data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }
}
