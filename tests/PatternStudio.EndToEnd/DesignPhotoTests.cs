using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace PatternStudio.EndToEnd;

/// <summary>A photo of the finished piece, from a phone onto the card of the shelf.</summary>
public sealed class DesignPhotoTests(OpenStudio studio) : IClassFixture<OpenStudio>
{
    [Fact]
    public async Task A_photo_is_taken_with_a_phone_put_on_the_card_removed_and_brought_back()
    {
        IPage page = await studio.EnterAsync(390, 844);
        await page.OpenDesignAsync("Foam Line Edging");
        await page.GetByRole(AriaRole.Tab, new() { Name = "Photos" }).ClickAsync();
        await page.FilesAreTakenAsync();
        byte[] picture = await page.ScreenshotAsync();
        await page.GetByLabel("Add photos").SetInputFilesAsync([new FilePayload { Name = "edging.png", MimeType = "image/png", Buffer = picture }, new FilePayload { Name = "torn.png", MimeType = "image/png", Buffer = picture[..500] }]);
        await Expect(page.Locator(".photo-item")).ToHaveCountAsync(1);
        await Expect(page.GetByRole(AriaRole.Alert).Filter(new() { HasText = "torn.png: " })).ToBeVisibleAsync();
        await page.GetByLabel("Caption (photo 1)").FillAsync("Pinned out to dry");
        await page.GetByLabel("Caption (photo 1)").PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Img, new() { Name = "Pinned out to dry" })).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Radio, new() { NameRegex = new("Pinned out to dry") })).ToBeCheckedAsync();

        await page.GetByRole(AriaRole.Button, new() { Name = "Remove: Pinned out to dry" }).ClickAsync();
        await Expect(page.Locator(".photo-item")).ToHaveCountAsync(0);
        await page.Locator(".mud-snackbar").GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Img, new() { Name = "Pinned out to dry" })).ToBeVisibleAsync();

        await page.GotoAsync(new Uri(studio.Address, "designs").ToString());
        ILocator card = page.Locator(".design-card").Filter(new() { HasText = "Foam Line Edging" });
        await Expect(card.Locator("img.photo")).ToBeVisibleAsync();
        await card.GetByRole(AriaRole.Link, new() { Name = "Foam Line Edging" }).ClickAsync();
        await page.GetByRole(AriaRole.Tab, new() { Name = "Photos" }).ClickAsync();
        await page.GetByLabel("no photo, but the small chart").CheckAsync();
        await Expect(page.Locator(".photo-item.chosen")).ToHaveCountAsync(0);
        await page.GotoAsync(new Uri(studio.Address, "designs").ToString());
        await Expect(card.Locator("img.photo")).ToHaveCountAsync(0);
    }
}
