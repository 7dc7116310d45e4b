using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Tests.Charting;
using SkiaSharp;

namespace PatternStudio.Publishing.Tests;

public sealed class PngPainterTests
{
    /// <summary>Twice as many pixels for a stitch make a picture twice as wide and high.</summary>
    [Fact]
    public void The_size_follows_the_width_of_a_stitch()
    {
        Drawing drawing = Chart.Draw(Fabrics.Straight("sc", 6, 3).Pattern());
        using SKBitmap small = SKBitmap.Decode(PngPainter.Paint(drawing, 10));
        using SKBitmap large = SKBitmap.Decode(PngPainter.Paint(drawing, 20));
        Assert.InRange(large.Width, (2 * small.Width) - 2, 2 * small.Width);
        Assert.InRange(large.Height, (2 * small.Height) - 2, 2 * small.Height);
    }

    [Fact]
    public void A_chart_too_large_for_a_picture_is_painted_smaller()
    {
        using SKBitmap picture = SKBitmap.Decode(PngPainter.Paint(Chart.Draw(Fabrics.Straight("sc", 300, 1).Pattern()), 200));
        Assert.Equal(12_000, picture.Width);
    }

    /// <summary>The dark blue of right-side rows and the red of wrong-side rows are there, on white.</summary>
    [Fact]
    public void Rows_have_their_colours()
    {
        using SKBitmap picture = SKBitmap.Decode(PngPainter.Paint(Chart.Draw(Fabrics.Straight("sc", 6, 3).Pattern())));
        HashSet<SKColor> colours = [.. picture.Pixels];
        Assert.Contains(new SKColor(0x1b, 0x3a, 0x57), colours);
        Assert.Contains(new SKColor(0xa8, 0x44, 0x2a), colours);
        Assert.Equal(SKColors.White, picture.GetPixel(0, 0));
    }
}
