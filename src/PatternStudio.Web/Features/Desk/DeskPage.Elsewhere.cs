using Microsoft.AspNetCore.Components;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Web.Features.Desk;

/// <summary>Others at the same design: whoever saves, every open desk learns of it at once and loses nothing.</summary>
public sealed partial class DeskPage
{
    private IDisposable? listening;
    private SavedElsewhere? elsewhere;

    [Inject]
    private SavedNews News { get; set; } = null!;

    private void Listen() => listening = News.Listen(Id, saved => InvokeAsync(() => HearAsync(saved)));

    private async Task HearAsync(SavedElsewhere saved)
    {
        elsewhere = saved;
        if (!saving) await ConsiderElsewhereAsync();
    }

    /// <summary>Takes their words where nothing is unsaved here; else says so and leaves the words alone.</summary>
    private async Task ConsiderElsewhereAsync()
    {
        if (elsewhere is not { } theirs || editor is null) return;
        if (theirs.Version <= version)
        {
            elsewhere = null;
            return;
        }

        string words = theirs.Text.ReplaceLineEndings("\n");
        if (text == savedText && await editor.OvertakeAsync(words, theirs.Version))
        {
            TakeSaved(words, theirs.Version, theirs.SavedAt);
            (text, elsewhere, draft) = (words, null, null);
            Snackbar.Add(Words["TookTheirs", theirs.SavedBy, theirs.Version], MudBlazor.Severity.Normal);
        }

        StateHasChanged();
    }

    private async Task SeeBothAsync()
    {
        if (elsewhere is null) return;
        await editor!.FlushAsync();
        if (await Desk.CompareAsync(caller, Id, text, basedOn) is { } theirs) await AskAsync(text, theirs);
    }
}
