using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.JSInterop;
using PatternStudio.Studio;
using PatternStudio.Studio.Accounts;
using PatternStudio.Studio.Designs;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.Tour;

/// <summary>The tour: a card in the corner that goes from page to page and points at what it speaks of. Everything stays usable beside it.</summary>
public sealed partial class TourCard : IAsyncDisposable
{
    private ElementReference card;
    private IJSObjectReference? pointer;
    private Guid? design;
    private Stop? shown;

    [Inject]
    private Guide Guide { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    [Inject]
    private DesignLibrary Library { get; set; } = null!;

    [Inject]
    private PreferenceBook Book { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    [Inject]
    private IJSRuntime Browser { get; set; } = null!;

    public async ValueTask DisposeAsync()
    {
        Guide.Moved -= Follow;
        try
        {
            if (pointer is not null) await pointer.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The page is gone, and with it what was to be let go.
        }
    }

    protected override void OnInitialized() => Guide.Moved += Follow;

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (shown == Guide.Here) return;
        bool began = shown is null;
        shown = Guide.Here;
        pointer ??= await Browser.InvokeAsync<IJSObjectReference>("import", $"./{Assets["scripts/tour.js"]}");
        await pointer.InvokeVoidAsync("point", shown?.Shows);
        if (began && shown is not null) await card.FocusAsync();
    }

    private void Follow() => _ = InvokeAsync(async () =>
    {
        if (Guide.Here is { } stop && await PageOfAsync(stop) is { } page) Navigation.NavigateTo(page);
        StateHasChanged();
    });

    /// <summary>The page of a stop: the desk stops are at the design that was worked on last.</summary>
    private async Task<string?> PageOfAsync(Stop stop)
    {
        if (stop.Page is not null) return stop.Page;
        Caller caller = await SignedIn.CallerAsync();
        if (design is null && (await Library.ListAsync(caller, new DesignQuery(PageSize: 1))).Designs is [var latest, ..]) design = latest.Id;
        return design is { } id ? $"designs/{id}" : null;
    }

    private Task NextAsync()
    {
        if (Guide.IsLast) return EndAsync();
        Guide.Next();
        return Task.CompletedTask;
    }

    private Task KeyAsync(KeyboardEventArgs key) => key.Key == "Escape" ? EndAsync() : Task.CompletedTask;

    private async Task EndAsync()
    {
        Guide.End();
        await Book.ChangeAsync(await SignedIn.CallerAsync(), preferences => preferences with { TourDone = true });
    }
}
