using Microsoft.AspNetCore.Components;
using PatternStudio.Craft.Checking;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Web.Features.Desk;

/// <summary>What was found, as sentences, under the words.</summary>
public sealed partial class FindingsList
{
    [Parameter, EditorRequired]
    public IReadOnlyList<LocatedFinding> Findings { get; set; } = [];

    /// <summary>How much was read and checked: without it 'no findings' says nothing.</summary>
    [Parameter, EditorRequired]
    public ReadSummary Read { get; set; }

    /// <summary>Offset of the finding that the reader went to last.</summary>
    [Parameter]
    public int? ReachedAt { get; set; }

    /// <summary>The reader wants to see the place.</summary>
    [Parameter]
    public EventCallback<Finding> Go { get; set; }

    /// <summary>The reader wants the fix made.</summary>
    [Parameter]
    public EventCallback<Finding> Mend { get; set; }

    private bool AllChecked => Read.Rows > 0 && Read.Checked == Read.Rows;

    private string Counted(Severity severity, int count) => Words[count == 1 ? $"One{severity}" : $"Many{severity}", count];
}
