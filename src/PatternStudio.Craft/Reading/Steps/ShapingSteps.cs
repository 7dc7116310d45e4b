using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads shaping told in words: 'dec 1 st at beginning and end of row', 'increase 2 sts evenly'. 'inc 6' without a noun is six increases, and no matter of this reader.</summary>
internal static class ShapingSteps
{
    private static readonly Phrase Shape = new("inc|increase|dec|decrease|widen|narrow");

    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (!cursor.Take(Shape) || Numbers.Take(cursor) is null || PlaceNouns.Take(cursor) is null) return false;
        Clauses.TakeClause(cursor);
        steps.Add(new UncountedStep(cursor.Slice(from, cursor.At), UncountedReason.Shaping, cursor.SpanFrom(from)));
        return true;
    }
}
