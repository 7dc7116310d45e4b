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
        while (!cursor.AtEnd && !Stops(cursor.Kind));
        steps.Add(new UnreadStep(cursor.Slice(from, cursor.At), NearestPhrase.To(cursor, from), cursor.SpanFrom(from)));
    }

    private static bool Stops(TokenKind kind) =>
        kind is TokenKind.Comma or TokenKind.Semicolon or TokenKind.Dot or TokenKind.Star;
}
