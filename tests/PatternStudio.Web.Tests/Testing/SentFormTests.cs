using System.Net;
using System.Text.RegularExpressions;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Rounds;
using SkiaSharp;

namespace PatternStudio.Web.Tests.Testing;

/// <summary>What comes with a form besides numbers: photos that are none, sizes and versions that there are not.</summary>
public sealed partial class SentFormTests(OpenTests program) : IClassFixture<OpenTests>
{
    /// <summary>Only the content counts: 'MZ' begins a program (PE format), whatever its name says.</summary>
    [Theory]
    [InlineData("program", "This file is no photo that can be read here.")]
    [InlineData("drawing", "This file is no photo that can be read here.")]
    [InlineData("broken", "The photo is damaged")]
    public async Task What_is_no_photo_is_said_beside_it_and_nothing_is_lost(string what, string message)
    {
        byte[] file = what switch
        {
            "program" => [.. "MZ"u8, .. new byte[4_000]],
            "drawing" => "<svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>"u8.ToArray(),
            _ => Jpeg(400, 300)[..^2_000],
        };
        MadeLink link = await program.LinkAsync();
        HttpResponseMessage answer = await SendAsync(link.Token, ("Photo", file), ("Remarks[0].Photo", Jpeg(60, 40)));
        string page = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains($"<span class=\"wrong\" id=\"Photo-wrong\">{message}", page);
        Assert.Contains("value=\"17.5\"", page);
        Assert.Contains(">kept words</textarea>", page);
        // The good photo is carried along.
        Assert.Matches("name=\"Remarks\\[0\\].Photo.Kept\" value=\"[^\"]{100,}\"", page);
        Assert.Empty((await program.Get<TestersDoor>().OpenAsync(link.Token))!.Reports);
    }

    /// <summary>8000 × 5000 = 40 million pixels.</summary>
    [Fact]
    public async Task A_photo_of_a_phone_with_40_megapixels_is_taken_and_scaled_down()
    {
        MadeLink link = await program.LinkAsync("Bea");
        HttpResponseMessage answer = await SendAsync(link.Token, ("Photo", Jpeg(8_000, 5_000)));
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Guid photo = Assert.Single((await program.Get<TestersDoor>().OpenAsync(link.Token))!.Reports).PhotoId!.Value;
        byte[] kept = (await program.Get<PatternStudio.Studio.Materials.Photos>().FindAsync(program.Designer, photo, small: false))!;
        using SKBitmap drawn = SKBitmap.Decode(kept);
        Assert.InRange(drawn.Width, 1_000, 2_400);
        Assert.Equal(1.6, (double)drawn.Width / drawn.Height, 2);
    }

    [Fact]
    public async Task A_size_that_there_is_not_is_said_beside_the_field()
    {
        MadeLink link = await LinkAsync("""
            # Cockle Band
            Sizes: Small (Medium, Large)

            Ch 17 (19, 21).
            Row 1: Sc in 2nd ch from hook and in each ch across. 16 (18, 20) sc
            """);
        HttpClient stranger = program.Stranger();
        Assert.Matches("<option value[^>]*>Choose your size</option>", await stranger.GetStringAsync($"/t/{link.Token}/report"));
        foreach ((string wrong, string message) in ((string, string)[])[("", ""), ("large", ""), ("7", " Version 1 has Small, Medium, Large.")])
        {
            HttpResponseMessage answer = await SendAsync(link.Token, wrong);
            Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
            Assert.Contains($"<span class=\"wrong\" id=\"Size-wrong\">Choose the size that you made.{message}</span>", await answer.Content.ReadAsStringAsync());
        }

        Assert.Equal(HttpStatusCode.Redirect, (await SendAsync(link.Token, "2")).StatusCode);
    }

    /// <summary>By the link for all only her device knows with which version she began; where it forgets, she says so.</summary>
    [Fact]
    public async Task What_changed_since_she_began_is_told_row_by_row_and_her_report_stays_with_that_version()
    {
        Guid design = (await program.Get<DesignDesk>().CreateAsync(program.Designer, "Cockle Shawl", OpenTests.Text)).Value;
        DateOnly today = DateOnly.FromDateTime(DateTime.UtcNow);
        var plan = new RoundPlan(1, today, today.AddDays(7), 5, [0], AskedFor.Everything, true, "");
        Guid round = (await program.Get<TestRounds>().BeginAsync(program.Designer, design, plan)).Value;
        MadeLink all = (await program.Get<ShareLinks>().MakeForAllAsync(program.Designer, round, 5)).Value!;
        HttpClient ada = program.Stranger(), bea = program.Stranger();
        Assert.DoesNotContain("Changed since", await ada.GetStringAsync($"/t/{all.Token}"));

        foreach (int version in (int[])[2, 3])
        {
            await program.Get<DesignDesk>().SaveAsync(program.Designer, design, $"{OpenTests.Text}\nFasten off. Weave in {version} ends.", version - 1);
            await program.Get<TestRounds>().ChangeAsync(program.Designer, round, plan with { Version = version });
        }

        string hers = await ada.GetStringAsync($"/t/{all.Token}");
        Assert.Contains("Changed since version 1", hers);
        Assert.Contains("<ins>Fasten off. Weave in 3 ends.</ins>", hers);
        Assert.DoesNotContain("Weave in 2 ends", hers);
        Assert.DoesNotContain("Changed since", await bea.GetStringAsync($"/t/{all.Token}"));
        Assert.Contains("Weave in 2 ends", await bea.GetStringAsync($"/t/{all.Token}?from=2"));
        string form = await ada.GetStringAsync($"/t/{all.Token}/report");
        Assert.Contains("<option value=\"1\" selected>Version 1</option>", form);
        Assert.Contains("<option value=\"3\">Version 3, the newest</option>", form);
    }

    private async Task<MadeLink> LinkAsync(string text)
    {
        Guid design = (await program.Get<DesignDesk>().CreateAsync(program.Designer, "Cockle Band", text)).Value;
        DateOnly today = DateOnly.FromDateTime(DateTime.UtcNow);
        Guid round = (await program.Get<TestRounds>().BeginAsync(program.Designer, design, new(1, today, today.AddDays(7), 5, [0], AskedFor.Everything, true, ""))).Value;
        return (await program.Get<ShareLinks>().MakeForAsync(program.Designer, round, "Cleo", null)).Value!;
    }

    private Task<HttpResponseMessage> SendAsync(string token, params (string Name, byte[] File)[] files) => SendAsync(token, null, files);

    /// <summary>As a browser sends the form: with what it hides, and files under names that promise photos.</summary>
    private async Task<HttpResponseMessage> SendAsync(string token, string? size, params (string Name, byte[] File)[] files)
    {
        HttpClient stranger = program.Stranger();
        using var content = new MultipartFormDataContent { { new StringContent("17.5"), "Stitches" }, { new StringContent("10 cm"), "OverCm" }, { new StringContent("kept words"), "Words" } };
        foreach (Match hidden in Hidden().Matches(await stranger.GetStringAsync($"/t/{token}/report")))
            content.Add(new StringContent(WebUtility.HtmlDecode(hidden.Groups[2].Value)), hidden.Groups[1].Value);
        if (size is not null) content.Add(new StringContent(size), "Size");
        foreach ((string name, byte[] file) in files) content.Add(new ByteArrayContent(file), name, "photo.jpg");
        return await stranger.PostAsync($"/t/{token}/report", content);
    }

    private static byte[] Jpeg(int width, int height)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Gray8, SKAlphaType.Opaque));
        for (int y = 0; y < height; y += 8)
            for (int x = 0; x < width; x += 8)
                bitmap.SetPixel(x, y, (x * 31 + y * 17) % 255 > 128 ? SKColors.White : SKColors.Black);
        using SKData jpeg = bitmap.Encode(SKEncodedImageFormat.Jpeg, 80);
        return jpeg.ToArray();
    }

    [GeneratedRegex("<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\"")]
    private static partial Regex Hidden();
}
