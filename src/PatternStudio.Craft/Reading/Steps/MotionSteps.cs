using PatternStudio.Craft.Reading.Definitions;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>
/// Reads hook motions told in the row: 'insert hook in next st, yo and draw up a loop, …'. Where a bracket at their end names them, '(sc3tog made)', they
/// are that stitch; else they stay motions.
/// </summary>
internal static class MotionSteps
{
    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (!Starts(cursor)) return false;
        if (NameAfter(cursor) is var (stitch, after))
        {
            cursor.At = after;
            TextSpan span = cursor.SpanFrom(from);
            steps.Add(new StitchStep(stitch, SizedNumber.Of(1, new TextSpan(span.End, 0)), null, null, span));
            return true;
        }
        TakeMotions(cursor);
        steps.Add(new MotionsStep(cursor.SpanFrom(from)) { Motions = DefinitionMotions.Read(cursor.Context, cursor.SpanFrom(from)) });
        return true;
    }

    private static bool Starts(Cursor cursor)
    {
        int from = cursor.At;
        while (cursor.Kind is TokenKind.Open or TokenKind.Star) cursor.At++;
        bool starts = MotionWords.Starts(cursor);
        cursor.At = from;
        return starts;
    }

    /// <summary>The stitch named in the first such bracket of the sentence, and the token after it.</summary>
    private static (StitchId Stitch, int After)? NameAfter(Cursor cursor)
    {
        int from = cursor.At;
        try
        {
            for (; !cursor.AtEnd && cursor.Kind != TokenKind.Dot; cursor.At = cursor.Partner() is >= 0 and int next ? next + 1 : cursor.At + 1)
            {
                int partner = cursor.Partner();
                if (partner < 0) continue;
                Cursor inside = cursor.Inside(partner);
                if (BracketRemarks.TakeName(inside, ofGroup: false) is { } stitch && inside.AtEnd) return (stitch, partner + 1);
            }
            return null;
        }
        finally
        {
            cursor.At = from;
        }
    }

    /// <summary>Clause after clause, as long as each tells a motion.</summary>
    public static void TakeMotions(Cursor cursor)
    {
        int after = cursor.At;
        while (!cursor.AtEnd && Starts(cursor))
        {
            do cursor.At = cursor.Partner() is >= 0 and int partner ? partner + 1 : cursor.At + 1;
            while (!cursor.AtEnd && cursor.Kind is not (TokenKind.Comma or TokenKind.Semicolon or TokenKind.Dot) && !(cursor.Kind == TokenKind.Open && !Starts(cursor)));
            after = cursor.At;
            while (cursor.Kind is TokenKind.Comma or TokenKind.Semicolon || cursor.Now.Word is "and" or "then") cursor.At++;
        }
        cursor.At = after;
    }
}
