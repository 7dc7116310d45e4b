using PatternStudio.Craft.Reading.Tokens;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Judges whether words instruct anything that could be counted.</summary>
internal static class RemarkWords
{
    /// <summary>True where no number, stitch, repeat or other working word is among them.</summary>
    public static bool AreRemark(Cursor stretch)
    {
        int from = stretch.At;
        bool remark = true;
        while (!stretch.AtEnd && remark)
        {
            remark = !Instructs(stretch);
            stretch.At++;
        }
        stretch.At = from;
        return remark;
    }

    /// <summary>True where no stitch, chain, skip or repeat is named: 'Using 2 strands held together' works nothing, whatever numbers it has.</summary>
    public static bool NameNoWork(Cursor stretch)
    {
        int from = stretch.At;
        bool none = true;
        while (!stretch.AtEnd && none)
        {
            none = !(stretch.Now.IsWord("ch") && (IsNumber(stretch.Ahead(1)) || IsNumber(stretch.Ahead(-1)) || stretch.Ahead(1).Kind == TokenKind.Hyphen) || stretch.Now.Word is "skip" or "rep" or "inc" or "dec" or "st" || stretch.Kind == TokenKind.Star || NamesStitch(stretch) && !stretch.Now.IsWord("ch"));
            stretch.At++;
        }
        stretch.At = from;
        return none;
    }

    private static bool IsNumber(in Token token) => token.Kind == TokenKind.Number || Terms.Synonyms.Number(token.Word) is not null;

    private static bool NamesStitch(Cursor cursor)
    {
        int from = cursor.At;
        bool stitch = cursor.TakeStitch() is not null;
        cursor.At = from;
        return stitch;
    }

    private static bool Instructs(Cursor cursor)
    {
        Token token = cursor.Now;
        if (token.Kind is TokenKind.Number or TokenKind.Star or TokenKind.Ordinal) return true;
        if (token.Kind != TokenKind.Word) return false;
        if (token.Word is "ch" or "skip" or "rep" or "turn" or "join" or "inc" or "dec" or "each" or "next" or "tog") return true;
        return NamesStitch(cursor);
    }
}
