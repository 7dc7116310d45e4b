using System.Globalization;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>What a ball band says: so much yarn weighs so much.</summary>
/// <param name="BallLength">The length of yarn in one ball; above 0.</param>
/// <param name="BallWeight">The weight of one ball; above 0.</param>
public sealed record YarnLabel(YarnLength BallLength, Mass BallWeight)
{
    private const string Example = "'200 m = 100 g'";

    /// <summary>
    /// Metres in a gram that a yarn can have. The reference tables go from under 100 m (jumbo) to over 800 m (cobweb) in 100 g;
    /// sewing thread has some 30 m in a gram (from memory).
    /// </summary>
    private const double FewestMetresPerGram = 0.02;
    private const double MostMetresPerGram = 100;

    /// <summary>How far two statements of one measure ('85 m / 93 yd') may differ by rounding.</summary>
    private const double SameMeasure = 0.03;

    /// <summary>The length of yarn that weighs so much.</summary>
    public YarnLength LengthOf(Mass mass) => BallLength * (mass / BallWeight);

    /// <summary>The weight of so much yarn.</summary>
    public Mass WeightOf(YarnLength length) => BallWeight * (length / BallLength);

    /// <summary>Metres in 100 g, by which shops sort yarns.</summary>
    public double MetresPer100Grams => BallLength.Metres / BallWeight.Grams * 100;

    /// <summary>Reads '200 m = 100 g', '218 yd / 3.5 oz', '100 g (200 m)', '50 g (85 m / 93 yd)'.</summary>
    public static Parsed<YarnLabel> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        List<MeasureToken> tokens = MeasureScanner.Scan(text);
        var lengths = new List<YarnLength>();
        var masses = new List<Mass>();
        for (int at = 0; at < tokens.Count; at++)
        {
            if (tokens[at].Number is not { } number || IsShare(tokens, at)) continue;
            string unit = at + 1 < tokens.Count ? tokens[at + 1].Word : "";
            if (tokens[at].Doubt is { } doubt) return Parsed.Trouble<YarnLabel>(doubt, tokens[at].Span);
            if (at > 0 && MeasureReader.IsMinus(tokens[at - 1]))
                return Parsed.Trouble<YarnLabel>($"'-{MeasureReader.Words(text, tokens[at].Span)}' is below 0, and no ball is. Write it like {Example}.", tokens[at].Span);
            if (Units.ToYarnLength(number, unit) is { } metres) lengths.Add(metres);
            else if (Units.ToMass(number, unit) is { } grams) masses.Add(grams);
            else return Parsed.Trouble<YarnLabel>($"'{MeasureReader.Words(text, tokens[at].Span)}' has no unit known here. Write metres or yards and grams or ounces, such as {Example}.", tokens[at].Span);
        }

        return Judge(lengths, masses, text.Trim(), new TextSpan(0, text.Length));
    }

    /// <summary>'100 % cotton' is the fibre's share.</summary>
    private static bool IsShare(List<MeasureToken> tokens, int at) => at + 1 < tokens.Count && tokens[at + 1].Word == "%";

    private static Parsed<YarnLabel> Judge(List<YarnLength> lengths, List<Mass> masses, string text, TextSpan all)
    {
        if (lengths.Count == 0 || lengths[0].Metres <= 0) return Parsed.Trouble<YarnLabel>($"The yarn has no length. Write it with its weight, as on the ball band: {Example}.", all);
        if (masses.Count == 0 || masses[0].Grams <= 0) return Parsed.Trouble<YarnLabel>($"The yarn has no weight. Write it with its length, as on the ball band: {Example}.", all);
        if (lengths.Exists(length => Differ(length / lengths[0])) || masses.Exists(mass => Differ(mass / masses[0])))
            return Parsed.Trouble<YarnLabel>($"'{text}' gives two different balls. Write one of them, such as {Example}.", all);
        double perGram = lengths[0].Metres / masses[0].Grams;
        return perGram is >= FewestMetresPerGram and <= MostMetresPerGram
            ? Parsed.Read(new YarnLabel(lengths[0], masses[0]))
            : Parsed.Trouble<YarnLabel>(string.Create(CultureInfo.InvariantCulture, $"'{text}' makes {perGram:0.####} m in a gram, which no yarn has. Look at the units again; a ball band reads like {Example}."), all);
    }

    private static bool Differ(double ratio) => !(Math.Abs(ratio - 1) <= SameMeasure);

    /// <summary>'200 m = 100 g', as traces name it.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{BallLength.Metres:0.#} m = {BallWeight.Grams:0.#} g");
}
