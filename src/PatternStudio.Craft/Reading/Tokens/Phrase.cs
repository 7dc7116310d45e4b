namespace PatternStudio.Craft.Reading.Tokens;

/// <summary>
/// A phrase of the trade, as data: words in a row, <c>a|b</c> for either, <c>?</c> for one that may be left out, <c>#</c> for a number, <c>##</c> for an ordinal.
/// Words are as the reader calls them (<see cref="Terms.Synonyms"/>); hyphens in the text are looked through.
/// </summary>
internal sealed class Phrase
{
    private readonly Element[] elements;

    public Phrase(string pattern) => elements = [.. pattern.Split(' ').Select(Element.Of)];

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
    public int Match(ReadOnlySpan<Token> tokens, int at)
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

    private sealed record Element(string[] Words, bool Optional)
    {
        public static Element Of(string text)
        {
            bool optional = text.EndsWith('?');
            return new Element((optional ? text[..^1] : text).Split('|'), optional);
        }

        public bool Fits(in Token token)
        {
            foreach (string word in Words)
                if (Fits(word, token)) return true;
            return false;
        }

        private static bool Fits(string word, in Token token) => word switch
        {
            "," => token.Kind == TokenKind.Comma,
            ":" => token.Kind == TokenKind.Colon,
            "#" => token.Kind == TokenKind.Number,
            "##" => token.Kind == TokenKind.Ordinal,
            "a" => token.Kind == TokenKind.Word && token.Word is "a" or "an",
            _ => token.Kind == TokenKind.Word ? token.Word == word : token.Kind == TokenKind.Ordinal && token.Value == 1 && word == "first",
        };
    }
}
