namespace PatternStudio.Craft.Reading.Tokens;

/// <summary>
/// A phrase of the trade, as data: words in a row, <c>a|b</c> for either, <c>?</c> for one that may be left out, <c>#</c> for a number, <c>##</c> for an ordinal.
/// Words are as the reader calls them (<see cref="Terms.Synonyms"/>); hyphens in the text are looked through.
/// </summary>
internal sealed class Phrase
{
    private readonly Element[] elements;

    /// <summary>The marks of all words that the phrase can begin with (<see cref="WordMarks"/>).</summary>
    public ulong Beginnings { get; }

    public Phrase(string pattern)
    {
        elements = [.. pattern.Split(' ').Select(Element.Of)];
        foreach (Element element in elements)
        {
            Beginnings |= element.Marks;
            if (!element.Optional) return;
        }
        Beginnings |= WordMarks.Anything;
    }

    /// <summary>The words that the phrase can begin with: those of its first element, and of the next where that may be left out.</summary>
    public IEnumerable<string> FirstWords()
    {
        foreach (Element element in elements)
        {
            foreach (string word in element.Words) yield return word;
            if (!element.Optional) yield break;
        }
    }

    /// <summary>The position after the phrase, where it stands at <paramref name="at"/>; -1 where it does not.</summary>
    public int Match(ReadOnlySpan<Token> tokens, int at) =>
        (Beginnings & ((uint)at < (uint)tokens.Length ? tokens[at].Form.Marks : WordMarks.Anything)) == 0 ? -1 : MatchAll(tokens, at);

    private int MatchAll(ReadOnlySpan<Token> tokens, int at)
    {
        foreach (Element element in elements)
        {
            int word = at;
            while (word < tokens.Length && word > 0 && tokens[word].Kind == TokenKind.Hyphen) word++;
            if (word < tokens.Length && element.Fits(tokens[word])) at = word + 1;
            else if (!element.Optional) return -1;
        }
        return at;
    }

    private sealed class Element(string[] words, bool optional)
    {
        public string[] Words { get; } = words;

        public bool Optional { get; } = optional;

        public ulong Marks { get; } = words.Aggregate(0UL, (marks, word) => marks | MarkOf(word));

        public static Element Of(string text)
        {
            bool optional = text.EndsWith('?');
            return new Element((optional ? text[..^1] : text).Split('|'), optional);
        }

        public bool Fits(in Token token) => (Marks & token.Form.Marks) != 0 && token.Kind switch
        {
            TokenKind.Word => IsOneOf(token.Word) || (token.Word == "an" && IsOneOf("a")),
            TokenKind.Ordinal => (Marks & WordMarks.Ordinal) != 0 || (token.Value == 1 && IsOneOf("first")),
            TokenKind.Hyphen => false,
            _ => (Marks & token.Form.Marks & WordMarks.Kinds) != 0,
        };

        private bool IsOneOf(string said)
        {
            foreach (string word in Words)
                if (word == said) return true;
            return false;
        }

        private static ulong MarkOf(string word) => word switch
        {
            "," => WordMarks.Comma,
            ":" => WordMarks.Colon,
            "#" => WordMarks.Number,
            "##" => WordMarks.Ordinal,
            _ => WordMarks.Of(word),
        };
    }
}
