using Microsoft.Playwright;

namespace PatternStudio.EndToEnd;

/// <summary>A designer gives out a link; a stranger with a phone works the pattern and reports.</summary>
public sealed class TestRoundTests(OpenStudio studio) : IClassFixture<OpenStudio>
{
    [Fact]
    public async Task A_tester_reports_from_a_phone_without_scripts_and_the_designer_sees_it()
    {
        IPage desk = await studio.EnterAsync();
        string link = await BeginRoundAsync(desk, "Kelp Bed Washcloth", "Ada");

        IPage phone = await studio.VisitAsync(link, 390, 844, scripts: false);
        await Assertions.Expect(phone.GetByRole(AriaRole.Heading, new() { Name = "Kelp Bed Washcloth" })).ToBeVisibleAsync();
        await Assertions.Expect(phone.GetByText("Row 50: Ch 1, turn, sc3tog.")).ToBeVisibleAsync();
        await phone.Locator("select[name=terms]").SelectOptionAsync("UK terms");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Show" }).ClickAsync();
        await Assertions.Expect(phone.GetByText("Row 50: Ch 1, turn, dc3tog.")).ToBeVisibleAsync();
        await phone.GetByRole(AriaRole.Link, new() { Name = "Send a report" }).First.ClickAsync();
        await phone.GetByLabel("Stitches", new() { Exact = true }).FillAsync("18");
        await phone.GetByLabel("Rows", new() { Exact = true }).FillAsync("about 17");
        await phone.GetByLabel("Used, in g").FillAsync("24");
        await phone.GetByLabel("Where").First.SelectOptionAsync("Decrease section, Row 26");
        await phone.GetByLabel("What about it?").First.FillAsync("Where does the last puff go?");
        await phone.WaitForTimeoutAsync(2_100); // as long as people take at least
        await phone.GetByRole(AriaRole.Button, new() { Name = "Send the report" }).ClickAsync();
        await Assertions.Expect(phone.GetByText("It is not sent yet.")).ToBeVisibleAsync();
        await Assertions.Expect(phone.GetByLabel("What about it?").First).ToHaveValueAsync("Where does the last puff go?");
        await phone.GetByLabel("Rows", new() { Exact = true }).FillAsync("17");
        await phone.WaitForTimeoutAsync(2_100);
        await phone.GetByRole(AriaRole.Button, new() { Name = "Send the report" }).ClickAsync();
        await Assertions.Expect(phone.GetByRole(AriaRole.Heading, new() { Name = "Thank you!" })).ToBeVisibleAsync();
        await Assertions.Expect(phone.GetByText("What your gauge makes of your size")).ToBeVisibleAsync();

        await desk.ReloadAsync();
        await Assertions.Expect(desk.GetByText("Where does the last puff go?")).ToBeVisibleAsync();
        await desk.GetByRole(AriaRole.Button, new() { Name = "Answer: Decrease section, Row 26" }).ClickAsync();
        await desk.GetByLabel("Answer", new() { Exact = true }).SelectOptionAsync("as intended");
        await desk.GetByRole(AriaRole.Button, new() { Name = "Give this answer" }).ClickAsync();
        await Assertions.Expect(desk.GetByText("It is as intended.")).ToBeVisibleAsync();
        await phone.GotoAsync(link);
        await Assertions.Expect(phone.GetByText("It is as intended.")).ToBeVisibleAsync();

        await desk.GetByRole(AriaRole.Link, new() { Name = "Decrease section, Row 26" }).ClickAsync();
        await desk.WaitForFunctionAsync("() => getSelection().toString().includes('Row 26:')");
        await desk.GoBackAsync();

        await desk.GetByRole(AriaRole.Button, new() { Name = "Take back the link for Ada" }).ClickAsync();
        await Assertions.Expect(desk.GetByText("taken back")).ToBeVisibleAsync();
        await phone.GotoAsync(link);
        await Assertions.Expect(phone.GetByRole(AriaRole.Heading, new() { Name = "This link does not open" })).ToBeVisibleAsync();
    }

    [Theory]
    [MemberData(nameof(Windows.ToLookIn), MemberType = typeof(Windows))]
    public async Task Pages_of_a_round_can_be_used_by_everybody(int width, bool dark)
    {
        IPage desk = await studio.EnterAsync(width, width < 600 ? 844 : 900, dark);
        var look = new Look(desk, $"{width}-{(dark ? "dark" : "light")}");
        string link = await BeginRoundAsync(desk, "Gull Point Beanie", "Bea", async () => await look.AtAsync("round-form"));
        await look.AtAsync("round");
        await desk.GetByText("One link for all").ClickAsync();
        await desk.GetByLabel("Reports at most").FillAsync("900");
        await desk.GetByRole(AriaRole.Button, new() { Name = "Make a link for all" }).ClickAsync();
        await Assertions.Expect(desk.GetByText("A link takes 1 to 200 reports.")).ToBeVisibleAsync();
        await desk.GetByText("An invitation to copy").ClickAsync();
        await desk.GetByText("A reminder to copy").ClickAsync();
        await look.AtAsync("round-links");

        IPage page = await studio.VisitAsync(link, width, width < 600 ? 844 : 900, dark);
        Assert.Equal(dark ? "rgb(22, 27, 31)" : "rgb(238, 236, 228)", await page.EvaluateAsync<string>("getComputedStyle(document.body).backgroundColor"));
        var tester = new Look(page, $"{width}-{(dark ? "dark" : "light")}");
        await page.GetByRole(AriaRole.Checkbox, new() { Name = "Crown, Rnd 1 done" }).CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "one row done: Sides, Rnd 10" }).ClickAsync();
        await Assertions.Expect(page.GetByText("2 of 19 rows done.")).ToBeVisibleAsync();
        await page.ReloadAsync();
        await Assertions.Expect(page.GetByText("2 of 19 rows done.")).ToBeVisibleAsync();
        await tester.AtAsync("tester-sheet");
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await tester.AtAsync("tester-printed");
        await page.EmulateMediaAsync(new() { Media = Media.Screen });
        await page.GetByRole(AriaRole.Link, new() { Name = "Send a report" }).First.ClickAsync();
        await page.GetByLabel("Which size did you make?").SelectOptionAsync("Child");
        await page.GetByLabel("Stitches", new() { Exact = true }).FillAsync("15");
        await page.GetByLabel("Rows", new() { Exact = true }).FillAsync("12");
        await page.ReloadAsync();
        await Assertions.Expect(page.GetByLabel("Rows", new() { Exact = true })).ToHaveValueAsync("12");
        await page.GetByLabel("Used, in g").FillAsync("-2");
        await page.WaitForTimeoutAsync(2_100);
        await page.GetByRole(AriaRole.Button, new() { Name = "Send the report" }).ClickAsync();
        await tester.AtAsync("tester-form");
        await page.GetByLabel("Used, in g").FillAsync("60");
        await page.WaitForTimeoutAsync(2_100);
        await page.GetByRole(AriaRole.Button, new() { Name = "Send the report" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Thank you!" })).ToBeVisibleAsync();
        await tester.AtAsync("tester-thanks");

        await desk.ReloadAsync();
        await Assertions.Expect(desk.GetByText("What they measured")).ToBeVisibleAsync();
        await look.AtAsync("round-told");
        Assert.Equal([], look.Faults.Concat(tester.Faults));
    }

    [Theory]
    [MemberData(nameof(Windows.ForRarePages), MemberType = typeof(Windows))]
    public async Task A_correction_is_there_for_everybody(int width, bool dark)
    {
        string window = $"{width}-{(dark ? "dark" : "light")}";
        IPage desk = await studio.EnterAsync(width, 900, dark);
        await desk.BeginDesignAsync($"Slipway mat, {window}", "Slipway mat\nUS terms\n\nCh 12.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (11 sc)\nRows 2-9: Ch 1, sc in each sc across, turn. (11 sc)");
        await desk.GetByLabel("How far the design has come").SelectOptionAsync("Published");
        await desk.GetByRole(AriaRole.Link, new() { Name = "Test rounds" }).ClickAsync();
        await desk.GetByLabel("What was wrong, and what is right").FillAsync("Row 5: repeat 8 times, not 9.");
        await desk.GetByRole(AriaRole.Button, new() { Name = "Publish the correction" }).ClickAsync();
        await Assertions.Expect(desk.Locator(".correction")).ToHaveCountAsync(1);
        string? address = await desk.GetByRole(AriaRole.Link, new() { Name = "The public page" }).GetAttributeAsync("href");
        var look = new Look(desk, window);
        await look.AtAsync("corrections-panel");
        IPage page = await studio.VisitAsync(new Uri(studio.Address, address).ToString(), width, 844, dark);
        await Assertions.Expect(page.GetByText("Row 5: repeat 8 times, not 9.")).ToBeVisibleAsync();
        await desk.GetByRole(AriaRole.Button, new() { NameRegex = new("^Change the correction of ") }).ClickAsync();
        await desk.GetByLabel("What was wrong, and what is right").First.FillAsync("Row 5: repeat 7 times, not 9.");
        await look.AtAsync("corrections-change");
        await desk.GetByRole(AriaRole.Button, new() { Name = "Publish the change" }).ClickAsync();
        await Assertions.Expect(desk.Locator(".correction").GetByText("Row 5: repeat 7 times, not 9.")).ToBeVisibleAsync();
        await page.ReloadAsync();
        await Assertions.Expect(page.GetByText("changed on")).ToBeVisibleAsync();
        await page.GetByText("What it said before").ClickAsync();
        await Assertions.Expect(page.GetByText("Row 5: repeat 8 times, not 9.")).ToBeVisibleAsync();
        var theirs = new Look(page, window);
        await theirs.AtAsync("corrections");
        await desk.GetByRole(AriaRole.Button, new() { NameRegex = new("^Withdraw the correction of ") }).ClickAsync();
        await Assertions.Expect(desk.GetByText("please don’t follow it")).ToBeVisibleAsync();
        await page.ReloadAsync();
        await Assertions.Expect(page.GetByText("please don’t follow it")).ToBeVisibleAsync();
        await theirs.AtAsync("corrections-withdrawn");
        Assert.Equal([], look.Faults.Concat(theirs.Faults));
    }

    /// <summary>Begins a round and gives the address of a link for one tester.</summary>
    private static async Task<string> BeginRoundAsync(IPage desk, string design, string tester, Func<Task>? look = null)
    {
        await desk.OpenDesignAsync(design);
        await desk.GetByRole(AriaRole.Link, new() { Name = "Test rounds" }).ClickAsync();
        await desk.GetByRole(AriaRole.Button, new() { Name = "New test round" }).ClickAsync();
        await Assertions.Expect(desk.GetByLabel("Testers wanted")).ToBeVisibleAsync();
        if (look is not null) await look();
        await desk.GetByRole(AriaRole.Button, new() { Name = "Begin the round" }).ClickAsync();
        await desk.GetByLabel("Name of the tester").FillAsync(tester);
        await desk.GetByRole(AriaRole.Button, new() { Name = "Make a link" }).ClickAsync();
        ILocator address = desk.GetByLabel("Address of the link");
        await Assertions.Expect(address).ToBeVisibleAsync();
        return await address.InputValueAsync();
    }
}
