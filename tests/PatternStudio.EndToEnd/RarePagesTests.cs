using System.IO.Compression;
using System.Text;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace PatternStudio.EndToEnd;

/// <summary>What is seen seldom: a studio on its first day, versions side by side, photos, imports that go half wrong, undo, addresses that lead nowhere, print.</summary>
public sealed class RarePagesTests(EmptyStudio studio) : IClassFixture<EmptyStudio>
{
    /// <summary>Our own invention; 20 chains less 1 leave 19 for sc.</summary>
    private const string Cloth = "Slipway cloth\nUS terms\n\nCh 20.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (19 sc)\nRow 2: Ch 1, sc in each sc across, turn. (19 sc)\nRows 3-10: Rep Row 2.\nFasten off.";

    [Theory]
    [MemberData(nameof(Windows.ForRarePages), MemberType = typeof(Windows))]
    public async Task Seldom_seen_pages_are_for_everybody_too(int width, bool dark)
    {
        IPage page = await studio.KnockAsync(width, width < 600 ? 844 : 900, dark);
        var look = new Look(page, $"{width}-{(dark ? "dark" : "light")}");
        await ComeInAsync(page, look);
        await look.AtAsync("shelf-empty");
        foreach (string empty in (string[])["swatches", "yarns", "designs/deleted"])
        {
            await ToAsync(page, empty);
            await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToBeVisibleAsync();
            await page.WaitForTimeoutAsync(300);
            await look.AtAsync($"empty-{empty.Replace('/', '-')}");
        }

        await ToAsync(page, "designs");
        await page.BeginDesignAsync("Slipway cloth", Cloth);
        await VersionsAsync(page, look);
        await PhotosAsync(page, look);
        await PrintedAsync(page, look);
        await UndoneAsync(page, look);
        await BroughtInAsync(page, look);
        await NowhereAsync(page, look);
        await HelpAsync(page, look);
        Assert.Empty(look.Faults);
    }

    /// <summary>A studio is set up once: what is seen only then is looked at in one go.</summary>
    private static async Task LookInEveryWindowAsync(IPage page, string name)
    {
        (int wide, int high) = (page.ViewportSize!.Width, page.ViewportSize.Height);
        foreach ((int width, bool dark) in Windows.Every)
        {
            await page.SetViewportSizeAsync(width, high);
            await page.EmulateMediaAsync(new() { ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light });
            await page.ReloadAsync();
            await new Look(page, $"{width}-{(dark ? "dark" : "light")}").AtAsync(name);
        }

        await page.SetViewportSizeAsync(wide, high);
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Null });
        await page.ReloadAsync();
    }

    private async Task ComeInAsync(IPage page, Look look)
    {
        if (!page.Url.Contains("set-up", StringComparison.Ordinal))
        {
            await page.GetByLabel("Your e-mail address").FillAsync(OpenStudio.Email);
            await page.GetByLabel("Password").FillAsync("not the password");
            await page.GetByRole(AriaRole.Button, new() { Name = "Sign in" }).ClickAsync();
            await Expect(page.GetByRole(AriaRole.Alert)).ToBeVisibleAsync();
            await look.AtAsync("sign-in-wrong");
            await OpenStudio.SignInAsync(page);
        }
        else
        {
            await look.AtAsync("set-up");
            if (Windows.AreAllLookedAt) await LookInEveryWindowAsync(page, "set-up");
            await page.GetByLabel("Password").FillAsync("short");
            await page.GetByLabel("Name of your studio").FillAsync("Alder & Skein");
            await page.GetByRole(AriaRole.Button, new() { Name = "Open the studio" }).ClickAsync();
            await Expect(page.GetByText("The password is too short.")).ToBeVisibleAsync();
            await look.AtAsync("set-up-wrong");
            await page.GetByRole(AriaRole.Checkbox).UncheckAsync();
            await OpenStudio.SetUpAsync(page);
        }

        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Designs", Exact = true })).ToBeVisibleAsync();
        await Expect(page.Locator(".shelf-end")).ToBeVisibleAsync();
        if (await page.Locator(".design-card").CountAsync() > 0) await ClearAsync(page);
        await ToAsync(page, "designs");
        await Expect(page.Locator(".empty")).ToBeVisibleAsync();
    }

    private static async Task VersionsAsync(IPage page, Look look)
    {
        await page.OvertypeAsync("Rows 3-10", "Rows 3-12");
        await page.Keyboard.PressAsync("Control+s");
        await page.SeesSavedAsync(2);
        await page.GetByRole(AriaRole.Button, new() { Name = "Earlier versions" }).ClickAsync();
        await page.KeptVersion(1).ClickAsync();
        ILocator name = page.GetByLabel("Name of the version");
        await name.FillAsync("sent to the testers");
        await name.PressAsync("Enter");
        await Expect(page.KeptVersion(1)).ToContainTextAsync("sent to the testers");
        await look.AtAsync("versions-words");
        await page.GetByRole(AriaRole.Tab, new() { Name = "In numbers" }).ClickAsync();
        await Expect(page.Locator(".compared-numbers")).ToBeVisibleAsync();
        await look.AtAsync("versions-numbers");
        await page.GetByRole(AriaRole.Button, new() { Name = "Close", Exact = true }).ClickAsync();
    }

    private static async Task PhotosAsync(IPage page, Look look)
    {
        await page.GetByRole(AriaRole.Tab, new() { Name = "Photos" }).ClickAsync();
        await page.FilesAreTakenAsync();
        await look.AtAsync("desk-photos-none");
        await page.GetByLabel("Add photos").SetInputFilesAsync(
        [
            new FilePayload { Name = "cloth.png", MimeType = "image/png", Buffer = await page.ScreenshotAsync(new() { Clip = new() { X = 0, Y = 0, Width = 300, Height = 300 } }) },
            new FilePayload { Name = "edge.png", MimeType = "image/png", Buffer = await page.ScreenshotAsync() },
            new FilePayload { Name = "notes.jpg", MimeType = "image/jpeg", Buffer = "no photo"u8.ToArray() },
        ]);
        await Expect(page.Locator(".photo-item")).ToHaveCountAsync(2);
        await Expect(page.Locator(".wrong-one")).ToContainTextAsync("notes.jpg");
        await page.GetByLabel("Caption (photo 1)").FillAsync("The cloth on the line, blocked");
        await page.GetByLabel("Caption (photo 1)").PressAsync("Enter");
        await look.AtAsync("desk-photos");
    }

    /// <summary>The printer's own dialog is not to be had here: that it is asked for is noted.</summary>
    private static async Task PrintedAsync(IPage page, Look look)
    {
        await page.EvaluateAsync("() => { window.print = () => { window.asked = true; }; }");
        await page.GetByRole(AriaRole.Button, new() { Name = "Print", Exact = true }).ClickAsync();
        await page.WaitForFunctionAsync("() => window.asked === true");
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await look.AtAsync("desk-printed");
        await page.EmulateMediaAsync(new() { Media = Media.Screen });
    }

    private async Task UndoneAsync(IPage page, Look look)
    {
        await ToAsync(page, "designs");
        await Expect(page.Locator(".design-card img.photo")).ToBeVisibleAsync();
        await look.AtAsync("shelf-photo");
        await page.OpenDesignAsync("Slipway cloth");
        await page.GetByRole(AriaRole.Button, new() { Name = "Delete this design", Exact = true }).ClickAsync();
        await Expect(page.GetByText("Slipway cloth was deleted.")).ToBeVisibleAsync();
        await look.AtAsync("shelf-deleted-one");
        await page.Locator(".mud-snackbar").GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await page.SeesSavedAsync(2);
        await ToAsync(page, "designs");
        await page.Locator(".pick input").First.CheckAsync();
        await page.GetByRole(AriaRole.Region, new() { Name = "Picked designs" }).GetByRole(AriaRole.Button, new() { Name = "Delete" }).ClickAsync();
        await Expect(page.GetByText("1 design deleted.")).ToBeVisibleAsync();
        await look.AtAsync("shelf-undo");
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.Locator(".design-card")).ToHaveCountAsync(1);
    }

    private async Task BroughtInAsync(IPage page, Look look)
    {
        await ToAsync(page, "designs/exchange");
        await page.FilesAreTakenAsync();
        await look.AtAsync("exchange-quiet");
        await page.GetByLabel("Files or a zip").SetInputFilesAsync(new FilePayload { Name = "lot.zip", MimeType = "application/zip", Buffer = Zip() });
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "2 of 4 files can be taken" })).ToBeVisibleAsync();
        await look.AtAsync("import-looked");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take 2 designs in" }).ClickAsync();
        await Expect(page.GetByText("2 of 4 files were taken in.")).ToBeVisibleAsync();
        await look.AtAsync("import-taken");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take these 2 designs off the shelf again" }).ClickAsync();
        await Expect(page.GetByText("2 designs were taken off the shelf again.")).ToBeVisibleAsync();
        await look.AtAsync("import-taken-back");
    }

    private async Task NowhereAsync(IPage page, Look look)
    {
        await ToAsync(page, "no/such/page");
        await look.AtAsync("not-found");
        await ToAsync(page, "trouble");
        await look.AtAsync("trouble");
        await ToAsync(page, $"designs/{Guid.Empty}");
        await Expect(page.Locator(".empty")).ToBeVisibleAsync();
        await look.AtAsync("desk-missing");
    }

    private async Task HelpAsync(IPage page, Look look)
    {
        await ToAsync(page, "help");
        await Expect(page.Locator(".help-list a").First).ToBeVisibleAsync();
        string[] pages = await page.Locator(".help-list a").EvaluateAllAsync<string[]>("links => links.map(link => link.getAttribute('href'))");
        Assert.NotEmpty(pages);
        foreach (string address in pages)
        {
            await ToAsync(page, address);
            await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToBeVisibleAsync();
            await look.AtAsync($"help-page-{address.Split('/')[^1]}");
        }
    }

    /// <summary>As it was before another window was looked in.</summary>
    private async Task ClearAsync(IPage page)
    {
        await ToAsync(page, "designs");
        await page.GetByRole(AriaRole.Button, new() { Name = "Pick all on this page" }).ClickAsync();
        await page.GetByRole(AriaRole.Region, new() { Name = "Picked designs" }).GetByRole(AriaRole.Button, new() { Name = "Delete" }).ClickAsync();
        await Expect(page.GetByText(new System.Text.RegularExpressions.Regex("designs? deleted"))).ToBeVisibleAsync();
    }

    private Task ToAsync(IPage page, string address) => page.GotoAsync(new Uri(studio.Address, address).ToString());

    private static byte[] Zip()
    {
        using var zip = new MemoryStream();
        using (var archive = new ZipArchive(zip, ZipArchiveMode.Create, leaveOpen: true))
            foreach ((string name, string words) in new[]
            {
                ("winter/cowl.txt", "Eelgrass cowl\n\nCh 9.\nRow 1: Sc in 2nd ch from hook and in each ch across. (8 sc)"),
                ("winter/mitts.txt", "> Eelgrass mitts\n>\n> Ch 12.\n> Row 1: Sc in 2nd ch from hook and in each ch across. (11 sc)"),
                ("winter/cloth again.txt", Cloth.Replace("3-10", "3-12", StringComparison.Ordinal)),
                ("winter/leaflet.pdf", "%PDF-1.7"),
            })
            {
                using Stream entry = archive.CreateEntry(name).Open();
                entry.Write(Encoding.UTF8.GetBytes(words));
            }

        return zip.ToArray();
    }
}
