using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads stitches: 'sc in next st', '2 dc in next ch-1 sp', 'sc2tog over next 2 sts', 'sc 3', 'inc x 6', 'hdc around'.</summary>
internal static class StitchSteps
{
    private static readonly Phrase Verb = new("work|make|crochet|put|do");
    private static readonly Phrase EndingWith = new("end|work|ending with|off?");
    private static readonly Phrase Again = new("again|more|also|loosely");

    public static bool Read(Cursor cursor, StepList steps)
    {
        if (TakeOne(cursor) is not { } step) return false;
        steps.Add(LoopChoices.Apply(step, cursor.Context.RowLoop));
        SharedPlaces.Group(cursor.Context, steps);
        return true;
    }

    private static StitchStep? TakeOne(Cursor cursor)
    {
        int from = cursor.At;
        if (!cursor.Take(EndingWith) || cursor.Ahead(-1) is { Word: "end" }) cursor.At = from;
        cursor.Take(Verb);
        if (TakeNumberedStitch(cursor) is not var (number, stitch)) return null;
        if (stitch == StitchId.Chain) return null;
        return TakeTogether(cursor, from, stitch) ?? TakePlaced(cursor, from, number, stitch);
    }

    /// <summary>'2 dc', 'dc', 'a double', '3-dc cl'.</summary>
    private static (SizedNumber? Number, StitchId Stitch)? TakeNumberedStitch(Cursor cursor)
    {
        if (Clusters.Take(cursor) is { } cluster) return (null, cluster);
        int from = cursor.At;
        StitchId? whole = cursor.TakeStitch();
        if (whole is not null && (cursor.At > from + 1 || cursor.Context.Tokens[from].Kind == TokenKind.Word)) return (null, whole.Value);
        cursor.At = from;
        SizedNumber? number = Numbers.Take(cursor);
        if (number is null && cursor.Now is { Word: "a" or "an" or "another" }) cursor.At++;
        cursor.TakeWord("more");
        cursor.Take(TokenKind.Hyphen);
        StitchId? stitch = Clusters.Take(cursor) ?? cursor.TakeStitch();
        return stitch is null ? null : (number, stitch.Value);
    }

    private static StitchStep TakePlaced(Cursor cursor, int from, SizedNumber? number, StitchId stitch)
    {
        cursor.Take(Again);
        TextSpan understood = new(cursor.SpanFrom(from).End, 0);
        if (Placements.Take(cursor) is { } where)
        {
            SizedNumber? between = ChainsBetweenWords.Take(cursor);
            return new StitchStep(stitch, number ?? SizedNumber.Of(1, understood), null, where, cursor.SpanFrom(from)) { ChainsBetween = between };
        }
        if (TakeCountAfter(cursor, stitch) is { } after && number is null) return new StitchStep(stitch, null, after, null, cursor.SpanFrom(from));
        if (TakeSweep(cursor) is { } sweep) return new StitchStep(stitch, number ?? SizedNumber.Of(1, understood), null, sweep, cursor.SpanFrom(from));
        return number is null
            ? new StitchStep(stitch, SizedNumber.Of(1, understood), null, null, cursor.SpanFrom(from)) { ChainsBetween = ChainsBetweenWords.Take(cursor) }
            : new StitchStep(stitch, null, number, null, cursor.SpanFrom(from)) { ChainsBetween = ChainsBetweenWords.Take(cursor) };
    }

    /// <summary>'sc 3', 'inc x 6', 'dc2tog twice'.</summary>
    private static SizedNumber? TakeCountAfter(Cursor cursor, StitchId stitch)
    {
        int from = cursor.At;
        if (Extents.TakeTimes(cursor) is { } times) return times.Count;
        if (cursor.Kind == TokenKind.Number && Numbers.Take(cursor) is { } count && !StartsWithNumber(cursor)) return count;
        cursor.At = from;
        return null;
    }

    /// <summary>The number belongs to the next words: 'sc 2 dc'.</summary>
    private static bool StartsWithNumber(Cursor cursor)
    {
        int from = cursor.At;
        bool stitch = cursor.TakeStitch() is not null;
        cursor.At = from;
        return stitch;
    }

    /// <summary>'sc around', 'hdc across', 'dc to end': one in each.</summary>
    private static Placement? TakeSweep(Cursor cursor)
    {
        int from = cursor.At;
        if (Extents.Take(cursor) is { Kind: not ExtentKind.Times } extent)
            return new Placement(PlaceChoice.Each, PlaceKind.AnyStitch, cursor.SpanFrom(from)) { Extent = extent };
        cursor.At = from;
        return null;
    }

    /// <summary>'sc next 2 sts tog', 'dc in next 3 sts together'.</summary>
    private static StitchStep? TakeTogether(Cursor cursor, int from, StitchId stitch)
    {
        int after = cursor.At;
        if (Placements.Take(cursor) is { Count: { IsPlain: true } count } where && cursor.TakeWord("tog")
            && Vocabulary.Standard.Find(new StitchId($"{stitch}{count.Values[0]}tog")) is { } together)
            return new StitchStep(together.Id, SizedNumber.Of(1, new TextSpan(where.Span.Start, 0)), null, where with { Choice = PlaceChoice.Over }, cursor.SpanFrom(from));
        cursor.At = after;
        return null;
    }
}
