using System.Collections.Frozen;

namespace PatternStudio.Craft.Checking.Sentences;

/// <summary>Articles, plurals and names as a maker would say them aloud.</summary>
internal static class English
{
    /// <summary>Letters whose own names begin with a vowel: 'ess', 'aitch'.</summary>
    private const string LettersWithAn = "fhlmnrsx";

    /// <summary>Abbreviations that are spoken as the word they stand for: 'a st', 'a sp'.</summary>
    private static readonly FrozenSet<string> SpokenWhole = FrozenSet.Create("st", "sp", "sl", "sh", "rnd", "rs", "lp");

    /// <summary>'1 stitch', '2 stitches'.</summary>
    public static string Count(long number, string one, string many) => $"{number} {(number == 1 ? one : many)}";

    /// <summary>'1 stitch', '2 stitches'.</summary>
    public static string Stitches(long number) => Count(number, "stitch", "stitches");

    /// <summary>'4 ch-2 sps', '1 puff', '12 sc': abbreviated stitches have no plural.</summary>
    public static string Count(long number, string name) => $"{number} {(number == 1 ? name : Plural(name))}";

    /// <summary>'an sc', 'a dc', 'an hdc', 'a ch-2 sp', 'an inc'.</summary>
    public static string A(string name) => (TakesAn(name) ? "an " : "a ") + name;

    /// <summary>'sts', 'ch-2 sps', 'puffs'; 'sc' stays 'sc'.</summary>
    public static string Plural(string name)
    {
        string last = name[(name.LastIndexOfAny([' ', '-']) + 1)..];
        if (last.EndsWith("tog", StringComparison.OrdinalIgnoreCase) || last.EndsWith('s')) return name;
        return last is "st" or "sp" or "ch" or "lp" or "cl" || HasVowel(last) ? name + "s" : name;
    }

    /// <summary>A row as prose names it: 'Row 3', 'the foundation'.</summary>
    public static string Row(string label) => label is "Foundation" ? "the foundation" : label.Length == 0 ? "the row below" : label;

    /// <summary>'Row 3 needs …': a row at the head of a sentence.</summary>
    public static string AtHead(string label) => label is "Foundation" ? "The foundation" : label.Length == 0 ? "This row" : label;

    /// <summary>Words quoted in a sentence, cut where they are long.</summary>
    public static string Quoted(string words)
    {
        string line = string.Join(' ', words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return $"'{(line.Length <= 60 ? line : line[..57].TrimEnd() + "…")}'";
    }

    private static bool TakesAn(string name)
    {
        string word = string.Concat(name.TakeWhile(char.IsAsciiLetter)).ToLowerInvariant();
        if (word.Length == 0) return name.StartsWith('8') || name.StartsWith("11", StringComparison.Ordinal) || name.StartsWith("18", StringComparison.Ordinal);
        if (HasVowel(word)) return "aeiou".Contains(word[0], StringComparison.Ordinal);
        return !SpokenWhole.Contains(word) && LettersWithAn.Contains(word[0], StringComparison.Ordinal);
    }

    private static bool HasVowel(string word) => word.Any(letter => "aeiouAEIOU".Contains(letter, StringComparison.Ordinal));
}
