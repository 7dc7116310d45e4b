using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Text;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.Desk;

/// <summary>The stitches and abbreviations of the pattern, kept from its words: nobody has to keep the list by hand.</summary>
public sealed partial class StitchList
{
    /// <summary>Null where nobody has asked for it yet.</summary>
    private bool? copied;

    [Parameter, EditorRequired]
    public IReadOnlyList<UsedStitch> Stitches { get; set; } = [];

    /// <summary>True where the pattern is in UK terms.</summary>
    [Parameter]
    public bool InUk { get; set; }

    /// <summary>The designer wants to see the words that define a stitch.</summary>
    [Parameter]
    public EventCallback<TextSpan> Go { get; set; }

    [Inject]
    private IJSRuntime Browser { get; set; } = null!;

    /// <summary>A list as patterns print it; special stitches are told elsewhere.</summary>
    private string AsList => string.Join('\n', Stitches.Where(stitch => stitch is { Told: null, Names.Count: > 1 }).Select(stitch => $"- {stitch.Names[0]}: {stitch.Names[1]}"));

    protected override void OnParametersSet() => copied = null;

    private async Task CopyAsync() => copied = await Browser.CopyAsync(AsList);
}
