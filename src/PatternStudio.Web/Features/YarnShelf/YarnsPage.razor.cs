using Microsoft.AspNetCore.Components;
using MudBlazor;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.YarnShelf;

/// <summary>All yarns of the studio, and what of them is in the cupboard.</summary>
public sealed partial class YarnsPage
{
    private IReadOnlyList<KeptYarn>? yarns;
    private ILookup<Guid, KeptLot> lots = Array.Empty<KeptLot>().ToLookup(lot => lot.Id);

    [Inject]
    private Yarns Yarns { get; set; } = null!;

    [Inject]
    private Stash Stash { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    [Inject]
    private IDialogService Dialogs { get; set; } = null!;

    [Inject]
    private ISnackbar Snackbar { get; set; } = null!;

    protected override Task OnInitializedAsync() => ListAsync();

    private async Task ListAsync()
    {
        Caller caller = await SignedIn.CallerAsync();
        lots = (await Stash.ListAsync(caller)).ToLookup(lot => lot.Details.YarnId);
        yarns = await Yarns.ListAsync(caller);
    }

    private async Task OpenAsync(KeptYarn? kept)
    {
        var parameters = new DialogParameters<YarnDialog>
        {
            { form => form.Kept, kept },
            { form => form.LikelyCurrency, yarns?.FirstOrDefault(yarn => yarn.Details.Currency.Length > 0)?.Details.Currency ?? "" },
        };
        IDialogReference dialog = await Dialogs.ShowAsync<YarnDialog>(Words[kept is null ? "AddTitle" : "ChangeTitle"], parameters, YarnDialog.Options);
        await dialog.Result;
        await ListAsync();
    }

    private async Task RemoveAsync(KeptYarn yarn)
    {
        Tell(await Yarns.RemoveAsync(await SignedIn.CallerAsync(), yarn.Id), Words["Removed", yarn.Details.Name]);
        await ListAsync();
    }

    private async Task OpenLotAsync(KeptYarn yarn, KeptLot? kept)
    {
        IDialogReference dialog = await Dialogs.ShowAsync<LotDialog>(
            Words[kept is null ? "AddLot" : "ChangeLot"],
            new DialogParameters<LotDialog> { { form => form.Yarn, yarn }, { form => form.Kept, kept } },
            YarnDialog.Options);
        await dialog.Result;
        await ListAsync();
    }

    private async Task RemoveLotAsync(KeptLot lot)
    {
        Tell(await Stash.RemoveAsync(await SignedIn.CallerAsync(), lot.Id), Words["LotRemoved"]);
        await ListAsync();
    }

    private async Task ShowDesignsAsync(KeptYarn yarn, KeptLot lot) =>
        await Dialogs.ShowAsync<LotDesignsDialog>(Words["MakesTitle", yarn.Details.Name], new DialogParameters<LotDesignsDialog> { { shown => shown.LotId, lot.Id } });

    private void Tell(Outcome outcome, string done) =>
        Snackbar.Add(outcome.Succeeded ? done : outcome.ToString(), outcome.Succeeded ? MudBlazor.Severity.Normal : MudBlazor.Severity.Warning);
}
