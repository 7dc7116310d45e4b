using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads 'turn', 'do not turn', 'fasten off', 'place marker', 'magic ring', 'do not join'.</summary>
internal static class TurnSteps
{
    private static readonly Phrase DoNotTurn = new("do not turn");
    private static readonly Phrase DontTurn = new("don't|without turn");
    private static readonly Phrase Turn = new("turn the|your|my? work|piece|project|blanket|scarf? over?");
    private static readonly Phrase DoNotJoin = new("do not join row|rnd? this? or? the? next? row|rnd?");
    private static readonly Phrase DontJoin = new("don't|without join row|rnd?");
    private static readonly Phrase FastenOff = new("fasten|finish|cast|bind|tie off");
    private static readonly Phrase Cut = new("cut|break and? fasten? off? the? yarn?");
    private static readonly Phrase CutOff = new("and|, fasten off");
    private static readonly Phrase Marker = new("and? place|placing|pm|mm|move|moving|slip|slipping|with|use a|the|your|both? stitch? marker|markers");
    private static readonly Phrase MarkerAlone = new("pm|mm|sm|slm|rm");
    private static readonly Phrase SlipMarker = new("sl m|marker|markers");
    private static readonly Phrase MarkerTail = new("up|in|at|here|for|to|first|this|last|each|next|the|st|beg|of|rnd|row|sc|hdc|dc|center|corner|as|you|go|work|needed|just|make|second|third|##");
    private static readonly Phrase Magic = new("work|make|start|beg|with? with|from|create? a|an? magic|adjustable|sliding|slip ring|loop|knot");
    private static readonly Phrase WorkInMagic = new("work in a|an|the? magic|adjustable|sliding|slip ring|loop");

    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (cursor.Take(DoNotTurn) || cursor.Take(DontTurn)) steps.Add(new DoNotTurnStep(cursor.SpanFrom(from)));
        else if (cursor.Take(DoNotJoin) || cursor.Take(DontJoin)) steps.Add(new DoNotJoinStep(cursor.SpanFrom(from)));
        else if (cursor.Take(Turn)) steps.Add(new TurnStep(cursor.SpanFrom(from)));
        else if (cursor.Take(FastenOff) || cursor.TakeWord("fo") || (cursor.Is(Cut) && cursor.Take(Cut))) ReadFastenOff(cursor, steps, from);
        else if (cursor.Take(Magic) || cursor.Take(WorkInMagic) || cursor.TakeWord("mr") || cursor.Context.McIsRing && cursor.TakeWord("mc")) ReadRing(cursor, steps, from);
        else if (cursor.Take(Marker) || cursor.Take(MarkerAlone) || cursor.Take(SlipMarker)) ReadMarker(cursor, steps, from);
        else return false;
        return true;
    }

    /// <summary>'MR with 6 sc', 'magic ring with 8 hdc': the stitches are worked into it.</summary>
    private static void ReadRing(Cursor cursor, StepList steps, int from)
    {
        if (cursor.Ahead(1).Kind == TokenKind.Number) cursor.TakeWord("with");
        steps.Add(new MagicRingStep(cursor.SpanFrom(from)));
    }

    /// <summary>'Fasten off A, leaving a long tail': up to the end of the sentence, the words belong to it.</summary>
    private static void ReadFastenOff(Cursor cursor, StepList steps, int from)
    {
        cursor.Take(CutOff);
        Clauses.TakeToComma(cursor);
        steps.Add(new FastenOffStep(cursor.SpanFrom(from)));
    }

    private static void ReadMarker(Cursor cursor, StepList steps, int from)
    {
        while (cursor.Take(MarkerTail)) { }
        if (cursor.TakeWord("between")) Clauses.TakeToComma(cursor);
        steps.Add(new MarkerStep(cursor.SpanFrom(from)));
    }
}
