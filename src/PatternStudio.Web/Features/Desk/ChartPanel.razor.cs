using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Web.Features.Desk;

/// <summary>A row as drawn, to jump to.</summary>
/// <param name="Id">Its group in the drawing.</param>
/// <param name="Label">'Row 3'.</param>
public sealed record DrawnRowName(string Id, string Label);

/// <summary>The chart, to look at nearer and farther.</summary>
public sealed partial class ChartPanel : IAsyncDisposable
{
    private ElementReference frame;
    private ElementReference key;
    private IJSObjectReference? module;
    private IJSObjectReference? chart;
    private string? shown;
    private IReadOnlyList<LocatedFinding> marked = [];
    private IReadOnlyList<DrawnRowName> rows = [];

    /// <summary>The drawing, made by the engine; null where there is none.</summary>
    [Parameter, EditorRequired]
    public string? Svg { get; set; }

    /// <summary>The design's title, to name the picture by.</summary>
    [Parameter]
    public string Title { get; set; } = "";

    /// <summary>What was found in the words: shown at the stitches that those words make.</summary>
    [Parameter]
    public IReadOnlyList<LocatedFinding> Findings { get; set; } = [];

    [Inject]
    private IJSRuntime Browser { get; set; } = null!;

    public async ValueTask DisposeAsync()
    {
        try
        {
            await CloseAsync();
            if (module is not null) await module.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The page is gone, and with it what was to be let go.
        }
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (shown != Svg) await ShowAsync();
        if (chart is null || ReferenceEquals(marked, Findings)) return;
        marked = Findings;
        await chart.InvokeVoidAsync("found", marked.Select(found => new { from = found.Finding.Span.Start, to = found.Finding.Span.End }));
    }

    private async Task ShowAsync()
    {
        shown = Svg;
        if (Svg is null)
        {
            await CloseAsync();
            return;
        }
        if (chart is not null) await chart.InvokeVoidAsync("refresh");
        else await OpenAsync();
        rows = await chart!.InvokeAsync<DrawnRowName[]>("rows") ?? [];
        StateHasChanged();
    }

    private Task JumpAsync(ChangeEventArgs chosen) => DoAsync("jump", chosen.Value as string ?? "");

    private async Task OpenAsync()
    {
        module ??= await Browser.InvokeAsync<IJSObjectReference>("import", $"./{Assets["scripts/chart.js"]}");
        chart = await module.InvokeAsync<IJSObjectReference>("open", frame, key);
    }

    private async Task CloseAsync()
    {
        if (chart is null) return;
        IJSObjectReference old = chart;
        chart = null;
        rows = [];
        marked = [];
        await old.InvokeVoidAsync("dispose");
        await old.DisposeAsync();
    }

    private async Task DoAsync(string act, params object?[] with)
    {
        if (chart is not null) await chart.InvokeVoidAsync(act, with);
    }
}
