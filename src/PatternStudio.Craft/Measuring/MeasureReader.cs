using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>Reads lengths that a person typed.</summary>
internal static class MeasureReader
{
    /// <summary>Above this a number is a slip of the finger: no fabric is a kilometre wide.</summary>
    public static readonly Length Longest = Length.FromMillimetres(1_000_000);

    public static Parsed<Length> ReadLength(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        List<MeasureToken> tokens = MeasureScanner.Scan(text);
        var all = new TextSpan(0, text.Length);
        if (tokens.Count == 0 || tokens[0].Number is not { } number)
            return Parsed.Trouble<Length>("No number was found. Write the length with its unit, such as '10 cm' or '4½ in'.", all);
        if (tokens.Count == 1)
            return Parsed.Trouble<Length>($"'{text.Trim()}' has no unit. Write 'cm' or 'in' after the number.", tokens[0].Span);
        if (Units.ToLength(number, tokens[1].Word) is not { } length)
            return Parsed.Trouble<Length>($"'{Words(text, tokens[1].Span)}' is not a unit of length known here. Use mm, cm or in.", tokens[1].Span);
        if (tokens.Count > 2)
            return Parsed.Trouble<Length>($"'{Words(text, TextSpan.FromTo(tokens[2].Span.Start, text.Length))}' after the length was not understood. Write one length only, such as '10 cm'.", tokens[2].Span);
        return Sensible(length)
            ? Parsed.Read(length)
            : Parsed.Trouble<Length>($"'{text.Trim()}' is no length that a fabric can have. Give a length above 0 and below {Longest.InCentimetres()}.", tokens[0].Span);
    }

    public static bool Sensible(Length length) => length > Length.Zero && length <= Longest;

    public static string Words(string text, TextSpan span) => text.Substring(span.Start, span.Length).Trim();
}
