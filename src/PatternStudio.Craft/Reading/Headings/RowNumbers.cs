using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Headings;

/// <summary>Reads the numbers of rows: '3–10', '4, 6 and 8', '3rd, 4th and 5th'.</summary>
internal static class RowNumbers
{
    private static readonly Phrase To = new("to|through");
    private static readonly Phrase And = new("and|&");
    private const int MostListed = 1000;

    /// <summary>'–10 (12, 14)', 'to 10', 'through 10' after a first number.</summary>
    public static SizedNumber? TakeLast(Cursor cursor)
    {
        int from = cursor.At;
        if ((cursor.Take(TokenKind.Dash) || cursor.Take(TokenKind.Hyphen) || cursor.Take(To)) && TakeRowLetter(cursor) && Numbers.Take(cursor) is { } last && last.Values[0] is not null)
        {
            cursor.TakeWord("inclusive");
            cursor.TakeWord("incl");
            return last;
        }
        cursor.At = from;
        return null;
    }

    /// <summary>The second R of 'R5–R7'.</summary>
    private static bool TakeRowLetter(Cursor cursor)
    {
        if (cursor.Now.Word is "r" or "rnd" or "row" or "rd" && cursor.Ahead(1).Kind == TokenKind.Number) cursor.At++;
        return true;
    }

    /// <summary>'to 16th' after a first ordinal.</summary>
    public static int? TakeLastOrdinal(Cursor cursor)
    {
        int from = cursor.At;
        if ((cursor.Take(TokenKind.Dash) || cursor.Take(TokenKind.Hyphen) || cursor.Take(To)) && TakeEither(cursor) is { } last) return last;
        cursor.At = from;
        return null;
    }

    /// <summary>', 6 and 8' after a first number.</summary>
    public static EquatableArray<int> TakeMore(Cursor cursor, int first) => TakeAll(cursor, first, TakePlainRow);

    /// <summary>', 6th and 7th' after a first ordinal.</summary>
    public static EquatableArray<int> TakeMoreOrdinals(Cursor cursor, int first) => TakeAll(cursor, first, Numbers.TakeOrdinal);

    private static int? TakeEither(Cursor cursor) => Numbers.TakeOrdinal(cursor) ?? Numbers.TakePlain(cursor);

    /// <summary>'and Row 3' as well as 'and 3'.</summary>
    private static int? TakePlainRow(Cursor cursor)
    {
        if (!cursor.TakeWord("row") && !cursor.TakeWord("rnd")) TakeRowLetter(cursor);
        return cursor.Kind == TokenKind.Number && !IsNoRow(cursor) ? Numbers.TakePlain(cursor) : null;
    }

    /// <summary>'rep Row 1, 14 (16, 18) times more', 'rep Row 2, 4 more times': how often, no row.</summary>
    private static bool IsNoRow(Cursor cursor)
    {
        int from = cursor.At;
        // 'rep R32 - 34 (38, 42)': the count that the row states.
        bool times = Numbers.Take(cursor) is { } number && (!number.IsPlain || cursor.Now.Word is "times" or "more" or "additional");
        cursor.At = from;
        return times;
    }

    private static EquatableArray<int> TakeAll(Cursor cursor, int first, Func<Cursor, int?> take)
    {
        var numbers = new List<int> { first };
        while (numbers.Count < MostListed)
        {
            int from = cursor.At;
            bool comma = cursor.Take(TokenKind.Comma), and = cursor.Take(And), hyphen = !comma && !and && cursor.Take(TokenKind.Hyphen), dash = hyphen || !comma && !and && (cursor.Take(TokenKind.Dash) || cursor.Take(To));
            // 'Row 8—5 shells', 'Row 1 — 1 dc …': no range goes backwards or nowhere; the number is of the row. 'Rnds 3-3' is one round.
            if ((comma || and || dash) && take(cursor) is { } number && !(dash && number < numbers[^1] + (hyphen ? 0 : 1)))
            {
                if (dash && number == numbers[^1]) continue;
                if (dash) for (int between = numbers[^1] + 1; between < number && numbers.Count < MostListed; between++) numbers.Add(between);
                numbers.Add(number);
                continue;
            }
            cursor.At = from;
            break;
        }
        return numbers.ToEquatableArray();
    }
}
