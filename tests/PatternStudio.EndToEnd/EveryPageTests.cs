using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace PatternStudio.EndToEnd;

/// <summary>
/// Every page on a desk and on a phone, light and dark: no serious fault of accessibility (WCAG rules of the axe engine), nothing wider than
/// the window. tests/screenshots.sh has its pictures taken, for people to judge.
/// </summary>
public sealed class EveryPageTests(OpenStudio studio) : IClassFixture<OpenStudio>
{
    [Theory]
    [MemberData(nameof(Windows.ToLookIn), MemberType = typeof(Windows))]
    public async Task Every_page_can_be_used_by_everybody_and_fits_its_window(int width, bool dark)
    {
        IPage page = await studio.EnterAsync(width, width < 600 ? 844 : 900, dark);
        var look = new Look(page, $"{width}-{(dark ? "dark" : "light")}");
        await look.AtAsync("designs");

        await page.GetByRole(AriaRole.Button, new() { Name = "New design" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("Title", new() { Exact = true })).ToBeVisibleAsync();
        await look.AtAsync("new-design");
        await page.GetByRole(AriaRole.Button, new() { Name = "Cancel" }).ClickAsync();

        await page.OpenDesignAsync("Tidewater Dishcloth");
        await page.WaitForTimeoutAsync(600);
        await look.AtAsync("desk");
        await page.OvertypeAsync("(28 sts)", "(27 sts)");
        await Assertions.Expect(page.Findings()).ToContainTextAsync("1 error");
        await page.Findings().GetByRole(AriaRole.Listitem).Filter(new() { HasText = "27" }).GetByRole(AriaRole.Button).First.ClickAsync();
        await page.WaitForTimeoutAsync(400);
        await look.AtAsync("desk-finding");
        await page.Findings().GetByRole(AriaRole.Button, new() { Name = "Mend it" }).ClickAsync();
        await Assertions.Expect(page.Locator(".saved-state")).ToContainTextAsync("saved today");
        await page.GetByRole(AriaRole.Button, new() { Name = "Read it in UK terms" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("The pattern in the other terms")).ToBeVisibleAsync();
        await look.AtAsync("other-terms");
        await page.GetByRole(AriaRole.Button, new() { Name = "Close", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Earlier versions" }).ClickAsync();
        await Assertions.Expect(page.KeptVersion(1)).ToBeVisibleAsync();
        await look.AtAsync("versions");
        await page.GetByRole(AriaRole.Button, new() { Name = "Close", Exact = true }).ClickAsync();
        foreach (string tab in (string[])["Rows", "Chart", "Swatch & yarn"])
        {
            await page.GetByRole(AriaRole.Tab, new() { Name = tab }).ClickAsync();
            await Assertions.Expect(page.GetByRole(AriaRole.Tabpanel, new() { Name = tab })).ToBeVisibleAsync();
            await page.WaitForTimeoutAsync(300);
            await look.AtAsync($"desk-{tab.Split(' ')[0].ToLowerInvariant()}");
        }

        await page.GetByRole(AriaRole.Button, new() { Name = "Add a swatch" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("Stitches", new() { Exact = true })).ToBeVisibleAsync();
        await look.AtAsync("swatch");
        await page.GetByLabel("Stitches", new() { Exact = true }).FillAsync("16");
        await page.GetByLabel("Rows or rounds").FillAsync("20 g");
        await page.GetByLabel("over a width of").FillAsync("4 in");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the swatch" }).ClickAsync();
        await Assertions.Expect(page.Locator(".wrong")).ToHaveCountAsync(1);
        await page.GetByLabel("Rows or rounds").FillAsync("20");
        await page.GetByLabel("Hook", new() { Exact = true }).FillAsync("25");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the swatch" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Is the hook right?")).ToBeVisibleAsync();
        await look.AtAsync("swatch-asked");
        await page.GetByRole(AriaRole.Button, new() { Name = "Cancel" }).ClickAsync();

        await page.GetByRole(AriaRole.Link, new() { Name = "Swatches" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Swatches", Exact = true })).ToBeVisibleAsync();
        await page.WaitForTimeoutAsync(300);
        await look.AtAsync("swatches");
        await page.GetByRole(AriaRole.Link, new() { Name = "Yarns" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Yarns", Exact = true })).ToBeVisibleAsync();
        await page.WaitForTimeoutAsync(300);
        await look.AtAsync("yarns");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add a yarn" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("Weight of a ball")).ToBeVisibleAsync();
        await look.AtAsync("yarn");
        await page.GetByRole(AriaRole.Button, new() { Name = "Cancel" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Put some in the cupboard: Tideline Cotton" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("Whole balls")).ToBeVisibleAsync();
        await look.AtAsync("lot");
        await page.GetByRole(AriaRole.Button, new() { Name = "Cancel" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "What can it make? Tideline Cotton" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Link, new() { Name = "Kelp Bed Washcloth" })).ToBeVisibleAsync();
        await look.AtAsync("lot-makes");
        await page.GetByRole(AriaRole.Button, new() { Name = "Close", Exact = true }).ClickAsync();

        await page.GotoAsync(new Uri(studio.Address, "sign-out").ToString());
        await look.AtAsync("sign-out");
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign out" }).ClickAsync();
        await look.AtAsync("sign-in");
        Assert.Empty(look.Faults);
    }
}

/// <summary>Looks at a page and notes what is wrong with it, or takes its picture.</summary>
public sealed class Look(IPage page, string window)
{
    private static readonly string[] Grave = ["serious", "critical"];

    /// <summary>Pictures far down a page come only when somebody scrolls there: nobody waits for them longer than two seconds.</summary>
    private const string PicturesAreThere =
        "Promise.race([Promise.all([...document.images].map(image => image.decode().catch(() => null))), new Promise(done => setTimeout(done, 2000))])";

    private const string MovementIsOver =
        "Promise.race([Promise.all(document.getAnimations().map(movement => movement.finished.catch(() => null))), new Promise(done => setTimeout(done, 1500))])";

    /// <summary>Only what breaks a rule is told of: all that keeps them, element by element, takes longer to carry over than to find.</summary>
    private static readonly AxeRunOptions Rules = new() { ResultTypes = new HashSet<ResultType> { ResultType.Violations } };

    /// <summary>Set by tests/screenshots.sh, for pictures in place of the rules of accessibility: those are asked in every run of the tests, where nobody looks at pictures.</summary>
    private static readonly bool TakesPictures = Environment.GetEnvironmentVariable("PATTERNSTUDIO_PICTURES") == "1";

    private readonly List<string> faults = [];

    public IReadOnlyList<string> Faults => faults;

    public async Task AtAsync(string name)
    {
        await page.EvaluateAsync(MovementIsOver);
        await page.EvaluateAsync("document.fonts.ready");
        int beyond = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        if (beyond > 0) faults.Add($"{name} {window}: wider than its window by {beyond} px");
        if (TakesPictures) await TakePictureAsync(name);
        else await JudgeAsync(name);
    }

    private async Task TakePictureAsync(string name)
    {
        await page.EvaluateAsync(PicturesAreThere);
        await page.ScreenshotAsync(new() { Path = Path.Combine(Repository.Root, "artifacts", "screens", $"{name}-{window}.png"), FullPage = true });
    }

    private async Task JudgeAsync(string name)
    {
        AxeResult result = await page.RunAxe(Rules);
        if (result.Passes.Length == 0) faults.Add($"{name} {window}: the accessibility rules were not run");
        faults.AddRange(
            from violation in result.Violations
            where Grave.Contains(violation.Impact)
            from node in violation.Nodes
            select $"{name} {window}: {violation.Help} at {node.Html}");
    }
}
