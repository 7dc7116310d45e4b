using PatternStudio.Craft.Reading.Tokens;

namespace PatternStudio.Craft.Reading.Statements;

/// <summary>Knows how a line of instruction begins.</summary>
internal static class Instructions
{
    private static readonly Phrase[] Beginnings =
    [
        new("ch #"), new("ch one|two|three|four|five|six|seven|eight|nine|ten"), new("ch a multiple"), new("make|work|start|beg|with a|an|the? magic|adjustable|sliding|ch"),
        new("with"), new("using"), new("join"), new("attach"), new("rep row|rnd|the|last|from"), new("fasten off"), new("change to|color"), new("foundation"), new("turn"), new("cut"),
        new("row"), new("rnd"), new("work even"), new("starting"), new("beg at|with"),
    ];

    public static bool StartAt(Cursor cursor)
    {
        if (Beginnings.Any(cursor.Is) || cursor.Kind == TokenKind.Star) return true;
        int from = cursor.At;
        Numbers.TakePlain(cursor);
        bool stitch = cursor.TakeStitch() is not null && cursor.Kind is not (TokenKind.Colon or TokenKind.Dash or TokenKind.Other or TokenKind.Open) && !cursor.AtEnd;
        cursor.At = from;
        return stitch;
    }
}
