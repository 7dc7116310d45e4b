using PatternStudio.Craft.Reading.Statements;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads 'Ch 1 at the start of each round does not count as a stitch.' among the words of a row or a foundation: it makes no chain, it says what holds for all of them.</summary>
internal static class ChainNoteSteps
{
    private static readonly Phrase Chains = new("the? beg|turn? ch|tch");

    public static bool Read(Cursor cursor, StepList steps)
    {
        if (!cursor.Is(Chains) || cursor.At > cursor.Start && cursor.Ahead(-1).Kind != TokenKind.Dot) return false;
        int end = cursor.At;
        bool all = false, says = false;
        for (; end < cursor.End && cursor.Context.Tokens[end].Kind is not (TokenKind.Dot or TokenKind.Comma or TokenKind.Open or TokenKind.Close or TokenKind.Semicolon); end++)
        {
            all |= !says && cursor.Context.Tokens[end].Word is "each" or "all" or "every" or "throughout";
            says |= cursor.Context.Tokens[end].IsWord("count");
        }
        if (!all || !says || end < cursor.End && cursor.Context.Tokens[end].Kind != TokenKind.Dot) return false;
        if (TurningChainNotes.In(new Cursor(cursor.Context, cursor.At, end), alone: true) is not [var note]) return false;
        int from = cursor.At;
        cursor.At = end;
        cursor.Context.Document.Add(note);
        steps.Add(new RemarkStep(cursor.Slice(from, end), cursor.SpanFrom(from)));
        return true;
    }
}
