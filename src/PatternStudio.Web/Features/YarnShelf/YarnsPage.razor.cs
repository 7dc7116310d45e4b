using Microsoft.AspNetCore.Components;
using MudBlazor;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.YarnShelf;

/// <summary>All yarns of the studio.</summary>
public sealed partial class YarnsPage
{
    private IReadOnlyList<KeptYarn>? yarns;

    [Inject]
    private Yarns Yarns { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    [Inject]
    private IDialogService Dialogs { get; set; } = null!;

    [Inject]
    private ISnackbar Snackbar { get; set; } = null!;

    protected override Task OnInitializedAsync() => ListAsync();

    private async Task ListAsync() => yarns = await Yarns.ListAsync(await SignedIn.CallerAsync());

    private async Task OpenAsync(KeptYarn? kept)
    {
        IDialogReference dialog = await Dialogs.ShowAsync<YarnDialog>(
            Words[kept is null ? "AddTitle" : "ChangeTitle"], new DialogParameters<YarnDialog> { { form => form.Kept, kept } });
        if (await dialog.Result is { Canceled: false }) await ListAsync();
    }

    private async Task RemoveAsync(KeptYarn yarn)
    {
        Outcome removed = await Yarns.RemoveAsync(await SignedIn.CallerAsync(), yarn.Id);
        Snackbar.Add(removed.Succeeded ? Words["Removed", yarn.Details.Name] : removed.ToString(), removed.Succeeded ? MudBlazor.Severity.Normal : MudBlazor.Severity.Warning);
        await ListAsync();
    }
}
