using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace PatternStudio.EndToEnd;

/// <summary>A design on paper.</summary>
public sealed class PrintTests(OpenStudio studio) : IClassFixture<OpenStudio>
{
    [Fact]
    public async Task A_design_prints_its_title_materials_words_and_chart_and_nothing_to_press()
    {
        IPage page = await studio.EnterAsync();
        await page.OpenDesignAsync("Tidewater Dishcloth");
        await page.EvaluateAsync("() => { window.print = () => { window.asked = true; }; }");
        await page.OvertypeAsync("Weave in the ends.", "Weave in the ends well.");
        await page.Keyboard.PressAsync("Control+p");
        await page.WaitForFunctionAsync("() => window.asked === true");
        await page.EmulateMediaAsync(new() { Media = Media.Print });

        ILocator sheet = page.Locator(".print-sheet");
        await Expect(sheet.GetByRole(AriaRole.Heading, new() { Name = "Tidewater Dishcloth" })).ToBeVisibleAsync();
        await Expect(sheet).ToContainTextAsync("Tideline Cotton, Kelp");
        await Expect(sheet).ToContainTextAsync("14 sts and 14 rows = 10 × 10 cm");
        await Expect(sheet.GetByText("Rows 4–27: Rep Row 3. (28 sts)")).ToBeVisibleAsync();
        await Expect(sheet.GetByText("Weave in the ends well.")).ToBeVisibleAsync();
        await Expect(sheet.Locator(".print-chart svg")).ToBeVisibleAsync();
        Assert.Equal(0, await page.EvaluateAsync<int>("[...document.querySelectorAll('button, input, select, textarea, .masthead, .cm-editor')].filter(part => part.checkVisibility()).length"));
        Assert.Equal("rgb(255, 255, 255)", await page.EvaluateAsync<string>("getComputedStyle(document.body).backgroundColor"));
    }
}
