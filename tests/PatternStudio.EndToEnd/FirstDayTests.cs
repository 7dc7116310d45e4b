using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace PatternStudio.EndToEnd;

/// <summary>A designer's first day, from the empty studio on.</summary>
public sealed class FirstDayTests(OpenStudio studio) : IClassFixture<OpenStudio>
{
    /// <summary>Our own invention; counts by hand: 20 chains, 1 of them turning chain, leave 19 for sc.</summary>
    private const string Cloth = "Quay cloth\nUS terms\n\nCh 20.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (19 sc)\nRow 2: Ch 1, sc in each sc across, turn. (19 sc)\nRows 3-10: Rep Row 2.\nFasten off.";

    [Fact]
    public async Task A_wrong_count_is_found_as_it_is_typed_mended_and_saved()
    {
        IPage page = await studio.EnterAsync();
        await page.BeginDesignAsync("Quay cloth", Cloth);
        await Expect(page.Findings()).ToContainTextAsync("nothing to mend");

        await page.OvertypeAsync("(19 sc)", "(18 sc)");
        await Expect(page.Findings().GetByRole(AriaRole.Listitem)).ToHaveCountAsync(1);
        await Expect(page.Findings()).ToContainTextAsync("line 5");
        await Expect(page.Locator(".words-editor .words-error")).ToHaveCountAsync(1);
        await Expect(page.Locator(".saved-state")).ToContainTextAsync("Not saved yet");

        await page.Findings().GetByRole(AriaRole.Button, new() { Name = "Mend it in line 5" }).ClickAsync();
        await page.SeesWordsAsync(Cloth);
        await Expect(page.Findings()).ToContainTextAsync("nothing to mend");

        await page.OvertypeAsync("Rows 3-10", "Rows 3-12");
        await page.Keyboard.PressAsync("Control+s");
        await page.SeesSavedAsync(2);
        await Expect(page.GetByRole(AriaRole.Row, new() { Name = "Row 12" })).ToContainTextAsync("19");
    }

    [Fact]
    public async Task A_swatch_turns_unknown_numbers_into_sizes_and_yarn()
    {
        IPage page = await studio.EnterAsync();
        await page.BeginDesignAsync("Quay cloth for a swatch", Cloth);
        ILocator vitals = page.GetByLabel("Size and yarn");
        await Expect(vitals).ToContainTextAsync("not known");

        await page.GetByRole(AriaRole.Tab, new() { Name = "Swatch & yarn" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Add a swatch" }).ClickAsync();
        await page.GetByLabel("Stitches", new() { Exact = true }).FillAsync("none");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the swatch" }).ClickAsync();
        await Expect(page.GetByText("Write a number above zero")).ToHaveCountAsync(1);
        await Expect(page.GetByText("Count them over the width")).ToHaveCountAsync(1);
        await page.GetByLabel("Stitches", new() { Exact = true }).FillAsync("19");
        await page.GetByLabel("Rows or rounds").FillAsync("20");
        await page.GetByLabel("Weight", new() { Exact = true }).FillAsync("10");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the swatch" }).ClickAsync();

        // 19 stitches at 19 to 10 cm, 10 rows at 20 to 10 cm.
        await Expect(vitals).ToContainTextAsync("10 × 5 cm");
        await Expect(vitals).ToContainTextAsync(" g");
    }

    [Fact]
    public async Task Words_that_were_not_saved_come_back_after_the_page_was_closed()
    {
        IPage page = await studio.EnterAsync();
        await page.BeginDesignAsync("Quay cloth, interrupted", Cloth);
        await page.OvertypeAsync("Fasten off.", "Fasten off. Weave in ends.");
        await Expect(page.Locator(".saved-state")).ToContainTextAsync("Not saved yet");

        await page.CloseAsync(new() { RunBeforeUnload = false });
        IPage again = await page.Context.NewPageAsync();
        await again.GotoAsync(studio.Address.ToString());
        await again.OpenDesignAsync("Quay cloth, interrupted");

        await again.SeesWordsAsync(Cloth + " Weave in ends.");
        await Expect(again.GetByText("that were not saved are back")).ToBeVisibleAsync();
        await again.GetByRole(AriaRole.Button, new() { Name = "Go back to the saved words" }).ClickAsync();
        await again.SeesWordsAsync(Cloth);
    }

    [Fact]
    public async Task Two_who_save_the_same_design_lose_nothing()
    {
        IPage mira = await studio.EnterAsync();
        await mira.BeginDesignAsync("Quay cloth for two", Cloth);
        IPage jo = await mira.OpenBesideAsync(Cloth);

        await mira.OvertypeAsync("Fasten off.", "Fasten off. Weave in.");
        await Expect(mira.Locator(".saved-state")).ToContainTextAsync("Not saved yet");
        await jo.OvertypeAsync("Fasten off.", "Fasten off. Block.");
        await jo.Keyboard.PressAsync("Control+s");
        await jo.SeesSavedAsync(2);
        await Expect(mira.GetByText($"{OpenStudio.Email} saved version 2")).ToBeVisibleAsync();
        await mira.SeesWordsAsync(Cloth + " Weave in.");
        await mira.Keyboard.PressAsync("Control+s");

        ILocator dialog = mira.GetByRole(AriaRole.Dialog);
        await Expect(dialog).ToContainTextAsync("Fasten off. Block.");
        await Expect(dialog).ToContainTextAsync("Fasten off. Weave in.");
        await dialog.GetByRole(AriaRole.Button, new() { Name = "Keep mine as the next version" }).ClickAsync();
        await mira.SeesSavedAsync(3);
        await mira.GetByRole(AriaRole.Button, new() { Name = "Earlier versions" }).ClickAsync();
        await mira.KeptVersion(2).ClickAsync();
        await Expect(mira.GetByRole(AriaRole.Dialog)).ToContainTextAsync("Fasten off. Block.");
    }

    [Fact]
    public async Task What_two_have_changed_in_different_lines_is_put_together()
    {
        IPage mira = await studio.EnterAsync();
        await mira.BeginDesignAsync("Slipway cloth for two", Cloth);
        IPage jo = await mira.OpenBesideAsync(Cloth);
        await mira.OvertypeAsync("Ch 20.", "With the smaller hook, ch 20.");
        await Expect(mira.Locator(".saved-state")).ToContainTextAsync("Not saved yet");
        await jo.OvertypeAsync("Fasten off.", "Fasten off. Block.");
        await jo.Keyboard.PressAsync("Control+s");
        await jo.SeesSavedAsync(2);

        await mira.GetByRole(AriaRole.Button, new() { Name = "See both" }).ClickAsync();
        ILocator dialog = mira.GetByRole(AriaRole.Dialog);
        await Expect(dialog).ToContainTextAsync("both can be put together");
        await dialog.GetByRole(AriaRole.Button, new() { Name = "Put both together" }).ClickAsync();

        string both = Cloth.Replace("Ch 20.", "With the smaller hook, ch 20.", StringComparison.Ordinal) + " Block.";
        await mira.SeesSavedAsync(3);
        await mira.SeesWordsAsync(both);
        await jo.SeesWordsAsync(both);
    }

    [Fact]
    public async Task On_a_phone_words_and_numbers_are_tabs_and_nothing_typed_is_lost_between_them()
    {
        IPage page = await studio.EnterAsync(width: 390, height: 844);
        await page.BeginDesignAsync("Quay cloth on a phone", Cloth);
        await page.OvertypeAsync("(19 sc)", "(18 sc)");
        await Expect(page.Findings()).ToContainTextAsync("1 error");

        await page.GetByRole(AriaRole.Tab, new() { Name = "Rows" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Row, new() { Name = "Row 1 19" })).ToContainTextAsync("says (18 sc)");
        await Expect(page.Words()).ToBeHiddenAsync();
        await page.GetByRole(AriaRole.Tab, new() { Name = "Words" }).ClickAsync();
        await page.SeesWordsAsync(Cloth.Replace("(19 sc)\nRow 2", "(18 sc)\nRow 2", StringComparison.Ordinal));
    }

    [Fact]
    public async Task No_request_leaves_the_machine()
    {
        IPage page = await studio.EnterAsync();
        var elsewhere = new List<string>();
        page.Request += (_, request) =>
        {
            if (new Uri(request.Url) is { IsFile: false, Scheme: not "data" } address && address.Host != studio.Address.Host) elsewhere.Add(request.Url);
        };
        await page.ReloadAsync();
        await page.OpenDesignAsync("Tidewater Dishcloth");
        await page.GetByRole(AriaRole.Tab, new() { Name = "Chart" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Img, new() { Name = "Chart of Tidewater Dishcloth" })).ToBeVisibleAsync();

        Assert.Empty(elsewhere);
    }

    [Fact]
    public async Task Strangers_and_wrong_passwords_stay_outside()
    {
        await studio.EnterAsync();
        IPage page = await studio.KnockAsync();
        await page.GotoAsync(new Uri(studio.Address, "designs").ToString());
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Sign in" })).ToBeVisibleAsync();

        await page.GetByLabel("Your e-mail address").FillAsync(OpenStudio.Email);
        await page.GetByLabel("Password").FillAsync("not the password");
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Alert).Filter(new() { HasText = "The e-mail address or the password is not right." })).ToBeVisibleAsync();
    }
}
