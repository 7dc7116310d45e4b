using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace PatternStudio.EndToEnd;

/// <summary>Writing at the desk: what the editor of the words offers, and that it loses nothing.</summary>
public sealed class WritingTests(OpenStudio studio) : IClassFixture<OpenStudio>
{
    /// <summary>Our own invention; counts by hand: 12 chains, 1 of them turning chain, leave 11 for sc.</summary>
    private const string Mat = "Jetty mat\nUS terms\n\nCh 12.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (11 sc)\nRow 2: Ch 1, sc in each sc across, turn. (11 sc)";

    [Fact]
    public async Task A_finding_is_reached_explained_and_mended_by_keys_alone()
    {
        IPage page = await studio.EnterAsync();
        await page.BeginDesignAsync("Jetty mat by keys", Mat);
        await page.OvertypeAsync("across, turn. (11", "across, turn. (13");
        await Expect(page.Locator(".words-editor .words-error")).ToHaveCountAsync(1);

        await page.Keyboard.PressAsync("Control+Home");
        await page.Keyboard.PressAsync("F8");
        ILocator tip = page.Locator(".words-tip");
        await Expect(tip).ToContainTextAsync("Error");
        await Expect(tip).ToContainTextAsync("11");
        await Expect(tip.GetByRole(AriaRole.Link, new() { Name = "About this finding" })).ToHaveAttributeAsync("href", "help/findings/count-differs");
        await page.Keyboard.PressAsync("Escape");
        await Expect(tip).ToHaveCountAsync(0);
        await page.Keyboard.PressAsync("F1");
        await Expect(tip).ToHaveCountAsync(1);

        await page.Keyboard.PressAsync("Alt+Enter");
        await page.SeesWordsAsync(Mat);
        await Expect(page.Findings()).ToContainTextAsync("nothing to mend");
        await page.Keyboard.PressAsync("Control+z");
        await Expect(page.Locator(".words-editor .words-error")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task The_page_of_a_finding_says_what_it_means()
    {
        IPage page = await studio.EnterAsync();
        await page.GotoAsync(new Uri(studio.Address, "help/findings/count-differs").ToString());

        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "How to mend it" })).ToBeVisibleAsync();
        var look = new Look(page, "1440-light");
        await look.AtAsync("finding-page");
        Assert.Empty(look.Faults);
    }

    [Fact]
    public async Task What_can_come_next_is_offered_and_never_taken_unasked()
    {
        IPage page = await studio.EnterAsync();
        await page.BeginDesignAsync("Jetty mat, next", Mat);
        await page.GoBehindAsync("Row 2: Ch 1, sc in each sc across, turn. (11 sc)");
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.PressAsync("Control+Space");
        ILocator choices = page.Choices();
        await Expect(choices.First).ToContainTextAsync("Row 3:");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.TypeAsync("Ch 1, sc in ne");
        await Expect(choices.First).ToContainTextAsync("next sc");

        // Enter is a new line, not a choice, until one was moved to.
        await page.Keyboard.PressAsync("Enter");
        await page.SeesWordsAsync(Mat + "\nRow 3: Ch 1, sc in ne\n");
        await page.Keyboard.PressAsync("Control+z");
        await page.SeesWordsAsync(Mat + "\nRow 3: Ch 1, sc in ne");
        await page.Keyboard.PressAsync("Control+Space");
        await Expect(choices.First).ToContainTextAsync("next sc");
        await page.Keyboard.PressAsync("Escape");
        await Expect(choices).ToHaveCountAsync(0);
        await page.Keyboard.PressAsync("Control+Space");
        await Expect(choices.First).ToContainTextAsync("next sc");
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Keyboard.PressAsync("Enter");
        await page.SeesWordsAsync(Mat + "\nRow 3: Ch 1, sc in next sc");
    }

    [Fact]
    public async Task Tab_leaves_the_words()
    {
        IPage page = await studio.EnterAsync();
        await page.BeginDesignAsync("Jetty mat, left", Mat);
        await page.GoBehindAsync("Ch 12.");
        await page.Keyboard.PressAsync("Tab");

        await Expect(page.Words()).Not.ToBeFocusedAsync();
        await page.SeesWordsAsync(Mat);
    }

    [Fact]
    public async Task Words_that_were_not_saved_are_with_the_studio_when_the_browser_has_forgotten_them()
    {
        IPage page = await studio.EnterAsync();
        await page.BeginDesignAsync("Jetty mat on the train", Mat);
        await page.OvertypeAsync("Jetty mat", "Jetty mat, wide");
        await Expect(page.Locator(".saved-state")).ToContainTextAsync("Not saved yet");
        string address = page.Url;
        await page.WaitForTimeoutAsync(2500); // the studio keeps them a second after the last key
        await page.CloseAsync(new() { RunBeforeUnload = false });

        IPage elsewhere = await studio.EnterAsync();
        await elsewhere.GotoAsync(address);
        await elsewhere.SeesWordsAsync(Mat.Replace("Jetty mat\n", "Jetty mat, wide\n", StringComparison.Ordinal));
        await Expect(elsewhere.GetByText("were not saved are back. They were written on another computer")).ToBeVisibleAsync();
        await elsewhere.Keyboard.PressAsync("Control+s");
        await elsewhere.SeesSavedAsync(2);

        // Saved: nothing is left to come back.
        await elsewhere.ReloadAsync();
        await elsewhere.SeesSavedAsync(2);
        await elsewhere.SeesWordsAsync(Mat.Replace("Jetty mat\n", "Jetty mat, wide\n", StringComparison.Ordinal));
        await Expect(elsewhere.GetByText("that were not saved are back")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_window_without_unsaved_words_shows_what_another_saves()
    {
        IPage mira = await studio.EnterAsync();
        await mira.BeginDesignAsync("Jetty mat, watched", Mat);
        IPage jo = await mira.OpenBesideAsync(Mat);

        await jo.OvertypeAsync("Jetty mat", "Jetty mat, round");
        await jo.Keyboard.PressAsync("Control+s");
        await jo.SeesSavedAsync(2);

        await mira.SeesWordsAsync(Mat.Replace("Jetty mat\n", "Jetty mat, round\n", StringComparison.Ordinal));
        await mira.SeesSavedAsync(2);
        await Expect(mira.GetByText($"{OpenStudio.Email} has saved version 2")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Two_windows_with_unsaved_words_keep_both()
    {
        IPage first = await studio.EnterAsync();
        await first.BeginDesignAsync("Jetty mat, twice", Mat);
        IPage second = await first.OpenBesideAsync(Mat);
        await first.OvertypeAsync("Jetty mat", "Jetty mat one");
        await Expect(first.Locator(".saved-state")).ToContainTextAsync("Not saved yet");
        await first.WaitForTimeoutAsync(400);
        await second.OvertypeAsync("Jetty mat", "Jetty mat two");
        await Expect(second.Locator(".saved-state")).ToContainTextAsync("Not saved yet");
        await first.CloseAsync(new() { RunBeforeUnload = false });
        await second.CloseAsync(new() { RunBeforeUnload = false });

        IPage again = await first.Context.NewPageAsync();
        await again.GotoAsync(first.Url);
        await Expect(again.GetByRole(AriaRole.Button, new() { Name = "Go on with these instead" })).ToHaveCountAsync(1);
        await Expect(again.Words()).ToContainTextAsync(new System.Text.RegularExpressions.Regex("mat (one|two)"));
        string shown = await again.Words().InnerTextAsync();
        await again.GetByRole(AriaRole.Button, new() { Name = "Go on with these instead" }).ClickAsync();
        await Expect(again.Words()).ToContainTextAsync(shown.Contains("mat two", StringComparison.Ordinal) ? "Jetty mat one" : "Jetty mat two");
    }

    [Fact]
    public async Task What_was_typed_before_a_reload_can_still_be_undone()
    {
        IPage page = await studio.EnterAsync();
        await page.BeginDesignAsync("Jetty mat, undone", Mat);
        await page.OvertypeAsync("Ch 12.", "Ch 13.");
        await page.WaitForTimeoutAsync(1500); // undo is kept a second after the last key
        await page.Keyboard.PressAsync("Control+s");
        await page.SeesSavedAsync(2);

        await page.ReloadAsync();
        await page.SeesWordsAsync(Mat.Replace("Ch 12.", "Ch 13.", StringComparison.Ordinal));
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true }).ClickAsync();
        await Expect(page.Words()).Not.ToContainTextAsync("Ch 13.");
    }

    [Fact]
    public async Task What_was_typed_and_taken_back_at_once_leaves_the_slip_underlined()
    {
        IPage page = await studio.EnterAsync();
        await page.BeginDesignAsync("Jetty mat, back and forth", Mat.Replace("across, turn. (11 sc)\nRow 2", "across, turn. (13 sc)\nRow 2", StringComparison.Ordinal));
        await Expect(page.Locator(".words-editor .words-error")).ToHaveCountAsync(1);
        await page.GoBehindAsync("turn. (13");
        // Both edits within the pause of the typing, whatever the machine is doing.
        await page.EvaluateAsync(
            """
            () => {
              const words = document.querySelector('.words-editor .cm-content'), editor = (words.cmTile ?? words.cmView).view, at = editor.state.selection.main.head;
              editor.dispatch({ changes: { from: at, insert: '1' } });
              editor.dispatch({ changes: { from: at, to: at + 1 } });
            }
            """);
        await Expect(page.Locator(".words-editor .words-error")).ToHaveCountAsync(1);
        await Expect(page.Findings()).ToContainTextAsync("1 error");
    }

    [Fact]
    public async Task In_a_long_pattern_each_slip_is_underlined_and_goes_when_it_is_mended()
    {
        IPage page = await studio.EnterAsync();
        string rows = string.Concat(Enumerable.Range(2, 299).Select(row => $"Row {row}: Ch 1, sc in next {(row % 7) + 1} sc, sc in each sc across, turn. (40 sc)\n"));
        await page.BeginDesignAsync("Jetty runner", "");
        await page.Words().FocusAsync();
        await page.Keyboard.InsertTextAsync("Ch 41.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (40 sc)\n" + rows);
        await Expect(page.Findings()).ToContainTextAsync("nothing to mend");
        await page.SelectAsync("Row 150:");
        await page.Keyboard.PressAsync("End");
        for (int i = 0; i < 4; i++) await page.Keyboard.PressAsync("ArrowLeft");
        var answers = new List<double>();
        for (int turn = 0; turn < 8; turn++)
        {
            Task<double> told = page.EvaluateAsync<double>(TellsWhenUnderlined);
            await page.Keyboard.PressAsync("Backspace");
            answers.Add(await told);
            // The underline goes at once with the words under it; before the next slip the program has seen the row right again.
            await page.Keyboard.PressAsync("0");
            await Expect(page.Findings()).ToContainTextAsync("nothing to mend");
        }

        await Expect(page.Findings()).ToContainTextAsync("nothing to mend");
        answers.Sort();
        TestContext.Current.SendDiagnosticMessage($"from a key to what was found in 300 rows: median {answers[answers.Count / 2]:F0} ms, longest {answers[^1]:F0} ms, the pause of the typing among them");
    }

    [Fact]
    public async Task On_a_slow_line_what_can_come_next_is_told_for_what_was_typed_last()
    {
        IPage page = await studio.EnterAsync();
        await page.BeginDesignAsync("Jetty mat, far away", Mat);
        await page.SlowDownAsync(TimeSpan.FromMilliseconds(500));
        await page.GoBehindAsync("Row 2: Ch 1, sc in each sc across, turn. (11 sc)");
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.TypeAsync("Row 3: Ch 1, sc in", new() { Delay = 30 });
        await page.WaitForTimeoutAsync(200); // the question for these words is on its way
        await page.Keyboard.TypeAsync(" ne", new() { Delay = 30 });
        await Expect(page.Choices().Filter(new() { HasText = "next sc" })).ToBeVisibleAsync();
    }

    /// <summary>Milliseconds from the next key until something is underlined.</summary>
    private const string TellsWhenUnderlined =
        """
        () => new Promise(told => {
          const words = document.querySelector('.words-editor');
          let from = performance.now();
          words.addEventListener('keydown', () => { from = performance.now(); }, { once: true, capture: true });
          const look = () => words.querySelector('.words-error') ? told(performance.now() - from) : requestAnimationFrame(look);
          look();
        })
        """;

    [Theory]
    [MemberData(nameof(Windows.ToLookIn), MemberType = typeof(Windows))]
    public async Task The_editor_at_work_can_be_used_by_everybody(int width, bool dark)
    {
        IPage page = await studio.EnterAsync(width, width < 600 ? 844 : 900, dark);
        var look = new Look(page, $"{width}-{(dark ? "dark" : "light")}");
        await page.BeginDesignAsync($"Jetty mat at work {width} {dark}", Mat);
        await page.OvertypeAsync("turn. (11", "turn. (13");
        await Expect(page.Findings()).ToContainTextAsync("1 error");
        await page.Keyboard.PressAsync("F8");
        await Expect(page.Locator(".words-tip")).ToBeVisibleAsync();
        await look.AtAsync("editor-finding");
        await page.Keyboard.PressAsync("Escape");
        await page.GoBehindAsync("Row 2: Ch 1, sc in each sc across, turn. (11 sc)");
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.TypeAsync("Row 3: Ch 1, sc in ne");
        await Expect(page.Choices().First).ToBeVisibleAsync();
        await look.AtAsync("editor-choices");
        await page.Keyboard.PressAsync("Escape");
        await page.GetByRole(AriaRole.Button, new() { Name = "Find and replace" }).ClickAsync();
        await Expect(page.Locator(".cm-search input[name=search]")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("sc");
        await Expect(page.Locator(".cm-searchMatch").First).ToBeVisibleAsync();
        await look.AtAsync("editor-find");
        Assert.Empty(look.Faults);
    }
}
