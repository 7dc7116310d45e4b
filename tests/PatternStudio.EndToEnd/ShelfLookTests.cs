using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace PatternStudio.EndToEnd;

/// <summary>The shelf with 7 and with 2 000 designs, and the pages about it, in every window: no serious fault of accessibility, nothing wider than the window.</summary>
public sealed class ShelfLookTests(OpenStudio studio) : IClassFixture<OpenStudio>
{
    [Theory]
    [MemberData(nameof(Windows.ToLookIn), MemberType = typeof(Windows))]
    public async Task The_shelf_is_for_everybody(int width, bool dark)
    {
        IPage page = await studio.EnterAsync(width, width < 600 ? 844 : 900, dark);
        var look = new Look(page, $"{width}-{(dark ? "dark" : "light")}");
        await ToAsync(page, "designs?view=list");
        await Expect(page.Locator(".design-table tbody tr").First).ToBeVisibleAsync();
        await look.AtAsync("shelf-list");
        await ToAsync(page, "designs?view=cards");
        await page.Locator(".pick input").First.CheckAsync();
        await Expect(page.Locator(".picked-bar")).ToBeVisibleAsync();
        await look.AtAsync("shelf-picked");
        await ToAsync(page, "designs?q=nothing-like-it");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "No design fits" })).ToBeVisibleAsync();
        await look.AtAsync("shelf-nothing");
        await ToAsync(page, "designs/new");
        await page.GetByLabel("Pattern, if you have one").FillAsync("> Mudlark cloth\n> Ch\u00a020.\n> Row 1: Sc in 2nd ch from hook and in each\n> ch across, turn. (19 sc)\n> Fasten oﬀ.");
        await Expect(page.Locator(".tidied")).ToBeVisibleAsync();
        await look.AtAsync("start-pasted");
        await ToAsync(page, "designs/new?from=stitch");
        await page.Locator(".stitch-card").Nth(8).ClickAsync();
        await Expect(page.Locator(".stitch-chosen")).ToBeVisibleAsync();
        await look.AtAsync("start-stitch");
        await ToAsync(page, "designs/new?from=design");
        await Expect(page.Locator(".stitch-card").First).ToBeVisibleAsync();
        await look.AtAsync("start-copy");
        await ToAsync(page, "designs/exchange");
        await page.FilesAreTakenAsync();
        await page.GetByLabel("The table").SetInputFilesAsync(new FilePayload { Name = "y.csv", MimeType = "text/csv", Buffer = "Yarn,Metres,Grams,Colour\nMarram Dune,125,50,Dusk\n,3,4,\n"u8.ToArray() });
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "1 of 2 lines can be taken" })).ToBeVisibleAsync();
        await look.AtAsync("exchange");
        await ToAsync(page, "designs/deleted");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Deleted designs" })).ToBeVisibleAsync();
        await look.AtAsync("deleted");
        Assert.Empty(look.Faults);
    }

    private Task ToAsync(IPage page, string address) => page.GotoAsync(new Uri(studio.Address, address).ToString());
}

/// <summary>Two thousand designs.</summary>
public sealed class ManyDesignsTests(OpenStudio studio) : IClassFixture<OpenStudio>
{
    [Fact]
    public async Task Two_thousand_designs_are_paged_found_and_picked()
    {
        IPage page = await studio.EnterAsync();
        ManyDesigns.Fill(studio.Store, 1_993);
        await page.ReloadAsync();
        await Expect(page.Locator(".states a").First).ToContainTextAsync("2000");
        await Expect(page.Locator(".design-card")).ToHaveCountAsync(48);
        var look = new Look(page, "1440-light");
        await look.AtAsync("shelf-2000");

        await page.GetByRole(AriaRole.Link, new() { Name = "Further" }).ClickAsync();
        await Expect(page.Locator(".page-links [aria-current]")).ToContainTextAsync("2");
        Assert.Contains("page=2", page.Url, StringComparison.Ordinal);
        await page.GetByPlaceholder("Title, words, tags").FillAsync("beanie 1000");
        await Expect(page.Locator(".design-card")).ToHaveCountAsync(0);
        await page.GetByPlaceholder("Title, words, tags").FillAsync("coaster 1010");
        await Expect(page.Locator(".design-card")).ToHaveCountAsync(1);
        await page.GotoAsync(new Uri(studio.Address, "designs?state=idea&view=list").ToString());
        await page.Locator(".pick input").First.CheckAsync();
        ILocator all = page.GetByRole(AriaRole.Button, new() { NameRegex = new("Pick all \\d+") });
        await all.ClickAsync();
        await Expect(page.Locator(".picked-count")).ToContainTextAsync("499 designs picked");
        foreach ((int width, bool dark) in new[] { (390, true), (820, false) })
        {
            IPage other = await studio.EnterAsync(width, width < 600 ? 844 : 900, dark);
            await Expect(other.Locator(".design-card").First).ToBeVisibleAsync();
            var there = new Look(other, $"{width}-{(dark ? "dark" : "light")}");
            await there.AtAsync("shelf-2000");
            Assert.Empty(there.Faults);
        }

        Assert.Empty(look.Faults);
    }
}
