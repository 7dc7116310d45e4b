using Microsoft.Playwright;

namespace PatternStudio.EndToEnd;

/// <summary>Everybody reads in her own manner, finds help where it is needed, and is shown round once.</summary>
public sealed class HelpAndSettingsTests(OpenStudio studio) : IClassFixture<OpenStudio>
{
    [Theory]
    [MemberData(nameof(Windows.ToLookIn), MemberType = typeof(Windows))]
    public async Task The_tour_help_and_settings_can_be_used_by_everybody(int width, bool dark)
    {
        IPage page = await studio.EnterAsync(width, width < 600 ? 844 : 900, dark);
        var look = new Look(page, $"{width}-{(dark ? "dark" : "light")}");
        ILocator tour = page.GetByRole(AriaRole.Region, new() { Name = "The tour" });

        await page.GetByRole(AriaRole.Link, new() { Name = "Help" }).ClickAsync();
        await page.SeesHeadingAsync("Help");
        await look.AtAsync("help");
        await page.GetByRole(AriaRole.Link, new() { Name = "Findings" }).ClickAsync();
        await page.SeesHeadingAsync("Findings");
        await look.AtAsync("help-findings");
        await page.GetByRole(AriaRole.Link, new() { Name = "count-differs", Exact = true }).ClickAsync();
        await page.SeesHeadingAsync("Count differs");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "How to mend it" })).ToBeVisibleAsync();
        await look.AtAsync("help-finding");
        await page.GetByRole(AriaRole.Link, new() { Name = "All help" }).ClickAsync();
        await page.SeesHeadingAsync("Help");

        await page.GetByRole(AriaRole.Button, new() { Name = "Take the tour" }).ClickAsync();
        foreach (string stop in (string[])["All your designs", "The written pattern is all there is", "What can't be right is underlined", "Numbers that can be traced", "Rows, chart, swatch and yarn"])
        {
            await Assertions.Expect(tour.GetByRole(AriaRole.Heading)).ToHaveTextAsync(stop);
            if (stop != "All your designs") await Assertions.Expect(page.Locator("#panel-words, #panel-numbers").First).ToBeAttachedAsync();
            await page.WaitForTimeoutAsync(500);
            await look.AtAsync($"tour-{stop.Split(' ')[0].ToLowerInvariant()}");
            await tour.GetByRole(AriaRole.Button, new() { Name = "Next" }).ClickAsync();
        }

        await Assertions.Expect(tour.GetByRole(AriaRole.Heading)).ToHaveTextAsync("Swatches and yarns");
        await tour.GetByRole(AriaRole.Button, new() { Name = "Done" }).ClickAsync();
        await Assertions.Expect(tour).ToHaveCountAsync(0);

        await page.GetByRole(AriaRole.Link, new() { Name = "Settings" }).ClickAsync();
        await page.SeesHeadingAsync("Settings");
        await look.AtAsync("settings");
        Assert.Empty(look.Faults);
    }

    [Fact]
    public async Task Inches_commas_and_dates_are_hers_on_every_device()
    {
        IPage page = await studio.EnterAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Settings" }).ClickAsync();
        await page.GetByLabel("Lengths first in").SelectOptionAsync("Inches");
        await page.GetByLabel("Decimals after a").SelectOptionAsync("Comma");
        await KeepAsync(page);

        IPage phone = await studio.EnterAsync(390, 844);
        await phone.OpenDesignAsync("Tidewater Dishcloth");
        await phone.GetByRole(AriaRole.Tab, new() { Name = "Rows" }).ClickAsync();
        await Assertions.Expect(phone.GetByText("7¾ × 7¾ in").First).ToBeVisibleAsync();
        await Assertions.Expect(phone.GetByText("20 × 19,5 cm").First).ToBeVisibleAsync();

        await page.GetByLabel("Lengths first in").SelectOptionAsync("Centimetres");
        await page.GetByLabel("Decimals after a").SelectOptionAsync("Point");
        await KeepAsync(page);
        await page.GetByRole(AriaRole.Link, new() { Name = "Designs" }).ClickAsync();
        await Assertions.Expect(page.GetByText("20 × 19.5 cm").First).ToBeVisibleAsync();
    }

    /// <summary>The page comes anew once settings are kept.</summary>
    private static async Task KeepAsync(IPage page)
    {
        var reloaded = page.WaitForRequestAsync(request => request.IsNavigationRequest);
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep these settings" }).ClickAsync();
        await reloaded;
        await Assertions.Expect(page.GetByText("Your settings are kept.")).ToBeVisibleAsync();
    }
}

internal static class HeadingActs
{
    public static Task SeesHeadingAsync(this IPage page, string heading) =>
        Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = heading, Exact = true, Level = 1 })).ToBeVisibleAsync();
}
