using PatternStudio.Craft.Reading.Tokens;

namespace PatternStudio.Craft.Reading.Statements;

/// <summary>Knows how a line of instruction begins.</summary>
internal static class Instructions
{
    private static readonly Phrase[] Beginnings =
    [
        new("ch #"), new("ch one|two|three|four|five|six|seven|eight|nine|ten"), new("ch a multiple"), new("make|work|start|beg|with a|an|the? magic|adjustable|sliding|ch"),
        new("with"), new("using"), new("join"), new("attach"), new("rep row|rnd|the|last|from|#|##"), new("fasten off"), new("change to|color"), new("foundation"), new("turn"), new("cut|break yarn"),
        new("work even"), new("starting"), new("beg at|with"), new("loosely ch"), new("beg by ch"),
    ];

    private static readonly Phrase Placing = new("in|over|around|each|evenly|across|next|to");

    public static bool StartAt(Cursor cursor)
    {
        if (cursor.IsAny(Beginnings) || cursor is { Kind: TokenKind.Star, Now.Word: "*" }) return true;
        int from = cursor.At;
        Numbers.TakePlain(cursor);
        bool stitch = cursor.TakeStitch() is not null && (cursor.Kind == TokenKind.Comma || cursor.Is(Placing));
        cursor.At = from;
        return stitch;
    }
}
