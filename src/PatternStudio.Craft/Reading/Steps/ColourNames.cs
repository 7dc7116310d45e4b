using PatternStudio.Craft.Reading.Tokens;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads the name of a colour: 'A', 'MC', 'color B', 'Lt. Yellow', 'Gold and Silver or White'.</summary>
internal static class ColourNames
{
    private const int MostWords = 9;
    private static readonly Phrase Colour = new("the? new|main|contrasting? color|shade of?");

    /// <summary>Takes a name: capitalised words, a letter, or, after 'change to' and 'attach', any word.</summary>
    public static string? Take(Cursor cursor, bool anyWord)
    {
        int start = cursor.At;
        bool said = cursor.Take(Colour);
        int from = cursor.At;
        while (cursor.At - from < MostWords && IsName(cursor, from, anyWord || said)) cursor.At++;
        while (cursor.At > from && cursor.Ahead(-1) is { Kind: TokenKind.Other or TokenKind.Dot } or { Word: "or" or "and" }) cursor.At--;
        if (cursor.At == from)
        {
            if (said && cursor.Ahead(-1).IsWord("color")) return "";
            cursor.At = start;
            return null;
        }
        // 'CC1', 'C2'
        if (cursor.Now is { Kind: TokenKind.Number, Glued: true } && IsCapital(cursor, -1)) cursor.At++;
        string name = cursor.Slice(from, cursor.At);
        // 'with gray Angora wool'
        if (!cursor.TakeWord("color") && cursor.Now.IsWord("yarn") && !cursor.Ahead(1).IsWord("over")) cursor.At++;
        return name;
    }

    private static bool IsName(Cursor cursor, int from, bool anyWord)
    {
        Token token = cursor.Now;
        if (cursor.At > from && token.Kind == TokenKind.Dot) return token.Glued && IsCapital(cursor, 1) && cursor.Ahead(-1).Span.Length <= 3;
        if (cursor.At > from && (token.Kind == TokenKind.Other || token.Word is "or" or "and")) return IsCapital(cursor, 1);
        if (token.Kind != TokenKind.Word || IsOfThePattern(token.Word)) return false;
        if (cursor.At == from && Terms.Synonyms.IsColour(token.Word)) return true;
        return IsCapital(cursor, 0) ? !IsStitch(cursor) : anyWord && cursor.At == from && !IsStitch(cursor) && token.Word is not ("last" or "next" or "first" or "each" or "same" or "any");
    }

    private static bool IsOfThePattern(string word) =>
        word is "in" or "with" or "to" or "the" or "at" or "row" or "rnd" or "ch" or "st" or "rs" or "ws" or "right" or "wrong" or "sl" or "yarn"
            or "and" or "or" or "of" or "on" or "turn" or "join" or "ring" or "rep" or "work" or "skip";

    private static bool IsCapital(Cursor cursor, int by)
    {
        Token token = cursor.Ahead(by);
        return token.Kind == TokenKind.Word && char.IsUpper(cursor.Context.Source.Content[token.Span.Start]);
    }

    private static bool IsStitch(Cursor cursor)
    {
        int from = cursor.At;
        bool stitch = cursor.TakeStitch() is not null;
        cursor.At = from;
        return stitch;
    }
}
