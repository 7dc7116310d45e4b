using System.Globalization;

namespace PatternStudio.Craft.Reading.Tokens;

/// <summary>The value of a number that is not whole: '2.5', '11½', '1/4', '11¹⁄₂'.</summary>
internal static class Fractions
{
    private const string Superscript = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private const string Subscript = "₀₁₂₃₄₅₆₇₈₉";

    public static double? Value(string written)
    {
        int whole = 0;
        while (whole < written.Length && char.IsAsciiDigit(written[whole])) whole++;
        double start = whole > 0 ? double.Parse(written[..whole], CultureInfo.InvariantCulture) : 0;
        string rest = written[whole..];
        if (rest.Length == 1) return char.GetNumericValue(rest[0]) is >= 0 and double part ? start + part : null;
        if (rest.StartsWith('.')) return double.TryParse("0" + rest, NumberStyles.Float, CultureInfo.InvariantCulture, out double tenths) ? start + tenths : null;
        string[] parts = Plain(rest).Split('/');
        if (parts.Length != 2 || !double.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out double below) || below == 0) return null;
        return parts[0].Length == 0 ? start / below : double.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out double above) ? start + (above / below) : null;
    }

    private static string Plain(string text) => string.Concat(text.Select(mark =>
        Superscript.IndexOf(mark, StringComparison.Ordinal) is >= 0 and int up ? (char)('0' + up)
        : Subscript.IndexOf(mark, StringComparison.Ordinal) is >= 0 and int down ? (char)('0' + down)
        : mark == '⁄' ? '/' : mark));
}
