using Microsoft.AspNetCore.Components;
using MudBlazor;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.YarnShelf;

/// <summary>Puts a lot of a yarn into the cupboard, or corrects one.</summary>
public sealed partial class LotDialog
{
    private LotInput input = new();

    [Parameter, EditorRequired]
    public KeptYarn Yarn { get; set; } = null!;

    /// <summary>The lot to correct; null for a new one.</summary>
    [Parameter]
    public KeptLot? Kept { get; set; }

    [CascadingParameter]
    private IMudDialogInstance Dialog { get; set; } = null!;

    [Inject]
    private Stash Stash { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    protected override void OnInitialized() => input = Kept is null ? new LotInput { YarnId = Yarn.Id } : LotInput.Of(Kept.Details);

    private async Task<ChangeOutcome<LotDetails>> KeepAsync(LotDetails details, LotDetails? before)
    {
        Caller caller = await SignedIn.CallerAsync();
        ChangeOutcome<LotDetails> outcome = Kept is null
            ? Outcome.Refused((await Stash.AddAsync(caller, details)).Messages)
            : await Stash.ChangeAsync(caller, Kept.Id, details, before);
        if (outcome.Succeeded) Dialog.Close(DialogResult.Ok(true));
        return outcome;
    }
}
