using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Routing;
using Microsoft.JSInterop;
using MudBlazor;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Tags;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.Designs;

/// <summary>All designs of the studio. What it shows is in its address.</summary>
public sealed partial class DesignsPage : IAsyncDisposable
{
    /// <summary>A search waits until nothing was typed for so long.</summary>
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(220);

    private readonly HashSet<Guid> picked = [];
    private ShelfAddress address = new();
    private DesignPage? page;
    private IReadOnlyList<KeptTag> tags = [];
    private string typed = "";
    private int typings;
    private bool typing;
    private bool dense;
    private int shownPage = 1;
    private ElementReference shelf;
    private IJSObjectReference? script;

    [Inject]
    private DesignLibrary Library { get; set; } = null!;

    [Inject]
    private DesignTags Tags { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    [Inject]
    private IDialogService Dialogs { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    [Inject]
    private IJSRuntime Browser { get; set; } = null!;

    private int total;

    protected override async Task OnInitializedAsync()
    {
        script = await Browser.InvokeAsync<IJSObjectReference>("import", $"./{Assets["scripts/shelf.js"]}");
        dense = await script.InvokeAsync<string?>("view") == "list";
        Navigation.LocationChanged += Moved;
        tags = await Tags.ListAsync(await SignedIn.CallerAsync());
        await ShowAsync();
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (script is null || page is null || page.Designs.Count == 0) return;
        await script.InvokeVoidAsync("watch", shelf);
        if (shownPage == address.Page) return;
        shownPage = address.Page;
        await script.InvokeVoidAsync("toTop");
    }

    public async ValueTask DisposeAsync()
    {
        Navigation.LocationChanged -= Moved;
        typings++; // whoever has left meanwhile is not to be called back by a search
        try
        {
            if (script is not null) await script.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The window is closed: nothing is left to let go.
        }
    }

    private void Moved(object? sender, LocationChangedEventArgs moved)
    {
        string path = Navigation.ToBaseRelativePath(moved.Location).Split('?', '#')[0];
        if (path is "" or "designs") _ = InvokeAsync(ShowAsync);
    }

    /// <summary>Shows what the address says. What is being typed stays, and is searched for after its pause.</summary>
    private async Task ShowAsync()
    {
        ShelfAddress asked = ShelfAddress.From(Navigation.Uri);
        if (!typing && asked.Search != typed.Trim()) typed = asked.Search;
        address = asked;
        dense = asked.Dense ?? dense;
        DesignPage found = await Library.ListAsync(await SignedIn.CallerAsync(), asked.ToQuery(tags));
        if (asked != address) return; // a later question has overtaken this one
        (page, total) = (found, found.Total);
        int last = Math.Max(1, (total + ShelfAddress.PageSize - 1) / ShelfAddress.PageSize);
        if (asked.Page > last) Navigation.NavigateTo((asked with { Page = last }).ToString(), replace: true);
        StateHasChanged();
    }

    private async Task ShowAnewAsync()
    {
        tags = await Tags.ListAsync(await SignedIn.CallerAsync());
        await ShowAsync();
    }

    private void GoTo(ShelfAddress to, bool replace = false) => Navigation.NavigateTo(to.ToString(), replace: replace);

    /// <summary>Every letter is not a step to go back over: letters of one search replace each other in the history.</summary>
    private async Task TypeAsync(ChangeEventArgs change)
    {
        (typed, typing) = (change.Value as string ?? "", true);
        int latest = ++typings;
        await Task.Delay(Pause);
        if (latest != typings) return;
        typing = false;
        GoTo(address with { Search = typed.Trim(), Page = 1 }, replace: address.Search.Length > 0);
    }

    private void Order(ChangeEventArgs change)
    {
        if (Enum.TryParse(change.Value as string, out DesignOrder order)) GoTo(address with { Order = order, Reverse = false, Page = 1 });
    }

    private async Task SwitchViewAsync()
    {
        if (script is not null) await script.InvokeVoidAsync("remember", dense ? "cards" : "list");
        GoTo(address with { Dense = !dense }, replace: true);
    }

    private void Begin() => Navigation.NavigateTo("designs/new");

    private async Task TagsAsync()
    {
        IDialogReference dialog = await Dialogs.ShowAsync<TagsDialog>(Words["TagsOfStudio"]);
        await dialog.Result;
        await ShowAnewAsync();
    }
}
