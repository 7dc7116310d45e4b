namespace PatternStudio.Craft.Terms;

/// <summary>Words that mean the same in a row, and numbers in words.</summary>
public static class Synonyms
{
    private static readonly IReadOnlyDictionary<string, string> Words = TermFiles.KeyByValue("words.txt");
    private static readonly IReadOnlyDictionary<string, string> Numbers = TermFiles.KeyByValue("numbers.txt");
    private static readonly IReadOnlyDictionary<string, string> Ordinals = TermFiles.KeyByValue("ordinals.txt");

    private static readonly IReadOnlyDictionary<string, string> Groups = TermFiles.KeyByValue("groups.txt");

    private static readonly IReadOnlyDictionary<string, string> Colours = TermFiles.KeyByValue("colours.txt");

    /// <summary>True for the name of a colour.</summary>
    /// <param name="word">In lower case.</param>
    public static bool IsColour(string word) => Colours.ContainsKey(word);

    /// <summary>The usual name of a group or part of the work: 'petal' for 'petals'; null for other words.</summary>
    public static string? Group(string word) => Groups.GetValueOrDefault(word);

    /// <summary>The word the reader goes by: 'skip' for 'sk' and 'miss', 'st' for 'stitches'; the word itself where it has no synonym.</summary>
    /// <param name="word">In lower case.</param>
    public static string Usual(string word) => Words.GetValueOrDefault(word, word);

    /// <summary>The value of a number word; null for other words.</summary>
    public static int? Number(string word) => Value(Numbers, word);

    /// <summary>The value of an ordinal word: 2 for 'second'; null for other words.</summary>
    public static int? Ordinal(string word) => Value(Ordinals, word);

    private static int? Value(IReadOnlyDictionary<string, string> table, string word) =>
        table.TryGetValue(word, out string? value) ? int.Parse(value, System.Globalization.CultureInfo.InvariantCulture) : null;
}
