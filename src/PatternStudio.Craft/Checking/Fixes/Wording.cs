using System.Globalization;
using System.Text.RegularExpressions;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Checking.Fixes;

/// <summary>Changes one word or number of a stretch, where it stands there just once.</summary>
internal static class Wording
{
    private static readonly string[] NumberWords = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

    /// <summary>A word in place of another, with the capital of the old one.</summary>
    public static TextEdit Replace(TextSpan span, string old, string word) =>
        new(span, old.Length > 0 && char.IsUpper(old[0]) && !old.All(char.IsUpper) ? char.ToUpperInvariant(word[0]) + word[1..] : word);

    /// <summary>A number in place of another, in digits or as a word; null where the old one does not stand in the stretch exactly once.</summary>
    public static TextEdit? ReplaceNumber(SourceText source, TextSpan span, long old, long number)
    {
        string digits = number.ToString(CultureInfo.InvariantCulture);
        return ReplaceOnce(source, span, old.ToString(CultureInfo.InvariantCulture), digits)
            ?? (old is >= 0 and <= 10 ? ReplaceOnce(source, span, NumberWords[old], number <= 10 ? NumberWords[number] : digits) : null);
    }

    /// <summary>Words in place of others; null where the old ones do not stand in the stretch exactly once, as whole words.</summary>
    public static TextEdit? ReplaceOnce(SourceText source, TextSpan span, string old, string words)
    {
        if (old.Length == 0 || words.Length == 0) return null;
        MatchCollection places = Regex.Matches(source.Slice(span), $@"(?<![\w.]){Regex.Escape(old)}(?![\w]|\.[0-9])", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
        return places.Count == 1 ? Replace(new TextSpan(span.Start + places[0].Index, places[0].Length), places[0].Value, words) : null;
    }
}
