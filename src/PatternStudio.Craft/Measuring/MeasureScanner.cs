using System.Globalization;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>A piece of a measurement: a number, a word, or a sign.</summary>
/// <param name="Number">The number, for numbers; else null.</param>
/// <param name="Word">In lower case without a final period; the sign itself for signs; empty for numbers.</param>
/// <param name="Doubt">For numbers that may be read in two ways, both of them ('1000 or 1'); else null.</param>
internal readonly record struct MeasureToken(double? Number, string Word, TextSpan Span, string? Doubt = null);

/// <summary>
/// Cuts '3 1/2" x 10,5 cm' into numbers, words and signs. '4½', '4 1/2', '4-1/2' and '4.5' are one number each; a comma between digits is a
/// decimal comma, elsewhere it separates.
/// </summary>
internal static class MeasureScanner
{
    public static List<MeasureToken> Scan(string text)
    {
        var tokens = new List<MeasureToken>();
        for (int at = 0; at < text.Length;)
        {
            int end = char.IsWhiteSpace(text[at]) ? at + 1 : ScanOne(text, at, tokens);
            at = end;
        }
        return tokens;
    }

    private static int ScanOne(string text, int at, List<MeasureToken> tokens)
    {
        if (IsDigit(text, at) || Fractions.ValueOf(text[at]) is not null)
        {
            (double number, int numberEnd) = ScanNumber(text, at);
            tokens.Add(new MeasureToken(number, "", TextSpan.FromTo(at, numberEnd), Thousands(text[at..numberEnd])));
            return numberEnd;
        }
        int end = ScanWord(text, at);
        string word = text[at..end].ToLowerInvariant().TrimEnd('.');
        if (word.Length > 0) tokens.Add(new MeasureToken(null, word, TextSpan.FromTo(at, end)));
        return end;
    }

    /// <summary>
    /// '1,000' is a thousand to some makers and one to others, and so is '1.000'. '0,125' and '12,5' are decimals to everybody.
    /// </summary>
    private static string? Thousands(string digits)
    {
        int mark = digits.IndexOfAny([',', '.']);
        if (mark is < 1 or > 3 || digits.Length - mark != 4 || digits[0] == '0' || !digits.All(sign => char.IsAsciiDigit(sign) || sign is ',' or '.')) return null;
        string whole = digits[..mark], part = digits[(mark + 1)..];
        return $"'{digits}' may be {whole}{part} or {whole}.{part.TrimEnd('0').PadRight(1, '0')}: write it without the mark, or with another number of decimals.";
    }

    private static int ScanWord(string text, int at)
    {
        int end = at + 1;
        if (!char.IsLetter(text[at])) return end;
        while (end < text.Length && (char.IsLetter(text[end]) || text[end] == '.' || WithinWord(text, end))) end++;
        return end;
    }

    /// <summary>Stitch names hold digits: 'sc2tog', 'fpdc'; '10 cm4' does not occur.</summary>
    private static bool WithinWord(string text, int at) =>
        IsDigit(text, at) && at + 1 < text.Length && char.IsLetter(text[at + 1]);

    private static (double Number, int End) ScanNumber(string text, int at)
    {
        if (Fractions.ValueOf(text[at]) is { } alone) return (alone, at + 1);
        int end = DigitsEnd(text, at);
        if (end < text.Length && text[end] is '.' or ',' && IsDigit(text, end + 1)) end = DigitsEnd(text, end + 1);
        string digits = text[at..end].Replace(',', '.');
        double whole = double.Parse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        if (digits.Contains('.')) return (whole, end);
        return Slash(text, end, (int)Math.Min(whole, 9999)) ?? AddFraction(text, end, whole);
    }

    /// <summary>'4½', '4 ½', '4 1/2', '4-1/2'.</summary>
    private static (double Number, int End) AddFraction(string text, int end, double whole)
    {
        int at = end < text.Length && text[end] is ' ' or '-' or '\u00a0' or '\u2009' ? end + 1 : end;
        if (at >= text.Length) return (whole, end);
        if (Fractions.ValueOf(text[at]) is { } sign) return (whole + sign, at + 1);
        if (at == end || !IsDigit(text, at)) return (whole, end);
        int topEnd = DigitsEnd(text, at);
        return topEnd - at < 3 && Slash(text, topEnd, int.Parse(text[at..topEnd], CultureInfo.InvariantCulture)) is { } part && part.Number < 1
            ? (whole + part.Number, part.End)
            : (whole, end);
    }

    private static (double Number, int End)? Slash(string text, int slash, int top)
    {
        if (slash >= text.Length || text[slash] is not ('/' or '⁄') || !IsDigit(text, slash + 1)) return null;
        int end = DigitsEnd(text, slash + 1);
        return int.TryParse(text[(slash + 1)..end], CultureInfo.InvariantCulture, out int bottom) && bottom > 0 && end - slash < 4 ? ((double)top / bottom, end) : null;
    }

    private static int DigitsEnd(string text, int at)
    {
        while (IsDigit(text, at)) at++;
        return at;
    }

    private static bool IsDigit(string text, int at) => at < text.Length && char.IsAsciiDigit(text[at]);
}
