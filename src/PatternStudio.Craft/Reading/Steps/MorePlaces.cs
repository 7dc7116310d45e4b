using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>
/// Reads what is added to the stitch before: more places after a remark ('dc in 4th ch from hook (counts as 2 dc) and in each ch across'), and chains between
/// ('1 double in centre of each loop, 5 chain between').
/// </summary>
internal static class MorePlaces
{
    private static readonly Phrase And = new("and then?");
    private static readonly Phrase Inserting = new("inserting|insert the? hook|needle");
    private static readonly Phrase In = new("in|each");
    private static readonly Phrase InEach = new("in each");

    public static bool Read(Cursor cursor, StepList steps) =>
        steps.Last is StitchStep stitch && (ReadBetween(cursor, steps, stitch) || ReadInserting(cursor, steps, stitch) || ReadPlaces(cursor, steps, stitch));

    /// <summary>'…, inserting the hook under the treble of 3rd row': where the stitch before goes.</summary>
    private static bool ReadInserting(Cursor cursor, StepList steps, StitchStep stitch)
    {
        int from = cursor.At;
        cursor.Take(TokenKind.Comma);
        if (stitch.Where is null && cursor.Take(Inserting) && Placements.Take(cursor) is { InRow: not null, Further: null } where && EndsHere(cursor))
        {
            steps.ReplaceLast(stitch with { Where = where, Span = stitch.Span.Through(cursor.SpanFrom(from)) });
            return true;
        }
        cursor.At = from;
        return false;
    }

    private static bool ReadBetween(Cursor cursor, StepList steps, StitchStep stitch)
    {
        int from = cursor.At;
        if (ChainsBetweenWords.Take(cursor) is { } chains)
        {
            steps.ReplaceLast(stitch with { ChainsBetween = chains, Span = stitch.Span.Through(cursor.SpanFrom(from)) });
            return true;
        }
        cursor.At = from;
        return false;
    }

    private static bool ReadPlaces(Cursor cursor, StepList steps, StitchStep stitch)
    {
        int from = cursor.At;
        bool and = cursor.Take(And);
        if (stitch.Where is not null && (and ? cursor.Is(In) : cursor.Is(InEach)) && Placements.Take(cursor) is { } where && (and || EndsHere(cursor)))
        {
            steps.Add(stitch with { Where = where, Skipped = null, Span = cursor.SpanFrom(from) });
            return true;
        }
        cursor.At = from;
        return false;
    }

    private static bool EndsHere(Cursor cursor) => cursor.AtEnd || Cursor.IsSeparator(cursor.Kind);
}
