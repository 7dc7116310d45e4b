using Microsoft.AspNetCore.Components;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Web.Features.Desk;

/// <summary>Size, yarn and balls of one size, each with how it was computed; or why it is not known.</summary>
public sealed partial class VitalNumbers
{
    [Parameter, EditorRequired]
    public SizeResults Numbers { get; set; } = null!;
}
