using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Reading.Tokens;

/// <summary>
/// Leaves out abbreviations that a text introduces on the way: 'single crochet (sc) in ring', 'chain (ch) 8', 'double treble crochet ([d tr c] 3 times over hook)'.
/// The brackets repeat the name before them.
/// </summary>
internal static class InlineAbbreviations
{
    private const int MostTokens = 12;
    private const int MostNameWords = 5;

    /// <summary>The tokens without such brackets.</summary>
    public static Token[] LeaveOut(Token[] tokens, Terminology terminology)
    {
        int[] partners = Brackets.Match(tokens);
        NameTree names = Vocabulary.Standard.Names(terminology);
        List<Token>? kept = null;
        for (int i = 0; i < tokens.Length; i++)
        {
            if (tokens[i].Kind == TokenKind.Open && partners[i] > i && partners[i] - i <= MostTokens && !Defines(tokens, partners[i]) && RepeatsName(tokens, i, partners[i], names))
            {
                kept ??= [.. tokens.AsSpan(0, i)];
                i = partners[i];
            }
            else kept?.Add(tokens[i]);
        }
        return kept is null ? tokens : [.. kept];
    }

    /// <summary>'Popcorn (pc): …' is a definition: there the abbreviation is wanted.</summary>
    private static bool Defines(Token[] tokens, int close) =>
        close + 1 < tokens.Length && tokens[close + 1].Kind is TokenKind.Colon or TokenKind.Dash or TokenKind.Equal;

    private static bool RepeatsName(Token[] tokens, int open, int close, NameTree names)
    {
        int start = open + 1;
        int end = close;
        while (start < end && tokens[start].Kind == TokenKind.Open) start++;
        int name = start;
        while (name < end && tokens[name].Kind is TokenKind.Word or TokenKind.Hyphen) name++;
        if (!OnlyWraps(tokens, name, end)) return false;
        if (name == start) return TellsWraps(tokens, start, end);
        if (open > 0 && name == start + 1 && tokens[open - 1].Word == tokens[start].Word && tokens[open - 1].Kind == TokenKind.Word) return true;
        return Meaning(tokens, start, name, names) is { } stitch && EndsBefore(tokens, open, stitch, names);
    }

    /// <summary>After the abbreviation: nothing, or '] 3 times over hook'.</summary>
    private static bool OnlyWraps(Token[] tokens, int from, int to)
    {
        for (int i = from; i < to; i++)
            if (tokens[i].Kind is not (TokenKind.Close or TokenKind.Number or TokenKind.Dot) && tokens[i].Word is not ("times" or "over" or "hook" or "needle")) return false;
        return true;
    }

    /// <summary>'(4 times over hook)' says again what the name says.</summary>
    private static bool TellsWraps(Token[] tokens, int from, int to) =>
        to - from == 4 && tokens[from].Kind == TokenKind.Number && tokens[from + 1].Word == "times" && tokens[from + 2].Word == "over";

    private static bool EndsBefore(Token[] tokens, int open, StitchId stitch, NameTree names)
    {
        for (int words = 1; words <= MostNameWords && open - words >= 0; words++)
            if (Meaning(tokens, open - words, open, names) == stitch) return true;
        return false;
    }

    private static StitchId? Meaning(Token[] tokens, int from, int to, NameTree names)
    {
        NameTree? node = names;
        for (int i = from; i < to; i++)
            if (tokens[i].Kind != TokenKind.Hyphen) node = tokens[i].Kind == TokenKind.Word ? node?.Next(tokens[i].Word) : null;
        return node?.Stitch;
    }
}
