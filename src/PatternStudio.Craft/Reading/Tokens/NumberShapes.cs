namespace PatternStudio.Craft.Reading.Tokens;

/// <summary>What may follow the digits of a number: an ordinal ending, a fraction.</summary>
internal static class NumberShapes
{
    private static readonly string[] OrdinalEndings = ["st", "nd", "rd", "th", "d"];

    /// <summary>The length of 'nd' in '2nd' (old books: '2d', '3d'); 0 where none follows.</summary>
    public static int OrdinalEnding(string text, int at, int end)
    {
        foreach (string ending in OrdinalEndings)
            if (at + ending.Length <= end
                && string.Compare(text, at, ending, 0, ending.Length, StringComparison.OrdinalIgnoreCase) == 0
                && (at + ending.Length == end || !char.IsLetterOrDigit(text[at + ending.Length])))
                return ending.Length;
        return 0;
    }

    /// <summary>The length of '.5', '½', '/4' or '¹⁄₂' after whole digits; 0 where none follows.</summary>
    public static int FractionLength(string text, int at, int end)
    {
        int start = at;
        if (at + 1 < end && text[at] is '.' or '/' or '⁄' && char.IsAsciiDigit(text[at + 1]))
        {
            at++;
            while (at < end && char.IsAsciiDigit(text[at])) at++;
            return at - start;
        }
        while (at < end && IsFractionMark(text[at])) at++;
        return at - start;
    }

    private static bool IsFractionMark(char mark) =>
        char.GetUnicodeCategory(mark) == System.Globalization.UnicodeCategory.OtherNumber || mark == '⁄';
}
