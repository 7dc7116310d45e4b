using System.Globalization;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>Splits a definition into words. Hyphens join words in print and part them here: 'ch-3' is 'ch', '3'.</summary>
internal static class MotionWords
{
    private static readonly Dictionary<string, int> Numbers = new(StringComparer.Ordinal)
    {
        ["one"] = 1, ["two"] = 2, ["three"] = 3, ["four"] = 4, ["five"] = 5, ["six"] = 6, ["seven"] = 7, ["eight"] = 8,
        ["nine"] = 9, ["ten"] = 10, ["eleven"] = 11, ["twelve"] = 12, ["thirteen"] = 13,
    };

    private static readonly Dictionary<string, int> Ordinals = new(StringComparer.Ordinal)
    {
        ["first"] = 1, ["second"] = 2, ["third"] = 3, ["fourth"] = 4, ["fifth"] = 5, ["sixth"] = 6, ["seventh"] = 7,
    };

    public static List<MotionWord> Split(string text, TextSpan span)
    {
        var words = new List<MotionWord>();
        int at = span.Start;
        while (at < span.End)
        {
            int end = EndOfWord(text, at, span.End);
            if (end == at) at++;
            else
            {
                if (!IsQuote(text[at]) || FollowsNumber(words)) words.Add(Word(text, TextSpan.FromTo(at, end)));
                at = end;
            }
        }

        return words;
    }

    private static bool FollowsNumber(List<MotionWord> words) => words.Count > 0 && words[^1] is { Sort: WordSort.Fraction } or { IsCount: true };

    /// <summary>Quotation marks say nothing; after a number they are inches.</summary>
    private static bool IsQuote(char c) => c is '"' or '“' or '”' or '„' or '‘';

    /// <summary>The end of the word that begins here; the same place where there is only room between words.</summary>
    private static int EndOfWord(string text, int start, int limit)
    {
        char first = text[start];
        if (char.IsLetter(first)) return While(text, start, limit, c => char.IsLetter(c) || c is '\'' or '’');
        if (char.IsDigit(first)) return EndOfNumber(text, start, limit);
        if (first == '*') return While(text, start, limit, c => c == '*');
        return char.IsWhiteSpace(first) || first == '-' ? start : start + 1;
    }

    /// <summary>'7', '2nd', '1/2', '0.5'.</summary>
    private static int EndOfNumber(string text, int start, int limit)
    {
        int end = While(text, start, limit, char.IsDigit);
        if (end + 1 < limit && text[end] is '/' or '.' && char.IsDigit(text[end + 1])) return While(text, end + 1, limit, char.IsDigit);
        int suffix = While(text, end, limit, char.IsLetter);
        return text[end..suffix] is "st" or "nd" or "rd" or "th" or "d" ? suffix : end;
    }

    private static int While(string text, int at, int limit, Func<char, bool> belongs)
    {
        while (at < limit && belongs(text[at])) at++;
        return at;
    }

    private static MotionWord Word(string text, TextSpan span)
    {
        string word = text.Substring(span.Start, span.Length).ToLowerInvariant();
        if (char.IsLetter(word[0]))
        {
            if (Numbers.TryGetValue(word, out int number)) return new MotionWord(word, number, WordSort.Word, span);
            return Ordinals.TryGetValue(word, out int ordinal)
                ? new MotionWord(word, ordinal, WordSort.Ordinal, span)
                : new MotionWord(word, null, WordSort.Word, span);
        }

        if (!char.IsDigit(word[0])) return new MotionWord(word, null, IsFraction(word[0]) ? WordSort.Fraction : WordSort.Mark, span);
        if (word.Contains('/') || word.Contains('.')) return new MotionWord(word, null, WordSort.Fraction, span);
        return new MotionWord(word, NumberOf(word.AsSpan().TrimEnd("stndrh")), char.IsDigit(word[^1]) ? WordSort.Word : WordSort.Ordinal, span);
    }

    private static bool IsFraction(char c) => CharUnicodeInfo.GetUnicodeCategory(c) == UnicodeCategory.OtherNumber;

    /// <summary>A number too large for any stitch is read as the largest: it will not pass for a right one.</summary>
    private static int NumberOf(ReadOnlySpan<char> digits) =>
        int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? Math.Min(number, MotionLimits.Number) : MotionLimits.Number;
}
