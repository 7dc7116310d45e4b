using Microsoft.AspNetCore.Components;
using MudBlazor;
using PatternStudio.Studio;
using PatternStudio.Studio.Tags;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.Designs;

/// <summary>Renames and removes tags.</summary>
public sealed partial class TagsDialog
{
    private IReadOnlyList<KeptTag> tags = [];
    private (Guid Tag, string Says)? wrong;
    private RemovedTag? removed;

    [CascadingParameter]
    private IMudDialogInstance Dialog { get; set; } = null!;

    [Inject]
    private DesignTags Tags { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    protected override Task OnInitializedAsync() => ListAsync();

    private async Task RenameAsync(KeptTag tag, string name) => await AfterAsync(tag, await Tags.RenameAsync(await SignedIn.CallerAsync(), tag.Id, name));

    private async Task RemoveAsync(KeptTag tag)
    {
        Outcome<RemovedTag> outcome = await Tags.RemoveAsync(await SignedIn.CallerAsync(), tag.Id);
        removed = outcome.Value;
        await AfterAsync(tag, Outcome.Refused(outcome.Messages));
    }

    private async Task PutBackAsync()
    {
        if (removed is null) return;
        await Tags.PutAsync(await SignedIn.CallerAsync(), removed.Name, removed.Designs);
        removed = null;
        await ListAsync();
    }

    private async Task AfterAsync(KeptTag tag, Outcome outcome)
    {
        wrong = outcome.Succeeded ? null : (tag.Id, outcome.ToString());
        await ListAsync();
    }

    private async Task ListAsync() => tags = await Tags.ListAsync(await SignedIn.CallerAsync());
}
