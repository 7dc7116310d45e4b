using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using PatternStudio.Craft.Text;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Web.Features.Desk;

/// <summary>
/// The written instructions, in an editor of the browser with underlined findings, counts in the margin and what can come next.
/// The words live in the browser; what arrives here are edits, a moment after the last key.
/// </summary>
public sealed partial class WordsEditor : IAsyncDisposable
{
    private const int WaitMilliseconds = 120;
    private readonly NextWords next = new();
    private ElementReference root;
    private DotNetObjectReference<WordsEditor>? here;
    private IJSObjectReference? module;
    private IJSObjectReference? editor;

    /// <summary>The saved words when the design was opened, with LF line ends.</summary>
    [Parameter, EditorRequired]
    public string Saved { get; set; } = "";

    /// <summary>The version of the saved words.</summary>
    [Parameter, EditorRequired]
    public int Version { get; set; }

    /// <summary>The design: the browser keeps unsaved words and undo under its name.</summary>
    [Parameter, EditorRequired]
    public Guid DesignId { get; set; }

    /// <summary>This desk, among others that may be open on the same design.</summary>
    [Parameter, EditorRequired]
    public Guid Writer { get; set; }

    /// <summary>Words that the studio has kept because they were not saved.</summary>
    [Parameter]
    public IReadOnlyList<DraftWords> Drafts { get; set; } = [];

    /// <summary>The words after an edit.</summary>
    [Parameter]
    public EventCallback<string> TextChanged { get; set; }

    /// <summary>Words that were not saved last time; the latest of them are back now.</summary>
    [Parameter]
    public EventCallback<DraftChoice> DraftFound { get; set; }

    /// <summary>The reader went to the finding at this offset.</summary>
    [Parameter]
    public EventCallback<int> Reached { get; set; }

    /// <summary>The cursor came to another line, 1-based.</summary>
    [Parameter]
    public EventCallback<int> LineReached { get; set; }

    [Inject]
    private IJSRuntime Browser { get; set; } = null!;

    /// <summary>The words as last told by the browser.</summary>
    public string Text { get; private set; } = "";

    /// <summary>What the reader sits at: 'phone', 'tablet' or 'computer'; empty until known.</summary>
    public string Place { get; private set; } = "";

    /// <summary>Shows findings, margin notes and what can be folded.</summary>
    public async Task ShowAsync(IReadOnlyList<WordMark> marks, IReadOnlyList<LineNote> notes, IReadOnlyList<LineFold> folds)
    {
        if (editor is not null) await editor.InvokeVoidAsync("show", marks, notes, folds);
    }

    /// <summary>Puts the cursor on a stretch of the words and brings it into view.</summary>
    public async Task SelectAsync(TextSpan span)
    {
        if (editor is not null) await editor.InvokeVoidAsync("select", span.Start, span.Length);
    }

    /// <summary>Makes an edit as if typed, so that undo takes it back. Does nothing where the words have changed meanwhile.</summary>
    public async Task<bool> ReplaceAsync(TextEdit edit) =>
        editor is not null && edit.Span.End <= Text.Length
        && await editor.InvokeAsync<bool>("replace", edit.Span.Start, Text.Substring(edit.Span.Start, edit.Span.Length), edit.NewText);

    /// <summary>Puts other words in place of all; undo brings the old ones back.</summary>
    public async Task ReplaceAllAsync(string text)
    {
        if (editor is not null) await editor.InvokeVoidAsync("replaceAll", text);
    }

    /// <summary>Goes on with a draft in place of the words shown; undo brings those back.</summary>
    public async Task TakeUpAsync(DraftWords draft)
    {
        if (editor is not null) await editor.InvokeVoidAsync("takeUp", draft);
    }

    /// <summary>Lets the browser forget its drafts: the words are saved, or given up.</summary>
    public async Task GiveUpAsync()
    {
        if (editor is not null) await editor.InvokeVoidAsync("giveUp");
    }

    /// <summary>Takes the words of somebody else's save, where the browser has nothing unsaved. Says whether it did.</summary>
    public async Task<bool> OvertakeAsync(string text, int version) =>
        editor is not null && await editor.InvokeAsync<bool>("overtake", text, version);

    /// <summary>Has the browser tell what it has not told yet.</summary>
    public async Task FlushAsync()
    {
        if (editor is not null) await editor.InvokeVoidAsync("flush");
    }

    /// <summary>Lets the browser forget its draft of words that are saved now.</summary>
    public async Task MarkSavedAsync(string text, int version)
    {
        if (editor is not null) await editor.InvokeVoidAsync("markSaved", text, version);
    }

    /// <summary>Told by the browser: one edit of the words.</summary>
    /// <param name="length">The length of the words after it, to notice when the two sides differ.</param>
    [JSInvokable]
    public async Task Edited(int start, int removed, string inserted, int length)
    {
        bool fits = start >= 0 && removed >= 0 && start + removed <= Text.Length;
        string edited = fits ? new TextEdit(new TextSpan(start, removed), inserted).ApplyTo(Text) : Text;
        Text = fits && edited.Length == length ? edited : await editor!.InvokeAsync<string>("text");
        // The browser waits for the words to arrive, not for what is computed from them.
        _ = InvokeAsync(() => TextChanged.InvokeAsync(Text));
    }

    /// <summary>Asked by the browser: what can come next.</summary>
    /// <param name="lineStart">Where the cursor's line begins.</param>
    /// <param name="before">The line up to the cursor, which may be ahead of the edits told.</param>
    /// <param name="asked">True where the writer asked by key.</param>
    [JSInvokable]
    public async Task<IReadOnlyList<WordChoice>> Complete(int lineStart, string before, bool asked) =>
        lineStart < 0 || lineStart > Text.Length ? [] : await next.AtAsync(Text[..lineStart], before, asked);

    /// <summary>Told by the browser: the reader went to a finding by key.</summary>
    [JSInvokable("Reached")]
    public Task ReachedByKey(int start) => Reached.InvokeAsync(start);

    /// <summary>Told by the browser: the cursor came to another line.</summary>
    [JSInvokable]
    public Task CaretMoved(int line) => LineReached.InvokeAsync(line);

    public async ValueTask DisposeAsync()
    {
        try
        {
            if (editor is { } open)
            {
                editor = null; // an answer that comes later finds nobody to show it to
                await open.InvokeVoidAsync("dispose");
                await open.DisposeAsync();
            }

            if (module is not null) await module.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The page is gone, and with it what was to be let go.
        }

        here?.Dispose();
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender) return;
        here = DotNetObjectReference.Create(this);
        module = await Browser.InvokeAsync<IJSObjectReference>("import", $"./{Assets["scripts/editor.js"]}");
        string draftKey = $"draft:{DesignId}";
        // Which words to go on with is known before any are shown: nothing can be typed into words that are about to be replaced.
        DraftWords[] kept = await module.InvokeAsync<DraftWords[]?>("unsaved", draftKey, Saved) ?? [];
        DraftChoice? choice = DraftChoice.Of(kept, Drafts, Saved);
        Text = choice?.TakenUp.Text ?? Saved;
        editor = await module.InvokeAsync<IJSObjectReference>("open", root, here, new
        {
            text = Saved,
            draft = choice?.TakenUp,
            draftKey,
            undoKey = $"undo:{DesignId}",
            writer = Writer,
            savedVersion = Version,
            wait = WaitMilliseconds,
            says = EditorSays.In(Words),
        });
        Place = await editor.InvokeAsync<string?>("place") ?? "";
        if (choice is not null) await DraftFound.InvokeAsync(choice);
        await TextChanged.InvokeAsync(Text);
    }

    private async Task ActAsync(string act)
    {
        if (editor is not null) await editor.InvokeVoidAsync(act);
    }
}
