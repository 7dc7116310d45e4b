using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads stitches: 'sc in next st', '2 dc in next ch-1 sp', 'sc2tog over next 2 sts', 'sc 3', 'inc x 6', 'hdc around'.</summary>
internal static class StitchSteps
{
    private static readonly Phrase Verb = new("cont? to? work|make|crochet|put|do|placing");
    private static readonly Phrase ContTo = new("cont to");
    private static readonly Phrase WorkBack = new("work back");
    private static readonly Phrase StartWith = new("beg with|by make|work?");
    private static readonly Phrase FastenWith = new("and? fasten|catch with|in");
    private static readonly Phrase EvenIn = new("work|cont work? even in");
    private static readonly Phrase RowOf = new("and? work|make in|a|1|one row|rnd? of?");
    private static readonly Phrase StitchesOf = new("st of");
    private static readonly Phrase EndingWith = new("and? end row|rnd? with|in|by?");
    private static readonly Phrase WorkLast = new("and? work|make|with the? last");
    private static readonly Phrase ThroughLayers = new("through both|all? layers|layer|thicknesses|thickness|pieces|motif|pads|side");
    private static readonly Phrase AlongRow = new("evenly? along|across row|rnd #");
    private static readonly Phrase Completing = new("for|to|forming form|complete|make|close? a|an|the?");
    private static readonly Phrase Again = new("again|more|also|loosely");

    public static bool Read(Cursor cursor, StepList steps)
    {
        if (TakeOne(cursor) is not { } step) return false;
        if (step.Where is { Choice: PlaceChoice.Same } same && steps.Last is MagicRingStep) step = step with { Where = same with { Choice = PlaceChoice.InRing, Kind = PlaceKind.Ring } };
        steps.Add(LoopChoices.Apply(step, cursor.Context.RowLoop));
        SharedPlaces.Group(cursor.Context, steps);
        EachKindSteps.Join(steps);
        return true;
    }

    /// <summary>'3 shells' and no more; null for any other words.</summary>
    public static StitchStep? TakeCounted(Cursor cursor) =>
        TakeOne(cursor) is { Where: null, Count: not null } counted && (cursor.AtEnd || Cursor.IsSeparator(cursor.Kind)) ? counted : null;

    private static StitchStep? TakeOne(Cursor cursor)
    {
        int from = cursor.At;
        bool lastOnes = !cursor.Take(EndingWith) && cursor.Take(WorkLast);
        if (cursor.At == from && (TakeEven(cursor, from) ?? TakeRowOf(cursor, from)) is { } row) return row;
        if (cursor.At == from && !cursor.Take(FastenWith) && !TakeStart(cursor) && !cursor.Take(WorkBack) && !cursor.Take(Verb)) TakeContinue(cursor);
        if (TakeNumberedStitch(cursor) is not var (number, stitch)) return null;
        if (stitch == StitchId.Chain) return null;
        // 'double crochet (UK)'
        if (cursor.Kind == TokenKind.Open && cursor.Ahead(1).Word is "us" or "uk" && cursor.Ahead(2).Kind == TokenKind.Close) cursor.At += 3;
        return TakeTogether(cursor, from, stitch) ?? OneEach(TakePlaced(cursor, from, number, stitch), lastOnes);
    }

    /// <summary>'Continue to sc in each st'; what one continues to decrease by is told in words of its own.</summary>
    private static void TakeContinue(Cursor cursor)
    {
        int from = cursor.At;
        if (!cursor.Take(ContTo)) return;
        int stitch = cursor.At;
        Numbers.TakePlain(cursor);
        cursor.At = cursor.TakeStitch() is { } named && !ReadingContext.IsIncreaseOrDecrease(named) ? stitch : from;
    }

    /// <summary>'Start with 5 sc', 'start 6 sc'; 'beginning tile' is the name of something.</summary>
    private static bool TakeStart(Cursor cursor) =>
        cursor.Take(StartWith) || cursor.Ahead(1).Kind == TokenKind.Number && cursor.TakeWord("beg");

    /// <summary>'work even in sc': one in each.</summary>
    private static StitchStep? TakeEven(Cursor cursor, int from)
    {
        if (cursor.Take(EvenIn) && cursor.TakeStitch() is { } stitch && stitch != StitchId.Chain)
        {
            TextSpan understood = new(cursor.SpanFrom(from).End, 0);
            return new StitchStep(stitch, SizedNumber.Of(1, understood), null, TakeSweep(cursor) ?? Placement.EachToEnd(PlaceKind.AnyStitch, understood), cursor.SpanFrom(from));
        }
        cursor.At = from;
        return null;
    }

    /// <summary>'work in s c', 'work a row of s c around entire section': one in each.</summary>
    private static StitchStep? TakeRowOf(Cursor cursor, int from)
    {
        if (cursor.Take(RowOf) && cursor.Ahead(-1).Word is "of" or "in" && cursor.TakeStitch() is { } stitch && stitch != StitchId.Chain)
        {
            TextSpan understood = new(cursor.SpanFrom(from).End, 0);
            Placement? where = Placements.Take(cursor);
            where ??= TakeSweep(cursor) is { } sweep ? sweep with { Further = FurtherWords.Take(cursor) } : null;
            where ??= Placement.EachToEnd(PlaceKind.AnyStitch, understood) with { Further = FurtherWords.Take(cursor) };
            return new StitchStep(stitch, SizedNumber.Of(1, understood), null, where, cursor.SpanFrom(from));
        }
        cursor.At = from;
        return null;
    }

    /// <summary>'working last 2 sc in 6th and 5th chs of tch': one in each, not two.</summary>
    private static StitchStep OneEach(StitchStep step, bool lastOnes) =>
        lastOnes && step.Where?.And is not null ? step with { PerPlace = SizedNumber.Of(1, new TextSpan(step.Where.Span.Start, 0)) } : step;

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
        bool more = cursor.TakeWord("more");
        cursor.Take(TokenKind.Hyphen);
        cursor.Take(StitchesOf);
        StitchId? stitch = Clusters.Take(cursor) ?? cursor.TakeStitch() ?? (number is null || more ? null : TakeGroupName(cursor));
        return stitch is null ? null : (number, stitch.Value);
    }

    private static StitchStep TakePlaced(Cursor cursor, int from, SizedNumber? number, StitchId stitch)
    {
        cursor.Take(Again);
        TextSpan understood = new(cursor.SpanFrom(from).End, 0);
        number ??= TakeCountBeforePlace(cursor);
        cursor.Take(ThroughLayers);
        if (TakeUpTo(cursor, stitch) is { } upTo) return new StitchStep(stitch, number ?? SizedNumber.Of(1, understood), null, upTo, cursor.SpanFrom(from));
        if (TakeAlongEdge(cursor) is { } edge && number is not null) return new StitchStep(stitch, null, number, edge, cursor.SpanFrom(from));
        if (number is not null && cursor.Take(AlongRow)) return new StitchStep(stitch, null, number, null, cursor.SpanFrom(from));
        int beforePlace = cursor.At;
        if (Placements.Take(cursor) is { } where)
        {
            if (IsLoopAlone(cursor, beforePlace, where)) return InLoopAlone(cursor, from, number, stitch, where);
            SizedNumber? between = ChainsBetweenWords.Take(cursor);
            StitchId? completes = TakeCompletes(cursor);
            if (IsOneForEach(cursor, number, where)) number = SizedNumber.Of(1, understood);
            return new StitchStep(stitch, number ?? SizedNumber.Of(1, understood), null, where, cursor.SpanFrom(from)) { ChainsBetween = between, Completes = completes };
        }
        if (ChainsBetweenWords.Take(cursor) is { } chains) return TakeSpaced(cursor, from, number, stitch, chains);
        if (TakeCountAfter(cursor, stitch) is { } after && number is null) return new StitchStep(stitch, null, after, null, cursor.SpanFrom(from));
        if (TakeSweep(cursor) is { } sweep) return new StitchStep(stitch, number ?? SizedNumber.Of(1, understood), null, sweep, cursor.SpanFrom(from));
        if (number is null && IsClose(cursor, from)) return new StitchStep(stitch, SizedNumber.Of(1, understood), null, Placement.EachToEnd(new PlaceKind(PlaceNoun.StitchOrChain), understood), cursor.SpanFrom(from));
        return number is null
            ? new StitchStep(stitch, SizedNumber.Of(1, understood), null, null, cursor.SpanFrom(from))
            : new StitchStep(stitch, null, number, null, cursor.SpanFrom(from));
    }

    /// <summary>'12 sc BLO', 'sc in back loops only': the words tell the loop, and no place.</summary>
    private static bool IsLoopAlone(Cursor cursor, int from, Placement where)
    {
        if (where is not { Choice: PlaceChoice.Next, Kind.Noun: PlaceNoun.AnyStitch, Count: null, And: null, Further: null, Loop: not LoopChoice.Both }) return false;
        for (int i = from; i < cursor.At; i++)
            if (cursor.Context.Tokens[i] is { Word: "next" or "st" or "of" or "each" }) return false;
        return true;
    }

    private static StitchStep InLoopAlone(Cursor cursor, int from, SizedNumber? number, StitchId stitch, Placement where)
    {
        TextSpan understood = new(where.Span.End, 0);
        number ??= TakeCountAfter(cursor, stitch);
        // 'In back loops', of more than one stitch: all round.
        if (number is null && cursor.Context.Source.Slice(where.Span).Contains("loops", StringComparison.OrdinalIgnoreCase)) where = where with { Choice = PlaceChoice.Each };
        return new StitchStep(stitch, SizedNumber.Of(1, understood), null, where with { Count = number }, cursor.SpanFrom(from));
    }

    /// <summary>'Close double crochet.': a row without gaps, one in each stitch and each chain.</summary>
    private static bool IsClose(Cursor cursor, int from) => cursor.Context.Tokens[from].IsWord("close") && (cursor.AtEnd || Cursor.IsSeparator(cursor.Kind));

    /// <summary>'10 doubles in 10 stitches', '3 treble in the 3 following stitches': one in each, as old books say it.</summary>
    private static bool IsOneForEach(Cursor cursor, SizedNumber? number, Placement where) =>
        where is { Choice: PlaceChoice.Next, Count: { } count } && number is { IsPlain: true } && count.Values == number.Values && number.Values[0] > 1
        && cursor.Context.Source.Slice(TextSpan.FromTo(where.Span.Start, count.Span.Start)).TrimEnd().Split(' ')[^1].ToLowerInvariant() is "in" or "the" or "on" or "over" or "into" or "following";

    /// <summary>'2 d c with ch 3 between in same space'.</summary>
    private static StitchStep TakeSpaced(Cursor cursor, int from, SizedNumber? number, StitchId stitch, SizedNumber chains)
    {
        int after = cursor.At;
        cursor.Take(TokenKind.Comma);
        Placement? where = Placements.Take(cursor);
        if (where is null) cursor.At = after;
        SizedNumber? perPlace = where is not null || number is null ? number ?? SizedNumber.Of(1, new TextSpan(cursor.SpanFrom(from).End, 0)) : null;
        return new StitchStep(stitch, perPlace, where is null ? number : null, where, cursor.SpanFrom(from)) { ChainsBetween = chains };
    }

    /// <summary>'for picot', 'to form petal', 'to complete picot'.</summary>
    private static StitchId? TakeCompletes(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Take(Completing) && (cursor.TakeStitch() ?? TakeGroupName(cursor)) is { } stitch) return stitch;
        cursor.At = from;
        return null;
    }

    private static StitchId? TakeGroupName(Cursor cursor) =>
        PlaceNouns.Take(cursor) is { Noun: PlaceNoun.Group, Stitch: { } group } && !(group.Value == "pattern" && cursor.Is(OfThePattern)) ? group : null;

    /// <summary>'Work 3 patterns of No. 2' asks for pieces, not for stitches.</summary>
    private static readonly Phrase OfThePattern = new("of|for");

    /// <summary>'120 sc evenly down side': so many stitches, not so many in each row end.</summary>
    private static Placement? TakeAlongEdge(Cursor cursor)
    {
        int from = cursor.At;
        if (RowEndPlaces.Take(cursor) is { Count: null, Choice: PlaceChoice.RowEnds or PlaceChoice.OtherSide } edge && !EachRow(cursor, from)) return edge;
        cursor.At = from;
        return null;
    }

    private static bool EachRow(Cursor cursor, int from)
    {
        for (int i = from; i < cursor.At; i++)
            if (cursor.Context.Tokens[i].IsWord("row") && !(i + 1 < cursor.At && cursor.Context.Tokens[i + 1].IsWord("end")) || cursor.Context.Tokens[i].IsWord("each")) return true;
        return false;
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

    /// <summary>'sc 6 in magic ring', 'dc 2 in next st': the number may follow its stitch.</summary>
    private static SizedNumber? TakeCountBeforePlace(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Kind == TokenKind.Number && Numbers.Take(cursor) is { } count)
        {
            int after = cursor.At;
            bool placed = cursor.Now.Word is "in" && Placements.Take(cursor) is not null;
            cursor.At = after;
            if (placed) return count;
        }
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

    /// <summary>'sc to end', 'sc to last 2 sts': one in each up to there, where 'sl st to last st' names a place.</summary>
    private static Placement? TakeUpTo(Cursor cursor, StitchId stitch)
    {
        int from = cursor.At;
        if (cursor.Now.IsWord("to") && TakeSweep(cursor) is { Extent: { } extent } sweep && (extent.Kind == ExtentKind.ToEnd || extent.Kind == ExtentKind.ToLast && stitch != StitchId.SlipStitch)) return sweep;
        cursor.At = from;
        return null;
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
