using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Lines;

/// <summary>Reads a length to reach: 'until piece measures 40 cm', 'for 15 inches', 'until work measures 11½ inches from beginning'.</summary>
internal static class Measures
{
    private const double MillimetresPerInch = 25.4;
    private static readonly Phrase Until = new("until|till|to|for");
    private const int MostWordsBetween = 6;

    public static SizedNumber? Take(Cursor cursor)
    {
        int from = cursor.At;
        if (!cursor.Take(Until)) return null;
        int start = cursor.At;
        while (!cursor.AtEnd && cursor.At - start < MostWordsBetween && cursor.Kind == TokenKind.Word && cursor.Now.Form.Number is null) cursor.At++;
        if (TakeLengths(cursor) is { } millimetres)
        {
            TakeOtherUnit(cursor);
            // '32 in. [81 cm]'
            if (cursor.Kind == TokenKind.Dot && cursor.Ahead(1).Kind == TokenKind.Open) cursor.At++;
            if (cursor.Partner() is >= 0 and int partner && IsLength(cursor, partner)) cursor.At = partner + 1;
            Steps.Clauses.TakeToComma(cursor);
            return millimetres;
        }
        cursor.At = from;
        return null;
    }

    /// <summary>'20 in./51 cm': the same length in other units.</summary>
    private static void TakeOtherUnit(Cursor cursor)
    {
        int from = cursor.At;
        cursor.Take(TokenKind.Dot);
        if (!cursor.Take(TokenKind.Slash) || TakeLengths(cursor) is null) cursor.At = from;
    }

    private static SizedNumber? TakeLengths(Cursor cursor)
    {
        int from = cursor.At;
        var values = new List<double>();
        while (TakeNumber(cursor) is { } value)
        {
            values.Add(value);
            while (cursor.Kind is TokenKind.Comma or TokenKind.Colon or TokenKind.Semicolon or TokenKind.Open or TokenKind.Close && cursor.Ahead(1).Kind is TokenKind.Number or TokenKind.Fraction or TokenKind.Word) cursor.At++;
        }
        cursor.Take(TokenKind.Close);
        if (values.Count == 0 || UnitInMillimetres(cursor) is not { } unit) return null;
        return new SizedNumber(values.Select(value => (int?)Math.Round(Math.Min(value, ReadingLimits.Number) * unit)).ToEquatableArray(), cursor.SpanFrom(from));
    }

    private static double? UnitInMillimetres(Cursor cursor)
    {
        double? unit = cursor.Now.Word switch
        {
            "cm" or "centimetres" or "centimeters" => 10,
            "mm" => 1,
            "in" or "inch" or "inches" => MillimetresPerInch,
            "yard" or "yards" or "yd" => 36 * MillimetresPerInch,
            "m" => 1000,
            _ => cursor.Kind == TokenKind.Quote ? MillimetresPerInch : null,
        };
        if (unit is not null) cursor.At++;
        return unit;
    }

    /// <summary>'(10 in)': the same length in other units.</summary>
    private static bool IsLength(Cursor cursor, int partner)
    {
        for (int i = cursor.At; i < partner; i++)
            if (cursor.Context.Tokens[i] is { Kind: TokenKind.Quote } or { Word: "cm" or "in" or "inch" or "inches" or "mm" }) return true;
        return false;
    }

    private static double? TakeNumber(Cursor cursor)
    {
        if (cursor.Kind == TokenKind.Fraction && Fractions.Value(cursor.Raw) is { } fraction)
        {
            cursor.At++;
            return fraction;
        }
        return Numbers.TakePlain(cursor);
    }
}
