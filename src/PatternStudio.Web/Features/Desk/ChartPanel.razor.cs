using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Charting.InSpace;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Text;
using PatternStudio.Studio.Designs;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.Desk;

/// <summary>The chart, to look at nearer and farther and to take along. It is drawn only while somebody looks at it, and sent only where it has changed.</summary>
public sealed partial class ChartPanel : IAsyncDisposable
{
    private ElementReference frame;
    private ElementReference list;
    private IJSObjectReference? module;
    private IJSObjectReference? chart;
    private DotNetObjectReference<ChartPanel>? here;
    private ChartChoice choice = new() { LeftHanded = Manner.Of.LeftHanded };
    private (CheckedPattern? Pattern, int Size) known;
    private (CheckedPattern? Pattern, int Size) laid;
    private EquatableArray<PieceFlatness> flatness = [];
    private ChartWish? waiting;
    private ChartPicture? picture;
    private byte[] sent = [];
    private IReadOnlyList<LocatedFinding>? marked;
    private bool busy;
    private bool choosing;
    private bool taking;
    private bool gone;

    /// <summary>The words as read and worked; null until they were.</summary>
    [Parameter, EditorRequired]
    public CheckedPattern? Pattern { get; set; }

    /// <summary>The size shown, 0-based.</summary>
    [Parameter]
    public int Size { get; set; }

    /// <summary>The measures of that size, for the outline.</summary>
    [Parameter]
    public Measured<RowSchedule>? Schedule { get; set; }

    /// <summary>What may be chosen about the chart of that size.</summary>
    [Parameter]
    public ChartFacts Facts { get; set; } = ChartFacts.None;

    /// <summary>The yarns of the pattern's colours.</summary>
    [Parameter]
    public EquatableArray<YarnColour> Yarns { get; set; } = [];

    /// <summary>The design's title, to name the picture by.</summary>
    [Parameter]
    public string Title { get; set; } = "";

    /// <summary>What was found in the words: shown at the stitches that those words make.</summary>
    [Parameter]
    public IReadOnlyList<LocatedFinding> Findings { get; set; } = [];

    /// <summary>The reader wants to see the words of a stitch.</summary>
    [Parameter]
    public EventCallback<TextSpan> Go { get; set; }

    [Inject]
    private IJSRuntime Browser { get; set; } = null!;

    [Inject]
    private ILogger<ChartPanel> Log { get; set; } = null!;

    private Drawing? Drawing => picture?.Wish.Choice.Outline == choice.Outline ? picture.Drawing : null;

    /// <summary>The choice of symbols is offered where it makes a difference, and where it was made.</summary>
    private bool KeysDiffer => choice.Symbols != default || picture?.Drawing?.KeysDiffer == true;

    private bool HasOptions => !choice.Outline || Facts.Pieces.Count > 1;

    /// <summary>Told by the browser: the reader asked for the words of a stitch.</summary>
    [JSInvokable]
    public Task WordsOf(int from, int to) => InvokeAsync(() => Go.InvokeAsync(TextSpan.FromTo(from, to)));

    public async ValueTask DisposeAsync()
    {
        gone = true;
        try
        {
            if (chart is not null)
            {
                await chart.InvokeVoidAsync("dispose");
                await chart.DisposeAsync();
            }

            if (module is not null) await module.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The page is gone, and with it what was to be let go.
        }

        here?.Dispose();
    }

    protected override void OnParametersSet()
    {
        if (Pattern is null || (ReferenceEquals(known.Pattern, Pattern) && known.Size == Size)) return;
        known = (Pattern, Size);
        if (choice.Piece >= Facts.Pieces.Count) choice = choice with { Piece = null };
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            here = DotNetObjectReference.Create(this);
            module = await Browser.InvokeAsync<IJSObjectReference>("import", $"./{Assets["scripts/chart.js"]}");
            chart = await module.InvokeAsync<IJSObjectReference>("open", frame, list, here);
        }

        if (chart is null) return;
        await AskAsync();
        await MarkAsync();
    }

    private async Task ChooseAsync(ChartChoice chosen)
    {
        choice = chosen;
        await AskAsync();
    }

    /// <summary>Draws what is wished now, beside the page. Of several wishes that come meanwhile only the last is drawn.</summary>
    private async Task AskAsync()
    {
        if (Pattern is null || Size >= Pattern.Sizes.Count) return;
        var wish = new ChartWish(Pattern, Size, Schedule, Title, choice) { Yarns = Yarns };
        if (wish.SameAs(waiting ?? picture?.Wish)) return;
        waiting = wish;
        if (busy) return;
        busy = true;
        try
        {
            while (!gone && waiting is { } next)
            {
                ChartPicture drawn = await Task.Run(() => Draw(next));
                if (ReferenceEquals(waiting, next)) waiting = null;
                picture = drawn;
                if (chart is not null) await SendAsync(drawn);
            }
        }
        finally
        {
            busy = false;
        }

        if (gone) return;
        StateHasChanged();
        await LieAsync();
    }

    /// <summary>Finds whether it lies flat, after the picture is there: it takes longer.</summary>
    private async Task LieAsync()
    {
        (CheckedPattern? pattern, int size) = known;
        if (pattern is null || (ReferenceEquals(laid.Pattern, pattern) && laid.Size == size)) return;
        laid = known;
        EquatableArray<PieceFlatness> found = await Task.Run(() => FlatnessFinder.FindAll(pattern.Sizes[size].Fabric.Pieces, new StitchForms(pattern.Pattern)));
        if (gone || !ReferenceEquals(known.Pattern, pattern) || known.Size != size) return;
        flatness = found;
        StateHasChanged();
    }

    /// <summary>The desk must stay usable whatever the drawing does.</summary>
    private ChartPicture Draw(ChartWish wish)
    {
        try
        {
            return ChartPicture.Draw(wish);
        }
        catch (Exception fault)
        {
            Log.LogError(fault, "The chart of {Title} could not be drawn", wish.Title);
            return new ChartPicture(wish, null, [], Words["ChartFailed"]);
        }
    }

    private async Task SendAsync(ChartPicture drawn)
    {
        if (gone || drawn.Scene.Length == 0 || sent.AsSpan().SequenceEqual(drawn.Scene)) return;
        sent = drawn.Scene;
        using var stream = new DotNetStreamReference(new MemoryStream(drawn.Scene));
        await chart!.InvokeVoidAsync("take", stream);
    }

    private async Task MarkAsync()
    {
        if (chart is null || ReferenceEquals(marked, Findings)) return;
        marked = Findings;
        await chart.InvokeVoidAsync("found", Findings.Select(found => new
        {
            from = found.Finding.Span.Start,
            to = found.Finding.Span.End,
            tone = Tones.Of(found.Finding.Severity),
            says = found.Finding.Message,
        }));
    }

    private async Task TakeAsync(ChartFormat format)
    {
        if (Drawing is not { } drawing || module is null) return;
        taking = true;
        try
        {
            Drawing whole = drawing with { Flatness = flatness };
            byte[] file = await Task.Run(() => ChartFormats.Paint(whole, format));
            using var stream = new DotNetStreamReference(new MemoryStream(file));
            await module.InvokeVoidAsync("save", ChartFormats.NameOf(drawing.Title, format), stream, ChartFormats.TypeOf(format));
        }
        finally
        {
            taking = false;
        }
    }

    private async Task DoAsync(string act, params object?[] with)
    {
        if (chart is not null) await chart.InvokeVoidAsync(act, with);
    }
}
