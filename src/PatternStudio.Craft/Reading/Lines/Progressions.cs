using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Lines;

/// <summary>Reads 'Continue in this way, adding 1 double between widenings each row, until you have 30 doubles between widenings'.</summary>
internal static class Progressions
{
    private static readonly Phrase GoOn = new("cont|proceed|go on? in this|the|same same? way|manner");
    private static readonly Phrase Adding = new("adding|increasing|with|having|allowing|one|1|a|an|extra|more|another|additional");
    private static readonly Phrase More = new("one|1|a|an more|extra|additional?");
    private static readonly Phrase Between = new("between|before each|the|every? widenings|widening|increases|increase|inc|increasings|increasing");
    private static readonly Phrase Until = new("until|till you|there have|are");

    /// <summary>Takes the whole sentence; null where it does not stand here.</summary>
    public static ContinueInWay? Take(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Take(GoOn) && TakeMore(cursor) && GoTo(cursor, Until) && cursor.Take(Until) && Numbers.Take(cursor) is { IsPlain: true } count && PlaceNouns.Take(cursor) is not null && InClause(cursor, Between))
        {
            Steps.Clauses.TakeToStop(cursor);
            return new ContinueInWay(count, cursor.SpanFrom(from));
        }
        cursor.At = from;
        return null;
    }

    /// <summary>', adding 1 double between widenings': one more in each section, row by row.</summary>
    private static bool TakeMore(Cursor cursor)
    {
        while (cursor.Kind is TokenKind.Comma || cursor.Now.IsWord("but")) cursor.At++;
        if (!cursor.Take(Adding)) return false;
        cursor.Take(More);
        if (cursor.Ahead(-1).Kind == TokenKind.Word && Numbers.TakePlain(cursor) is > 1) return false;
        PlaceNouns.Take(cursor);
        return InClause(cursor, Between);
    }

    /// <summary>True where the phrase stands in this sentence before the next 'until'.</summary>
    private static bool InClause(Cursor cursor, Phrase words)
    {
        int from = cursor.At;
        bool found = GoTo(cursor, words);
        cursor.At = from;
        return found;
    }

    private static bool GoTo(Cursor cursor, Phrase words)
    {
        while (!cursor.AtEnd && cursor.Kind is not (TokenKind.Semicolon or TokenKind.Dot))
        {
            if (cursor.Is(words)) return true;
            cursor.At++;
        }
        return false;
    }
}
