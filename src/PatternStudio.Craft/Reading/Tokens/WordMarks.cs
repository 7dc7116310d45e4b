namespace PatternStudio.Craft.Reading.Tokens;

/// <summary>
/// Marks by which words are told apart at a glance. Every word bears one of some sixty marks, always the same; numbers, ordinals, commas and colons bear
/// marks of their own. Words that bear no mark in common are not the same, so a phrase that can't begin with the word at hand is passed over at the
/// cost of one comparison, without a list of who begins with what.
/// </summary>
internal static class WordMarks
{
    public const ulong Comma = 1UL << 0;
    public const ulong Colon = 1UL << 1;
    public const ulong Number = 1UL << 2;
    public const ulong Ordinal = 1UL << 3;

    /// <summary>The marks that say what a token is, whatever its word.</summary>
    public const ulong Kinds = Comma | Colon | Number | Ordinal;

    /// <summary>Borne by every token, and by the end of a stretch: what may be left out altogether can stand anywhere.</summary>
    public const ulong Anything = 1UL << 63;

    /// <summary>A hyphen is looked through, so that any word may follow.</summary>
    public const ulong All = ulong.MaxValue;

    private const int FirstOfWords = 4;
    private const int WordsEnd = 63;

    /// <summary>The mark of a word in lower case.</summary>
    public static ulong Of(ReadOnlySpan<char> word)
    {
        uint sum = 0;
        foreach (char letter in word) sum = unchecked((sum * 31) + letter);
        sum = unchecked(sum * 2654435769) >> 8;
        return 1UL << (FirstOfWords + (int)(sum % (WordsEnd - FirstOfWords)));
    }
}
