using Microsoft.AspNetCore.Components;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Web.Features.Desk;

/// <summary>What size and yarn are computed from: the swatches of the design, and the yarn it is made of.</summary>
public sealed partial class MaterialsPanel
{
    [Parameter, EditorRequired]
    public IReadOnlyList<KeptSwatch> Swatches { get; set; } = [];

    [Parameter, EditorRequired]
    public IReadOnlyList<KeptYarn> Yarns { get; set; } = [];

    /// <summary>The yarn that the design is made of; null for none.</summary>
    [Parameter]
    public Guid? YarnId { get; set; }

    /// <summary>Asks for the form of a swatch; of a new one for null.</summary>
    [Parameter]
    public EventCallback<KeptSwatch?> EditSwatch { get; set; }

    [Parameter]
    public EventCallback<KeptSwatch> RemoveSwatch { get; set; }

    [Parameter]
    public EventCallback<Guid> ChooseSwatch { get; set; }

    [Parameter]
    public EventCallback AddYarn { get; set; }

    [Parameter]
    public EventCallback<Guid?> ChooseYarn { get; set; }

    /// <summary>What the size shown needs; null where not known.</summary>
    [Parameter]
    public YarnNeed? Need { get; set; }

    /// <summary>How far other makers' sizes will differ, in a sentence; empty where not known.</summary>
    [Parameter]
    public string Spread { get; set; } = "";

    /// <summary>Questions about the swatches, in sentences.</summary>
    [Parameter]
    public IReadOnlyList<string> Doubts { get; set; } = [];

    /// <summary>What follows: the cupboard.</summary>
    [Parameter]
    public RenderFragment? ChildContent { get; set; }

    private string? YarnName(Guid? id) => Yarns.FirstOrDefault(yarn => yarn.Id == id)?.Details.Name;

    private Task PickAsync(ChangeEventArgs change) =>
        ChooseYarn.InvokeAsync(Guid.TryParse(change.Value as string, out Guid id) ? id : null);
}
