using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace PatternStudio.Web.Features.Desk;

/// <summary>The chart, to look at nearer and farther.</summary>
public sealed partial class ChartPanel : IAsyncDisposable
{
    private ElementReference frame;
    private ElementReference key;
    private IJSObjectReference? module;
    private IJSObjectReference? chart;
    private string? shown;

    /// <summary>The drawing, made by the engine; null where there is none.</summary>
    [Parameter, EditorRequired]
    public string? Svg { get; set; }

    /// <summary>The design's title, to name the picture by.</summary>
    [Parameter]
    public string Title { get; set; } = "";

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
        if (shown == Svg) return;
        shown = Svg;
        if (Svg is null) await CloseAsync();
        else if (chart is not null) await chart.InvokeVoidAsync("refresh");
        else await OpenAsync();
    }

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
        await old.InvokeVoidAsync("dispose");
        await old.DisposeAsync();
    }

    private async Task DoAsync(string act, params object?[] with)
    {
        if (chart is not null) await chart.InvokeVoidAsync(act, with);
    }
}
