using Microsoft.AspNetCore.Components;
using MudBlazor;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Hosting;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.SwatchBook;

/// <summary>Adds a swatch to a design, or corrects one.</summary>
public sealed partial class SwatchDialog
{
    /// <summary>A press beside the form does not close it: what was typed would be gone.</summary>
    public static readonly DialogOptions Options = new() { BackdropClick = false };

    private SwatchInput input = new();

    /// <summary>The design whose fabric it samples.</summary>
    [Parameter, EditorRequired]
    public Guid DesignId { get; set; }

    /// <summary>The swatch to correct; null for a new one.</summary>
    [Parameter]
    public KeptSwatch? Kept { get; set; }

    [Parameter]
    public IReadOnlyList<KeptYarn> Yarns { get; set; } = [];

    /// <summary>The yarn that a new swatch is probably made of.</summary>
    [Parameter]
    public Guid? LikelyYarn { get; set; }

    [CascadingParameter]
    private IMudDialogInstance Dialog { get; set; } = null!;

    [Inject]
    private Swatches Swatches { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    [Inject]
    private Moments Moments { get; set; } = null!;

    /// <summary>What was typed before and not kept; null to begin with an empty form.</summary>
    [Parameter]
    public SwatchInput? Draft { get; set; }

    /// <summary>The maker gave up what was typed.</summary>
    [Parameter]
    public EventCallback Dropped { get; set; }

    protected override void OnInitialized()
    {
        input = Kept is not null ? SwatchInput.Of(Kept.Details) : Draft ?? SwatchInput.New(Moments.Today);
        if (Kept is null) input.YarnId ??= LikelyYarn;
    }

    private async Task<ChangeOutcome<SwatchDetails>> KeepAsync(SwatchToKeep swatch)
    {
        Caller caller = await SignedIn.CallerAsync();
        ChangeOutcome<SwatchDetails> outcome = Kept is null
            ? Outcome.Refused((await Swatches.AddAsync(caller, DesignId, swatch.Details, swatch.Photo?.With)).Messages)
            : await Swatches.ChangeAsync(caller, Kept.Id, swatch.Details, swatch.Before, swatch.Photo);
        if (outcome.Succeeded) Dialog.Close(DialogResult.Ok(true));
        return outcome;
    }

    private async Task CancelAsync()
    {
        await Dropped.InvokeAsync();
        Dialog.Cancel();
    }
}
