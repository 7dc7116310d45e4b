using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads joins: 'join with sl st to first sc', 'join', 'sl st in first ch to form a ring', 'sl st in top of ch-3 to join', 'close ring'.</summary>
internal static class JoinSteps
{
    private static readonly Phrase Join = new("join|close|unite rnd|it|them|row|the?");
    private static readonly Phrase With = new("with|by|using a|1|one?");
    private static readonly Phrase FormRing = new("to|and|forming|into form|make|close|create? a|the? ring|loop");
    private static readonly Phrase InRing = new("in|to a? ring");
    private static readonly Phrase ToLoop = new("to the? loop");
    private static readonly Phrase RingWord = new("the? ring");
    private static readonly Phrase To = new("to|in|at|on|next|all|last|first|center|corresponding|same|motif|and|each|any|it|a|another|both|remaining");
    private static readonly Phrase AsBefore = new("as before|usual|normal|established|prev");
    private static readonly Phrase ToJoin = new("to|and join");
    private static readonly Phrase TheRound = new("the? rnd");
    private static readonly Phrase ToClose = new("to close rnd|the? rnd?");

    public static bool Read(Cursor cursor, StepList steps) => ReadJoin(cursor, steps) || ReadSlipStitch(cursor, steps);

    private static bool ReadJoin(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        // 'Ch 2 and join with sl st to top of ch-3'.
        if (steps.Last is ChainStep && cursor.Ahead(1).IsWord("join")) cursor.TakeWord("and");
        if (!cursor.Take(Join)) return false;
        bool ring = cursor.Take(RingWord) || TakeRing(cursor);
        StitchId stitch = StitchId.SlipStitch;
        if (cursor.Take(With) && cursor.TakeStitch() is { } with) stitch = with;
        ring |= TakeRing(cursor);
        int place = cursor.At;
        Placement? where = Placements.Take(cursor) ?? TakeOtherPlace(cursor);
        ring |= TakeRing(cursor);
        cursor.Take(AsBefore);
        if (!cursor.AtEnd && !EndsHere(cursor))
        {
            cursor.At = place;
            where = TakeOtherPlace(cursor);
        }
        if (!cursor.AtEnd && !EndsHere(cursor)) return false;
        // 'With A, join with a standing sc in first st' attaches the yarn: no round is there yet to be joined.
        if (stitch != StitchId.SlipStitch && where is not null && !ring && steps.Steps.Any(step => step is ColourStep) && steps.Steps.All(step => step is ColourStep or RemarkStep or TurnStep)) steps.Add(new AttachStep(null, where, stitch, cursor.SpanFrom(from)));
        else steps.Add(new JoinStep(stitch, where, ring, cursor.SpanFrom(from)));
        return true;
    }

    /// <summary>'join to center picot of free picot shell': a place the tree can't name.</summary>
    private static Placement? TakeOtherPlace(Cursor cursor)
    {
        int from = cursor.At;
        if (!cursor.Take(To)) return null;
        Clauses.TakeToComma(cursor);
        return new Placement(PlaceChoice.OtherPiece, PlaceKind.AnyStitch, cursor.SpanFrom(from)) { Further = cursor.SpanFrom(from) };
    }

    /// <summary>'join A with sl st in any tr' is a yarn attached, and read as such.</summary>
    private static bool EndsHere(Cursor cursor) => Cursor.IsSeparator(cursor.Kind) || cursor.Kind is TokenKind.Open or TokenKind.Close || cursor.Now is { Word: "and" or "turn" or "then" or "ch" };

    private static bool ReadSlipStitch(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (cursor.TakeStitch() is not { } stitch || (stitch != StitchId.SlipStitch && stitch != StitchId.Single)) return false;
        // 'Sl st to loop, ch 5' at the start of a row goes to a loop; none can be formed before there are chains.
        if (steps.Count == 0 && cursor.Is(ToLoop)) return false;
        bool ring = stitch == StitchId.SlipStitch ? TakeRing(cursor) : cursor.Take(FormRing);
        bool joins = !ring && TakeToJoin(cursor);
        Placement? where = ring || joins ? null : Placements.Take(cursor);
        ring |= cursor.Take(FormRing);
        if (!ring && !joins && !TakeToJoin(cursor)) return false;
        where ??= Placements.Take(cursor);
        steps.Add(new JoinStep(stitch, where, ring, cursor.SpanFrom(from)));
        return true;
    }

    /// <summary>'to join', 'to join rnd', 'to close the round'.</summary>
    private static bool TakeToJoin(Cursor cursor)
    {
        if (!cursor.Take(ToJoin) && !cursor.Take(ToClose)) return false;
        cursor.Take(TheRound);
        return true;
    }

    private static bool TakeRing(Cursor cursor) => cursor.Take(FormRing) || cursor.Take(InRing);
}
