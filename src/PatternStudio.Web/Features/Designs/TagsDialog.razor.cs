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
    private ElementReference undo;
    private ElementReference close;

    /// <summary>What was pressed is gone: where the keys go on.</summary>
    private Func<ElementReference>? goOnAt;

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
        if (removed is not null) goOnAt = () => undo;
        await AfterAsync(tag, new Outcome(outcome.Messages));
    }

    private async Task PutBackAsync()
    {
        if (removed is null) return;
        await Tags.PutAsync(await SignedIn.CallerAsync(), removed.Name, removed.Designs);
        removed = null;
        goOnAt = () => close;
        await ListAsync();
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (goOnAt is not { } place) return;
        goOnAt = null;
        await place().FocusAsync();
    }

    private async Task AfterAsync(KeptTag tag, Outcome outcome)
    {
        wrong = outcome.Succeeded ? null : (tag.Id, outcome.ToString());
        await ListAsync();
    }

    private async Task ListAsync() => tags = await Tags.ListAsync(await SignedIn.CallerAsync());
}
