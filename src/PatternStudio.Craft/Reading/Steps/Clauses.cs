using PatternStudio.Craft.Reading.Tokens;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Takes words whole, up to the next mark that parts clauses or sentences.</summary>
internal static class Clauses
{
    /// <summary>Up to the next comma, semicolon, full stop, star or bracket.</summary>
    public static void TakeToComma(Cursor cursor)
    {
        while (!cursor.AtEnd && cursor.Kind is not (TokenKind.Comma or TokenKind.Semicolon or TokenKind.Dot or TokenKind.Star or TokenKind.Open or TokenKind.Close)) cursor.At++;
    }

    /// <summary>Up to the next comma, semicolon or full stop; brackets go along whole.</summary>
    public static void TakeClause(Cursor cursor)
    {
        while (!cursor.AtEnd && cursor.Kind is not (TokenKind.Comma or TokenKind.Semicolon or TokenKind.Dot or TokenKind.Star or TokenKind.Close))
            cursor.At = cursor.Partner() is >= 0 and int partner ? partner + 1 : cursor.At + 1;
    }

    /// <summary>The full stop of 'No. 2' ends nothing.</summary>
    private static bool IsOfNumber(Cursor cursor) => cursor.Kind == TokenKind.Dot && cursor.Ahead(-1).IsWord("no") && cursor.Ahead(1).Kind == TokenKind.Number;

    /// <summary>Up to the next semicolon or full stop.</summary>
    public static void TakeToStop(Cursor cursor)
    {
        while (!cursor.AtEnd && (cursor.Kind is not (TokenKind.Semicolon or TokenKind.Dot) || IsOfNumber(cursor))) cursor.At++;
    }
}
