using Microsoft.AspNetCore.Components;
using MudBlazor;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Hosting;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.YarnShelf;

/// <summary>Which designs a lot would make.</summary>
public sealed partial class LotDesignsDialog
{
    private IReadOnlyList<LotDesign>? designs;

    [Parameter, EditorRequired]
    public Guid LotId { get; set; }

    [CascadingParameter]
    private IMudDialogInstance Dialog { get; set; } = null!;

    [Inject]
    private StashDesigns Designs { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    protected override async Task OnInitializedAsync() => designs = await Designs.ForAsync(await SignedIn.CallerAsync(), LotId);

    private string Say(LotSize size)
    {
        string name = (size.Name.Length > 0 ? $"{size.Name}: " : "") + (size.Colours.Count > 0 ? Words["ForColours", ColourNames.Say(size.Colours, Words["ColourNotNamed"])].Value + " " : "");
        return size.Fit.Answer == Suffices.NotKnown
            ? name + Words["NeedNotKnown"]
            : name + Words["NeedOfThere", Numbers.Amount(size.Fit.Expected), Numbers.Amount(size.Fit.Sure), Numbers.Amount(size.Fit.There)];
    }

    private static string ToneOf(StashFit fit) => fit.Answer switch
    {
        Suffices.Yes => "good",
        Suffices.Barely => "warning",
        Suffices.No => "error",
        _ => "note",
    };
}
