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
            return new Extent(ExtentKind.Unstated, cursor.SpanFrom(from));
        }
        bool inAll = cursor.Take(InAll);
        return extent.Kind == ExtentKind.Times && alreadyOnce && !inAll ? extent with { Count = OneMore(extent.Count!) } : extent;
    }

    private static SizedNumber OneMore(SizedNumber number) =>
        number with { Values = number.Values.Select(value => value + 1).ToEquatableArray() };
}
