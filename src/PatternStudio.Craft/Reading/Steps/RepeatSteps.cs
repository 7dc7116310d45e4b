using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads 'rep from * across', 'repeat from ** 3 times', 'rep from * to **', 'repeat all around', with their endings.</summary>
internal static class RepeatSteps
{
    private static readonly Phrase From = new("cont? and? to? rep these|the? from|between?");
    private static readonly Phrase Position = new("the? last|first|2nd|star");
    private static readonly Phrase Beginning = new("the? beg of? rnd|row?");
    private static readonly Phrase TheSame = new("the? same|pattern");
    private static readonly Phrase SameManner = new("in the? same|like manner|way");
    private static readonly Phrase Until = new("to|and");

    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (ReadTimesAlone(cursor, steps)) return true;
        if (ReadTimesFirst(cursor, steps, from)) return true;
        if (!cursor.Take(From)) return false;
        cursor.Take(TheSame);
        bool first = cursor.Now.IsWord("first") || cursor.Now is { Kind: TokenKind.Ordinal, Value: 1 };
        if (cursor.Kind is TokenKind.Ordinal) cursor.At++;
        cursor.Take(Position);
        if (cursor.Kind == TokenKind.Star) return ReadStar(cursor, steps, from, first);
        return ReadWithoutStar(cursor, steps, from);
    }

    private static bool ReadStar(Cursor cursor, StepList steps, int from, bool first)
    {
        string mark = cursor.Now.Word;
        cursor.At++;
        // 'repeat between *s across'
        if (cursor.Now is { Word: "s", Glued: true }) cursor.At++;
        string? stop = TakeStop(cursor);
        Extent extent = RepeatExtents.Take(cursor, alreadyOnce: true);
        cursor.Take(SameManner);
        RepeatStar? star = Find(steps, mark, first);
        if (star is null || star.Uses >= ReadingLimits.Nesting)
        {
            cursor.Context.Report(star is null ? ReadingTroubleKind.RepeatWithoutStar : ReadingTroubleKind.TooLarge, star is null ? mark : "nesting", cursor.SpanFrom(from));
            steps.Add(new UnreadStep(cursor.Slice(from, cursor.At), "*sc in next st, ch 1; rep from * across", cursor.SpanFrom(from)) { LostStar = star is null ? extent : null });
            return true;
        }
        RepeatMark kind = mark switch { "*" => RepeatMark.Star, "**" => RepeatMark.DoubleStar, "†" or "‡" => RepeatMark.Dagger, _ => RepeatMark.Star };
        Wrap(cursor, steps, from, star, extent, kind, stop is not null);
        return true;
    }

    /// <summary>'1 treble, 3 chain, miss 1, 8 times': the row's words so far, 8 times in all.</summary>
    private static bool ReadTimesAlone(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (steps.Count < 2 || FirstRepeated(steps) >= steps.Count || Extents.TakeTimes(cursor) is not { } times || !(cursor.AtEnd || cursor.Kind is TokenKind.Dot or TokenKind.Semicolon) || steps.WholeRepeats++ >= ReadingLimits.Nesting)
        {
            cursor.At = from;
            return false;
        }
        int start = FirstRepeated(steps);
        EquatableArray<Step> repeated = steps.From(start);
        steps.Wrap(start, new RepeatStep(repeated, times, RepeatMark.Words, TextSpan.FromTo(repeated[0].Span.Start, cursor.SpanFrom(from).End)));
        return true;
    }

    /// <summary>'Repeat 3 times from *'.</summary>
    private static bool ReadTimesFirst(Cursor cursor, StepList steps, int from)
    {
        if (cursor.TakeWord("rep") && Extents.TakeTimes(cursor) is { } times && cursor.TakeWord("from") && cursor.Kind == TokenKind.Star)
        {
            string mark = cursor.Now.Word;
            cursor.At++;
            bool toStop = TakeStop(cursor) is not null;
            if (Find(steps, mark, first: false) is { } star && star.Uses < ReadingLimits.Nesting)
            {
                Wrap(cursor, steps, from, star, times with { Count = RepeatExtents.OneMore(times.Count!) }, RepeatMark.Star, toStop);
                return true;
            }
        }
        cursor.At = from;
        return false;
    }

    /// <summary>'rep from * to **': the second mark ends the passage.</summary>
    private static string? TakeStop(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Take(Until) && cursor.Kind == TokenKind.Star)
        {
            string mark = cursor.Now.Word;
            cursor.At++;
            return mark;
        }
        cursor.At = from;
        return null;
    }

    private static RepeatStar? Find(StepList steps, string mark, bool first)
    {
        RepeatStar? last = null, unused = null;
        foreach (RepeatStar star in steps.Stars)
        {
            if (star.Mark != mark || star.At >= steps.Count) continue;
            if (first) return star;
            last = star;
            if (!star.Used) unused = star;
        }
        return unused ?? last;
    }

    private static void Wrap(Cursor cursor, StepList steps, int from, RepeatStar star, Extent extent, RepeatMark mark, bool toStop)
    {
        EquatableArray<Step> repeated = steps.From(star.At);
        RepeatEndings.Ending ending = RepeatEndings.Take(cursor);
        int? stopsAfter = ending.StopsAtMark && steps.Stop >= star.At ? steps.Stop - star.At : null;
        if (toStop && steps.Stop > star.At) stopsAfter = steps.Stop - star.At;
        var span = TextSpan.FromTo(star.Span.Start, cursor.SpanFrom(from).End);
        steps.Wrap(star.At, new RepeatStep(repeated, extent, mark, span) { LastStopsAfter = stopsAfter, Ending = ending.Steps });
        steps.Use(star);
    }

    /// <summary>'repeat', 'repeat all around', 'repeat from beginning': everything of this row so far.</summary>
    private static bool ReadWithoutStar(Cursor cursor, StepList steps, int from)
    {
        bool fromBeginning = cursor.Take(Beginning);
        if (!fromBeginning && cursor.Now.Word is "row" or "rnd" or "the") return false;
        Extent extent = RepeatExtents.Take(cursor, alreadyOnce: true);
        if (!fromBeginning && extent.Kind == ExtentKind.Unstated && !cursor.AtEnd && !Cursor.IsSeparator(cursor.Kind)) return false;
        // '*sc, dc; repeat across': the star that stands open is where it repeats from.
        RepeatStar? open = fromBeginning ? null : steps.Stars.LastOrDefault(star => !star.Used && star.At < steps.Count);
        if (open is not null)
        {
            Wrap(cursor, steps, from, open, extent, RepeatMark.Star, toStop: false);
            return true;
        }
        int start = FirstRepeated(steps);
        if (start >= steps.Count || steps.WholeRepeats++ >= ReadingLimits.Nesting) return false;
        EquatableArray<Step> repeated = steps.From(start);
        RepeatEndings.Ending ending = RepeatEndings.Take(cursor);
        steps.Wrap(start, new RepeatStep(repeated, extent, RepeatMark.Words, TextSpan.FromTo(repeated[0].Span.Start, cursor.SpanFrom(from).End)) { Ending = ending.Steps });
        return true;
    }

    /// <summary>Chains and yarn at a row's beginning are made once.</summary>
    private static int FirstRepeated(StepList steps)
    {
        int start = 0;
        while (start < steps.Count && steps.Steps[start] is AttachStep or ColourStep or RemarkStep or TurnStep or JoinStep) start++;
        return start;
    }
}
