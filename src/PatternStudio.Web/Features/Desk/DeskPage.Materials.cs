using Microsoft.AspNetCore.Components;
using MudBlazor;
using PatternStudio.Craft.Measuring;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Features.SwatchBook;
using PatternStudio.Web.Features.YarnShelf;
using PatternStudio.Web.Shell;

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

    [Inject]
    private Stash Stash { get; set; } = null!;

    /// <summary>Where the yarn of the cupboard runs out, in a sentence; empty where it lasts or nobody knows.</summary>
    private string StashEnds
    {
        get
        {
            if (Schedule is not { IsKnown: true } schedule || AtHand() is not { Count: > 0 } atHand) return "";
            Measured<SupplyAnswer> answered = YarnSupply.Ask(schedule.Value, atHand);
            return answered is { IsKnown: true, Value.End: { } end } ? Say(end) : "";
        }
    }

    private IReadOnlyList<YarnPart> YarnParts => YarnPart.Of(Size.Yarn, design!.YarnId, colourYarns);

    private string Say(SupplyEnd end)
    {
        string? row = end.LastRow is { } last ? end.Piece.Length > 0 ? $"{end.Piece}, {last}" : last : null;
        if (YarnParts.Count == 1) return row is null ? Words["StashEndsAtOnce"] : Words["StashEnds", row];
        string colour = ColourNames.Say(end.Colour, Words["ColourNotNamed"]);
        return row is null ? Words["StashColourEndsAtOnce", colour] : Words["StashColourEnds", colour, row];
    }

    /// <summary>What the design may take of its yarns. Empty where a colour has none, or shares one with another: how far that goes nobody can tell.</summary>
    private List<YarnLot> AtHand() => YarnParts.Any(part => part.YarnId is null || part.Colours.Count > 1) ? [] :
    [
        .. from part in YarnParts
           from lot in lots
           where lot.Details.YarnId == part.YarnId
           let grams = lot.GramsFor(Id)
           where grams > 0 && lot.Yarn.ToLabel() is not null
           select new YarnLot(part.Colours.FirstOrDefault(""), Mass.FromGrams(grams.Value), lot.Yarn.ToLabel()!, lot.Details.DyeLot),
    ];

    private async Task<Outcome> ReserveAsync(KeptLot lot, double grams)
    {
        Outcome done = await Stash.ReserveAsync(caller, Id, lot.Id, grams);
        lots = await Stash.ListAsync(caller);
        StateHasChanged();
        return done;
    }

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

    private async Task RemoveSwatchAsync(KeptSwatch swatch)
    {
        Outcome<RemovedSwatch> removed = await Swatches.RemoveAsync(caller, swatch.Id);
        trouble = removed.Succeeded ? null : removed.ToString();
        await RefreshAsync();
        if (removed.Value is { } gone) Snackbar.OfferUndo(Words["SwatchRemoved"], Words["Undo"], () => InvokeAsync(() => PutBackAsync(gone)));
    }

    private async Task PutBackAsync(RemovedSwatch gone)
    {
        await DoAsync(Swatches.PutBackAsync(caller, gone));
        StateHasChanged();
    }

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
        IDialogReference dialog = await Dialogs.ShowAsync<YarnDialog>(
            Words["AddYarn"],
            new DialogParameters<YarnDialog> { { shown => shown.LikelyCurrency, yarns.FirstOrDefault(yarn => yarn.Details.Currency.Length > 0)?.Details.Currency ?? "" } },
            YarnDialog.Options);
        if (await dialog.GetReturnValueAsync<Guid?>() is { } id) await ChooseYarnAsync(id);
    }

    private Task DoAsync(Task<Outcome> doing) => DoAsync(doing, RefreshAsync);

    /// <summary>Says what is in the way of it, if anything, and shows what there is now.</summary>
    private async Task DoAsync(Task<Outcome> doing, Func<Task> show)
    {
        Outcome done = await doing;
        trouble = done.Succeeded ? null : done.ToString();
        await show();
    }

    private async Task RefreshAsync()
    {
        await ListMaterialsAsync();
        await ComputeAsync();
    }

    private async Task ListMaterialsAsync() =>
        (swatches, yarns, lots) = (await Swatches.ListAsync(caller, Id), await Yarns.ListAsync(caller), await Stash.ListAsync(caller));
}
