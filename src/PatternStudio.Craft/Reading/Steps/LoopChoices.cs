using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>
/// Reads 'working in back loops only', 'in BLO' as a clause of its own: it holds for every stitch of the row that follows, and is
/// written on each of their placements.
/// </summary>
internal static class LoopChoices
{
    private static readonly Phrase Work = new("work|inserting|picking|pick|taking|insert hook? up?");
    private static readonly Phrase In = new("in|through|under|into?");
    private static readonly Phrase The = new("the");
    private static readonly Phrase Loop = new("loop|vein|part|half");
    private static readonly Phrase Tail = new("only|throughout|of|all|each|st|sc|the|this|row|rnd|for|rest|in");

    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        cursor.Take(Work);
        cursor.Take(In);
        cursor.Take(The);
        if (TakeWhich(cursor) is not { } loop) return false;
        int named = cursor.At;
        while (cursor.Take(Tail)) { }
        if (!cursor.AtEnd && !Cursor.IsSeparator(cursor.Kind) && cursor.Kind is not (TokenKind.Star or TokenKind.Open)) return ReadBefore(cursor, steps, from, named, loop);
        cursor.Context.RowLoop = loop;
        steps.Add(new RemarkStep(cursor.Slice(from, cursor.At), cursor.SpanFrom(from)));
        return true;
    }

    /// <summary>'BLO sc 6', 'FLO 9 sc': the loop stands right before its stitch, and holds for that one.</summary>
    private static bool ReadBefore(Cursor cursor, StepList steps, int from, int named, LoopChoice loop)
    {
        cursor.At = named;
        LoopChoice outer = cursor.Context.RowLoop;
        cursor.Context.RowLoop = loop;
        bool read = StitchSteps.Read(cursor, steps);
        cursor.Context.RowLoop = outer;
        if (read && steps.Last is StitchStep stitch) steps.ReplaceLast(stitch with { Span = cursor.SpanFrom(from) });
        return read;
    }

    private static LoopChoice? TakeWhich(Cursor cursor)
    {
        string word = cursor.Now.Word;
        LoopChoice? loop = word switch
        {
            "back" or "blo" or "bl" => LoopChoice.Back,
            "front" or "flo" or "fl" => LoopChoice.Front,
            "both" => LoopChoice.Both,
            "third" => LoopChoice.Third,
            _ when cursor.Now is { Kind: TokenKind.Ordinal, Value: 3 } => LoopChoice.Third,
            _ => null,
        };
        if (loop is null) return null;
        cursor.At++;
        return cursor.Take(Loop) || word is "blo" or "flo" or "bl" or "fl" ? loop : null;
    }

    /// <summary>The step with the row's loop on its placement, the understood one made explicit.</summary>
    public static StitchStep Apply(StitchStep step, LoopChoice loop)
    {
        if (loop == LoopChoice.Both || step.Where is { Loop: not LoopChoice.Both }) return step;
        Placement where = step.Where ?? new Placement(PlaceChoice.Next, PlaceKind.AnyStitch, new Text.TextSpan(step.Span.End, 0)) { Count = step.Count };
        return step.Where is null
            ? step with { Where = where with { Loop = loop }, Count = null, PerPlace = step.Count is null ? step.PerPlace : SizedNumber.Of(1, where.Span) }
            : step with { Where = WithLoop(where, loop) };
    }

    /// <summary>The step as it was before <see cref="Apply"/> gave it the next place, which no word names.</summary>
    public static StitchStep WithoutUnderstood(StitchStep step) =>
        step.Where is { Choice: PlaceChoice.Next, Span.Length: 0, Loop: not LoopChoice.Both } where
            ? step with { Where = null, Count = where.Count, PerPlace = where.Count is null ? step.PerPlace : null }
            : step;

    private static Placement WithLoop(Placement where, LoopChoice loop) => where with
    {
        Loop = where.Kind.Noun is PlaceNoun.AnyStitch or PlaceNoun.Stitch ? loop : where.Loop,
        And = where.And is null ? null : WithLoop(where.And, loop),
    };
}
