using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads places added after a remark: 'dc in 4th ch from hook (counts as 2 dc) and in each ch across'. The stitch is worked on into them.</summary>
internal static class MorePlaces
{
    private static readonly Phrase And = new("and then?");
    private static readonly Phrase In = new("in|each");

    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (steps.Last is not StitchStep { Where: not null } stitch || !cursor.Take(And) || !cursor.Is(In)) return false;
        if (Placements.Take(cursor) is not { } where) return false;
        steps.Add(stitch with { Where = where, Skipped = null, Span = cursor.SpanFrom(from) });
        return true;
    }
}
