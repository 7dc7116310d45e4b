using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace PatternStudio.EndToEnd;

/// <summary>Everything can be done without a mouse, and whoever does so always sees where she is.</summary>
public sealed class KeyboardTests(OpenStudio studio) : IClassFixture<OpenStudio>
{
    /// <summary>Our own invention; 20 chains less 1 leave 19 for sc, so the second count is the slip.</summary>
    private const string Cloth = "Gangway cloth\nUS terms\n\nCh 20.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (19 sc)\nRow 2: Ch 1, sc in each sc across, turn. (18 sc)\nRow 3: Ch 1, sc in each sc across, turn. (19 sc)\nFasten off.";

    [Fact]
    public async Task A_design_is_begun_mended_saved_and_published_by_keys_alone()
    {
        await studio.EnterAsync();
        IPage page = await studio.KnockAsync();
        await page.TabToAsync(page.GetByLabel("Your e-mail address"));
        await page.Keyboard.TypeAsync(OpenStudio.Email);
        await page.TabToAsync(page.GetByLabel("Password"));
        await page.Keyboard.TypeAsync(OpenStudio.Password);
        await page.Keyboard.PressAsync("Enter");

        await page.TabToAsync(page.GetByRole(AriaRole.Button, new() { Name = "New design" }));
        await page.Keyboard.PressAsync("Enter");
        await page.TabToAsync(page.GetByLabel("Title", new() { Exact = true }));
        await page.Keyboard.TypeAsync("Gangway cloth");
        await page.TabToAsync(page.GetByLabel("Pattern, if you have one"));
        await page.Keyboard.InsertTextAsync(Cloth);
        await page.TabToAsync(page.GetByRole(AriaRole.Button, new() { Name = "Begin", Exact = true }));
        await page.Keyboard.PressAsync("Enter");

        await page.SeesWordsAsync(Cloth);
        await Expect(page.Findings()).ToContainTextAsync("1 error");
        await page.TabToAsync(page.Words());
        await page.Keyboard.PressAsync("F8");
        await Expect(page.Locator(".words-tip")).ToContainTextAsync("18");
        await page.Keyboard.PressAsync("Alt+Enter");
        await Expect(page.Findings()).ToContainTextAsync("nothing to mend");
        await page.Keyboard.PressAsync("Control+s");
        await page.SeesSavedAsync(2);

        // Out of the words: Escape closes what is open there, Tab goes on.
        await page.Keyboard.PressAsync("Escape");
        await page.Keyboard.PressAsync("Tab");
        Assert.False(await page.Words().EvaluateAsync<bool>("words => words === document.activeElement"));
        await page.TabToAsync(page.GetByLabel("How far the design has come"), "Shift+Tab");
        await page.Keyboard.TypeAsync("Pub");
        await page.Keyboard.PressAsync("Tab");
        await page.ReloadAsync();
        await Expect(page.GetByLabel("How far the design has come")).ToHaveValueAsync("Published");
        await page.SeesWordsAsync(Cloth.Replace("(18 sc)", "(19 sc)", StringComparison.Ordinal));
    }

    /// <summary>Each walk takes half a minute: those pages stand for all in every run, and tests/screenshots.sh has them all walked.</summary>
    public static TheoryData<string> Pages => new(Windows.AreAllLookedAt
        ? ["designs?view=cards", "designs?view=list", "designs/new", "designs/new?from=stitch", "designs/new?from=design", "designs/exchange", "designs/deleted", "swatches", "yarns", "settings", "help", "help/findings", "sign-out"]
        : (string[])["designs?view=cards", "designs/new?from=stitch", "designs/exchange", "swatches", "yarns", "help/findings"]);

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Every_part_of_a_page_is_reached_and_seen_to_be(string address)
    {
        IPage page = await studio.EnterAsync();
        await page.GotoAsync(new Uri(studio.Address, address).ToString());
        await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToBeVisibleAsync();
        await page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        var walk = new KeyWalk(page);
        await walk.AtAsync(address);
        Assert.True(walk.Faults.Count == 0, string.Join("\n", walk.Faults));
    }

    [Theory]
    [InlineData("Rows")]
    [InlineData("Chart")]
    [InlineData("Swatch & yarn")]
    [InlineData("Photos")]
    public async Task Every_part_of_the_desk_is_reached_and_seen_to_be(string tab)
    {
        IPage page = await studio.EnterAsync();
        await page.OpenDesignAsync("Kelp Bed Washcloth");
        await page.GetByRole(AriaRole.Tab, new() { Name = tab }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Tabpanel, new() { Name = tab })).ToBeVisibleAsync();
        await page.WaitForTimeoutAsync(500);
        var walk = new KeyWalk(page);
        await walk.AtAsync($"desk, {tab}");
        Assert.True(walk.Faults.Count == 0, string.Join("\n", walk.Faults));
    }

    [Fact]
    public async Task Picked_designs_and_their_acts_are_reached()
    {
        IPage page = await studio.EnterAsync();
        await page.Locator(".pick input").First.FocusAsync();
        await page.Keyboard.PressAsync("Space");
        await Expect(page.Locator(".picked-bar")).ToBeVisibleAsync();
        var walk = new KeyWalk(page);
        await walk.AtAsync("picked");
        Assert.True(walk.Faults.Count == 0, string.Join("\n", walk.Faults));
    }

    [Fact]
    public async Task Tags_and_what_two_have_saved_are_told_in_dialogs_that_keys_walk()
    {
        IPage page = await studio.EnterAsync();
        var walk = new KeyWalk(page);
        await page.GetByLabel("Pick Foam Line Edging").CheckAsync();
        ILocator bar = page.GetByRole(AriaRole.Region, new() { Name = "Picked designs" });
        await bar.GetByPlaceholder("Tag").FillAsync("Quayside");
        await bar.GetByRole(AriaRole.Button, new() { Name = "Tag", Exact = true }).ClickAsync();
        ILocator tags = page.GetByRole(AriaRole.Button, new() { Name = "Rename or remove tags" });
        await Expect(tags).ToBeVisibleAsync();
        await walk.DialogAsync("tags", tags);
        await tags.ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove the tag Quayside" }).ClickAsync();
        await Expect(page.GetByText("The tag ‘Quayside’ was removed.")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.GetByLabel("Name of the tag Quayside")).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("Escape");

        await page.BeginDesignAsync("Gangway cloth for two", Cloth);
        IPage other = await page.OpenBesideAsync(Cloth);
        await page.OvertypeAsync("Fasten off.", "Fasten off. Weave in.");
        await Expect(page.Locator(".saved-state")).ToContainTextAsync("Not saved yet");
        await other.OvertypeAsync("Fasten off.", "Fasten off. Block.");
        await other.Keyboard.PressAsync("Control+s");
        await other.SeesSavedAsync(2);
        await page.Keyboard.PressAsync("Control+s");
        await Expect(page.GetByRole(AriaRole.Dialog)).ToContainTextAsync("Fasten off. Block.");
        await walk.OpenDialogAsync("two have saved");
        Assert.True(walk.Faults.Count == 0, string.Join("\n", walk.Faults));
    }

    [Fact]
    public async Task Dialogs_take_the_focus_keep_it_and_give_it_back()
    {
        IPage page = await studio.EnterAsync();
        var walk = new KeyWalk(page);
        await page.OpenDesignAsync("Kelp Bed Washcloth");
        await walk.DialogAsync("versions", page.GetByRole(AriaRole.Button, new() { Name = "Earlier versions" }));
        await walk.DialogAsync("other terms", page.GetByRole(AriaRole.Button, new() { Name = "Read it in UK terms" }));
        await page.GetByRole(AriaRole.Tab, new() { Name = "Swatch & yarn" }).ClickAsync();
        await walk.DialogAsync("a new swatch", page.GetByRole(AriaRole.Button, new() { Name = "Add a swatch" }));
        await walk.DialogAsync("a kept swatch", page.GetByRole(AriaRole.Button, new() { Name = "Correct this swatch" }).First);
        await walk.DialogAsync("a new yarn", page.GetByRole(AriaRole.Button, new() { Name = "Add a yarn" }));
        await page.GotoAsync(new Uri(studio.Address, "yarns").ToString());
        await walk.DialogAsync("a lot", page.GetByRole(AriaRole.Button, new() { Name = "Put some in the cupboard: Tideline Cotton" }));
        await walk.DialogAsync("what it makes", page.GetByRole(AriaRole.Button, new() { Name = "What can it make? Tideline Cotton" }));
        Assert.True(walk.Faults.Count == 0, string.Join("\n", walk.Faults));
    }
}
