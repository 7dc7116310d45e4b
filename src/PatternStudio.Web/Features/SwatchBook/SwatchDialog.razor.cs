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

    protected override void OnInitialized()
    {
        input = Kept is null ? SwatchInput.New(Moments.Today) : SwatchInput.Of(Kept.Details);
        if (Kept is null) input.YarnId = LikelyYarn;
    }

    private async Task<IReadOnlyList<FieldMessage>> KeepAsync(SwatchDetails details)
    {
        Caller caller = await SignedIn.CallerAsync();
        IReadOnlyList<FieldMessage> messages = Kept is null
            ? (await Swatches.AddAsync(caller, DesignId, details)).Messages
            : (await Swatches.ChangeAsync(caller, Kept.Id, details)).Messages;
        if (messages.Count == 0) Dialog.Close(DialogResult.Ok(true));
        return messages;
    }
}
