using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace PatternStudio.EndToEnd;

/// <summary>Swatches with photos, the cupboard, two tabs, the schedule to take along.</summary>
public sealed class MaterialsTests(OpenStudio studio) : IClassFixture<OpenStudio>
{
    [Fact]
    public async Task A_swatch_is_entered_on_a_phone_with_a_photo_and_an_odd_number_is_asked_about()
    {
        IPage page = await studio.EnterAsync(width: 390, height: 844);
        await page.OpenDesignAsync("Tidewater Dishcloth");
        await page.GetByRole(AriaRole.Tab, new() { Name = "Swatch & yarn" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Add a swatch" }).ClickAsync();
        await page.GetByLabel("Stitches", new() { Exact = true }).FillAsync("14½");
        await page.GetByLabel("Rows or rounds").FillAsync("14");
        await page.GetByLabel("over a width of").FillAsync("4 in");
        await page.GetByLabel("Hook", new() { Exact = true }).FillAsync("50");
        ILocator file = page.GetByLabel("Photo");
        await file.SetInputFilesAsync(new FilePayload { Name = "photo.jpg", MimeType = "image/jpeg", Buffer = "no photo at all"u8.ToArray() });
        await Expect(page.GetByText("This file is no photo")).ToBeVisibleAsync();
        await file.SetInputFilesAsync(new FilePayload { Name = "swatch.png", MimeType = "image/png", Buffer = await page.ScreenshotAsync() });
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Remove it" })).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the swatch" }).ClickAsync();
        await Expect(page.GetByText("Is the hook right?")).ToBeVisibleAsync();
        await page.GetByLabel("Hook", new() { Exact = true }).FillAsync("5");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the swatch" }).ClickAsync();

        // 4 in are 10.16 cm.
        ILocator swatch = page.GetByRole(AriaRole.Listitem).Filter(new() { HasText = "14.5 sts and 14 rows = 10.16 × 10 cm" });
        await Expect(swatch).ToContainTextAsync("use for this design");
        string address = (await swatch.GetByRole(AriaRole.Img).GetAttributeAsync("src"))!;
        IAPIResponse photo = await page.Context.APIRequest.GetAsync(new Uri(studio.Address, address).ToString());
        Assert.Equal(("image/jpeg", "nosniff", "default-src 'none'; sandbox; frame-ancestors 'none'"),
            (photo.Headers["content-type"], photo.Headers["x-content-type-options"], photo.Headers["content-security-policy"]));
        Assert.Equal([0xFF, 0xD8], (await photo.BodyAsync())[..2]);
        IPage stranger = await studio.KnockAsync();
        Assert.NotEqual("image/jpeg", (await stranger.Context.APIRequest.GetAsync(new Uri(studio.Address, address).ToString())).Headers["content-type"]);
    }

    [Fact]
    public async Task Yarn_of_the_cupboard_is_counted_and_set_aside_and_what_runs_out_is_told()
    {
        IPage page = await studio.EnterAsync();
        await page.OpenDesignAsync("Kelp Bed Washcloth");
        await page.GetByRole(AriaRole.Tab, new() { Name = "Swatch & yarn" }).ClickAsync();
        ILocator cupboard = page.GetByRole(AriaRole.Region, new() { Name = "From the cupboard" });
        await Expect(cupboard).ToContainTextAsync("enough");
        await Expect(cupboard).ToContainTextAsync("2 balls and 18 g");
        await Expect(page.Locator(".cost")).ToContainTextAsync("EUR");
        await cupboard.GetByLabel("Set aside", new() { Exact = true }).FillAsync("1000");
        await cupboard.GetByRole(AriaRole.Button, new() { Name = "Set aside of dye lot K 214" }).ClickAsync();
        await Expect(cupboard).ToContainTextAsync("Only 118 g of this lot are free");
        await cupboard.GetByLabel("Set aside", new() { Exact = true }).FillAsync("40");
        await cupboard.GetByRole(AriaRole.Button, new() { Name = "Set aside of dye lot K 214" }).ClickAsync();
        await Expect(cupboard).ToContainTextAsync("40 g set aside for this design");

        await page.GetByRole(AriaRole.Link, new() { Name = "Yarns" }).ClickAsync();
        await Expect(page.GetByText("40 g set aside for Kelp Bed Washcloth")).ToBeVisibleAsync();
        await Expect(page.GetByText("78 g (133 m) free")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_swatch_and_a_lot_removed_by_mistake_are_put_back()
    {
        IPage page = await studio.EnterAsync();
        await page.OpenDesignAsync("Harbour Light Coaster");
        await page.GetByRole(AriaRole.Tab, new() { Name = "Swatch & yarn" }).ClickAsync();
        ILocator vitals = page.GetByRole(AriaRole.Region, new() { Name = "Size and yarn" });
        await Expect(vitals).ToContainTextAsync("11 × 11 cm");
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove this swatch" }).ClickAsync();
        await Expect(vitals).Not.ToContainTextAsync("11 × 11 cm");
        await page.Locator(".mud-snackbar").GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(vitals).ToContainTextAsync("11 × 11 cm");

        await page.GetByRole(AriaRole.Link, new() { Name = "Yarns" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Used up: Quayside Wool S 07" }).ClickAsync();
        await Expect(page.GetByText("dye lot S 07")).ToHaveCountAsync(0);
        await page.Locator(".mud-snackbar").Filter(new() { HasText = "out of the cupboard" }).GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.GetByText("dye lot S 07")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Two_tabs_that_count_the_same_lot_lose_nothing()
    {
        IPage mira = await studio.EnterAsync();
        await mira.GetByRole(AriaRole.Link, new() { Name = "Yarns" }).ClickAsync();
        IPage jo = await mira.Context.NewPageAsync();
        await jo.GotoAsync(new Uri(studio.Address, "yarns").ToString());
        foreach (IPage page in (IPage[])[mira, jo])
            await page.GetByRole(AriaRole.Button, new() { Name = "Count it again: Quayside Wool S 11" }).ClickAsync();

        await jo.GetByLabel("Whole balls").FillAsync("4");
        await jo.GetByRole(AriaRole.Button, new() { Name = "Keep the lot" }).ClickAsync();
        await Expect(jo.GetByText("4 balls and 30 g")).ToBeVisibleAsync();
        await mira.GetByLabel("Place").FillAsync("attic");
        await mira.GetByRole(AriaRole.Button, new() { Name = "Keep the lot" }).ClickAsync();

        await Expect(mira.Locator(".theirs")).ToContainTextAsync("Whole balls: 4 (yours: 1)");
        await mira.GetByLabel("Whole balls").FillAsync("4");
        await mira.GetByRole(AriaRole.Button, new() { Name = "Keep mine instead" }).ClickAsync();
        await Expect(mira.GetByText("4 balls and 30 g")).ToBeVisibleAsync();
        await Expect(mira.GetByText("attic")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task The_schedule_of_the_words_as_they_are_is_taken_along_as_a_file()
    {
        IPage page = await studio.EnterAsync();
        await page.OpenDesignAsync("Tidewater Dishcloth");
        IDownload file = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "Download as CSV" }).ClickAsync());

        Assert.Equal("Tidewater Dishcloth.csv", file.SuggestedFilename);
        string[] lines = await File.ReadAllLinesAsync(await file.PathAsync());
        Assert.StartsWith("Piece,Section,Row,", lines[0].TrimStart('\ufeff'), StringComparison.Ordinal);
        Assert.Contains(lines, line => line.Contains("Row 27", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_pattern_for_a_baby_brings_its_cautions_and_an_empty_one_a_gentle_word()
    {
        IPage page = await studio.EnterAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "New design" }).ClickAsync();
        await page.GetByLabel("Title", new() { Exact = true }).FillAsync("Cradle Baby Blanket");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin", Exact = true }).ClickAsync();

        await Expect(page.Findings()).ToContainTextAsync("Nothing is written yet");
        await Expect(page.Findings().Locator(".badge-error")).ToHaveCountAsync(0);
        await page.GetByText("Usual cautions to pass on: babies").ClickAsync();
        await Expect(page.GetByText("For supervised awake time only.")).ToBeVisibleAsync();
    }
}
