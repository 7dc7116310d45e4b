using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads 'working along the other side of the foundation ch', 'working in ends of rows', 'leave remaining 4 hdc unworked'.</summary>
internal static class WorkAlongSteps
{
    private static readonly Phrase Work = new("rotate|rotating|now|cont|then? and? to? work back|down|up?");
    private static readonly Phrase TurnToWork = new("then? turn|rotate|rotating the? work|piece|chain? around|clockwise? so? you? can? to|and? cont? work");
    private static readonly Phrase Continue = new("then? and? cont|rotate|rotating");
    private static readonly Phrase OtherSide = new("down|along|up|on the? other|opposite side of? the? foundation? ch?");
    private static readonly Phrase FoundationSide = new("in|on|along|across|down|up the? other|opposite side of the? foundation");
    private static readonly Phrase Leave = new("leave|leaving the? remaining|last|next|rest? of?");
    private static readonly Phrase Unworked = new("skip|free|unworked");
    private static readonly Phrase Beginning = new("and? beg in|with|at|from?");

    public static bool Read(Cursor cursor, StepList steps) => ReadStart(cursor, steps) || ReadAlong(cursor, steps) || ReadDownOtherSide(cursor, steps) || ReadLeave(cursor, steps);

    /// <summary>'Starting in the 2nd ch from hook, …': where the row's first stitch goes.</summary>
    private static bool ReadStart(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (!cursor.Take(Beginning)) return false;
        if (cursor.Ahead(-1).Word is "in" or "at") cursor.At--;
        if (Placements.Take(cursor) is { Choice: PlaceChoice.FromHook, And: null, Further: null } place && (cursor.AtEnd || Cursor.IsSeparator(cursor.Kind) || cursor.Kind is TokenKind.Star or TokenKind.Open))
        {
            steps.Add(new WorkAlongStep(place, cursor.SpanFrom(from)));
            return true;
        }
        cursor.At = from;
        return false;
    }

    /// <summary>'1 in each of 31 stitches down other side and 3 in last': the stitch before goes along there already.</summary>
    private static bool ReadDownOtherSide(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (steps.Last is not StitchStep { Where: { Choice: PlaceChoice.Each, Count: not null, Further: null } } before || !cursor.Take(OtherSide)) return false;
        TextSpan words = cursor.SpanFrom(from);
        steps.ReplaceLast(new WorkAlongStep(new Placement(PlaceChoice.OtherSide, PlaceKind.Chain, words), words));
        steps.Add(before);
        return true;
    }

    private static bool ReadAlong(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (!cursor.Take(Work) && !cursor.Take(TurnToWork) && !cursor.Take(Continue) || TakeEdge(cursor) is not { } along || (!cursor.AtEnd && !Cursor.IsSeparator(cursor.Kind) && cursor.Kind != TokenKind.Star && !(along.Choice == PlaceChoice.OtherSide && StartsStitch(cursor))))
        {
            cursor.At = from;
            return false;
        }
        steps.Add(new WorkAlongStep(along, cursor.SpanFrom(from)));
        return true;
    }

    /// <summary>'Working in opposite side of foundation': the chain, said without the word.</summary>
    private static Placement? TakeEdge(Cursor cursor) =>
        RowEndPlaces.Take(cursor) ?? (cursor.Take(FoundationSide) ? new Placement(PlaceChoice.OtherSide, PlaceKind.Chain, default) : null);

    /// <summary>'Working on the other side of the chain sc in next 8 ch': the comma is left out.</summary>
    private static bool StartsStitch(Cursor cursor)
    {
        int from = cursor.At;
        Numbers.TakePlain(cursor);
        bool stitch = cursor.TakeStitch() is not null;
        cursor.At = from;
        return stitch;
    }

    /// <summary>'… unworked for back neck'.</summary>
    private static void TakePurpose(Cursor cursor)
    {
        if (!cursor.TakeWord("for") && !cursor.TakeWord("at")) return;
        while (cursor.Kind == TokenKind.Word) cursor.At++;
    }

    private static bool ReadLeave(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (!cursor.Take(Leave)) return false;
        SizedNumber? count = Numbers.Take(cursor);
        PlaceKind kind = PlaceNouns.Take(cursor) ?? PlaceKind.AnyStitch;
        bool rest = Enumerable.Range(from, cursor.At - from).Any(i => cursor.Context.Tokens[i].Word is "remaining" or "rest");
        // 'leave rem sts': nothing else can be done with them.
        if (!cursor.Take(Unworked) && !(rest && (cursor.AtEnd || Cursor.IsSeparator(cursor.Kind)))) return false;
        TakePurpose(cursor);
        steps.Add(new LeaveUnworkedStep(count, kind, cursor.SpanFrom(from)));
        return true;
    }
}
