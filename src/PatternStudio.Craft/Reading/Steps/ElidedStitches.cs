using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads '2 in next', '3 in middle stitch', '1 in each of 31 stitches': the stitch named last goes on.</summary>
internal static class ElidedStitches
{
    private static readonly Phrase Work = new("work|make");
    /// <summary>A stitch further back is no longer meant; and a row of thousands of words is read in one pass.</summary>
    private const int LooksBack = 30;
    private static readonly Phrase In = new("in|on|over");

    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (LastStitch(steps) is not { } stitch) return false;
        if (ReadLast(cursor, steps, stitch, from)) return true;
        cursor.At = from;
        cursor.Take(Work);
        if (Numbers.Take(cursor) is not { } number || !cursor.Is(In) || Placements.Take(cursor) is not { } where) return false;
        steps.Add(new StitchStep(stitch, number, null, where, cursor.SpanFrom(from)));
        return true;
    }

    /// <summary>'working last st in top of tch', 'last dc goes in top of ch-3': the last of those just told, and where it stands.</summary>
    private static bool ReadLast(Cursor cursor, StepList steps, StitchId stitch, int from)
    {
        cursor.Take(Placing);
        if (!cursor.Take(Last) || !(cursor.TakeWord("st") || cursor.TakeStitch() == stitch)) return false;
        cursor.Take(Goes);
        if (Placements.Take(cursor) is not { And: null } where) return false;
        steps.Add(new StitchStep(stitch, SizedNumber.Of(1, new Text.TextSpan(where.Span.Start, 0)), null, where, cursor.SpanFrom(from)));
        return true;
    }

    private static readonly Phrase Placing = new("and? work|make|placing|place|with");
    private static readonly Phrase Last = new("the? last|final");
    private static readonly Phrase Goes = new("goes|is|will|should|being? go|be? work|make?");

    private static StitchId? LastStitch(StepList steps)
    {
        for (int i = steps.Count - 1; i >= Math.Max(0, steps.Count - LooksBack); i--)
        {
            if (steps.Steps[i] is StitchStep stitch) return stitch.Stitch;
            if (steps.Steps[i] is RepeatStep repeat && repeat.Steps.OfType<StitchStep>().LastOrDefault() is { } last) return last.Stitch;
        }
        return null;
    }
}
