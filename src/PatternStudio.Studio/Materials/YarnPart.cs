using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Materials;

/// <summary>What a size needs of one yarn.</summary>
/// <param name="YarnId">Null for colours whose yarn was not chosen.</param>
/// <param name="Colours">Those worked in it, as the pattern names them; empty where the pattern has one colour.</param>
/// <param name="Need">Null where not known.</param>
public sealed record YarnPart(Guid? YarnId, IReadOnlyList<string> Colours, YarnNeed? Need)
{
    /// <summary>Splits the need of a size among the yarns that its colours are worked in, in the pattern's order. What to be sure of is split as what is expected.</summary>
    /// <param name="need">Null where not known: one part.</param>
    /// <param name="designYarn">The design's yarn, in which the colour that the pattern does not name is worked; null for none.</param>
    /// <param name="chosen">The yarns of the colours that it names.</param>
    public static IReadOnlyList<YarnPart> Of(YarnNeed? need, Guid? designYarn, IReadOnlyDictionary<string, Guid> chosen) =>
        need is not { Colours.Count: > 1 } ? [new YarnPart(designYarn, [], need)] :
        [
            .. need.Colours.GroupBy(colour => colour.Colour.Length == 0 ? designYarn : chosen.TryGetValue(colour.Colour, out Guid yarn) ? yarn : null)
                .Select(part => new YarnPart(part.Key, [.. part.Select(colour => colour.Colour)], Share(need, [.. part]))),
        ];

    private static YarnNeed Share(YarnNeed whole, ColourShare[] colours)
    {
        double metres = colours.Sum(colour => colour.Metres);
        double all = whole.Colours.Sum(colour => colour.Metres);
        return whole with
        {
            Metres = metres,
            Grams = colours.All(colour => colour.Grams is not null) ? colours.Sum(colour => colour.Grams) : null,
            Balls = colours.All(colour => colour.Balls is not null) ? colours.Sum(colour => colour.Balls) : null,
            BuyMetres = all > 0 ? whole.BuyMetres * metres / all : metres,
            LowMetres = null,
            HighMetres = null,
            Colours = colours,
        };
    }
}
