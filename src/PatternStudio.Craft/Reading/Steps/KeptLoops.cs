using PatternStudio.Craft.Reading.Definitions;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>
/// Reads '3 d c in next loop keeping last loop of each d c on hook, thread over and work off all loops at one time': the stitches just read are one cluster, or,
/// told in each of several places, so many together.
/// </summary>
internal static class KeptLoops
{
    private static readonly Phrase Keeping = new("and? keeping|keep|leaving|leave|holding|retaining the? last loop of each");
    private static readonly Phrase And = new("and|then");
    private static readonly Phrase OnHook = new("on|upon the? hook|needle");

    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (!cursor.Take(Keeping)) return false;
        while (!cursor.AtEnd && !Cursor.IsSeparator(cursor.Kind) && !cursor.Take(OnHook)) cursor.At++;
        int kept = cursor.At;
        cursor.SkipSeparators();
        cursor.Take(And);
        if (MotionWords.Starts(cursor)) MotionSteps.TakeMotions(cursor);
        else cursor.At = kept;
        TextSpan span = cursor.SpanFrom(from);
        if (steps.Last is StitchStep stitch && Together(stitch, span) is { } together) steps.ReplaceLast(together);
        else steps.Add(new UncountedStep(cursor.Slice(from, cursor.At), UncountedReason.Likewise, span));
        return true;
    }

    private static StitchStep? Together(StitchStep stitch, TextSpan span)
    {
        TextSpan whole = stitch.Span.Through(span);
        if (stitch.Where is { Choice: PlaceChoice.Each, Count: { IsPlain: true } places } where && Vocabulary.Standard.Find(new StitchId($"{stitch.Stitch}{places.Values[0]}tog")) is { } tog)
            return stitch with { Stitch = tog.Id, PerPlace = One(whole), Where = where with { Choice = PlaceChoice.Over }, Span = whole };
        SizedNumber? legs = stitch.Count ?? stitch.PerPlace;
        if (legs is not { IsPlain: true } || legs.Values[0] is not (>= 2 and <= 20)) return null;
        return stitch with { Stitch = Vocabulary.Cluster(legs.Values[0]!.Value, stitch.Stitch), PerPlace = One(whole), Count = null, Span = whole };
    }

    private static SizedNumber One(TextSpan span) => SizedNumber.Of(1, new TextSpan(span.Start, 0));
}
