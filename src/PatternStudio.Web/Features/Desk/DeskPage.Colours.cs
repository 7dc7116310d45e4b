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
    private (CheckedPattern? Pattern, int Size, ChartFacts Facts) chartFacts = (null, 0, ChartFacts.None);

    [Inject]
    private ColourYarns ColourYarns { get; set; } = null!;

    /// <summary>What may be chosen about the chart of the size shown; of the words before, while those on the desk are being worked.</summary>
    private ChartFacts Facts
    {
        get
        {
            if (answer?.Pattern is { } pattern && !(ReferenceEquals(chartFacts.Pattern, pattern) && chartFacts.Size == ShownSize))
                chartFacts = (pattern, ShownSize, ChartFacts.Of(pattern.Sizes[Math.Min(ShownSize, pattern.Sizes.Count - 1)].Fabric));
            return chartFacts.Facts;
        }
    }

    /// <summary>Where there are several.</summary>
    private IReadOnlyList<string> Colours => Facts.HasColours ? Facts.Colours : [];

    /// <summary>How the colours look. The colour that the pattern does not name is worked in the design's yarn.</summary>
    private EquatableArray<YarnColour> YarnColours =>
    [
        .. from colour in Colours
           let id = colour.Length == 0 ? design!.YarnId : colourYarns.TryGetValue(colour, out Guid chosen) ? chosen : null
           let yarn = yarns.FirstOrDefault(yarn => yarn.Id == id)?.Details
           where yarn is not null
           select new YarnColour(colour, yarn.ColourHex.ToLowerInvariant(), yarn.NameAndColour),
    ];

    private Task ChooseColourYarnAsync((string Colour, Guid? Yarn) chosen) => DoAsync(ColourYarns.ChooseAsync(caller, Id, chosen.Colour, chosen.Yarn), ListColoursAsync);

    /// <summary>No number depends on them: nothing is computed anew.</summary>
    private async Task ListColoursAsync() => colourYarns = await ColourYarns.OfAsync(caller, Id);
}
