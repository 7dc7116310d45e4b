using Microsoft.AspNetCore.Components;
using PatternStudio.Studio;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.SwatchBook;

/// <summary>All swatches of the studio, design by design.</summary>
public sealed partial class SwatchesPage
{
    private List<SwatchGroup>? groups;
    private IReadOnlyList<KeptYarn> yarns = [];

    [Inject]
    private DesignLibrary Library { get; set; } = null!;

    [Inject]
    private Swatches Swatches { get; set; } = null!;

    [Inject]
    private Yarns Yarns { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    protected override async Task OnInitializedAsync()
    {
        Caller caller = await SignedIn.CallerAsync();
        yarns = await Yarns.ListAsync(caller);
        DesignPage designs = await Library.ListAsync(caller, new DesignQuery(Order: DesignOrder.Title, Descending: false, PageSize: 200));
        var found = new List<SwatchGroup>();
        foreach (DesignSummary design in designs.Designs)
        {
            IReadOnlyList<KeptSwatch> swatches = await Swatches.ListAsync(caller, design.Id);
            if (swatches.Count > 0) found.Add(new SwatchGroup(design, swatches));
        }

        groups = found;
    }

    private YarnDetails? YarnOf(KeptSwatch swatch) => yarns.FirstOrDefault(yarn => yarn.Id == swatch.Details.YarnId)?.Details;

    private sealed record SwatchGroup(DesignSummary Design, IReadOnlyList<KeptSwatch> Swatches);
}
