using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads '8 shells and 2 dc of 9th shell': the group that the last stitches of a row begin. It adds nothing to their number.</summary>
internal static class PartOfGroup
{
    private static readonly Phrase Of = new("of the?");

    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (steps.Count < 2 || steps.Steps[steps.Count - 1] is not StitchStep { Where: null, Count: not null }) return false;
        if (cursor.Take(Of) && Numbers.TakeOrdinal(cursor) is not null && PlaceNouns.Take(cursor) is { Noun: PlaceNoun.Group })
        {
            steps.Add(new RemarkStep(cursor.Slice(from, cursor.At), cursor.SpanFrom(from)));
            return true;
        }
        cursor.At = from;
        return false;
    }
}
