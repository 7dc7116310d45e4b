using SkiaSharp;

namespace PatternStudio.Studio.Materials;

/// <summary>
/// Reads a photo that somebody sent. What it is is told by its content, never by its name; it is drawn anew, so that place, time and whatever
/// else a camera writes into a file stay behind.
/// </summary>
public static class PhotoReader
{
    /// <summary>Largest file taken, in bytes: a phone's photo has 2 to 12 million.</summary>
    public const int MostBytes = 25 * 1024 * 1024;

    /// <summary>Most pixels drawn: a file of a few bytes may claim to be a picture as large as a house, and each pixel takes four bytes.</summary>
    private const long MostPixels = 40_000_000;

    private const int Quality = 84;
    private static readonly SKEncodedImageFormat[] Known = [SKEncodedImageFormat.Jpeg, SKEncodedImageFormat.Png, SKEncodedImageFormat.Webp];

    /// <summary>The field that messages name.</summary>
    public const string Field = "Photo";

    /// <summary>Reads a JPEG, PNG or WebP picture.</summary>
    public static Outcome<PreparedPhoto> Read(byte[] file)
    {
        ArgumentNullException.ThrowIfNull(file);
        if (file.Length > MostBytes)
            return Outcome.Refused(Field, $"The photo has more than {MostBytes / 1024 / 1024} MB. Send a smaller one: the camera app can scale it down.");
        using SKData data = SKData.CreateCopy(file);
        using SKCodec? codec = SKCodec.Create(data);
        if (codec is null || !Known.Contains(codec.EncodedFormat))
            return Outcome.Refused(Field, "This file is no photo that can be read here. Send a JPEG, PNG or WebP picture; a phone makes one when you take or share a photo as 'JPEG' or 'most compatible'.");
        SKSizeI size = DecodedSize(codec);
        if ((long)size.Width * size.Height > MostPixels)
            return Outcome.Refused(Field, "The photo is too large to be drawn here. Scale it down to 6000 pixels or fewer along its longer side.");
        using SKBitmap? drawn = Draw(codec, size);
        return drawn is null
            ? Outcome.Refused(Field, "The photo is damaged: it ends too early or can't be drawn. Send it again, or take another.")
            : new PreparedPhoto(Scaled(drawn, codec.EncodedOrigin, PreparedPhoto.LongestSide), Scaled(drawn, codec.EncodedOrigin, PreparedPhoto.SmallSide));
    }

    /// <summary>A camera's large JPEG is decoded at some eighths of its size, the fewest that still are large enough: quicker, and a fraction of the memory.</summary>
    private static SKSizeI DecodedSize(SKCodec codec)
    {
        for (int eighths = 1; eighths < 8; eighths++)
            if (codec.GetScaledDimensions(eighths / 8f) is var size && Math.Max(size.Width, size.Height) >= PreparedPhoto.LongestSide)
                return size;
        return codec.Info.Size;
    }

    private static SKBitmap? Draw(SKCodec codec, SKSizeI size)
    {
        var bitmap = new SKBitmap(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Premul));
        if (codec.GetPixels(bitmap.Info, bitmap.GetPixels()) == SKCodecResult.Success) return bitmap;
        bitmap.Dispose();
        return null;
    }

    /// <summary>On white, since a JPEG knows no transparency; upright, since the turning that the camera noted is left behind with the rest.</summary>
    private static byte[] Scaled(SKBitmap drawn, SKEncodedOrigin origin, int longest)
    {
        float scale = Math.Min(1f, (float)longest / Math.Max(drawn.Width, drawn.Height));
        (int width, int height) = (Math.Max(1, (int)Math.Round(drawn.Width * scale)), Math.Max(1, (int)Math.Round(drawn.Height * scale)));
        bool onItsSide = origin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;
        using SKSurface surface = SKSurface.Create(new SKImageInfo(onItsSide ? height : width, onItsSide ? width : height));
        surface.Canvas.Clear(SKColors.White);
        surface.Canvas.Concat(Upright(origin, width, height));
        using SKImage image = SKImage.FromBitmap(drawn);
        surface.Canvas.DrawImage(image, new SKRect(0, 0, width, height), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        using SKImage upright = surface.Snapshot();
        using SKData jpeg = upright.Encode(SKEncodedImageFormat.Jpeg, Quality);
        return jpeg.ToArray();
    }

    /// <summary>The eight orientations of Exif 2.3, tag 0x0112: where row 0 and column 0 of the stored picture belong.</summary>
    private static SKMatrix Upright(SKEncodedOrigin origin, float width, float height) => origin switch
    {
        SKEncodedOrigin.TopRight => new(-1, 0, width, 0, 1, 0, 0, 0, 1),
        SKEncodedOrigin.BottomRight => new(-1, 0, width, 0, -1, height, 0, 0, 1),
        SKEncodedOrigin.BottomLeft => new(1, 0, 0, 0, -1, height, 0, 0, 1),
        SKEncodedOrigin.LeftTop => new(0, 1, 0, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightTop => new(0, -1, height, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightBottom => new(0, -1, height, -1, 0, width, 0, 0, 1),
        SKEncodedOrigin.LeftBottom => new(0, 1, 0, -1, 0, width, 0, 0, 1),
        _ => SKMatrix.Identity,
    };
}
