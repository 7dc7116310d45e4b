using Microsoft.AspNetCore.Components;
using PatternStudio.Studio.Designs;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.Designs;

/// <summary>Where deleted designs are found again.</summary>
public sealed partial class DeletedPage
{
    private DesignPage? page;
    private int size = 50;

    [Inject]
    private DesignLibrary Library { get; set; } = null!;

    [Inject]
    private DesignBatch Batch { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    protected override Task OnInitializedAsync() => ShowAsync();

    private async Task ShowAsync() =>
        page = await Library.ListAsync(await SignedIn.CallerAsync(), new DesignQuery(PageSize: size) { Deleted = true });

    private Task MoreAsync()
    {
        size += 50;
        return ShowAsync();
    }

    private async Task RestoreAsync(Guid id)
    {
        await Batch.RestoreAsync(await SignedIn.CallerAsync(), [id]);
        await ShowAsync();
    }
}
