using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using PatternStudio.Craft.Text;

namespace PatternStudio.Web.Features.Desk;

/// <summary>
/// The written instructions: a textarea of the browser with line numbers, underlined findings and counts in the margin.
/// The words live in the browser; what arrives here are edits, a quarter of a second after the last key.
/// </summary>
public sealed partial class WordsEditor : IAsyncDisposable
{
    private const int WaitMilliseconds = 250;
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

    /// <summary>Under which name the browser keeps words that are not saved.</summary>
    [Parameter, EditorRequired]
    public string DraftKey { get; set; } = "";

    /// <summary>The words after an edit.</summary>
    [Parameter]
    public EventCallback<string> TextChanged { get; set; }

    /// <summary>Words that were not saved last time and are back now.</summary>
    [Parameter]
    public EventCallback<WordsDraft> DraftFound { get; set; }

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

    /// <summary>Shows findings and margin notes.</summary>
    public async Task ShowAsync(IReadOnlyList<WordMark> marks, IReadOnlyList<LineNote> notes)
    {
        if (editor is not null) await editor.InvokeVoidAsync("show", marks, notes);
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
        await TextChanged.InvokeAsync(Text);
    }

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
        Text = Saved;
        here = DotNetObjectReference.Create(this);
        module = await Browser.InvokeAsync<IJSObjectReference>("import", $"./{Assets["scripts/editor.js"]}");
        editor = await module.InvokeAsync<IJSObjectReference>(
            "open", root, here, new { text = Saved, draftKey = DraftKey, savedVersion = Version, wait = WaitMilliseconds });
        if (await editor.InvokeAsync<WordsDraft?>("draft") is { } draft) await TakeUpAsync(draft);
        else await TextChanged.InvokeAsync(Text);
    }

    private async Task TakeUpAsync(WordsDraft draft)
    {
        await DraftFound.InvokeAsync(draft);
        await ReplaceAllAsync(draft.Text);
    }
}

/// <summary>Words that the browser kept because they were not saved.</summary>
/// <param name="Text">The words.</param>
/// <param name="Version">The saved version that they were based on.</param>
/// <param name="At">When they were kept.</param>
public sealed record WordsDraft(string Text, int Version, DateTimeOffset At);
