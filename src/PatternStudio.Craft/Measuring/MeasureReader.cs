using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>Reads one measure that a person typed. What is not read is refused in words; nothing typed is passed over.</summary>
internal static class MeasureReader
{
    /// <summary>Above this a number is a slip of the finger: no fabric is a kilometre wide.</summary>
    public static readonly Length Longest = Length.FromMillimetres(1_000_000);

    /// <summary>More than any maker buys: a hundred kilometres and a tonne of yarn.</summary>
    private const double MostMetres = 100_000;
    private const double MostGrams = 1_000_000;

    /// <summary>How far '10 cm (4 in)' may differ: the trade takes 4 in for 10 cm, which is 1.6 %, and either may be rounded.</summary>
    private const double SameMeasure = 0.04;

    public static Parsed<Length> ReadLength(string text) => Read(
        text, Units.ToFabricLength, "length", "Use mm, cm or in.", "'10 cm' or '4½ in'", "cm' or 'in", length => length.Millimetres,
        length => Sensible(length) ? null : $"is no length that a fabric can have. Give a length above 0 and below {Longest.InCentimetres()}.");

    public static Parsed<Mass> ReadMass(string text) => Read(
        text, Units.ToMass, "weight", "Use g, kg, oz or lb.", "'12 g' or '0.5 oz'", "g' or 'oz", mass => mass.Grams,
        mass => mass.Grams is > 0 and <= MostGrams ? null : "is no weight of yarn. Give one above 0 and below 1000 kg.");

    public static Parsed<YarnLength> ReadYarnLength(string text) => Read(
        text, Units.ToYarnLength, "yarn length", "Use m or yd.", "'85 m' or '93 yd'", "m' or 'yd", length => length.Metres,
        length => length.Metres is > 0 and <= MostMetres ? null : "is no length of yarn. Give one above 0 and below 100 km.");

    public static bool Sensible(Length length) => length > Length.Zero && length <= Longest;

    public static string Words(string text, TextSpan span) => text.Substring(span.Start, span.Length).Trim();

    /// <summary>A minus before a number: '-4 cm', '− 4 cm'; a hyphen within '3-1/2' belongs to the number and is no token.</summary>
    public static bool IsMinus(MeasureToken token) => token.Word is "-" or "−" or "–";

    private static Parsed<T> Read<T>(
        string text, Func<double, string, T?> convert, string kind, string units, string example, string unitExample, Func<T, double> size, Func<T, string?> refusal)
        where T : struct
    {
        ArgumentNullException.ThrowIfNull(text);
        List<MeasureToken> tokens = MeasureScanner.Scan(text);
        var all = new TextSpan(0, text.Length);
        if (tokens.Count > 1 && IsMinus(tokens[0]) && tokens[1].Number is not null)
            return Parsed.Trouble<T>($"'{text.Trim()}' is below 0, and no {kind} is. Write it without the minus.", all);
        if (tokens.Count == 0 || tokens[0].Number is not { } number)
            return Parsed.Trouble<T>($"No number was found. Write the {kind} with its unit, such as {example}.", all);
        if (tokens[0].Doubt is { } doubt) return Parsed.Trouble<T>(doubt, tokens[0].Span);
        if (tokens.Count == 1) return Parsed.Trouble<T>($"'{text.Trim()}' has no unit. Write '{unitExample}' after the number.", tokens[0].Span);
        if (convert(number, tokens[1].Word) is not { } measure)
            return Parsed.Trouble<T>($"'{Words(text, tokens[1].Span)}' is not a unit of {kind} known here. {units}", tokens[1].Span);
        if (Restated(tokens, convert) is { } again)
        {
            if (Math.Abs((size(again) / size(measure)) - 1) > SameMeasure)
                return Parsed.Trouble<T>($"'{text.Trim()}' says two different things: write one {kind}, or the same in both units.", all);
        }
        else if (tokens.Count > 2)
        {
            return Parsed.Trouble<T>($"'{Words(text, TextSpan.FromTo(tokens[2].Span.Start, text.Length))}' after the {kind} was not understood. Write one {kind} only, such as {example[..(example.IndexOf('\'', 1) + 1)]}.", tokens[2].Span);
        }

        return refusal(measure) is { } why ? Parsed.Trouble<T>($"'{text.Trim()}' {why}", tokens[0].Span) : Parsed.Read(measure);
    }

    /// <summary>'10 cm (4 in)' and '10 cm / 4 in': the same in the other unit.</summary>
    private static T? Restated<T>(List<MeasureToken> tokens, Func<double, string, T?> convert)
        where T : struct
    {
        bool brackets = tokens.Count == 6 && tokens[2].Word == "(" && tokens[5].Word == ")";
        bool slash = tokens.Count == 5 && tokens[2].Word is "/" or "=";
        return (brackets || slash) && tokens[3] is { Number: { } number, Doubt: null } ? convert(number, tokens[4].Word) : null;
    }
}
