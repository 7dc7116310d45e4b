using Microsoft.AspNetCore.Components;
using MudBlazor;
using PatternStudio.Studio.Designs;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.Desk;

/// <summary>Every version saved so far, to read and to take back. Taking back replaces the words on the desk; saving makes it the next version.</summary>
public sealed partial class VersionsDialog
{
    private IReadOnlyList<VersionSummary> versions = [];
    private VersionText? shown;

    [Parameter, EditorRequired]
    public Guid DesignId { get; set; }

    /// <summary>The words on the desk, to compare with.</summary>
    [Parameter, EditorRequired]
    public string Now { get; set; } = "";

    [CascadingParameter]
    private IMudDialogInstance Dialog { get; set; } = null!;

    [Inject]
    private DesignVersions Versions { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    protected override async Task OnInitializedAsync()
    {
        versions = await Versions.ListAsync(await SignedIn.CallerAsync(), DesignId);
        if (versions.Count > 0) await LookAsync(versions[0].Number);
    }

    private async Task LookAsync(int number) =>
        shown = await Versions.FindAsync(await SignedIn.CallerAsync(), DesignId, number);

    private void TakeBack() => Dialog.Close(DialogResult.Ok<string?>(shown!.Text.ReplaceLineEndings("\n")));
}
