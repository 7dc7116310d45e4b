using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>Yarn to buy in one colour.</summary>
/// <param name="Colour">As the pattern names it; empty where it names none.</param>
/// <param name="Used">What the pattern is expected to use.</param>
/// <param name="Buy">What nine makers in ten will not run out of.</param>
/// <param name="Balls">Whole balls of that much.</param>
public sealed record ColourNeed(string Colour, YarnLength Used, YarnLength Buy, int Balls);

/// <summary>Yarn to buy for everything that the pattern makes.</summary>
/// <param name="Used">What the pattern is expected to use.</param>
/// <param name="Weight">The same on the scales.</param>
/// <param name="Buy">What nine makers in ten will not run out of.</param>
/// <param name="Balls">Whole balls, rounded up colour by colour.</param>
/// <param name="Colours">By colour.</param>
/// <param name="Assumption">How the margin was found, in a sentence.</param>
public sealed record YarnNeed(YarnLength Used, Mass Weight, YarnLength Buy, int Balls, EquatableArray<ColourNeed> Colours, string Assumption)
{
    /// <summary>
    /// Spread of yarn use between makers, as a share of the amount, where one swatch is all there is. The trade adds 5 to 15 % (from memory); 10 % is
    /// the middle. Testers' reports replace it.
    /// </summary>
    public const double AssumedSpread = 0.10;

    /// <summary>The 90 % point of the standard normal distribution.</summary>
    private const double NinetyPercent = 1.2816;

    private const string Why = "With one swatch the spread between makers is not known; a standard deviation of 10 % is assumed (from memory: the trade adds 5 to 15 %). The amount to buy is the one that 90 of 100 makers will not exceed.";

    internal static YarnNeed From(IEnumerable<ColourYarn> colours, YarnLabel yarn)
    {
        ColourNeed[] needs = [.. colours.Select(colour => Need(colour, yarn))];
        YarnLength used = Sum(needs.Select(need => need.Used));
        return new YarnNeed(used, yarn.WeightOf(used), Sum(needs.Select(need => need.Buy)), needs.Sum(need => need.Balls), needs.ToEquatableArray(), Why);
    }

    private static ColourNeed Need(ColourYarn colour, YarnLabel yarn)
    {
        YarnLength buy = colour.Length * (1 + (NinetyPercent * AssumedSpread));
        double balls = Math.Ceiling(Math.Min(buy / yarn.BallLength, int.MaxValue / 1000));
        return new ColourNeed(colour.Colour, colour.Length, buy, (int)balls);
    }

    internal static YarnLength Sum(IEnumerable<YarnLength> lengths) => lengths.Aggregate(YarnLength.Zero, (sum, length) => sum + length);
}
