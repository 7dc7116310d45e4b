using Microsoft.AspNetCore.Components;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Web.Features.Desk;

/// <summary>Which yarn each colour of the pattern is worked in: the chart shows them so.</summary>
public sealed partial class ColourPanel
{
    /// <summary>As the pattern names them; nothing is shown for the one that it does not name.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<string> Colours { get; set; } = [];

    [Parameter, EditorRequired]
    public IReadOnlyList<KeptYarn> Yarns { get; set; } = [];

    /// <summary>The yarn chosen for each colour.</summary>
    [Parameter]
    public IReadOnlyDictionary<string, Guid> Chosen { get; set; } = new Dictionary<string, Guid>();

    /// <summary>A yarn is chosen for a colour; null for none.</summary>
    [Parameter]
    public EventCallback<(string Colour, Guid? Yarn)> Choose { get; set; }

    private IReadOnlyList<string> Named => [.. Colours.Where(colour => colour.Length > 0)];

    private Guid? ChosenFor(string colour) => Chosen.TryGetValue(colour, out Guid yarn) ? yarn : null;

    private string HexOf(string colour) => Yarns.FirstOrDefault(yarn => yarn.Id == ChosenFor(colour))?.Details.ColourHex ?? "";

    private Task PickAsync(string colour, ChangeEventArgs change) =>
        Choose.InvokeAsync((colour, Guid.TryParse(change.Value as string, out Guid id) ? id : null));
}
