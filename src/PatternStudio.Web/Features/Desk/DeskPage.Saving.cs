using Microsoft.AspNetCore.Components;
using MudBlazor;
using PatternStudio.Craft.Terms;
using PatternStudio.Studio;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.Desk;

/// <summary>Saving: nothing written is ever lost, whoever else saves and whatever the browser does.</summary>
public sealed partial class DeskPage
{
    private string text = "";
    private string savedText = "";
    private int version;
    private int basedOn;
    private DateTimeOffset savedAt;
    private bool saving;

    private SavedState State => saving ? SavedState.Saving : text == savedText ? SavedState.Saved : SavedState.Unsaved;

    private void TakeSaved(string words, int number, DateTimeOffset at) =>
        (savedText, version, basedOn, savedAt) = (words, number, number, at);

    private async Task SaveAsync()
    {
        if (saving || editor is null) return;
        // Set before the first wait: a second press of Ctrl+S meanwhile must not save, or ask, twice.
        saving = true;
        try
        {
            await editor.FlushAsync();
            if (text == savedText) return;
            StateHasChanged();
            await SaveAsync(text, basedOn);
        }
        finally
        {
            saving = false;
            await ConsiderElsewhereAsync();
            StateHasChanged();
        }
    }

    private async Task SaveAsync(string words, int onVersion)
    {
        switch (await Desk.SaveAsync(caller, Id, words, onVersion))
        {
            case Saved saved:
                await TakeAsync(words, saved);
                break;
            case Conflict theirs:
                await AskAsync(words, theirs);
                break;
            case Refused refused:
                trouble = string.Join(' ', refused.Messages.Select(message => message.Message));
                break;
        }
    }

    private async Task TakeAsync(string words, Saved saved)
    {
        TakeSaved(words, saved.Version, saved.SavedAt);
        (draft, trouble) = (null, null);
        await editor!.MarkSavedAsync(words, saved.Version);
        await KeepDraftAsync();
    }

    private async Task AskAsync(string mine, Conflict theirs)
    {
        var parameters = new DialogParameters<ConflictDialog> { { dialog => dialog.Theirs, theirs }, { dialog => dialog.Mine, mine } };
        IDialogReference dialog = await Dialogs.ShowAsync<ConflictDialog>(
            Words["ConflictTitle"], parameters, new DialogOptions { MaxWidth = MaxWidth.Large, FullWidth = true });
        switch (await dialog.GetReturnValueAsync<ConflictChoice?>())
        {
            case ConflictChoice.Together:
                await editor!.ReplaceAllAsync(theirs.Together!);
                await SaveAsync(theirs.Together!, theirs.TheirVersion);
                break;
            case ConflictChoice.MineNext:
                await SaveAsync(mine, theirs.TheirVersion);
                break;
            case ConflictChoice.MineApart:
                await KeepApartAsync(mine, theirs);
                break;
        }
    }

    private async Task KeepApartAsync(string mine, Conflict theirs)
    {
        Outcome<Guid> kept = await Desk.CreateAsync(caller, Words["MineTitle", design!.Title], mine);
        if (!kept.Succeeded)
        {
            trouble = kept.ToString();
            return;
        }

        string words = theirs.TheirText.ReplaceLineEndings("\n");
        TakeSaved(words, theirs.TheirVersion, theirs.SavedAt);
        (draft, elsewhere) = (null, null);
        await editor!.ReplaceAllAsync(words);
        await editor.MarkSavedAsync(words, theirs.TheirVersion);
        Snackbar.Add(Words["MineKept"], MudBlazor.Severity.Normal);
    }

    private async Task ReadInAsync(Terminology terms)
    {
        await editor!.FlushAsync();
        IDialogReference dialog = await Dialogs.ShowAsync<OtherTermsDialog>(
            Words[terms == Terminology.Uk ? "InUkTerms" : "InUsTerms"],
            new DialogParameters<OtherTermsDialog> { { shown => shown.Text, text }, { shown => shown.To, terms } },
            new DialogOptions { MaxWidth = MaxWidth.Medium, FullWidth = true });
        if (await dialog.GetReturnValueAsync<OtherTerms?>() is not { } chosen) return;
        if (!chosen.Apart) await editor!.ReplaceAllAsync(chosen.Text);
        else await KeepInOtherTermsAsync(chosen.Text, terms);
    }

    private async Task KeepInOtherTermsAsync(string words, Terminology terms)
    {
        Outcome<Guid> kept = await Desk.CreateAsync(caller, Words[terms == Terminology.Uk ? "UkTitle" : "UsTitle", design!.Title], words);
        trouble = kept.Succeeded ? null : kept.ToString();
        if (kept.Succeeded) Snackbar.Add(Words["OtherTermsKept"], MudBlazor.Severity.Normal);
    }

    private async Task RenameAsync(ChangeEventArgs change)
    {
        string title = (change.Value as string ?? "").Trim();
        Outcome renamed = await Desk.RenameAsync(caller, Id, title);
        if (renamed.Succeeded) design = design! with { Title = title };
        trouble = renamed.Succeeded ? null : renamed.ToString();
    }

    private async Task MoveToAsync(ChangeEventArgs change)
    {
        if (!Enum.TryParse(change.Value as string, out DesignState state)) return;
        Outcome moved = await Desk.MoveToAsync(caller, Id, state);
        if (moved.Succeeded) design = design! with { State = state };
        trouble = moved.Succeeded ? null : moved.ToString();
    }

    private async Task DeleteAsync()
    {
        Outcome deleted = await Desk.DeleteAsync(caller, Id);
        if (!deleted.Succeeded)
        {
            trouble = deleted.ToString();
            return;
        }

        Snackbar.OfferUndo(Words["Deleted", design!.Title], Words["Undo"], RestoreAsync);
        Navigation.NavigateTo("designs");
    }

    private async Task RestoreAsync()
    {
        await Desk.RestoreAsync(caller, Id);
        Navigation.NavigateTo($"designs/{Id}");
    }

    private async Task ShowVersionsAsync()
    {
        await editor!.FlushAsync();
        IDialogReference dialog = await Dialogs.ShowAsync<VersionsDialog>(
            Words["Versions"],
            new DialogParameters<VersionsDialog>
            {
                { shown => shown.DesignId, Id },
                { shown => shown.Now, text },
                { shown => shown.Materials, DesignMaterials.From(swatches, yarns, design!.YarnId) },
            },
            new DialogOptions { MaxWidth = MaxWidth.Large, FullWidth = true });
        if (await dialog.GetReturnValueAsync<string?>() is { } words) await GoBackToAsync(words);
    }

    /// <summary>Older words become the next version. What was not saved is saved before, as a version of its own.</summary>
    private async Task GoBackToAsync(string words)
    {
        await SaveAsync();
        if (text != savedText) return;
        await editor!.ReplaceAllAsync(words);
        await SaveAsync();
        if (text == words && text == savedText) Snackbar.Add(Words["WentBack"], MudBlazor.Severity.Normal);
    }
}
