using Microsoft.Playwright;

namespace PatternStudio.EndToEnd;

/// <summary>What a designer does at the desk.</summary>
internal static class DeskActs
{
    public static ILocator Words(this IPage page) => page.GetByLabel("Written instructions", new() { Exact = true }).And(page.Locator("textarea"));

    public static ILocator Findings(this IPage page) => page.Locator("section.findings");

    public static async Task OpenDesignAsync(this IPage page, string title)
    {
        await page.GetByRole(AriaRole.Link, new() { Name = title, Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".words-layer .line").Nth(2)).ToBeAttachedAsync();
    }

    /// <summary>Types over the first place where the words say something.</summary>
    public static async Task OvertypeAsync(this IPage page, string old, string with)
    {
        await page.Words().EvaluateAsync(
            "(area, old) => { const at = area.value.indexOf(old); if (at < 0) throw new Error('not there: ' + old); area.focus(); area.setSelectionRange(at, at + old.length); }",
            old);
        await page.Keyboard.TypeAsync(with);
    }

    /// <summary>A new design with these words, laid on the desk.</summary>
    public static async Task BeginDesignAsync(this IPage page, string title, string words)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = "New design" }).ClickAsync();
        await page.GetByLabel("Title", new() { Exact = true }).FillAsync(title);
        await page.GetByLabel("Pattern, if you have one").FillAsync(words);
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Words()).ToHaveValueAsync(words);
    }

    public static Task SeesSavedAsync(this IPage page, int version) =>
        Assertions.Expect(page.Locator(".saved-state")).ToContainTextAsync($"Version {version} saved");
}
