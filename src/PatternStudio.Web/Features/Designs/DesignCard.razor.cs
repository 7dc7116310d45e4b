using Microsoft.AspNetCore.Components;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Web.Features.Designs;

/// <summary>A design on the shelf.</summary>
public sealed partial class DesignCard
{
    [Parameter, EditorRequired]
    public DesignSummary Design { get; set; } = null!;

    /// <summary>True where it is picked, to do something to several at once.</summary>
    [Parameter]
    public bool Selected { get; set; }

    [Parameter]
    public EventCallback<bool> SelectedChanged { get; set; }

    private string? SizeText => DesignSize.Say(Design);
}
