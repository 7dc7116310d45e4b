using System.Globalization;
using Microsoft.AspNetCore.Components;
using MudBlazor;
using PatternStudio.Studio;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Designs.Comparing;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.Desk;

/// <summary>Every version saved so far: to name, to compare with another in words and numbers, and to go back to, which makes it the next version.</summary>
public sealed partial class VersionsDialog
{
    /// <summary>Stands for the words on the desk where a version's number is asked.</summary>
    private const int DeskWordsNumber = 0;

    private IReadOnlyList<VersionSummary> versions = [];
    private VersionText? before;
    private VersionText? after;
    private int afterNumber;
    private bool inNumbers;
    private NumbersComparison? numbers;
    private string? trouble;

    [Parameter, EditorRequired]
    public Guid DesignId { get; set; }

    /// <summary>The words on the desk, to compare with.</summary>
    [Parameter, EditorRequired]
    public string Now { get; set; } = "";

    /// <summary>Swatches and yarn as they are now: both versions are computed with the same.</summary>
    [Parameter]
    public DesignMaterials Materials { get; set; } = DesignMaterials.None;

    [CascadingParameter]
    private IMudDialogInstance Dialog { get; set; } = null!;

    [Inject]
    private DesignVersions Versions { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    private string AfterText => after?.Text ?? Now;

    protected override async Task OnInitializedAsync()
    {
        versions = await Versions.ListAsync(await SignedIn.CallerAsync(), DesignId);
        if (versions.Count > 0) await CompareAsync(versions[0].Number, DeskWordsNumber);
    }

    private async Task CompareAsync(int from, int to)
    {
        Caller caller = await SignedIn.CallerAsync();
        before = await Versions.FindAsync(caller, DesignId, from);
        after = to == DeskWordsNumber ? null : await Versions.FindAsync(caller, DesignId, to);
        afterNumber = after?.Number ?? DeskWordsNumber;
        numbers = null;
        if (inNumbers) await ReckonAsync();
    }

    private async Task ShowAsync(bool wantNumbers)
    {
        inNumbers = wantNumbers;
        if (inNumbers && numbers is null) await ReckonAsync();
    }

    private async Task ReckonAsync()
    {
        if (before is not { Text: var was }) return;
        (string now, DesignMaterials materials) = (AfterText, Materials);
        numbers = await Task.Run(() => NumbersComparison.Between(DesignResults.Reckon(was, materials).Results, DesignResults.Reckon(now, materials).Results));
    }

    private async Task NameAsync(ChangeEventArgs change)
    {
        Caller caller = await SignedIn.CallerAsync();
        Outcome named = await Versions.NameAsync(caller, DesignId, before!.Number, change.Value as string ?? "");
        trouble = named.Succeeded ? null : named.ToString();
        versions = await Versions.ListAsync(caller, DesignId);
    }

    private string NameOf(int number) => versions.FirstOrDefault(version => version.Number == number)?.Name ?? "";

    private static int NumberOf(ChangeEventArgs change) => int.TryParse(change.Value as string, CultureInfo.InvariantCulture, out int number) ? number : DeskWordsNumber;

    private void TakeBack() => Dialog.Close(DialogResult.Ok<string?>(before!.Text.ReplaceLineEndings("\n")));
}
