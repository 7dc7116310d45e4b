using Microsoft.AspNetCore.Components;
using MudBlazor;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Hosting;
using PatternStudio.Web.Shell;

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
        Caller caller = await SignedIn.CallerAsync();
        Outcome removed = await Yarns.RemoveAsync(caller, yarn.Id);
        await ListAsync();
        if (!removed.Succeeded) Warn(removed.ToString());
        else Snackbar.OfferUndo(Words["Removed", yarn.Details.Name], Words["Undo"], () => ShowAfterAsync(async () => (await Yarns.AddAsync(caller, yarn.Details)).Messages));
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
        Caller caller = await SignedIn.CallerAsync();
        Outcome<RemovedLot> removed = await Stash.RemoveAsync(caller, lot.Id);
        await ListAsync();
        if (removed.Value is not { } gone) Warn(removed.ToString());
        else Snackbar.OfferUndo(Words["LotRemoved"], Words["Undo"], () => ShowAfterAsync(async () => (await Stash.PutBackAsync(caller, gone)).Messages));
    }

    private async Task ShowDesignsAsync(KeptYarn yarn, KeptLot lot) =>
        await Dialogs.ShowAsync<LotDesignsDialog>(Words["MakesTitle", yarn.Details.Name], new DialogParameters<LotDesignsDialog> { { shown => shown.LotId, lot.Id } });

    private Task ShowAfterAsync(Func<Task<IReadOnlyList<FieldMessage>>> putBack) => InvokeAsync(async () =>
    {
        var back = new Outcome(await putBack());
        if (!back.Succeeded) Warn(back.ToString());
        await ListAsync();
        StateHasChanged();
    });

    private void Warn(string why) => Snackbar.Add(why, MudBlazor.Severity.Warning);
}
