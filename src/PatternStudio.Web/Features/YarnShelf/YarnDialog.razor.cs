using Microsoft.AspNetCore.Components;
using MudBlazor;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.YarnShelf;

/// <summary>Adds a yarn to the studio, or corrects one. Gives its id.</summary>
public sealed partial class YarnDialog
{
    /// <summary>A press beside the form does not close it: what was typed would be gone.</summary>
    public static readonly DialogOptions Options = new() { BackdropClick = false };

    private YarnInput input = new();

    /// <summary>The yarn to correct; null for a new one.</summary>
    [Parameter]
    public KeptYarn? Kept { get; set; }

    [CascadingParameter]
    private IMudDialogInstance Dialog { get; set; } = null!;

    [Inject]
    private Yarns Yarns { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    /// <summary>The currency that a new yarn's price is probably in; empty for no idea.</summary>
    [Parameter]
    public string LikelyCurrency { get; set; } = "";

    protected override void OnInitialized() =>
        input = Kept is null ? new YarnInput { Currency = LikelyCurrency } : YarnInput.Of(Kept.Details);

    private async Task<ChangeOutcome<YarnDetails>> KeepAsync(YarnDetails details, YarnDetails? before)
    {
        Caller caller = await SignedIn.CallerAsync();
        if (Kept is null)
        {
            Outcome<Guid> added = await Yarns.AddAsync(caller, details);
            if (added.Succeeded) Dialog.Close(DialogResult.Ok<Guid?>(added.Value));
            return Outcome.Refused(added.Messages);
        }

        ChangeOutcome<YarnDetails> changed = await Yarns.ChangeAsync(caller, Kept.Id, details, before);
        if (changed.Succeeded) Dialog.Close(DialogResult.Ok<Guid?>(Kept.Id));
        return changed;
    }
}
