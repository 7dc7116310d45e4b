using Microsoft.AspNetCore.Components;

namespace PatternStudio.Web.Features.Desk;

/// <summary>How the chart is drawn, to choose.</summary>
public sealed partial class ChartOptions
{
    [Parameter, EditorRequired]
    public ChartChoice Choice { get; set; } = new();

    [Parameter]
    public EventCallback<ChartChoice> ChoiceChanged { get; set; }

    [Parameter]
    public ChartFacts Facts { get; set; } = ChartFacts.None;

    /// <summary>True where the published keys draw this chart in different ways.</summary>
    [Parameter]
    public bool KeysDiffer { get; set; } = true;

    private Task ChangeAsync(ChartChoice chosen) => ChoiceChanged.InvokeAsync(chosen);
}
