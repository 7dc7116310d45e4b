using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>Yarn to buy in one colour.</summary>
/// <param name="Colour">As the pattern names it; empty where it names none.</param>
/// <param name="Used">What the pattern is expected to use.</param>
/// <param name="Buy">What nine makers in ten will not run out of.</param>
/// <param name="Balls">Whole balls of that much; 0 where no ball band is known.</param>
public sealed record ColourNeed(string Colour, YarnLength Used, YarnLength Buy, int Balls)
{
    /// <summary>The ends of the interval in which 90 of 100 makers lie.</summary>
    public YarnLength Low { get; init; }

    public YarnLength High { get; init; }

    /// <summary>The ball that was counted with; null where none is known.</summary>
    public YarnLabel? Label { get; init; }
}

/// <summary>Yarn to buy for everything that the pattern makes.</summary>
/// <param name="Used">What the pattern is expected to use.</param>
/// <param name="Weight">The same on the scales; zero where no ball band is known.</param>
/// <param name="Buy">What nine makers in ten will not run out of.</param>
/// <param name="Balls">Whole balls, rounded up colour by colour; 0 where no ball band is known.</param>
/// <param name="Colours">By colour.</param>
/// <param name="Assumption">How the margin was found, in a sentence.</param>
public sealed record YarnNeed(YarnLength Used, Mass Weight, YarnLength Buy, int Balls, EquatableArray<ColourNeed> Colours, string Assumption)
{
    /// <summary>
    /// Spread of yarn use between makers, as a share of the amount, where one swatch is all there is. The trade adds 5 to 15 % (from memory); 10 % is
    /// the middle. Testers' reports replace it.
    /// </summary>
    public const double AssumedSpread = 0.10;

    /// <summary>The ends of the interval in which 90 of 100 makers lie.</summary>
    public YarnLength Low { get; init; }

    public YarnLength High { get; init; }

    /// <summary>True where no weighed swatch stands behind it.</summary>
    public bool IsRough { get; init; }

    /// <summary>What is bought beyond what is expected, as a share of that: 0.13 for 13 %.</summary>
    public double Margin => Used.Metres > 0 ? (Buy / Used) - 1 : 0;

    internal static YarnNeed From(IEnumerable<ColourPrediction> colours, MeasuringBasis basis, YarnScale scale)
    {
        ColourNeed[] needs = [.. colours.Select(colour => Need(colour, basis.LabelOf(colour.Colour)))];
        Mass weight = needs.Aggregate(default(Mass), (sum, need) => need.Label is { } label ? sum + label.WeightOf(need.Used) : sum);
        return new YarnNeed(Sum(needs.Select(need => need.Used)), weight, Sum(needs.Select(need => need.Buy)), needs.Sum(need => need.Balls), needs.ToEquatableArray(), scale.Assumption)
        {
            Low = Sum(needs.Select(need => need.Low)),
            High = Sum(needs.Select(need => need.High)),
            IsRough = scale.IsRough,
        };
    }

    private static ColourNeed Need(ColourPrediction colour, YarnLabel? label)
    {
        YarnLength buy = YarnLength.FromMetres(colour.Metres.Buy);
        return new ColourNeed(colour.Colour, YarnLength.FromMetres(colour.Metres.Expected), buy, label is null ? 0 : GaugeSums.Balls(buy, label))
        {
            Low = YarnLength.FromMetres(colour.Metres.Low),
            High = YarnLength.FromMetres(colour.Metres.High),
            Label = label,
        };
    }

    internal static YarnLength Sum(IEnumerable<YarnLength> lengths) => lengths.Aggregate(YarnLength.Zero, (sum, length) => sum + length);
}

/// <summary>Yarn of one colour with its interval, in metres.</summary>
internal readonly record struct ColourPrediction(string Colour, Prediction Metres)
{
    /// <summary>Pieces of one pattern are worked by the same hands: their yarn is more or less together.</summary>
    public static ColourPrediction Sum(string colour, IEnumerable<Prediction> pieces)
    {
        Prediction sum = default;
        foreach (Prediction piece in pieces)
            sum = new Prediction(sum.Expected + piece.Expected, sum.Low + piece.Low, sum.High + piece.High, sum.Buy + piece.Buy, piece.Makers);
        return new ColourPrediction(colour, sum);
    }
}
