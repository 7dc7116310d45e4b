using Microsoft.AspNetCore.Components;
using MudBlazor;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.YarnShelf;

/// <summary>Adds a yarn to the studio, or corrects one. Gives its id.</summary>
public sealed partial class YarnDialog
{
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

    protected override void OnInitialized()
    {
        if (Kept is not null) input = YarnInput.Of(Kept.Details);
    }

    private async Task<IReadOnlyList<FieldMessage>> KeepAsync(YarnDetails details)
    {
        Caller caller = await SignedIn.CallerAsync();
        if (Kept is null)
        {
            Outcome<Guid> added = await Yarns.AddAsync(caller, details);
            if (added.Succeeded) Dialog.Close(DialogResult.Ok<Guid?>(added.Value));
            return added.Messages;
        }

        Outcome changed = await Yarns.ChangeAsync(caller, Kept.Id, details);
        if (changed.Succeeded) Dialog.Close(DialogResult.Ok<Guid?>(Kept.Id));
        return changed.Messages;
    }
}
