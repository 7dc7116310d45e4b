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
    /// <summary>Motions with a name at their end.</summary>
    public static bool ReadNamed(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (!Starts(cursor) || NameAfter(cursor) is not var (stitch, after)) return false;
        // The star of '* yo, insert hook, … (front dc), dc in next st; rep from *' is the row's; one that the motions repeat from is theirs.
        if (cursor.Kind == TokenKind.Star && !Enumerable.Range(from, after - from).Any(i => cursor.Context.Tokens[i].IsWord("rep"))) return false;
        cursor.At = after;
        TextSpan span = cursor.SpanFrom(from);
        steps.Add(new StitchStep(stitch, SizedNumber.Of(1, new TextSpan(span.End, 0)), null, null, span));
        return true;
    }

    /// <summary>Motions without a name.</summary>
    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (!Starts(cursor)) return false;
        TakeMotions(cursor);
        if (DefinitionMotions.Read(cursor.Context, cursor.SpanFrom(from)) is { Motions: [{ Motion: Anatomy.YarnOver }, { Motion: Anatomy.WholeStitch { Times: 1, Stitch: var whole } }] } && whole != StitchId.Chain)
        {
            // 'Wool over and make a treble as before': a treble, its beginning said first.
            steps.Add(new StitchStep(whole, SizedNumber.Of(1, new TextSpan(cursor.SpanFrom(from).End, 0)), null, null, cursor.SpanFrom(from)));
            return true;
        }
        steps.Add(new MotionsStep(cursor.SpanFrom(from)) { Motions = DefinitionMotions.Read(cursor.Context, cursor.SpanFrom(from)) });
        return true;
    }

    /// <summary>'Pull the ring tight' closes the ring; it draws no loop.</summary>
    private static readonly Phrase Tighten = new("pull|draw the? magic? ring|loop|hole|tail|center tight|tightly|close|closed");

    private static bool Starts(Cursor cursor)
    {
        if (cursor.Is(Tighten)) return false;
        int from = cursor.At;
        while (cursor.At - from < 4 && cursor.Kind is TokenKind.Open or TokenKind.Star) cursor.At++;
        bool starts = MotionWords.Starts(cursor);
        cursor.At = from;
        return starts;
    }

    /// <summary>The stitch named in a bracket at the end of the motions, and the token after it. Every clause on the way tells a motion, or what is skipped between two.</summary>
    private static (StitchId Stitch, int After)? NameAfter(Cursor cursor)
    {
        int from = cursor.At;
        (StitchId, int)? found = null;
        while (found is null && !cursor.AtEnd && (Starts(cursor) || cursor.Now.IsWord("skip"))) found = NameInClause(cursor);
        cursor.At = from;
        return found;
    }

    /// <summary>Passes over one clause; the name, where a bracket in it is one.</summary>
    private static (StitchId, int)? NameInClause(Cursor cursor)
    {
        for (bool first = true; !cursor.AtEnd && cursor.Kind is not (TokenKind.Comma or TokenKind.Semicolon or TokenKind.Dot); first = false)
        {
            int partner = cursor.Partner();
            if (partner >= 0 && !first && BracketRemarks.TakeName(cursor.Inside(partner), ofGroup: false) is { } stitch) return (stitch, partner + 1);
            cursor.At = partner >= 0 ? partner + 1 : cursor.At + 1;
        }
        while (cursor.Kind is TokenKind.Comma or TokenKind.Semicolon || cursor.Now.Word is "and" or "then") cursor.At++;
        return null;
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
