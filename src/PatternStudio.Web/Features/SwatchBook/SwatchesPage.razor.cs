using Microsoft.AspNetCore.Components;
using MudBlazor;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.SwatchBook;

/// <summary>All swatches of the studio, design by design.</summary>
public sealed partial class SwatchesPage
{
    private IReadOnlyList<DesignSwatches>? groups;
    private IReadOnlyList<KeptYarn> yarns = [];
    private string? trouble;
    private Caller caller = null!;

    [Inject]
    private Swatches Swatches { get; set; } = null!;

    [Inject]
    private Yarns Yarns { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    [Inject]
    private IDialogService Dialogs { get; set; } = null!;

    protected override async Task OnInitializedAsync()
    {
        caller = await SignedIn.CallerAsync();
        yarns = await Yarns.ListAsync(caller);
        groups = await Swatches.ListAllAsync(caller);
    }

    private async Task EditAsync(DesignSwatches design, KeptSwatch? kept)
    {
        var parameters = new DialogParameters<SwatchDialog>
        {
            { dialog => dialog.DesignId, design.DesignId },
            { dialog => dialog.Kept, kept },
            { dialog => dialog.Yarns, yarns },
        };
        IDialogReference dialog = await Dialogs.ShowAsync<SwatchDialog>(
            Words[kept is null ? "AddTo" : "ChangeOf", design.Title], parameters, SwatchDialog.Options);
        await dialog.Result;
        groups = await Swatches.ListAllAsync(caller);
    }

    private async Task UseAsync(DesignSwatches design, KeptSwatch swatch)
    {
        Outcome used = await Swatches.ChooseAsync(caller, design.DesignId, swatch.Id);
        trouble = used.Succeeded ? null : used.ToString();
        groups = await Swatches.ListAllAsync(caller);
    }

    private YarnDetails? YarnOf(KeptSwatch swatch) => yarns.FirstOrDefault(yarn => yarn.Id == swatch.Details.YarnId)?.Details;
}
