using Microsoft.AspNetCore.Components;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Web.Features.Designs;

/// <summary>A design in the list.</summary>
public sealed partial class DesignCard
{
    [Parameter, EditorRequired]
    public DesignSummary Design { get; set; } = null!;

    /// <summary>Only where every row was worked: rows that were not checked are no praise.</summary>
    private bool IsClean => Design is { Errors: 0, Warnings: 0, Rows: > 0 } && Design.RowsChecked == Design.Rows;
}
