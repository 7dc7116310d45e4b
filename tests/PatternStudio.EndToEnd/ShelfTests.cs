using System.IO.Compression;
using System.Text;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace PatternStudio.EndToEnd;

/// <summary>A designer with many designs: begun, found, tagged, taken out and brought in.</summary>
public sealed class ShelfTests(OpenStudio studio) : IClassFixture<OpenStudio>
{
    [Fact]
    public async Task A_messy_mail_is_pasted_tidied_and_begun()
    {
        IPage page = await studio.EnterAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "New design" }).ClickAsync();
        await page.GetByLabel("Pattern, if you have one").FillAsync(
            "On Tue, 3 Feb 2026, Pat wrote:\n> Mudlark cloth\n> US terms\n>\n> Ch\u00a020.\n> Row 1: Sc in 2nd ch from hook and in each\n> ch across, turn. (19 sc)\n> Row 2: Ch 1, sc in each sc across, turn. (19 sc)\n> Fasten oﬀ.");
        ILocator tidied = page.GetByRole(AriaRole.Region, new() { Name = "Tidied while pasting" });
        await Expect(tidied).ToContainTextAsync("Quotation marks of a mail dropped: 8 lines");
        await Expect(tidied).ToContainTextAsync("On Tue, 3 Feb 2026, Pat wrote:");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin", Exact = true }).ClickAsync();

        await page.SeesWordsAsync("Mudlark cloth\nUS terms\n\nCh 20.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (19 sc)\nRow 2: Ch 1, sc in each sc across, turn. (19 sc)\nFasten off.");
        await Expect(page.Findings()).ToContainTextAsync("nothing to mend");
    }

    [Fact]
    public async Task A_stitch_of_the_library_begins_a_design_as_wide_as_wanted()
    {
        IPage page = await studio.EnterAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "New design" }).ClickAsync();
        await page.GetByRole(AriaRole.Tab, new() { Name = "From a stitch" }).ClickAsync();
        await page.GetByPlaceholder("Search stitches").FillAsync("fans");
        await Expect(page.Locator(".stitch-card")).ToHaveCountAsync(2);
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Shells ") }).ClickAsync();
        await page.GetByLabel("Repeats", new() { Exact = true }).FillAsync("2");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin with it" }).ClickAsync();
        await Expect(page.GetByText("a whole number from 3 to")).ToBeVisibleAsync();
        await page.GetByLabel("Repeats", new() { Exact = true }).FillAsync("9");
        await Expect(page.GetByText("9 repeats are 55 stitches across.")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin with it" }).ClickAsync();

        await Expect(page.Words()).ToContainTextAsync("Ch 56.");
        await Expect(page.Findings()).ToContainTextAsync("nothing to mend");
    }

    [Fact]
    public async Task Files_are_brought_in_found_tagged_deleted_brought_back_and_taken_out()
    {
        IPage page = await studio.EnterAsync();
        await page.GotoAsync(new Uri(studio.Address, "designs/exchange").ToString());
        await page.FilesAreTakenAsync();
        await page.GetByLabel("Files or a zip").SetInputFilesAsync(new FilePayload { Name = "lot.zip", MimeType = "application/zip", Buffer = Zip() });
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "2 of 3 files can be taken" })).ToBeVisibleAsync();
        await Expect(page.GetByText("It is a PDF, not a text.")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Take 2 designs in" }).ClickAsync();
        await Expect(page.GetByText("2 of 3 files were taken in.")).ToBeVisibleAsync();

        await page.GotoAsync(new Uri(studio.Address, "designs").ToString());
        await page.GetByPlaceholder("Title, words, tags").FillAsync("zostera");
        await Expect(page.Locator(".design-card")).ToHaveCountAsync(2);
        Assert.Contains("q=zostera", page.Url, StringComparison.Ordinal);
        foreach (string title in (string[])["Eelgrass cowl", "Eelgrass mitts"]) await page.GetByLabel($"Pick {title}").CheckAsync();
        ILocator bar = page.GetByRole(AriaRole.Region, new() { Name = "Picked designs" });
        await bar.GetByPlaceholder("Tag").FillAsync("Autumn");
        await bar.GetByRole(AriaRole.Button, new() { Name = "Tag", Exact = true }).ClickAsync();
        await Expect(page.Locator(".design-card .tag")).ToHaveTextAsync(["Autumn", "Autumn"]);
        IDownload file = await page.RunAndWaitForDownloadAsync(() => bar.GetByRole(AriaRole.Button, new() { Name = "Export" }).ClickAsync());
        using (ZipArchive zip = await ZipFile.OpenReadAsync(await file.PathAsync()))
            Assert.Equal(2, zip.Entries.Count(entry => entry.Name == "pattern.txt"));

        await page.Locator(".design-card h2 a").First.FocusAsync();
        await page.Keyboard.PressAsync("Delete");
        await Expect(page.GetByText("2 designs deleted.")).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "No design fits" })).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.Locator(".design-card")).ToHaveCountAsync(2);

        await page.GetByLabel("Show designs with this tag").SelectOptionAsync("Autumn");
        await page.GetByRole(AriaRole.Link, new() { Name = "Testing" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "No design fits" })).ToBeVisibleAsync();
        await page.GoBackAsync();
        await Expect(page.Locator(".design-card")).ToHaveCountAsync(2);
    }

    [Fact]
    public async Task The_list_is_walked_by_keys()
    {
        IPage page = await studio.EnterAsync();
        await Expect(page.Locator("[data-keys=heard]")).ToBeAttachedAsync();
        await page.Locator(".design-card h2 a").First.FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await page.Keyboard.PressAsync("Space");
        await Expect(page.Locator(".design-card.selected")).ToHaveCountAsync(1);
        await Expect(page.Locator(".design-grid li").Nth(1).Locator(".design-card.selected")).ToHaveCountAsync(1);
        await page.Keyboard.PressAsync("Escape");
        await Expect(page.Locator(".picked-bar")).ToHaveCountAsync(0);
        await page.Keyboard.PressAsync("/");
        await Expect(page.GetByPlaceholder("Title, words, tags")).ToBeFocusedAsync();
    }

    private static byte[] Zip()
    {
        using var zip = new MemoryStream();
        using (var archive = new ZipArchive(zip, ZipArchiveMode.Create, leaveOpen: true))
            foreach ((string name, string words) in new[]
            {
                ("a/cowl.txt", "Eelgrass cowl\nFor zostera meadows.\n\nCh 9.\nRow 1: Sc in 2nd ch from hook and in each ch across. (8 sc)"),
                ("a/mitts.txt", "Eelgrass mitts\nFor zostera meadows.\n\nCh 12.\nRow 1: Sc in 2nd ch from hook and in each ch across. (11 sc)"),
                ("a/paper.pdf", "%PDF-1.7"),
            })
            {
                using Stream entry = archive.CreateEntry(name).Open();
                entry.Write(Encoding.UTF8.GetBytes(words));
            }

        return zip.ToArray();
    }
}
