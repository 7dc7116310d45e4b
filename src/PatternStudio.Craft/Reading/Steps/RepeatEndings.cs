using PatternStudio.Craft.Reading.Lines;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads how a repeat ends: 'ending with sc in last sc', 'ending last rep at **'.</summary>
internal static class RepeatEndings
{
    private static readonly Phrase EndingAt = new("but? end|stopping the? last? rep|time? at|after");
    private static readonly Phrase EndingWith = new("but|and? end|finishing the? row|rnd|last|each? rep|row|rnd? with|by|in");
    private static readonly Phrase EndingDirectly = new("but|and? end|finishing");
    private static readonly Phrase ToCorrespond = new("but|and? end to correspond");

    /// <summary>How the last repeat ends.</summary>
    /// <param name="Steps">The steps that close the row.</param>
    /// <param name="StopsAtMark">True for 'ending last rep at **'.</param>
    public sealed record Ending(EquatableArray<Step> Steps, bool StopsAtMark);

    private static readonly Phrase EndingLike = new("but|and? end|finishing the? row|rnd? same as|like|as");

    /// <summary>'ending row with ch 3, tr in tr', 'ending row same as last row': the steps that close a row, whatever it is that they close; empty where no such words stand here.</summary>
    public static EquatableArray<Step> TakeClosing(Cursor cursor)
    {
        int from = cursor.At;
        EquatableArray<Step> steps = TakeLikeRow(cursor);
        if (steps.IsEmpty && cursor.Take(EndingWith)) steps = TakeSteps(cursor);
        if (steps.IsEmpty || steps.Any(step => step is UnreadStep or UncountedStep))
        {
            cursor.At = from;
            return [];
        }
        return steps;
    }

    /// <summary>'ending row same as last row': the closing steps of that row.</summary>
    private static EquatableArray<Step> TakeLikeRow(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Take(EndingLike) && RowReferences.TakeRows(cursor) is { LastRows: null, Rows.Count: < 2 } named)
            return [new AsRowStep(named.Rows, cursor.SpanFrom(from)) { PreviousRow = named.Previous }];
        cursor.At = from;
        return [];
    }

    public static Ending Take(Cursor cursor)
    {
        int from = cursor.At;
        cursor.SkipSeparators();
        if (cursor.Take(EndingAt) && cursor.Kind == TokenKind.Star)
        {
            cursor.At++;
            return new Ending([], true);
        }
        cursor.At = from;
        cursor.SkipSeparators();
        if (cursor.Take(ToCorrespond)) return new Ending([], false);
        if (TakeLikeRow(cursor) is { IsEmpty: false } like) return new Ending(like, false);
        if (cursor.Take(EndingWith) || cursor.Take(EndingDirectly) && NamesStitch(cursor)) return new Ending(TakeSteps(cursor), false);
        cursor.At = from;
        return new Ending([], false);
    }

    /// <summary>'ending sc in last st': the stitch follows at once.</summary>
    private static bool NamesStitch(Cursor cursor)
    {
        int from = cursor.At;
        Numbers.TakePlain(cursor);
        bool stitch = cursor.TakeStitch() is not null;
        cursor.At = from;
        return stitch;
    }

    /// <summary>The closing steps go up to the sentence's end, or to what ends every row: a join, a turn, a yarn cut.</summary>
    private static EquatableArray<Step> TakeSteps(Cursor cursor)
    {
        var steps = new StepList();
        int after = cursor.At, count = 0;
        while (!cursor.AtEnd && !cursor.NextOpens() && cursor.Kind is not (TokenKind.Semicolon or TokenKind.Dot or TokenKind.Star or TokenKind.Dash))
        {
            if (!StepReader.ReadNext(cursor, steps)) break;
            if (steps.Last is TurnStep or DoNotTurnStep or JoinStep or FastenOffStep or ColourStep or AttachStep or RepeatStep) break;
            (after, count) = (cursor.At, steps.Count);
        }
        if (steps.Last is TurnStep && count > 1 && steps.Steps[count - 1] is ChainStep chain)
        {
            count--;
            while (after > cursor.Start && cursor.Context.Tokens[after - 1].Span.Start >= chain.Span.Start) after--;
        }
        cursor.At = after;
        return steps.ToArray().Take(count).ToEquatableArray();
    }
}
