using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace PatternStudio.EndToEnd;

/// <summary>Versions: named, laid side by side in words and numbers, gone back to.</summary>
public sealed class VersionsTests(OpenStudio studio) : IClassFixture<OpenStudio>
{
    /// <summary>Our own invention. 20 chains less 1 leave 19 for sc; an increase at each end of row 2 makes 21; ten rows in all.</summary>
    private const string Cloth = "Ferry cloth\nUS terms\n\nCh 20.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (19 sc)\nRow 2: Ch 1, 2 sc in first sc, sc in next 17 sc, 2 sc in last sc, turn. (21 sc)\nRows 3-10: Ch 1, sc in each sc across, turn. (21 sc)\nFasten off.";

    [Fact]
    public async Task A_version_is_named_compared_row_by_row_and_gone_back_to()
    {
        IPage page = await studio.EnterAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Settings" }).ClickAsync();
        await page.GetByLabel("Your name").FillAsync("Mira Holm");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep these settings" }).ClickAsync();
        await Expect(page.GetByText("Your settings are kept.")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Designs" }).ClickAsync();
        await page.BeginDesignAsync("Ferry cloth", Cloth);
        await page.OvertypeAsync("Ch 20.", "Ch 22.");
        await page.OvertypeAsync("(19 sc)", "(21 sc)");
        await page.OvertypeAsync("sc in next 17 sc, 2 sc in last sc, turn. (21 sc)", "sc in next 19 sc, 2 sc in last sc, turn. (23 sc)");
        await page.OvertypeAsync("Rows 3-10: Ch 1, sc in each sc across, turn. (21 sc)", "Rows 3-11: Ch 1, sc in each sc across, turn. (23 sc)");
        await Expect(page.Findings()).ToContainTextAsync("nothing to mend");
        await page.Keyboard.PressAsync("Control+s");
        await page.SeesSavedAsync(2);

        await page.GetByRole(AriaRole.Button, new() { Name = "Earlier versions" }).ClickAsync();
        await page.KeptVersion(1).ClickAsync();
        await Expect(page.KeptVersion(1)).ToContainTextAsync("Mira Holm");
        await page.GetByLabel("Name of the version").FillAsync("sent to the testers");
        await page.GetByLabel("Name of the version").PressAsync("Enter");
        await Expect(page.KeptVersion(1)).ToContainTextAsync("sent to the testers");

        ILocator dialog = page.GetByRole(AriaRole.Dialog);
        await Expect(dialog.Locator(".compared-before")).ToHaveCountAsync(4);
        await Expect(dialog.Locator(".compared-after")).ToHaveTextAsync([new System.Text.RegularExpressions.Regex("Ch 22"), new("21 sc"), new("23 sc"), new("Rows 3-11")]);
        await Expect(dialog.Locator(".compared-after mark").First).ToContainTextAsync("22");

        await dialog.GetByRole(AriaRole.Tab, new() { Name = "In numbers" }).ClickAsync();
        // 19 + 21 + 8 × 21 = 208 stitches before; 21 + 23 + 9 × 23 = 251 after.
        await SeesRowAsync(dialog, "Stitches", "208", "251");
        await SeesRowAsync(dialog, "Row 1", "19", "21", "+2");
        await SeesRowAsync(dialog, "Row 10", "21", "23", "+2");
        await SeesRowAsync(dialog, "Row 11", "–", "23", "new");
        await dialog.GetByLabel("with").SelectOptionAsync("2");
        await SeesRowAsync(dialog, "Row 2", "21", "23", "+2");

        await dialog.GetByRole(AriaRole.Button, new() { Name = "Go back to version 1" }).ClickAsync();
        await page.SeesWordsAsync(Cloth);
        await page.SeesSavedAsync(3);
        await page.GetByRole(AriaRole.Button, new() { Name = "Earlier versions" }).ClickAsync();
        await Expect(page.Locator("button.version")).ToHaveCountAsync(3);
        await Expect(page.KeptVersion(1)).ToContainTextAsync("sent to the testers");
    }

    private static async Task SeesRowAsync(ILocator dialog, string name, params string[] cells)
    {
        ILocator row = dialog.Locator(".compared-numbers tbody tr").Filter(new() { Has = dialog.Page.Locator("th", new() { HasTextRegex = new($"^{name}") }) }).First;
        foreach (string cell in cells) await Expect(row.GetByRole(AriaRole.Cell, new() { Name = cell, Exact = true })).ToBeVisibleAsync();
    }
}
