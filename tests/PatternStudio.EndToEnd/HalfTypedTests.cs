using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace PatternStudio.EndToEnd;

/// <summary>A step that is being typed is not underlined as one that can't be read, until the writer leaves it or rests.</summary>
public sealed class HalfTypedTests(OpenStudio studio) : IClassFixture<OpenStudio>
{
    /// <summary>Our own invention; counts by hand: 12 chains, 1 of them turning chain, leave 11 for sc.</summary>
    private const string Mat = "Pier mat\nUS terms\n\nCh 12.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (11 sc)\nRow 2: Ch 1, sc in each sc across, turn. (11 sc)";

    /// <summary>Words that no pattern has, as a step half written has them.</summary>
    private const string Half = "\nRow 3: Ch 1, wrobble the";

    [Theory]
    [InlineData(Half, 1)]
    [InlineData("\nRow 3: Ch 1, (sc, wrobble", 2)] // the bracket that is not closed, and the word
    public async Task A_step_half_typed_is_underlined_when_the_cursor_has_left_it(string half, int marks)
    {
        IPage page = await OpenedAsync($"Pier mat, left {marks}");
        await page.EvaluateAsync(Watch);
        await TypeHalfAsync(page, half);
        await Expect(page.Findings()).ToContainTextAsync("wrobble");
        Assert.False(await page.EvaluateAsync<bool>("window.underlinedWhileTyping"));

        // The list tells it at once; the words do when the cursor is in another row.
        await page.Keyboard.PressAsync("ArrowUp");
        await Expect(Underlined(page)).ToHaveCountAsync(marks);
    }

    [Fact]
    public async Task A_step_half_typed_is_underlined_when_the_writer_rests()
    {
        IPage page = await OpenedAsync("Pier mat, rest");
        await TypeHalfAsync(page);

        await Expect(Underlined(page)).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task What_is_wrong_elsewhere_is_underlined_all_the_while()
    {
        IPage page = await OpenedAsync("Pier mat, elsewhere");
        await page.OvertypeAsync("across, turn. (11", "across, turn. (13");
        await Expect(page.Locator(".words-editor .words-error")).ToHaveCountAsync(1);
        await TypeHalfAsync(page);

        await Expect(page.Locator(".words-editor .words-error")).ToHaveCountAsync(1);
    }

    /// <summary>Notes whether the row is underlined within a second of the latest key: half a second before the writer is taken to rest.</summary>
    private const string Watch =
        """
        () => {
          window.underlinedWhileTyping = false;
          let latest = 0;
          document.addEventListener("keydown", () => { latest = performance.now(); }, true);
          new MutationObserver(() => {
            const under = [...document.querySelectorAll(".words-editor .words-found")].some(mark => mark.closest(".cm-line")?.textContent.includes("wrobble"));
            if (under && performance.now() - latest < 1000) window.underlinedWhileTyping = true;
          }).observe(document.querySelector(".words-editor"), { childList: true, subtree: true, attributes: true });
        }
        """;

    private static ILocator Underlined(IPage page) => page.Locator(".words-editor .cm-line", new() { HasText = "wrobble" }).Locator(".words-found");

    private async Task<IPage> OpenedAsync(string title)
    {
        IPage page = await studio.EnterAsync();
        await page.BeginDesignAsync(title, Mat);
        return page;
    }

    private static async Task TypeHalfAsync(IPage page, string half = Half)
    {
        await page.Keyboard.PressAsync("Escape");
        await page.Words().FocusAsync();
        await page.Keyboard.PressAsync("Control+End");
        await page.Keyboard.TypeAsync(half, new() { Delay = 60 });
    }
}
