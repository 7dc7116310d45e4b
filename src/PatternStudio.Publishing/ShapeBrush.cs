using PatternStudio.Craft.Charting;
using SkiaSharp;

namespace PatternStudio.Publishing;

/// <summary>Paints shapes on a canvas whose unit is one stitch width.</summary>
internal sealed class ShapeBrush(SKCanvas canvas) : IDisposable
{
    private const string Font = "PatternStudio.Publishing.Fonts.atkinson-hyperlegible-next-regular.ttf";

    /// <summary>Text is measured large and painted small: letters this high have exact widths.</summary>
    private const float Measured = 64;
    private const float Baseline = 0.35f;
    private const float Halo = 0.3f;

    private readonly SKTypeface face = SKTypeface.FromStream(typeof(ShapeBrush).Assembly.GetManifestResourceStream(Font)!);
    private readonly SKPaint line = new() { IsAntialias = true, Style = SKPaintStyle.Stroke, StrokeCap = SKStrokeCap.Round, StrokeJoin = SKStrokeJoin.Round };
    private readonly SKPaint fill = new() { IsAntialias = true, Style = SKPaintStyle.Fill };

    public void Paint(IEnumerable<Shape> shapes, PngStyle style)
    {
        line.StrokeWidth = style.Weight;
        line.PathEffect = style.Dashed ? SKPathEffect.CreateDash([0.4f, 0.3f], 0) : null;
        foreach (Shape shape in shapes) Paint(shape, style.Ink);
    }

    public void Dispose()
    {
        line.Dispose();
        fill.Dispose();
        face.Dispose();
    }

    private void Paint(Shape shape, SKColor ink)
    {
        line.Color = fill.Color = ink;
        switch (shape)
        {
            case Line straight: canvas.DrawLine(At(straight.From), At(straight.To), line); break;
            case Curve curve: Bent(curve); break;
            case Oval oval: Round(oval); break;
            case Block block: Filled(block, ink); break;
            case Patch patch: Coloured(patch); break;
            case Words words: Written(words, ink); break;
        }
    }

    private void Bent(Curve curve)
    {
        using var path = new SKPathBuilder();
        path.MoveTo(At(curve.From));
        path.QuadTo(At(curve.Toward), At(curve.To));
        using SKPath bent = path.Detach();
        canvas.DrawPath(bent, line);
    }

    private void Round(Oval oval)
    {
        canvas.Save();
        canvas.RotateDegrees((float)oval.Turn, (float)oval.Centre.X, (float)oval.Centre.Y);
        canvas.DrawOval(At(oval.Centre), new SKSize((float)oval.Along, (float)oval.Across), oval.Filled ? fill : line);
        canvas.Restore();
    }

    private void Filled(Block block, SKColor ink)
    {
        fill.Color = ink.WithAlpha(0x66);
        canvas.DrawRect(new SKRect((float)block.Area.Left, (float)block.Area.Top, (float)block.Area.Right, (float)block.Area.Bottom), fill);
    }

    private void Coloured(Patch patch)
    {
        fill.Color = SKColor.TryParse(patch.Hex, out SKColor colour) ? colour : SKColors.White;
        using var path = new SKPathBuilder();
        path.AddPoly([.. patch.Corners.Select(At)], true);
        using SKPath area = path.Detach();
        canvas.DrawPath(area, fill);
    }

    /// <summary>Letters with a white rim, so that a number on a stitch can be read.</summary>
    private void Written(Words words, SKColor ink)
    {
        using var font = new SKFont(face, Measured) { Subpixel = true, Hinting = SKFontHinting.None, LinearMetrics = true };
        float shrink = (float)words.Size / Measured;
        float width = font.MeasureText(words.Text) * shrink;
        float left = words.Anchor switch { Anchor.Start => 0, Anchor.Middle => width / 2, _ => width };
        canvas.Save();
        canvas.Translate((float)words.At.X - left, (float)(words.At.Y + (words.Size * Baseline)));
        canvas.Scale(shrink);
        if (words.Ink is null)
        {
            using var rim = new SKPaint { IsAntialias = true, Style = SKPaintStyle.Stroke, Color = SKColors.White, StrokeWidth = Halo / shrink, StrokeJoin = SKStrokeJoin.Round };
            canvas.DrawText(words.Text, 0, 0, SKTextAlign.Left, font, rim);
        }
        fill.Color = words.Ink is { } own && SKColor.TryParse(own, out SKColor told) ? told : ink;
        canvas.DrawText(words.Text, 0, 0, SKTextAlign.Left, font, fill);
        canvas.Restore();
    }

    private static SKPoint At(Point at) => new((float)at.X, (float)at.Y);
}
