using Bunit;
using Microsoft.AspNetCore.Components;
using PatternStudio.Craft.Text;
using PatternStudio.Web.Features.Desk;

namespace PatternStudio.Web.Tests.Desk;

public sealed class WordsEditorTests : PageTest
{
    private const string Saved = "Row 1: Sc in each st. (21 sts)";
    private readonly BunitJSModuleInterop browser;
    private readonly List<string> told = [];
    private WordsDraft? draft;

    public WordsEditorTests()
    {
        BunitJSModuleInterop module = JSInterop.SetupModule(call => call.Arguments[0] is string path && path.Contains("editor.js", StringComparison.Ordinal));
        browser = module.SetupModule("open", _ => true);
        browser.Mode = JSRuntimeMode.Loose;
    }

    [Fact]
    public async Task An_edit_told_by_the_browser_changes_the_words()
    {
        IRenderedComponent<WordsEditor> editor = Show();

        await editor.InvokeAsync(() => editor.Instance.Edited(start: 23, removed: 2, inserted: "20", length: Saved.Length));

        Assert.Equal("Row 1: Sc in each st. (20 sts)", told[^1]);
        Assert.Equal(told[^1], editor.Instance.Text);
    }

    [Fact]
    public async Task Where_an_edit_does_not_fit_the_browser_is_asked_for_all_words()
    {
        browser.Setup<string>("text").SetResult("Row 1: as the browser has it");
        IRenderedComponent<WordsEditor> editor = Show();

        await editor.InvokeAsync(() => editor.Instance.Edited(start: 900, removed: 2, inserted: "20", length: 28));

        Assert.Equal("Row 1: as the browser has it", told[^1]);
    }

    [Fact]
    public async Task A_fix_is_made_only_where_the_words_are_still_the_same()
    {
        browser.Setup<bool>("replace", 23, "21", "20").SetResult(true);
        IRenderedComponent<WordsEditor> editor = Show();

        Assert.True(await editor.InvokeAsync(() => editor.Instance.ReplaceAsync(new TextEdit(new TextSpan(23, 2), "20"))));
        Assert.False(await editor.InvokeAsync(() => editor.Instance.ReplaceAsync(new TextEdit(new TextSpan(230, 2), "20"))));
    }

    [Fact]
    public void Words_that_were_not_saved_come_back()
    {
        browser.Setup<WordsDraft?>("draft").SetResult(new WordsDraft("Row 1: Sc in each", 3, Noon));
        Show();

        Assert.Equal(new WordsDraft("Row 1: Sc in each", 3, Noon), draft);
        Assert.Equal("Row 1: Sc in each", browser.VerifyInvoke("replaceAll").Arguments[0]);
    }

    [Fact]
    public void The_box_says_what_it_is_for() =>
        Assert.Equal("Written instructions", Show().Find("textarea").GetAttribute("aria-label"));

    private IRenderedComponent<WordsEditor> Show() => Render<WordsEditor>(with => with
        .Add(editor => editor.Saved, Saved)
        .Add(editor => editor.Version, 3)
        .Add(editor => editor.DraftKey, "draft:1")
        .Add(editor => editor.TextChanged, EventCallback.Factory.Create<string>(this, told.Add))
        .Add(editor => editor.DraftFound, EventCallback.Factory.Create<WordsDraft>(this, found => draft = found)));
}
