using Bunit;
using Microsoft.AspNetCore.Components;
using PatternStudio.Craft.Text;
using PatternStudio.Studio.Designs;
using PatternStudio.Web.Features.Desk;

namespace PatternStudio.Web.Tests.Desk;

public sealed class WordsEditorTests : PageTest
{
    private const string Saved = "Row 1: Sc in each st. (21 sts)";
    private static readonly Guid Other = new("b6d6f1ac-0000-4000-8000-000000000001");
    private readonly BunitJSModuleInterop module;
    private readonly BunitJSModuleInterop browser;
    private readonly List<string> told = [];
    private DraftChoice? draft;

    public WordsEditorTests()
    {
        module = JSInterop.SetupModule(call => call.Arguments[0] is string path && path.Contains("editor.js", StringComparison.Ordinal));
        module.Mode = JSRuntimeMode.Loose;
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
    public void Words_that_the_browser_kept_come_back()
    {
        var kept = new DraftWords(Other, "Row 1: Sc in each", 3, Noon, "");
        module.Setup<DraftWords[]?>("unsaved", _ => true).SetResult([kept]);

        Assert.Equal("Row 1: Sc in each", Show().Instance.Text);
        Assert.Equal(kept, draft!.TakenUp);
        Assert.Equal(["Row 1: Sc in each"], told);
    }

    [Fact]
    public void Words_that_the_studio_kept_come_back_where_the_browser_has_none()
    {
        var kept = new DraftWords(Other, "Row 1: Sc in each", 3, Noon, "phone");

        Assert.Equal("Row 1: Sc in each", Show([kept]).Instance.Text);
        Assert.Equal(kept, draft!.TakenUp);
    }

    [Fact]
    public void It_is_known_which_words_to_go_on_with_before_any_are_shown()
    {
        Show();
        string[] asked = [.. JSInterop.Invocations.Select(call => call.Identifier)];
        Assert.Equal(["import", "unsaved", "open", "place"], asked);
    }

    [Fact]
    public async Task What_can_come_next_is_told_of_the_line_as_the_browser_has_it()
    {
        const string Above = "Ch 12.\nRow 1: Sc in 2nd ch from hook and in each ch across. (11 sc)\n";
        IRenderedComponent<WordsEditor> editor = Show();
        await editor.InvokeAsync(() => editor.Instance.Edited(0, Saved.Length, Above, Above.Length));

        IReadOnlyList<WordChoice> choices = await editor.InvokeAsync(() => editor.Instance.Complete(Above.Length, "Row 2: Ch 1, turn, sc in ne", asked: false));

        Assert.Equal("next sc", choices[0].Words);
        Assert.Equal("Row 2: Ch 1, turn, sc in ".Length, choices[0].From);
    }

    private IRenderedComponent<WordsEditor> Show(IReadOnlyList<DraftWords>? drafts = null) => Render<WordsEditor>(with => with
        .Add(editor => editor.Saved, Saved)
        .Add(editor => editor.Version, 3)
        .Add(editor => editor.DesignId, Guid.NewGuid())
        .Add(editor => editor.Writer, Guid.NewGuid())
        .Add(editor => editor.Drafts, drafts ?? [])
        .Add(editor => editor.TextChanged, EventCallback.Factory.Create<string>(this, told.Add))
        .Add(editor => editor.DraftFound, EventCallback.Factory.Create<DraftChoice>(this, found => draft = found)));
}
