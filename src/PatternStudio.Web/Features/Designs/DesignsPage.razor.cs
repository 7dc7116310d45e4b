using Microsoft.AspNetCore.Components;
using MudBlazor;
using PatternStudio.Studio.Designs;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.Designs;

/// <summary>All designs of the studio.</summary>
public sealed partial class DesignsPage
{
    private List<DesignSummary>? designs;
    private DesignQuery query = new(PageSize: 48);
    private int total;

    [Inject]
    private DesignLibrary Library { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    [Inject]
    private IDialogService Dialogs { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    private bool IsFiltered => query.Search.Length > 0 || query.State is not null;

    protected override Task OnInitializedAsync() => ListAsync(query);

    private async Task ListAsync(DesignQuery asked)
    {
        query = asked;
        DesignPage page = await Library.ListAsync(await SignedIn.CallerAsync(), asked);
        if (asked != query) return; // a later search has overtaken this one
        total = page.Total;
        designs = asked.Page == 0 ? [.. page.Designs] : [.. designs ?? [], .. page.Designs];
    }

    private Task SearchAsync(ChangeEventArgs change) =>
        ListAsync(query with { Search = (change.Value as string ?? "").Trim(), Page = 0 });

    private Task FilterAsync(ChangeEventArgs change) =>
        ListAsync(query with { State = Enum.TryParse(change.Value as string, out DesignState state) ? state : null, Page = 0 });

    private Task OrderAsync(ChangeEventArgs change) =>
        Enum.TryParse(change.Value as string, out DesignOrder order)
            ? ListAsync(query with { Order = order, Descending = order is DesignOrder.Updated or DesignOrder.Errors, Page = 0 })
            : Task.CompletedTask;

    private Task MoreAsync() => ListAsync(query with { Page = query.Page + 1 });

    private async Task BeginAsync()
    {
        IDialogReference dialog = await Dialogs.ShowAsync<NewDesignDialog>(Words["NewTitle"]);
        if (await dialog.GetReturnValueAsync<Guid?>() is { } id) Navigation.NavigateTo($"designs/{id}");
    }
}
