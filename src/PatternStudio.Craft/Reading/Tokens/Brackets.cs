namespace PatternStudio.Craft.Reading.Tokens;

/// <summary>Pairs brackets, once for the whole text.</summary>
internal static class Brackets
{
    /// <summary>For every token the index of its partner bracket; -1 where it has none. A row heading's line start does not close brackets: rows may wrap.</summary>
    public static int[] Match(Token[] tokens)
    {
        int[] partners = new int[tokens.Length];
        Array.Fill(partners, -1);
        var open = new Stack<int>();
        for (int i = 0; i < tokens.Length; i++)
        {
            if (tokens[i].Kind == TokenKind.Open) open.Push(i);
            else if (tokens[i].Kind == TokenKind.Close && open.Count > 0 && Marks.Pair(tokens[open.Peek()].Word, tokens[i].Word))
            {
                partners[i] = open.Pop();
                partners[partners[i]] = i;
            }
        }
        return partners;
    }
}
