using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Headings;

/// <summary>Reads the bare numbers by which old handbooks head their rows: '3.', '46, 47.', '36 to 45.', '9th.—'.</summary>
internal static class BareHeadings
{
    /// <summary>Takes such a heading; null where none stands here.</summary>
    public static RowHeading? Take(Cursor cursor)
    {
        int from = cursor.At;
        if ((Numbers.TakeOrdinal(cursor) ?? (cursor.Kind == TokenKind.Number ? Numbers.TakePlain(cursor) : null)) is { } first)
        {
            SizedNumber? last = RowNumbers.TakeLast(cursor);
            EquatableArray<int> numbers = last is null ? RowNumbers.TakeMore(cursor, first) : [];
            int end = cursor.At;
            if (cursor.Take(TokenKind.Dot) || cursor.Take(TokenKind.Colon) || cursor.Kind == TokenKind.Close && cursor.Context.Partners[cursor.At] < 0 && cursor.Take(TokenKind.Close))
            {
                while (cursor.Kind is TokenKind.Dash or TokenKind.Dot) cursor.At++;
                var heading = new RowHeading(RowKind.Row, last is null ? RowNumbering.Listed : RowNumbering.Range, cursor.Slice(from, end), cursor.Span(from, end));
                return last is null ? heading with { Numbers = numbers } : heading with { First = SizedNumber.Of(first), Last = last };
            }
        }
        cursor.At = from;
        return null;
    }

    /// <summary>True where at least two lines begin with such numbers, rising, and none with 'Row' or 'Round'.</summary>
    public static bool AreIn(ReadingContext context)
    {
        int before = 0, lines = 0;
        for (int i = 0; i + 1 < context.Tokens.Length; i++)
        {
            if (!context.Tokens[i].StartsLine) continue;
            var cursor = new Cursor(context, i, context.Tokens.Length);
            if (cursor.Now.Word is "row" or "rnd" && cursor.Ahead(1).Kind == TokenKind.Number || (cursor.Kind == TokenKind.Ordinal && cursor.Ahead(1).Word is "row" or "rnd")) return false;
            if (Take(cursor) is not { } heading) continue;
            int number = heading.Numbers.IsEmpty ? heading.First!.Values[0] ?? 0 : heading.Numbers[0];
            // A second piece begins at one again.
            if (number <= before && number != 1) return false;
            before = number;
            lines++;
        }
        return lines >= 2;
    }
}
