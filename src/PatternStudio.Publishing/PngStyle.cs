using PatternStudio.Craft.Charting;
using SkiaSharp;

namespace PatternStudio.Publishing;

/// <summary>Colour and line weight of a tone, as in <see cref="SvgStyle"/>.</summary>
/// <param name="Ink">Of lines and letters.</param>
/// <param name="Weight">In stitch widths.</param>
/// <param name="Dashed">True for a gap.</param>
internal readonly record struct PngStyle(SKColor Ink, float Weight, bool Dashed)
{
    public static readonly PngStyle Key = new(new SKColor(0x22, 0x22, 0x22), 0.1f, false);

    public static PngStyle Of(RowTone tone) => tone switch
    {
        RowTone.First => new(new SKColor(0x1b, 0x3a, 0x57), 0.13f, false),
        RowTone.Second => new(new SKColor(0xa8, 0x44, 0x2a), 0.08f, false),
        RowTone.Gap => new(new SKColor(0x6b, 0x59, 0x00), 0.1f, true),
        _ => new(new SKColor(0x4a, 0x4a, 0x4a), 0.1f, false),
    };
}
