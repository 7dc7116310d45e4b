using System.Globalization;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>What a ball band says: so much yarn weighs so much.</summary>
/// <param name="BallLength">The length of yarn in one ball; above 0.</param>
/// <param name="BallWeight">The weight of one ball; above 0.</param>
public sealed record YarnLabel(YarnLength BallLength, Mass BallWeight)
{
    private const string Example = "'200 m = 100 g'";

    /// <summary>The length of yarn that weighs so much.</summary>
    public YarnLength LengthOf(Mass mass) => BallLength * (mass / BallWeight);

    /// <summary>The weight of so much yarn.</summary>
    public Mass WeightOf(YarnLength length) => BallWeight * (length / BallLength);

    /// <summary>Reads '200 m = 100 g', '218 yd / 3.5 oz', '100 g (200 m)'.</summary>
    public static Parsed<YarnLabel> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        List<MeasureToken> tokens = MeasureScanner.Scan(text);
        YarnLength? length = null;
        Mass? mass = null;
        for (int at = 0; at < tokens.Count; at++)
        {
            if (tokens[at].Number is not { } number) continue;
            string unit = at + 1 < tokens.Count ? tokens[at + 1].Word : "";
            if (Units.ToYarnLength(number, unit) is { } metres) length ??= metres;
            else if (Units.ToMass(number, unit) is { } grams) mass ??= grams;
            else return Parsed.Trouble<YarnLabel>($"'{MeasureReader.Words(text, tokens[at].Span)}' has no unit known here. Write metres or yards and grams or ounces, such as {Example}.", tokens[at].Span);
        }
        return Judge(length, mass, new TextSpan(0, text.Length));
    }

    private static Parsed<YarnLabel> Judge(YarnLength? length, Mass? mass, TextSpan all)
    {
        if (length is not { Metres: > 0 }) return Parsed.Trouble<YarnLabel>($"The yarn has no length. Write it with its weight, as on the ball band: {Example}.", all);
        if (mass is not { Grams: > 0 }) return Parsed.Trouble<YarnLabel>($"The yarn has no weight. Write it with its length, as on the ball band: {Example}.", all);
        return Parsed.Read(new YarnLabel(length.Value, mass.Value));
    }

    /// <summary>'200 m = 100 g', as traces name it.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{BallLength.Metres:0.#} m = {BallWeight.Grams:0.#} g");
}
