using Microsoft.Playwright;

namespace PatternStudio.EndToEnd;

/// <summary>What a designer does at the desk.</summary>
internal static class DeskActs
{
    public static ILocator Words(this IPage page) => page.GetByRole(AriaRole.Textbox, new() { Name = "Written instructions", Exact = true });

    public static ILocator Choices(this IPage page) => page.Locator(".words-choices [role=option]");

    public static ILocator Findings(this IPage page) => page.Locator("section.findings");

    public static async Task OpenDesignAsync(this IPage page, string title)
    {
        await page.GetByRole(AriaRole.Link, new() { Name = title, Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".words-editor .cm-line").Nth(2)).ToBeAttachedAsync();
    }

    /// <summary>Selects the first place where the words say something, as a mouse would: scrolled to, since only what is in view is there to be selected.</summary>
    public static async Task SelectAsync(this IPage page, string words)
    {
        ILocator scroller = page.Locator(".words-editor .cm-scroller");
        await scroller.EvaluateAsync("scroller => scroller.scrollTop = 0");
        for (int screen = 0; !await MarkAsync(page, words); screen++)
        {
            Assert.True(screen < 60, $"not there: {words}");
            await scroller.EvaluateAsync("scroller => scroller.scrollTop += scroller.clientHeight * .7");
            await page.WaitForTimeoutAsync(100);
        }

        // The editor hears of a selection a moment later, and not at all where it just then draws its lines anew.
        for (int tries = 0; !await HasHeardAsync(page, words); tries++)
        {
            Assert.True(tries < 200, $"not selected: {words}");
            await page.WaitForTimeoutAsync(25);
            if (tries % 20 == 19) await MarkAsync(page, words);
        }
    }

    private static Task<bool> HasHeardAsync(IPage page, string words) => page.Words().EvaluateAsync<bool>(
        "(editor, words) => { const { state } = editor.cmTile.root.view, { from, to } = state.selection.main; return state.sliceDoc(from, to) === words; }", words);

    private static Task<bool> MarkAsync(IPage page, string words) => page.Words().EvaluateAsync<bool>(
        """
        (editor, words) => {
          const line = [...editor.querySelectorAll(".cm-line")].find(line => line.textContent.includes(words));
          if (!line) return false;
          line.scrollIntoView({ block: "center" });
          const range = document.createRange(), walk = document.createTreeWalker(line, NodeFilter.SHOW_TEXT);
          let from = line.textContent.indexOf(words), to = from + words.length, begun = false;
          for (let node = walk.nextNode(); node; node = walk.nextNode()) {
            if (!begun && from < node.length) { range.setStart(node, from); begun = true; }
            if (to <= node.length) { range.setEnd(node, to); break; }
            from -= node.length; to -= node.length;
          }
          editor.focus();
          getSelection().removeAllRanges();
          getSelection().addRange(range);
          return true;
        }
        """,
        words);

    /// <summary>Puts the cursor behind the first place where the words say something.</summary>
    public static async Task GoBehindAsync(this IPage page, string words)
    {
        await page.SelectAsync(words);
        await page.Keyboard.PressAsync("ArrowRight");
    }

    /// <summary>All words of a pattern that is short enough to be on the screen whole. What an empty editor says to its writer is none of them.</summary>
    public static Task SeesWordsAsync(this IPage page, string words) => page.WaitForFunctionAsync(
        """
        words => {
          const lines = [...document.querySelectorAll('.words-editor .cm-line')];
          return lines.length > 0 && lines.map(line => line.querySelector('.cm-placeholder') ? '' : line.textContent).join('\n') === words;
        }
        """,
        words);

    /// <summary>Types over the first place where the words say something.</summary>
    public static async Task OvertypeAsync(this IPage page, string old, string with)
    {
        await page.SelectAsync(old);
        await page.Keyboard.TypeAsync(with);
    }

    /// <summary>A new design with these words, laid on the desk.</summary>
    public static async Task BeginDesignAsync(this IPage page, string title, string words)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = "New design" }).ClickAsync();
        await page.GetByLabel("Title", new() { Exact = true }).FillAsync(title);
        await page.GetByLabel("Pattern, if you have one").FillAsync(words);
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin", Exact = true }).ClickAsync();
        await page.SeesWordsAsync(words);
    }

    /// <summary>Opens the same design in a second window, as another person or another tab has it.</summary>
    /// <param name="words">The words that are saved.</param>
    public static async Task<IPage> OpenBesideAsync(this IPage page, string words)
    {
        IPage other = await page.Context.NewPageAsync();
        await other.GotoAsync(page.Url);
        await other.SeesWordsAsync(words);
        return other;
    }

    /// <summary>Loads the page again on a line that lets each answer of the program wait.</summary>
    public static async Task SlowDownAsync(this IPage page, TimeSpan wait)
    {
        await page.RouteWebSocketAsync(new System.Text.RegularExpressions.Regex("_blazor"), line =>
        {
            IWebSocketRoute program = line.ConnectToServer();
            Task before = Task.CompletedTask;
            program.OnMessage(frame =>
            {
                Task due = Task.Delay(wait);
                before = SendAsync(before, due, frame);
            });

            async Task SendAsync(Task first, Task due, IWebSocketFrame frame)
            {
                await first;
                await due;
                if (frame.Binary is { } bytes) line.Send(bytes);
                else line.Send(frame.Text ?? "");
            }
        });
        await page.ReloadAsync();
    }

    /// <summary>A version in the list of earlier ones.</summary>
    public static ILocator KeptVersion(this IPage page, int number) => page.Locator("button.version").Filter(new() { HasText = $"Version {number}" });

    /// <summary>The page is alive: files given to its fields arrive.</summary>
    public static Task FilesAreTakenAsync(this IPage page) => page.WaitForFunctionAsync(
        "() => { const fields = [...document.querySelectorAll('input[type=file]')]; return fields.length > 0 && fields.every(field => '_blazorInputFileNextFileId' in field); }");

    public static Task SeesSavedAsync(this IPage page, int version) =>
        Assertions.Expect(page.Locator(".saved-state")).ToContainTextAsync($"Version {version} saved");
}
