using PatternStudio.Craft.Reading.Tokens;

namespace PatternStudio.Craft.Reading.Definitions;

/// <summary>Knows the words that hook motions are told in.</summary>
internal static class MotionWords
{
    private static readonly Phrase[] Motions =
    [
        new("yo"), new("yarn over"), new("yarn round|around"), new("over hook"), new("insert hook|in"), new("hook in"), new("draw|pull|drawing up|through|loop"),
        new("draw|pull a|the|yarn|dropped loop|through|up"), new("loop on the? hook|needle"), new("last|drop|dropped loop"), new("work off"), new("over and draw"),
    ];

    /// <summary>True where a motion is told anywhere in the stretch.</summary>
    public static bool AreIn(Cursor stretch)
    {
        int from = stretch.At;
        bool found = false;
        for (; !stretch.AtEnd && !found; stretch.At++) found = StartsMotion(stretch);
        stretch.At = from;
        return found;
    }

    /// <summary>True where a motion begins here.</summary>
    public static bool StartsMotion(Cursor cursor) => Motions.Any(cursor.Is);
}
