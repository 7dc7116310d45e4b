using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Tokens;

/// <summary>Reads numbers: digits, words, size lists.</summary>
internal static class Numbers
{
    /// <summary>Takes a plain number, in digits or in words.</summary>
    public static int? TakePlain(Cursor cursor)
    {
        Token token = cursor.Now;
        int? value = token.Kind switch
        {
            TokenKind.Number => token.Value,
            TokenKind.Word => token.Form.Number ?? (IsOneMisprinted(cursor) ? 1 : null),
            _ => null,
        };
        if (value is null) return null;
        if (value > ReadingLimits.Number)
        {
            cursor.Context.Report(ReadingTroubleKind.TooLarge, "number", token.Span);
            return null;
        }
        cursor.At++;
        return value;
    }

    /// <summary>Old type sets 'l d c' for '1 d c'.</summary>
    private static bool IsOneMisprinted(Cursor cursor)
    {
        if (cursor.Now.Word != "l" || cursor.Ahead(1).Kind != TokenKind.Word) return false;
        int from = cursor.At++;
        bool stitch = cursor.TakeStitch() is not null;
        cursor.At = from;
        return stitch;
    }

    /// <summary>Takes a number that may be a size list: '21', 'three', '21 (31, 41)', '21 (31) (41)', '- (2, 4)'.</summary>
    public static SizedNumber? Take(Cursor cursor)
    {
        int from = cursor.At;
        int? first = cursor.Kind == TokenKind.Dash && SizeList.IsAt(cursor, 1) ? null : TakePlain(cursor);
        if (first is null && !(cursor.Kind == TokenKind.Dash && SizeList.IsAt(cursor, 1))) return null;
        if (first is null) cursor.At++;
        if (first is not null && !SizeList.IsAt(cursor, 0)) return SizedNumber.Of(first.Value, cursor.SpanFrom(from));
        var values = new List<int?> { first };
        while (SizeList.IsAt(cursor, 0)) SizeList.Take(cursor, values);
        TextSpan span = cursor.SpanFrom(from);
        EquatableArray<int> only = cursor.Context.OnlySizes;
        if (values.Count > 1 && values.Count == only.Count && values.Count != cursor.Context.Sizes)
        {
            // 'Sizes M and L only: … (20, 24 sc)': a number for each size that works it.
            int?[] spread = new int?[cursor.Context.Sizes];
            for (int i = 0; i < values.Count; i++) spread[only[i]] = values[i];
            return new SizedNumber(spread.ToEquatableArray(), span);
        }
        if (values.Count > 1 && values.Count != cursor.Context.Sizes)
            cursor.Context.Report(ReadingTroubleKind.SizeListLength, $"{values.Count}", span);
        return new SizedNumber(values.ToEquatableArray(), span);
    }

    /// <summary>Takes an ordinal: '2nd', 'second'.</summary>
    public static int? TakeOrdinal(Cursor cursor)
    {
        Token token = cursor.Now;
        int? value = token.Kind switch
        {
            TokenKind.Ordinal => token.Value,
            TokenKind.Word => token.Form.Ordinal,
            _ => null,
        };
        if (value is not null) cursor.At++;
        return value;
    }
}
