using PatternStudio.Studio;
using PatternStudio.Studio.Designs;
using PatternStudio.Web.Features.Designs.Exchange;

namespace PatternStudio.Web.Features.Designs;

/// <summary>What is done to several designs at once.</summary>
public sealed partial class DesignsPage
{
    private Said? said;
    private string? wrongTag;

    [Microsoft.AspNetCore.Components.Inject]
    private DesignBatch Batch { get; set; } = null!;

    [Microsoft.AspNetCore.Components.Inject]
    private ExportTickets Exports { get; set; } = null!;

    /// <summary>What was done, in a sentence, and how to undo it.</summary>
    private sealed record Said(string Words, string Tone = "note", Func<Task>? Undo = null);

    private void Pick(Guid id)
    {
        if (!picked.Remove(id)) picked.Add(id);
    }

    private void PickPage() => picked.UnionWith(page?.Designs.Select(design => design.Id) ?? []);

    private async Task PickAllAsync() => picked.UnionWith(await Library.IdsAsync(await SignedIn.CallerAsync(), address.ToQuery(tags)));

    private void PutBack()
    {
        picked.Clear();
        wrongTag = null;
    }

    private async Task MoveAsync(DesignState state)
    {
        Caller caller = await SignedIn.CallerAsync();
        IReadOnlyDictionary<Guid, DesignState> before = await Batch.MoveToAsync(caller, picked, state);
        said = new Said(Words["Moved", before.Count, Words[$"State{state}"].Value], Undo: before.Count == 0 ? null : async () => await Batch.MoveToAsync(caller, before));
        await ShowAnewAsync();
    }

    private async Task DeleteAsync()
    {
        Caller caller = await SignedIn.CallerAsync();
        IReadOnlyList<Guid> gone = await Batch.DeleteAsync(caller, picked);
        picked.Clear();
        said = new Said(Words[gone.Count == 1 ? "DeletedOne" : "DeletedMany", gone.Count], Undo: async () => await Batch.RestoreAsync(caller, gone));
        await ShowAnewAsync();
    }

    private async Task TagAsync(string name)
    {
        Outcome<Guid> put = await Tags.PutAsync(await SignedIn.CallerAsync(), name, picked);
        wrongTag = put.Succeeded ? null : put.ToString();
        if (put.Succeeded) said = new Said(Words["Tagged", picked.Count, name.Trim()]);
        await ShowAnewAsync();
    }

    private async Task UntagAsync(string name)
    {
        if (tags.FirstOrDefault(tag => tag.Name.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase)) is not { } known)
        {
            wrongTag = Words["NoSuchTag"];
            return;
        }

        Outcome taken = await Tags.TakeAsync(await SignedIn.CallerAsync(), known.Id, picked);
        wrongTag = taken.Succeeded ? null : taken.ToString();
        if (taken.Succeeded) said = new Said(Words["Untagged", picked.Count, known.Name]);
        await ShowAnewAsync();
    }

    private async Task Export() =>
        Navigation.NavigateTo($"designs/export/{Exports.Issue(await SignedIn.CallerAsync(), [.. picked])}", forceLoad: true);

    private async Task UndoAsync()
    {
        if (said?.Undo is not { } undo) return;
        said = null;
        await undo();
        await ShowAnewAsync();
    }
}
