using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Places;

/// <summary>Reads '6th and 5th chs of tch', '1st, 2nd and 3rd ch of next loop': one place after another, each by its own ordinal.</summary>
internal static class SeveralOrdinals
{
    private const int Most = 50;
    private static readonly Phrase And = new("and the?");

    /// <summary>Takes all ordinals of a list but the last, which stays for the noun.</summary>
    public static IReadOnlyList<int> Take(Cursor cursor)
    {
        int from = cursor.At;
        cursor.TakeWord("the");
        List<int>? ordinals = null;
        int last = cursor.At;
        while (!(ordinals?.Count >= Most) && Numbers.TakeOrdinal(cursor) is { } ordinal)
        {
            bool goesOn = cursor.Take(TokenKind.Comma);
            goesOn |= cursor.Take(And);
            int next = cursor.At;
            if (!goesOn || Numbers.TakeOrdinal(cursor) is null) break;
            (ordinals ??= []).Add(ordinal);
            cursor.At = last = next;
        }
        cursor.At = ordinals is null ? from : last;
        return ordinals ?? (IReadOnlyList<int>)[];
    }

    /// <summary>The placement for each ordinal in turn, the one read being the last.</summary>
    public static Placement Spread(Placement last, IReadOnlyList<int> ordinals)
    {
        Placement all = last;
        for (int i = ordinals.Count - 1; i >= 0; i--)
            all = last with { Choice = last.Choice == PlaceChoice.First ? PlaceChoice.Nth : last.Choice, Ordinal = ordinals[i], And = all };
        return all;
    }
}
