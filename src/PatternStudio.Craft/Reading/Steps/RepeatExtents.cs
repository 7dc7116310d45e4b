using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads how far a star repeat goes: one more than it says, because the passage has been worked once when the words come.</summary>
internal static class RepeatExtents
{
    private static readonly Phrase InAll = new("in all|total");

    public static Extent Take(Cursor cursor, bool alreadyOnce)
    {
        int from = cursor.At;
        cursor.Take(TokenKind.Comma);
        if (Extents.Take(cursor) is not { } extent)
        {
            cursor.At = from;
            TakeUntil(cursor);
            return new Extent(ExtentKind.Unstated, cursor.SpanFrom(from));
        }
        bool inAll = cursor.Take(InAll);
        if (extent.Kind is ExtentKind.ToLast or ExtentKind.ToPlace && FurtherWords.Take(cursor) is not null) return new Extent(ExtentKind.Unstated, cursor.SpanFrom(from));
        return extent.Kind == ExtentKind.Times && alreadyOnce && !inAll ? extent with { Count = OneMore(extent.Count!) } : extent;
    }

    /// <summary>'to opposite side of insert', 'until all picots are joined': an end that the tree does not know.</summary>
    private static void TakeUntil(Cursor cursor)
    {
        int from = cursor.At;
        cursor.Take(TokenKind.Comma);
        if (cursor.Take(ToSome)) Clauses.TakeClause(cursor);
        else cursor.At = from;
    }

    private static readonly Phrase ToSome = new("to|until|till");

    /// <summary>The number of times in all, where so many more are said.</summary>
    public static SizedNumber OneMore(SizedNumber number) =>
        number with { Values = number.Values.Select(value => value + 1).ToEquatableArray() };
}
