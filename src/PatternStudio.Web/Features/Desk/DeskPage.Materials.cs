using Microsoft.AspNetCore.Components;
using MudBlazor;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Features.SwatchBook;
using PatternStudio.Web.Features.YarnShelf;

namespace PatternStudio.Web.Features.Desk;

/// <summary>Swatches and yarn: every change shows in the numbers at once.</summary>
public sealed partial class DeskPage
{
    /// <summary>A swatch that was begun and neither kept nor given up: the form closed by a key begins with it.</summary>
    private SwatchInput? swatchDraft;

    [Inject]
    private Swatches Swatches { get; set; } = null!;

    [Inject]
    private Yarns Yarns { get; set; } = null!;

    private SwatchDetails? ChosenSwatch => swatches.FirstOrDefault(swatch => swatch.Chosen)?.Details;

    private YarnDetails? ChosenYarn => yarns.FirstOrDefault(yarn => yarn.Id == design!.YarnId)?.Details;

    private async Task EditSwatchAsync(KeptSwatch? kept)
    {
        var parameters = new DialogParameters<SwatchDialog>
        {
            { dialog => dialog.DesignId, Id },
            { dialog => dialog.Kept, kept },
            { dialog => dialog.Yarns, yarns },
            { dialog => dialog.LikelyYarn, design!.YarnId },
            { dialog => dialog.Draft, swatchDraft ??= SwatchInput.New(Moments.Today) },
            { dialog => dialog.Dropped, EventCallback.Factory.Create(this, () => swatchDraft = null) },
        };
        IDialogReference dialog = await Dialogs.ShowAsync<SwatchDialog>(Words[kept is null ? "AddSwatchTitle" : "ChangeSwatchTitle"], parameters, SwatchDialog.Options);
        bool keptIt = await dialog.Result is { Canceled: false };
        if (keptIt && kept is null) swatchDraft = null;
        if (keptIt) await RefreshAsync();
    }

    private async Task RemoveSwatchAsync(KeptSwatch swatch) => await DoAsync(Swatches.RemoveAsync(caller, swatch.Id));

    private async Task ChooseSwatchAsync(Guid id) => await DoAsync(Swatches.ChooseAsync(caller, Id, id));

    private async Task ChooseYarnAsync(Guid? id)
    {
        Outcome chosen = await Yarns.ChooseAsync(caller, Id, id);
        if (chosen.Succeeded) design = design! with { YarnId = id };
        trouble = chosen.Succeeded ? null : chosen.ToString();
        await RefreshAsync();
    }

    private async Task AddYarnAsync()
    {
        IDialogReference dialog = await Dialogs.ShowAsync<YarnDialog>(Words["AddYarn"]);
        if (await dialog.GetReturnValueAsync<Guid?>() is { } id) await ChooseYarnAsync(id);
    }

    private async Task DoAsync(Task<Outcome> doing)
    {
        Outcome done = await doing;
        trouble = done.Succeeded ? null : done.ToString();
        await RefreshAsync();
    }

    private async Task RefreshAsync()
    {
        (swatches, yarns) = (await Swatches.ListAsync(caller, Id), await Yarns.ListAsync(caller));
        await ComputeAsync();
    }
}
