namespace PatternStudio.Craft.Terms;

/// <summary>Parts a name into the words that it is matched by: lower case, hyphens and slashes part words, synonyms replaced.</summary>
public static class NameWords
{
    private static readonly char[] Between = [' ', '-', '\t', '\n', '\r', '\u00A0', '\u2010', '\u2011', '\u2012', '\u2013', '\u2014', '/'];

    public static IEnumerable<string> Of(string name) =>
        name.ToLowerInvariant().Split(Between, StringSplitOptions.RemoveEmptyEntries).SelectMany(Parted).Select(word => Synonyms.Usual(word.TrimEnd('.')));

    /// <summary>'ch3' is two words, 'dc3tog' is one, '3dc' two: as rows are read.</summary>
    private static IEnumerable<string> Parted(string word)
    {
        int digits = word.Length;
        while (digits > 0 && char.IsAsciiDigit(word[digits - 1])) digits--;
        int lead = 0;
        while (lead < digits && char.IsAsciiDigit(word[lead])) lead++;
        return new[] { word[..lead], word[lead..digits], word[digits..] }.Where(part => part.Length > 0);
    }
}
