using System.Text.Json;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace PatternStudio.EndToEnd;

/// <summary>A designer looks at the chart. What it shows is a picture; what it knows of itself stands in the frame's data, and the picture is looked at by its dots.</summary>
public sealed class ChartTests(OpenStudio studio) : IClassFixture<OpenStudio>
{
    /// <summary>Our own: 20 chains leave 19 for sc; 9 repeats of 2 and the last.</summary>
    private const string Cloth =
        "Quay cloth\nUS terms\n\nCh 20.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (19 sc)\nRow 2: Ch 1, sc in first sc, *dc in next sc, sc in next sc; rep from * across, turn. (19 sts)\nRow 3: Ch 1, sc in each st across, turn. (19 sc)\nRows 4-11: Rep Rows 2 and 3.\nFasten off.";

    private const string Stripes =
        "Quay stripes\nUS terms\n\nWith A, ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRow 2: With B, ch 1, turn, sc in each sc across. (20 sc)\nRow 3: With A, ch 1, turn, sc in each sc across. (20 sc)\nRows 4-9: Rep Rows 2 and 3.\nFasten off.";

    private static string Blanket(int stitches, int rows) =>
        $"US terms\n\nCh {stitches + 1}.\nRow 1: Sc in 2nd ch from hook and in each ch across. ({stitches} sc)\nRow 2: Ch 1, turn, sc in each sc across. ({stitches} sc)\nRows 3-{rows}: Rep Row 2. ({stitches} sc)\n";

    [Fact]
    public async Task The_chart_opens_goes_to_a_row_and_back_to_all_of_it()
    {
        IPage page = await OpenAsync("Quay cloth to look at", Cloth);
        ILocator picture = page.GetByRole(AriaRole.Img, new() { Name = "Chart of Quay cloth to look at" });
        await Expect(picture).ToHaveAccessibleDescriptionAsync(new System.Text.RegularExpressions.Regex("Row 2: 19 stitches"));
        Assert.True(await DotsAsync(page) > 500, "something is drawn");

        byte[] whole = await PictureAsync(page);
        await page.GetByLabel("Go to").SelectOptionAsync("Row 7: 19 stitches");
        await Expect(Frame(page)).ToHaveAttributeAsync("data-rows", "1");
        await page.WaitForTimeoutAsync(300);
        Assert.NotEqual(whole, await PictureAsync(page));
        Assert.True(await DotsAsync(page) > 500, "the row is in view");

        await Frame(page).FocusAsync();
        await page.Keyboard.PressAsync("0");
        await page.WaitForTimeoutAsync(300);
        Assert.Equal(whole, await PictureAsync(page));
    }

    [Fact]
    public async Task Stitches_and_their_words_light_up_together_both_ways()
    {
        IPage page = await OpenAsync("Quay cloth to point at", Cloth);
        await page.EvaluateAsync("window.addEventListener('studio:point', e => { (window.pointed ??= []).push(e.detail); })");

        await Frame(page).HoverAsync();
        await Expect(page.Locator(".chart-says")).ToContainTextAsync("Row");
        JsonElement pointed = await page.EvaluateAsync<JsonElement>("window.pointed.filter(Boolean).at(-1)");
        string words = Cloth[pointed.GetProperty("from").GetInt32()..pointed.GetProperty("to").GetInt32()];
        Assert.Contains("c in ", words, StringComparison.Ordinal);
        await page.Mouse.MoveAsync(5, 5);
        Assert.True(await page.EvaluateAsync<bool>("window.pointed.at(-1) === null"), "the words go out again");

        // The dc of the rows 2, 4, 6, 8, 10: nine in each.
        int dc = Cloth.IndexOf("dc in next sc", StringComparison.Ordinal) + 1;
        await page.EvaluateAsync("at => window.dispatchEvent(new CustomEvent('studio:caret', { detail: { at } }))", dc);
        await Expect(Frame(page)).ToHaveAttributeAsync("data-lit", "45");
        // The words stand in row 2's own line: that is the row the cursor is in.
        await Expect(Frame(page)).ToHaveAttributeAsync("data-rows", "1");
    }

    [Fact]
    public async Task Keys_go_from_stitch_to_stitch_and_to_their_words()
    {
        IPage page = await OpenAsync("Quay cloth by keys", Cloth);
        await Frame(page).FocusAsync();
        for (int i = 0; i < 3; i++) await page.Keyboard.PressAsync("Shift+ArrowUp");
        await page.Keyboard.PressAsync("Shift+ArrowRight");
        await Expect(page.Locator("#panel-chart [role=status]")).ToContainTextAsync("Row 2: 19 stitches");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#panel-words :focus")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task What_was_found_is_flagged_at_its_stitch()
    {
        IPage page = await OpenAsync("Quay cloth with a slip", Cloth.Replace("across, turn. (19 sts)", "across, turn. (20 sts)", StringComparison.Ordinal));
        await Expect(page.Findings()).ToContainTextAsync("1 error");
        await Expect(Frame(page)).ToHaveAttributeAsync("data-found", "1");
        await Frame(page).FocusAsync();
        for (int i = 0; i < 3; i++) await page.Keyboard.PressAsync("Shift+ArrowUp");
        for (int i = 0; i < 22; i++) await page.Keyboard.PressAsync("Shift+ArrowRight");
        ILocator says = page.Locator(".chart-says");
        for (int i = 0; i < 22 && !(await says.InnerTextAsync()).Contains("20", StringComparison.Ordinal); i++) await page.Keyboard.PressAsync("Shift+ArrowLeft");
        await Expect(says).ToContainTextAsync("20");
    }

    [Fact]
    public async Task Forty_thousand_stitches_are_drawn_far_and_near()
    {
        IPage page = await OpenAsync("Quay blanket", Blanket(200, 200));
        await Expect(Frame(page)).ToHaveAttributeAsync("data-level", "far");
        Assert.True(int.Parse((await Frame(page).GetAttributeAsync("data-stitches"))!, System.Globalization.CultureInfo.InvariantCulture) >= 40_000);
        Assert.True(await DotsAsync(page) > 10_000, "rows are lines");
        for (int i = 0; i < 6; i++) await page.GetByRole(AriaRole.Button, new() { Name = "Nearer" }).ClickAsync();
        await Expect(Frame(page)).ToHaveAttributeAsync("data-level", "near");
        await page.WaitForTimeoutAsync(500);
        Assert.True(await DotsAsync(page) > 2_000, "stitches are symbols");
        TestContext.Current.SendDiagnosticMessage("frames while panning 40 000 stitches: " + await page.EvaluateAsync<string>(Frames));
    }

    [Fact]
    public async Task A_million_stitches_are_an_overview_and_the_page_lives()
    {
        IPage page = await OpenAsync("Quay field", Blanket(1000, 1000));
        Assert.True(await DotsAsync(page) > 2_000, "rows are blocks");
        await Expect(page.GetByText("more than a page can show one by one")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Options" }).ClickAsync();
        await page.GetByLabel("The repeat alone").CheckAsync();
        await Expect(Frame(page)).Not.ToHaveAttributeAsync("data-stitches", "0");
        await page.GetByRole(AriaRole.Tab, new() { Name = "Rows" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Row, new() { Name = "Row 12" }).First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Two_fingers_bring_the_stitches_nearer_and_leave_the_page_as_it_is()
    {
        IPage page = await OpenAsync("Quay blanket on a phone", Blanket(200, 60), phone: true);
        await Expect(Frame(page)).ToHaveAttributeAsync("data-level", "far");
        LocatorBoundingBoxResult box = (await Frame(page).BoundingBoxAsync())!;
        ICDPSession fingers = await page.Context.NewCDPSessionAsync(page);
        for (int times = 0; times < 3; times++)
        {
            await TouchAsync("touchStart", 10);
            for (int apart = 20; apart <= 140; apart += 10) await TouchAsync("touchMove", apart);
            await fingers.SendAsync("Input.dispatchTouchEvent", new() { ["type"] = "touchEnd", ["touchPoints"] = Array.Empty<object>() });
        }

        await Expect(Frame(page)).ToHaveAttributeAsync("data-level", "near");
        Assert.Equal(1, await page.EvaluateAsync<double>("visualViewport.scale"));

        Task TouchAsync(string type, int apart) => fingers.SendAsync("Input.dispatchTouchEvent", new()
        {
            ["type"] = type,
            ["touchPoints"] = new[] { Finger(0, -apart), Finger(1, apart) },
        });

        object Finger(int id, int aside) => new { id, x = box.X + (box.Width / 2) + aside, y = box.Y + (box.Height / 2) };
    }

    [Fact]
    public async Task Colours_are_those_of_the_yarns_that_the_designer_chose()
    {
        IPage page = await OpenAsync("Quay stripes", Stripes);
        await page.GetByRole(AriaRole.Button, new() { Name = "Options" }).ClickAsync();
        await page.GetByLabel("In colours").CheckAsync();
        ILocator second = page.Locator(".key-colour").Nth(1);
        await Expect(second).ToHaveTextAsync("B");
        string ours = (await second.GetAttributeAsync("style"))!;

        await page.GetByRole(AriaRole.Tab, new() { Name = "Swatch & yarn" }).ClickAsync();
        await page.GetByLabel("B", new() { Exact = true }).SelectOptionAsync(new SelectOptionValue { Index = 1 });
        var look = new Look(page, "1440-light");
        await look.AtAsync("desk-colours");
        await page.GetByRole(AriaRole.Tab, new() { Name = "Chart", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Options" }).ClickAsync();
        await page.GetByLabel("In colours").CheckAsync();
        await Expect(page.Locator(".chart-key")).ToContainTextAsync("B: ");
        Assert.NotEqual(ours, await second.GetAttributeAsync("style"));
        await look.AtAsync("chart-colours");
        Assert.Empty(look.Faults);
    }

    [Fact]
    public async Task The_chart_is_taken_along_in_three_forms()
    {
        IPage page = await OpenAsync("Quay cloth to take", Cloth);
        foreach ((string name, string begins) in ((string, string)[])[("SVG", "<svg"), ("PNG", "\u0089PNG"), ("PDF", "%PDF-")])
        {
            IDownload file = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = $"Download as {name}" }).ClickAsync());
            Assert.Equal($"Quay cloth to take.{name.ToLowerInvariant()}", file.SuggestedFilename);
            Assert.StartsWith(begins, System.Text.Encoding.Latin1.GetString(await File.ReadAllBytesAsync(await file.PathAsync())), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Print_has_the_chart_in_lines()
    {
        IPage page = await OpenAsync("Quay cloth on paper", Cloth);
        await page.EvaluateAsync("window.dispatchEvent(new Event('beforeprint'))");
        Assert.True(await page.Locator(".chart-print svg g").CountAsync() >= 12);
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await Expect(page.Locator(".chart-print svg")).ToBeVisibleAsync();
        await page.EmulateMediaAsync(new() { Media = Media.Screen });
        await page.EvaluateAsync("window.dispatchEvent(new Event('afterprint'))");
        await Expect(page.Locator(".chart-print svg")).ToHaveCountAsync(0);
    }

    private async Task<IPage> OpenAsync(string title, string words, bool phone = false)
    {
        IPage page = phone ? await studio.EnterAsync(390, 844) : await studio.EnterAsync();
        await page.BeginDesignAsync(title, words);
        await page.GetByRole(AriaRole.Tab, new() { Name = "Chart", Exact = true }).ClickAsync();
        await Expect(Frame(page)).ToHaveAttributeAsync("data-level", new System.Text.RegularExpressions.Regex("near|far"));
        await page.WaitForTimeoutAsync(500);
        return page;
    }

    private static ILocator Frame(IPage page) => page.Locator(".chart-frame");

    /// <summary>How many dots of the picture differ from its paper.</summary>
    private static Task<int> DotsAsync(IPage page) => page.EvaluateAsync<int>(
        "(() => { const c = document.querySelector('.chart-canvas'), d = c.getContext('2d').getImageData(0, 0, c.width, c.height).data; let n = 0; for (let i = 0; i < d.length; i += 4) if (d[i] !== d[0] || d[i + 1] !== d[1]) n++; return n; })()");

    private static Task<byte[]> PictureAsync(IPage page) => page.Locator(".chart-canvas").EvaluateAsync<string>("canvas => canvas.toDataURL()").ContinueWith(picture => System.Text.Encoding.ASCII.GetBytes(picture.Result), TaskScheduler.Default);

    private const string Frames =
        """
        async () => {
          const frame = document.querySelector('.chart-frame'), next = () => new Promise(requestAnimationFrame), times = [];
          let last = await next();
          for (let i = 0; i < 60; i++) {
            frame.dispatchEvent(new KeyboardEvent('keydown', { key: ['ArrowLeft', 'ArrowUp', 'ArrowRight', 'ArrowDown'][i >> 2 & 3], cancelable: true }));
            const now = await next();
            times.push(now - last);
            last = now;
          }
          times.sort((a, b) => a - b);
          return `median ${times[30].toFixed(0)} ms, longest ${times[59].toFixed(0)} ms`;
        }
        """;
}
