using PatternStudio.Craft.Reading.Tokens;

namespace PatternStudio.Craft.Reading.Definitions;

/// <summary>Knows the words that hook motions are told in.</summary>
internal static class MotionWords
{
    /// <summary>How a motion begins.</summary>
    private static readonly PhraseSet Beginnings = new(
    [
        new("yo"), new("yarn over"), new("yarn round|around"), new("over hook"), new("insert the? hook"), new("insert in"), new("hook in"), new("draw|pull|drawing|pulling up? a|the|through|up"),
        new("draw|pull a|the? yarn|dropped|loop"), new("drop loop|the"), new("pick up loop|the"), new("work off # loop"), new("work off all|both|the|two|three|last"), new("over , draw"), new("over and draw"),
        new("over , insert"), new("take up yarn"), new("turn the? yarn # times"), new("remove|slip hook|loop from"), new("withdraw"),
    ]);

    private static readonly Phrase[] Anywhere = [new("loop on the? hook|needle"), new("last loop of"), new("on the? hook")];

    /// <summary>True where a motion is told anywhere in the stretch.</summary>
    public static bool AreIn(Cursor stretch)
    {
        int from = stretch.At;
        bool found = false;
        for (; !stretch.AtEnd && !found; stretch.At++) found = Starts(stretch) || stretch.IsAny(Anywhere);
        stretch.At = from;
        return found;
    }

    /// <summary>True where a stitch is told whole: the hook goes in, and a loop is drawn.</summary>
    public static bool AreWhole(Cursor stretch)
    {
        bool inserts = false, draws = false;
        for (int i = stretch.At; i < stretch.End; i++)
        {
            inserts |= stretch.Context.Tokens[i].Word is "insert" or "inserting";
            draws |= stretch.Context.Tokens[i].Word is "draw" or "pull" or "drawing" or "pulling";
        }
        return inserts && draws;
    }

    /// <summary>True where a motion begins here.</summary>
    public static bool Starts(Cursor cursor) => Beginnings.IsAt(cursor);
}
