using Microsoft.AspNetCore.Components;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Web.Features.Desk;

/// <summary>Can this be made from what is in the cupboard, and what of it is set aside for it: yarn by yarn.</summary>
public sealed partial class StashPanel
{
    /// <summary>All lots of the studio.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<KeptLot> Lots { get; set; } = [];

    [Parameter, EditorRequired]
    public IReadOnlyList<KeptYarn> Yarns { get; set; } = [];

    [Parameter, EditorRequired]
    public Guid DesignId { get; set; }

    /// <summary>What the size shown needs of each yarn.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<YarnPart> Parts { get; set; } = [];

    /// <summary>Where the yarn runs out, in a sentence; empty where it lasts or nobody knows.</summary>
    [Parameter]
    public string Ends { get; set; } = "";

    /// <summary>Sets grams of a lot aside for the design; 0 gives them back.</summary>
    [Parameter]
    public Func<KeptLot, double, Task<Outcome>>? Reserve { get; set; }

    private string YarnOf(YarnPart part) => Yarns.FirstOrDefault(yarn => yarn.Id == part.YarnId)?.Details.NameAndColour ?? "";
}
