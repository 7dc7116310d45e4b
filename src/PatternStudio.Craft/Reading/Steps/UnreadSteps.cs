using PatternStudio.Craft.Reading.Counts;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Keeps what can't be read, verbatim, up to the next comma, semicolon or full stop.</summary>
internal static class UnreadSteps
{
    public static void Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        do cursor.At = cursor.Partner() is >= 0 and int partner ? partner + 1 : cursor.At + 1;
        while (!cursor.AtEnd && !Stops(cursor.Kind) && !OpensCount(cursor));
        steps.Add(new UnreadStep(cursor.Slice(from, cursor.At), NearestPhrase.To(cursor, from), cursor.SpanFrom(from)));
    }

    /// <summary>'… (18)': the count at the row's end is read, whatever stands before it.</summary>
    private static bool OpensCount(Cursor cursor) =>
        cursor.Kind == TokenKind.Open && cursor.Partner() is >= 0 and int partner && partner + 1 >= cursor.End && StatedCounts.Whole(cursor.Inside(partner), cursor.Context.Source) is not null;

    private static bool Stops(TokenKind kind) =>
        kind is TokenKind.Comma or TokenKind.Semicolon or TokenKind.Dot or TokenKind.Star;
}
