using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads 'with ch 1 between', 'with ch 1 between each dc', '3 chain between'.</summary>
internal static class ChainsBetweenWords
{
    private static readonly Phrase With = new("with");
    private static readonly Phrase Between = new("between each|them|the?");

    private static bool TakeBetween(Cursor cursor)
    {
        cursor.TakeWord("st");
        return cursor.Take(Between);
    }

    /// <summary>Takes the words; null where they don't stand here.</summary>
    public static SizedNumber? Take(Cursor cursor)
    {
        int from = cursor.At;
        cursor.Take(TokenKind.Comma);
        cursor.Take(With);
        bool chainFirst = cursor.TakeWord("ch");
        cursor.Take(TokenKind.Hyphen);
        if (Numbers.Take(cursor) is { } chains && (chainFirst || cursor.TakeWord("ch")) && TakeBetween(cursor))
        {
            if (cursor.TakeStitch() is null) cursor.TakeWord("st");
            return chains;
        }
        cursor.At = from;
        return null;
    }
}
