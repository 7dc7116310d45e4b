using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads 'with smaller hook', 'using a 5 mm hook and A', 'with 2 strands held together': what is in the hand, not what is worked.</summary>
internal static class ToolSteps
{
    private const int MostWords = 8;
    private static readonly Phrase Start = new("with|using|use|change|switch to?");
    private static readonly Phrase Tool = new("hook|needle|needles|strands|strand|ply|double");
    private static readonly Phrase Held = new("of? yarn? held? tog|double|throughout");

    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (!cursor.Take(Start) || !TakeTool(cursor))
        {
            cursor.At = from;
            return false;
        }
        // 'two strands held together and a 5.5 mm hook'; 'a larger hook and A' goes on with the yarn.
        for (int after = cursor.At; cursor.TakeWord("and"); after = cursor.At)
            if (!TakeTool(cursor))
            {
                cursor.At = after;
                break;
            }
        steps.Add(new RemarkStep(cursor.Slice(from, cursor.At), cursor.SpanFrom(from)));
        TakeYarn(cursor, steps);
        return true;
    }

    /// <summary>'with larger hook and A, ch 25': the yarn named behind the tool.</summary>
    private static void TakeYarn(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (cursor.TakeWord("and"))
        {
            int yarn = cursor.At;
            cursor.TakeWord("with");
            if (ColourNames.Take(cursor, anyWord: false) is { Length: > 0 } colour && (cursor.AtEnd || Cursor.IsSeparator(cursor.Kind) || cursor.Now.Word is "make" or "ch"))
            {
                steps.Add(new ColourStep(colour, cursor.SpanFrom(yarn)));
                return;
            }
        }
        cursor.At = from;
    }

    private static bool TakeTool(Cursor cursor)
    {
        int from = cursor.At;
        while (cursor.At - from < MostWords && !cursor.Is(Tool) && IsOfTool(cursor)) cursor.At++;
        if (!cursor.Take(Tool)) return false;
        while (cursor.Take(Held)) { }
        return true;
    }

    /// <summary>'a 5 mm', 'the larger', 'size H/8', '3.5'.</summary>
    private static bool IsOfTool(Cursor cursor) => cursor.Kind switch
    {
        TokenKind.Number or TokenKind.Fraction or TokenKind.Hyphen or TokenKind.Other or TokenKind.Dot => true,
        TokenKind.Word => cursor.Now.Word is not ("ch" or "in" or "next" or "each" or "st" or "work" or "make" or "join"),
        _ => false,
    };
}
