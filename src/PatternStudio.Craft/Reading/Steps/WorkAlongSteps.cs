using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads 'working along the other side of the foundation ch', 'working in ends of rows', 'leave remaining 4 hdc unworked'.</summary>
internal static class WorkAlongSteps
{
    private static readonly Phrase Work = new("rotate|rotating|now|cont|then? and? to? work back|down|up?");
    private static readonly Phrase OtherSide = new("down|along|up|on the? other|opposite side of? the? foundation? ch?");
    private static readonly Phrase Leave = new("leave|leaving the? remaining|last|next|rest? of?");
    private static readonly Phrase Unworked = new("skip|free|unworked");

    public static bool Read(Cursor cursor, StepList steps) => ReadAlong(cursor, steps) || ReadDownOtherSide(cursor, steps) || ReadLeave(cursor, steps);

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
        if (!cursor.Take(Work) || RowEndPlaces.Take(cursor) is not { } along || (!cursor.AtEnd && !Cursor.IsSeparator(cursor.Kind) && cursor.Kind != TokenKind.Star))
        {
            cursor.At = from;
            return false;
        }
        steps.Add(new WorkAlongStep(along, cursor.SpanFrom(from)));
        return true;
    }

    private static bool ReadLeave(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (!cursor.Take(Leave)) return false;
        SizedNumber? count = Numbers.Take(cursor);
        PlaceKind kind = PlaceNouns.Take(cursor) ?? PlaceKind.AnyStitch;
        if (!cursor.Take(Unworked)) return false;
        steps.Add(new LeaveUnworkedStep(count, kind, cursor.SpanFrom(from)));
        return true;
    }
}
