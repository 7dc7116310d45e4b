using Microsoft.AspNetCore.Components;
using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Text;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Web.Features.Desk;

/// <summary>The colours of the pattern, and the yarns that they are worked in.</summary>
public sealed partial class DeskPage
{
    private IReadOnlyDictionary<string, Guid> colourYarns = new Dictionary<string, Guid>();
    private (CheckedPattern? Pattern, int Size, IReadOnlyList<string> Colours) coloursOf = (null, 0, []);

    [Inject]
    private ColourYarns ColourYarns { get; set; } = null!;

    /// <summary>Of the size shown, where there are several.</summary>
    private IReadOnlyList<string> Colours
    {
        get
        {
            if (answer?.Pattern is not { } pattern) return coloursOf.Colours;
            if (!ReferenceEquals(coloursOf.Pattern, pattern) || coloursOf.Size != ShownSize)
            {
                var facts = ChartFacts.Of(pattern.Sizes[Math.Min(ShownSize, pattern.Sizes.Count - 1)].Fabric);
                coloursOf = (pattern, ShownSize, facts.HasColours ? facts.Colours : []);
            }

            return coloursOf.Colours;
        }
    }

    /// <summary>How the colours look. The colour that the pattern does not name is worked in the design's yarn.</summary>
    private EquatableArray<YarnColour> YarnColours =>
    [
        .. from colour in Colours
           let id = colour.Length == 0 ? design!.YarnId : colourYarns.TryGetValue(colour, out Guid chosen) ? chosen : null
           let yarn = yarns.FirstOrDefault(yarn => yarn.Id == id)?.Details
           where yarn is not null
           select new YarnColour(colour, yarn.ColourHex.ToLowerInvariant(), yarn.ColourName.Length > 0 ? $"{yarn.Name}, {yarn.ColourName}" : yarn.Name),
    ];

    private Task ChooseColourYarnAsync((string Colour, Guid? Yarn) chosen) => DoAsync(ColourYarns.ChooseAsync(caller, Id, chosen.Colour, chosen.Yarn));
}
