using Microsoft.AspNetCore.Components;
using PatternStudio.Studio;
using PatternStudio.Studio.Accounts;
using PatternStudio.Studio.Designs;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.Tour;

/// <summary>Offers the tour once, where there is a design to go through.</summary>
public sealed partial class TourOffer
{
    private bool offered;

    [Inject]
    private Guide Guide { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    [Inject]
    private DesignLibrary Library { get; set; } = null!;

    [Inject]
    private PreferenceBook Book { get; set; } = null!;

    protected override async Task OnInitializedAsync()
    {
        Caller caller = await SignedIn.CallerAsync();
        offered = !(await Book.OfAsync(caller.AccountId)).TourDone && (await Library.ListAsync(caller, new DesignQuery(PageSize: 1))).Total > 0;
    }

    private async Task TakeAsync()
    {
        await PutAwayAsync();
        Guide.Begin();
    }

    private async Task PutAwayAsync()
    {
        offered = false;
        await Book.ChangeAsync(await SignedIn.CallerAsync(), preferences => preferences with { TourDone = true });
    }
}
