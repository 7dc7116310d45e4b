using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>
/// Reads brackets of every sort. What follows decides: a place makes a group of them, a number of times or 'around' a repeat; with nothing
/// after them they are a count, a remark, a name or a definition.
/// </summary>
internal static class BracketSteps
{
    private static readonly Phrase Work = new("work|make");
    private static readonly Phrase Rep = new("rep");
    private static readonly Phrase AllIn = new("all|both|in same? all?");

    public static bool Read(Cursor cursor, StepList steps)
    {
        if (cursor.Is(Work) && cursor.Ahead(1).Kind == TokenKind.Open) cursor.At++;
        if (cursor.Kind == TokenKind.Close) return ReadStray(cursor, steps);
        if (cursor.Kind != TokenKind.Open) return false;
        int partner = cursor.Partner();
        if (partner < 0) return ReadStray(cursor, steps);
        if (cursor.Depth >= ReadingLimits.Nesting) return ReadTooDeep(cursor, steps, partner);
        return BracketRemarks.ReadStandsFor(cursor, steps, partner)
            || ReadGroup(cursor, steps, partner)
            || ReadRepeat(cursor, steps, partner)
            || BracketRemarks.Read(cursor, steps, partner)
            || ReadPlain(cursor, steps, partner);
    }

    private static bool ReadStray(Cursor cursor, StepList steps)
    {
        cursor.Context.Report(ReadingTroubleKind.BracketOpen, cursor.Now.Word, cursor.Now.Span);
        cursor.At++;
        return true;
    }

    private static bool ReadTooDeep(Cursor cursor, StepList steps, int partner)
    {
        int from = cursor.At;
        cursor.At = partner + 1;
        cursor.Context.Report(ReadingTroubleKind.TooLarge, "nesting", cursor.SpanFrom(from));
        steps.Add(new UnreadStep(cursor.Slice(from, cursor.At), null, cursor.SpanFrom(from)));
        return true;
    }

    private static bool ReadGroup(Cursor cursor, StepList steps, int partner)
    {
        int from = cursor.At;
        cursor.At = partner + 1;
        int after = cursor.At;
        if (!cursor.Take(AllIn) || cursor.Ahead(-1) is { Word: "in" or "same" }) cursor.At = after;
        // '(sc, ch 1) to last st' says how far it is repeated.
        if (cursor.Now.IsWord("to") || Placements.Take(cursor) is not { } where)
        {
            cursor.At = from;
            return false;
        }
        int end = cursor.At;
        cursor.At = from;
        EquatableArray<Step> members = StepReader.ReadAll(cursor.Inside(partner)).ToArray();
        cursor.At = end;
        // '(WS) In magic ring: …': the place belongs to what follows.
        if (members.All(step => step is RemarkStep))
        {
            cursor.At = from;
            return false;
        }
        if (members is [StitchStep { Where: null } name] && SharedPlaces.GroupNamed(cursor.Context, steps, name.Stitch, where)) return true;
        steps.Add(new GroupStep(members, where, cursor.SpanFrom(from)));
        EachKindSteps.Join(steps);
        return true;
    }

    private static bool ReadRepeat(Cursor cursor, StepList steps, int partner)
    {
        int from = cursor.At;
        cursor.At = partner + 1;
        if (TakeExtent(cursor) is not { } extent)
        {
            cursor.At = from;
            return false;
        }
        int end = cursor.At;
        RepeatMark mark = cursor.Context.Tokens[from].Word switch { "[" => RepeatMark.Brackets, "{" => RepeatMark.Braces, _ => RepeatMark.Parentheses };
        cursor.At = from;
        EquatableArray<Step> repeated = StepReader.ReadAll(cursor.Inside(partner)).ToArray();
        cursor.At = end;
        var repeat = new RepeatStep(repeated, extent, mark, cursor.SpanFrom(from));
        steps.Add(InOnePlace(cursor, repeat) ?? (Step)repeat);
        return true;
    }

    /// <summary>'(dc, ch 1) 4 times in ring', '*2 tr, ch 3* twice in next ch-3 sp': all the turns go into the place named behind them.</summary>
    public static GroupStep? InOnePlace(Cursor cursor, RepeatStep repeat)
    {
        if (repeat.Extent.Kind != ExtentKind.Times || !repeat.Steps.Any(step => step is StitchStep) || !repeat.Steps.All(step => step is ChainStep or RemarkStep or StitchStep { Where: null })) return null;
        int from = cursor.At;
        if (Placements.Take(cursor) is { And: null, Further: null, Choice: PlaceChoice.InRing or PlaceChoice.Same or PlaceChoice.Next or PlaceChoice.First or PlaceChoice.Last or PlaceChoice.Centre or PlaceChoice.FromHook } where && where.Count is null)
            return new GroupStep([repeat], where, repeat.Span.Through(cursor.SpanFrom(from)));
        cursor.At = from;
        return null;
    }

    private static Extent? TakeExtent(Cursor cursor)
    {
        int from = cursor.At;
        cursor.Take(Rep);
        cursor.Take(TokenKind.Comma);
        if (Extents.Take(cursor) is { } extent) return extent;
        cursor.At = from;
        return null;
    }

    /// <summary>Brackets around steps with nothing after them: the steps as they are.</summary>
    private static bool ReadPlain(Cursor cursor, StepList steps, int partner)
    {
        if (steps.Last is StitchStep { Where.Choice: PlaceChoice.RowEnds or PlaceChoice.OtherSide })
        {
            int from = cursor.At;
            cursor.At = partner + 1;
            steps.Add(new RemarkStep(cursor.Slice(from, cursor.At), cursor.SpanFrom(from)));
            return true;
        }
        foreach (Step step in StepReader.ReadAll(cursor.Inside(partner)).Steps) steps.Add(step);
        cursor.At = partner + 1;
        return true;
    }
}
