namespace PatternStudio.Craft.Reading.Tokens;

/// <summary>Many phrases, looked up by their first word, so that words which begin none of them cost nothing.</summary>
internal sealed class PhraseSet
{
    private readonly Dictionary<string, List<int>> byFirstWord = new(StringComparer.Ordinal);
    private readonly Phrase[] phrases;

    /// <summary>The marks of all words that one of the phrases can begin with.</summary>
    private readonly ulong beginnings;

    public PhraseSet(IEnumerable<Phrase> all)
    {
        phrases = [.. all];
        for (int i = 0; i < phrases.Length; i++)
        {
            beginnings |= phrases[i].Beginnings;
            foreach (string word in phrases[i].FirstWords().Distinct())
            {
                if (!byFirstWord.TryGetValue(word, out List<int>? places)) byFirstWord[word] = places = [];
                places.Add(i);
            }
        }
    }

    /// <summary>True where one of the phrases stands at the cursor.</summary>
    public bool IsAt(Cursor cursor) => IndexAt(cursor) >= 0;

    /// <summary>The index of the first phrase that stands at the cursor; -1 where none does.</summary>
    public int IndexAt(Cursor cursor)
    {
        if ((beginnings & cursor.Now.Form.Marks) != 0 && byFirstWord.TryGetValue(Key(cursor.Now), out List<int>? places))
            foreach (int i in places)
                if (cursor.Is(phrases[i])) return i;
        return -1;
    }

    private static string Key(in Token token) => token.Kind switch
    {
        TokenKind.Number => "#",
        TokenKind.Ordinal => token.Value == 1 ? "first" : "##",
        TokenKind.Word => token.Word == "an" ? "a" : token.Word,
        _ => "",
    };
}
