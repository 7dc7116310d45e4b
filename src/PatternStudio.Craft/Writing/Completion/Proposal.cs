namespace PatternStudio.Craft.Writing.Completion;

/// <summary>Words that fit the place, whether or not anything of them is typed yet.</summary>
/// <param name="Words">The words.</param>
/// <param name="Says">What they are.</param>
/// <param name="IsPlace">True for places ('next sc'), which come after 'in'.</param>
internal sealed record Proposal(string Words, string Says, bool IsPlace = false)
{
    private const int MostWordsTyped = 4;

    /// <summary>The choice that these words are after what is typed; null where they do not go on with it.</summary>
    /// <param name="line">The line up to the cursor.</param>
    /// <param name="asked">True where the writer asked by key: then nothing need be typed.</param>
    public Choice? After(string line, bool asked)
    {
        foreach (int from in Beginnings(line))
        {
            ReadOnlySpan<char> typed = line.AsSpan(from);
            if (typed.Length < Words.Length && Words.AsSpan().StartsWith(typed, StringComparison.OrdinalIgnoreCase)) return new Choice(from, Cased(typed), Says);
        }

        return asked && (line.Length == 0 || line[^1] is ' ' or '*' or '(' or '[') ? new Choice(line.Length, Words, Says) : null;
    }

    /// <summary>'Sc' begun with a capital goes on as 'Sc in each st'.</summary>
    private string Cased(ReadOnlySpan<char> typed) => char.IsUpper(typed[0]) && char.IsLower(Words[0]) ? char.ToUpperInvariant(Words[0]) + Words[1..] : Words;

    /// <summary>Where the last four words begin, the first of them first.</summary>
    private static Stack<int> Beginnings(string line)
    {
        var found = new Stack<int>();
        for (int at = line.Length - 1; at >= 0 && found.Count < MostWordsTyped; at--)
            if (!char.IsWhiteSpace(line[at]) && (at == 0 || line[at - 1] is ' ' or '*' or '[' or ';' or ':' || line[at - 1] == '(' && line[at] != '(')) found.Push(at);
        return found;
    }
}
