namespace PatternStudio.Craft.Writing.Completion;

/// <summary>Words that fit the place, whether or not anything of them is typed yet.</summary>
/// <param name="Words">The words.</param>
/// <param name="Says">What they are.</param>
/// <param name="Spot">Where they can stand: places ('next sc') come after 'in'.</param>
internal sealed record Proposal(string Words, string Says, Spot Spot = Spot.Step)
{
    /// <summary>'next 20 (24, 28) sc' of a pattern of many sizes has as many.</summary>
    private const int MostWordsTyped = 12;

    /// <summary>False where the row can't be worked with them. Asked only of words that go on with what is typed: it works the pattern once more.</summary>
    public Func<bool> Holds { get; init; } = () => true;

    /// <summary>The choice that these words are after what is typed; null where they do not go on with it.</summary>
    /// <param name="line">The line up to the cursor.</param>
    /// <param name="cursor">Where the cursor stands in it.</param>
    /// <param name="asked">True where the writer asked by key: then nothing need be typed.</param>
    public Choice? After(string line, LineSpot cursor, bool asked)
    {
        if (cursor.Spot == Spot.Place) return Spot == Spot.Place ? From(line, cursor.From, asked) : null;
        if (Spot == Spot.Place) return null;
        foreach (int from in Beginnings(line))
            if (From(line, from, asked: false) is { } choice) return choice;
        bool fits = cursor.Spot == Spot.RowStart ? string.IsNullOrWhiteSpace(line) : Spot == cursor.Spot;
        return asked && fits ? new Choice(line.Length, Words, Says) : null;
    }

    private Choice? From(string line, int from, bool asked)
    {
        ReadOnlySpan<char> typed = line.AsSpan(from);
        if (typed.Length == 0) return asked ? new Choice(from, Words, Says) : null;
        return typed.Length < Words.Length && Words.AsSpan().StartsWith(typed, StringComparison.OrdinalIgnoreCase) ? new Choice(from, Cased(typed), Says) : null;
    }

    /// <summary>'Sc' begun with a capital goes on as 'Sc in each st'.</summary>
    private string Cased(ReadOnlySpan<char> typed) => char.IsUpper(typed[0]) && char.IsLower(Words[0]) ? char.ToUpperInvariant(Words[0]) + Words[1..] : Words;

    /// <summary>Where the last words begin, the first of them first.</summary>
    private static Stack<int> Beginnings(string line)
    {
        var found = new Stack<int>();
        for (int at = line.Length - 1; at >= 0 && found.Count < MostWordsTyped; at--)
            if (!char.IsWhiteSpace(line[at]) && (at == 0 || line[at - 1] is ' ' or '*' or '[' or ';' or ':' || line[at - 1] == '(' && line[at] != '(')) found.Push(at);
        return found;
    }
}
