namespace PatternStudio.Craft.Terms;

/// <summary>Parts a name into the words that it is matched by: lower case, hyphens and slashes part words, synonyms replaced.</summary>
public static class NameWords
{
    private static readonly char[] Between = [' ', '-', '\t', '\n', '\r', '\u00A0', '\u2010', '\u2011', '\u2012', '\u2013', '\u2014', '/'];

    public static IEnumerable<string> Of(string name) =>
        name.ToLowerInvariant().Split(Between, StringSplitOptions.RemoveEmptyEntries).Select(word => Synonyms.Usual(word.TrimEnd('.')));
}
