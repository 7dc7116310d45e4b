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
    private IReadOnlyList<FieldMessage> messages = [];

    [CascadingParameter]
    private IMudDialogInstance Dialog { get; set; } = null!;

    [Inject]
    private DesignTags Tags { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    protected override async Task OnInitializedAsync() => tags = await Tags.ListAsync(await SignedIn.CallerAsync());

    private async Task RenameAsync(KeptTag tag, string name) => await AfterAsync(await Tags.RenameAsync(await SignedIn.CallerAsync(), tag.Id, name));

    private async Task RemoveAsync(KeptTag tag) => await AfterAsync(await Tags.RemoveAsync(await SignedIn.CallerAsync(), tag.Id));

    /// <summary>The notice shows what concerns no field; here every message does.</summary>
    private async Task AfterAsync(Outcome outcome)
    {
        messages = [.. outcome.Messages.Select(message => message with { Field = "" })];
        tags = await Tags.ListAsync(await SignedIn.CallerAsync());
    }
}
