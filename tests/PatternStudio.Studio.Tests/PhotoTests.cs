using PatternStudio.Studio.Materials;
using SkiaSharp;

namespace PatternStudio.Studio.Tests;

public sealed class PhotoTests
{
    [Fact]
    public void A_large_photo_is_scaled_down_and_never_up()
    {
        using SKBitmap large = Drawn(Read(Jpeg(4_000, 3_000)).Picture), little = Drawn(Read(Jpeg(300, 200)).Picture), small = Drawn(Read(Jpeg(4_000, 3_000)).Small);

        Assert.Equal((1_600, 1_200), (large.Width, large.Height));
        Assert.Equal((300, 200), (little.Width, little.Height));
        Assert.Equal((640, 480), (small.Width, small.Height));
    }

    /// <summary>
    /// Exif 2.3, tag 0x0112: which side of the scene row 0 and column 0 of the stored picture show. The stored picture is red in its first quarter (top left) and
    /// white elsewhere; where red belongs in the upright one follows from the table of the standard.
    /// </summary>
    [Theory]
    [InlineData(1, 60, 40, 0, 0)] // row 0 top, column 0 left: as it is
    [InlineData(2, 60, 40, 1, 0)] // top, right
    [InlineData(3, 60, 40, 1, 1)] // bottom, right
    [InlineData(4, 60, 40, 0, 1)] // bottom, left
    [InlineData(5, 40, 60, 0, 0)] // left, top
    [InlineData(6, 40, 60, 1, 0)] // right, top: the phone held upright
    [InlineData(7, 40, 60, 1, 1)] // right, bottom
    [InlineData(8, 40, 60, 0, 1)] // left, bottom
    public void A_photo_is_turned_upright(byte orientation, int width, int height, int right, int below)
    {
        using SKBitmap upright = Drawn(Read(Jpeg(60, 40, orientation)).Picture);

        Assert.Equal((width, height), (upright.Width, upright.Height));
        for (int x = 0; x < 2; x++)
            for (int y = 0; y < 2; y++)
                Assert.Equal((x, y) == (right, below), upright.GetPixel((width / 4) + (x * width / 2), (height / 4) + (y * height / 2)).Green < 128);
    }

    [Fact]
    public void What_the_camera_noted_is_left_behind()
    {
        byte[] sent = Jpeg(60, 40, 6);
        Assert.True(Holds(sent, "Exif") && Holds(sent, "SECRETPLACE"));

        PreparedPhoto kept = Read(sent);

        Assert.False(Holds(kept.Picture, "Exif") || Holds(kept.Picture, "SECRETPLACE") || Holds(kept.Small, "SECRETPLACE"));
    }

    public static TheoryData<byte[], string> NoPhotos => new()
    {
        { [], "This file is no photo" },
        { "<svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>"u8.ToArray(), "This file is no photo" },
        { "GIF89a"u8.ToArray(), "This file is no photo" },
        { Jpeg(400, 300)[..300], "" },
        { new byte[PhotoReader.MostBytes + 1], "The photo has more than 25 MB" },
    };

    [Theory]
    [MemberData(nameof(NoPhotos), DisableDiscoveryEnumeration = true)]
    public void What_is_no_photo_is_refused_in_words(byte[] file, string beginning)
    {
        Outcome<PreparedPhoto> read = PhotoReader.Read(file);

        Assert.False(read.Succeeded);
        Assert.StartsWith(beginning, Assert.Single(read.Messages).Message, StringComparison.Ordinal);
    }

    /// <summary>A PNG header that claims 60 000 × 60 000 pixels: 14 GB if somebody drew it.</summary>
    [Fact]
    public void A_small_file_that_claims_to_be_huge_is_not_drawn()
    {
        byte[] bomb = Png(8, 8);
        bomb[18] = bomb[22] = 0xEA; // width and height are big-endian at 16 and 20: 0x0000EA08
        Assert.False(PhotoReader.Read(bomb).Succeeded);
    }

    /// <summary>A phone of our days takes 8000 × 6000 pixels: that is scaled while it is read. Of a PNG of 7000 × 6000 every pixel would have to be kept: 42 million, where 40 are drawn.</summary>
    [Fact]
    public void A_phones_largest_photo_is_taken_and_a_drawing_as_large_is_refused_in_words()
    {
        using (SKBitmap photo = Drawn(Read(Jpeg(8_000, 6_000)).Picture)) Assert.Equal(PreparedPhoto.LongestSide, photo.Width);

        Assert.Equal(
            "The photo is too large to be drawn here. Scale it down to 6000 pixels or fewer along its longer side.",
            Assert.Single(PhotoReader.Read(Png(7_000, 6_000)).Messages).Message);
    }

    [Fact]
    public async Task A_swatchs_photo_is_kept_replaced_and_removed_with_it_and_seen_by_its_studio_only()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync(), stranger = await studio.NewCallerAsync("Drift");
        Guid design = await studio.NewDesignAsync(caller);
        PreparedPhoto first = Read(Jpeg(60, 40)), second = Read(Jpeg(80, 80));
        Guid swatch = (await studio.Swatches.AddAsync(caller, design, Texts.Swatch, first)).Value;
        Guid shown = Assert.Single(await studio.Swatches.ListAsync(caller, design)).PhotoId!.Value;

        Assert.Equal(first.Picture, await studio.Photos.FindAsync(caller, shown, small: false));
        Assert.Equal(first.Small, await studio.Photos.FindAsync(caller, shown, small: true));
        Assert.Null(await studio.Photos.FindAsync(stranger, shown, small: false));

        Assert.True((await studio.Swatches.ChangeAsync(caller, swatch, Texts.Swatch, Texts.Swatch, new PhotoChange(second))).Succeeded);
        Guid replaced = Assert.Single(await studio.Swatches.ListAsync(caller, design)).PhotoId!.Value;
        Assert.Equal(second.Picture, await studio.Photos.FindAsync(caller, replaced, small: false));
        Assert.Null(await studio.Photos.FindAsync(caller, shown, small: false));

        await studio.Swatches.ChangeAsync(caller, swatch, Texts.Swatch with { Note = "Other." });
        Assert.Equal(replaced, Assert.Single(await studio.Swatches.ListAsync(caller, design)).PhotoId);
        Assert.True((await studio.Swatches.RemoveAsync(caller, swatch)).Succeeded);
        Assert.Null(await studio.Photos.FindAsync(caller, replaced, small: false));
    }

    private static PreparedPhoto Read(byte[] file)
    {
        Outcome<PreparedPhoto> read = PhotoReader.Read(file);
        Assert.True(read.Succeeded, read.ToString());
        return read.Value!;
    }

    private static SKBitmap Drawn(byte[] jpeg) => SKBitmap.Decode(jpeg);

    private static bool Holds(byte[] file, string words) => file.AsSpan().IndexOf(System.Text.Encoding.ASCII.GetBytes(words)) >= 0;

    private static byte[] Png(int width, int height) => Picture(width, height, SKEncodedImageFormat.Png);

    /// <summary>White, red in the first quarter.</summary>
    private static byte[] Picture(int width, int height, SKEncodedImageFormat format)
    {
        using var bitmap = new SKBitmap(width, height);
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(SKColors.White);
        using var red = new SKPaint { Color = SKColors.Red };
        canvas.DrawRect(0, 0, width / 2f, height / 2f, red);
        canvas.Flush();
        using SKData data = bitmap.Encode(format, 95);
        return data.ToArray();
    }

    /// <summary>A JPEG with an Exif part as cameras write it: a TIFF directory with the orientation and the words of a place.</summary>
    internal static byte[] Jpeg(int width, int height, byte orientation = 1)
    {
        byte[] plain = Picture(width, height, SKEncodedImageFormat.Jpeg);
        byte[] tiff =
        [
            .. "Exif\0\0"u8, .. "MM\0*"u8, 0, 0, 0, 8, // big-endian, first directory at 8
            0, 2, // two entries: orientation (0x0112, short) and description (0x010E, text of 12 characters at 38)
            0x01, 0x0E, 0, 2, 0, 0, 0, 12, 0, 0, 0, 38,
            0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0,
            0, 0, 0, 0,
            .. "SECRETPLACE\0"u8,
        ];
        int length = tiff.Length + 2;
        return [0xFF, 0xD8, 0xFF, 0xE1, (byte)(length >> 8), (byte)length, .. tiff, .. plain[2..]];
    }
}
