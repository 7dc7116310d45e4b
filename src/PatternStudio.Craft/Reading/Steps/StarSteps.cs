using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>
/// Reads stars. A star opens a passage; where an open star's pair is followed by a number of times it closes it ('*…* 5 times': 5 in all).
/// A double star inside a starred passage is where a shortened last repeat stops, unless the row repeats from it.
/// </summary>
internal static class StarSteps
{
    private const int MostStars = 1000;
    private static readonly Phrase RepFrom = new("rep from|between? the?");
    private static readonly Phrase ToMark = new("to|and the?");
    private static readonly Phrase BetweenStars = new("rep inst|instructions|sequence|section|st? between the? star");
    private static readonly Phrase Rep = new("rep");
    private static readonly Phrase RepStar = new("rep from? last|first? star?");

    public static bool Read(Cursor cursor, StepList steps)
    {
        return cursor.Kind == TokenKind.Star && ReadStar(cursor, steps);
    }

    private static bool ReadStar(Cursor cursor, StepList steps)
    {
        if (steps.Stars.Count >= MostStars)
        {
            cursor.Context.Report(ReadingTroubleKind.TooLarge, "stars", cursor.Now.Span);
            cursor.At++;
            return true;
        }
        int from = cursor.At;
        Token star = cursor.Now;
        cursor.At++;
        if (Closes(cursor, steps, star.Word) is { } open && ClosePair(cursor, steps, open)) return true;
        cursor.At = from + 1;
        if (star.Word.Length > 1 && steps.Stars.Any(mark => !mark.Used && mark.Mark == star.Word[..1]) && !cursor.Context.RepeatsFrom(star.Word, cursor.At, cursor.End)) steps.MarkStop();
        else steps.Mark(star.Word, star.Span);
        return true;
    }

    /// <summary>'*…*, repeat from * to * …', 'rep between *s': the passage between the marks, once more than it says.</summary>
    private static bool TakeFromMarkToMark(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Take(RepFrom) && cursor.Take(TokenKind.Star))
        {
            int after = cursor.At;
            if (!cursor.Take(ToMark) || !cursor.Take(TokenKind.Star)) cursor.At = after;
            return true;
        }
        cursor.At = from;
        return cursor.Take(BetweenStars);
    }

    /// <summary>'*…*; repeat ** around': the two stars are named together.</summary>
    private static bool TakeBothStars(Cursor cursor)
    {
        int from = cursor.At;
        if (!cursor.Take(TokenKind.Comma)) cursor.Take(TokenKind.Semicolon);
        if (cursor.Take(Rep) && cursor is { Kind: TokenKind.Star, Now.Word: "**" }) return cursor.Take(TokenKind.Star);
        cursor.At = from;
        return false;
    }

    /// <summary>'*…*, repeat 5 more times': the passage has been worked once.</summary>
    private static bool SaysMore(Cursor cursor, int from)
    {
        for (int i = from; i < cursor.At; i++)
            if (cursor.Context.Tokens[i].Word is "more" or "additional" or "further") return true;
        return false;
    }

    private static RepeatStar? Closes(Cursor cursor, StepList steps, string mark) =>
        steps.Stars.LastOrDefault(star => star.Mark == mark && !star.Used && star.At < steps.Count);

    private static bool ClosePair(Cursor cursor, StepList steps, RepeatStar open)
    {
        bool bothStars = TakeBothStars(cursor);
        if (!bothStars) cursor.Take(TokenKind.Comma);
        int after = cursor.At;
        bool again = bothStars || TakeFromMarkToMark(cursor);
        if (!again) cursor.Take(RepStar);
        Extent? extent = Extents.Take(cursor);
        again |= SaysMore(cursor, after);
        if (again && extent is { Kind: ExtentKind.Times, Count: { } more }) extent = extent with { Count = RepeatExtents.OneMore(more) };
        if (extent is null && cursor.At == after && !bothStars) return false;
        extent ??= new Extent(ExtentKind.Unstated, cursor.SpanFrom(after));
        EquatableArray<Step> repeated = steps.From(open.At);
        var repeat = new RepeatStep(repeated, extent, RepeatMark.StarPair, open.Span.Through(cursor.SpanFrom(after)));
        steps.Wrap(open.At, BracketSteps.InOnePlace(cursor, repeat) ?? (Step)repeat);
        steps.Use(open);
        return true;
    }
}
