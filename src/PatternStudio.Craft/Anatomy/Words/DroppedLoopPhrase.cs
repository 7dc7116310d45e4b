namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>'drop loop from hook, insert hook in top of first dc, pull dropped loop through': how a popcorn closes.</summary>
internal static class DroppedLoopPhrase
{
    public static bool TryRead(WordCursor words, MotionComposer motions)
    {
        if (motions.LoopIsDropped && words.Try(() => TakeUp(words))) return true;
        if (!words.Try(() => Drop(words))) return false;
        words.TakeAny("from", "off", "of", "the", "your", "hook", "needle", "working", "current", "last", "loop", "lp", "st", "stitch", "out");
        motions.SettleWraps();
        motions.LoopIsDropped = true;
        return true;
    }

    private static bool Drop(WordCursor words)
    {
        if (words.Take("drop", "dropping", "slip"))
        {
            words.TakeAny("the", "last", "working", "current", "live");
            return words.Take("loop", "lp", "st", "stitch") || words.Now.Text is "from" or "off";
        }

        if (!words.Take("remove", "removing", "take", "withdraw")) return false;
        words.TakeAny("the", "your", "last", "working");
        return words.Take("hook", "loop", "lp", "needle");
    }

    /// <summary>'pick up dropped loop', 'place dropped loop on hook'.</summary>
    private static bool TakeUp(WordCursor words)
    {
        bool verb = words.Take("place", "grab", "catch", "hook", "put", "return", "replace") || words.TakeAll("pick", "up") || words.TakeAll("picking", "up");
        return verb && words.TakeAny("up", "the", "dropped", "loop", "lp", "st", "stitch", "back", "on", "onto", "hook", "working", "it", "with", "free", "live");
    }

    /// <summary>'pull dropped loop through (st)'.</summary>
    public static bool Close(WordCursor words, MotionComposer motions, int start)
    {
        words.TakeAny("the", "dropped", "loop", "lp", "it", "yarn", "st", "stitch", "up", "back", "working", "live", "free");
        if (!words.Take("through")) return false;
        PlacePhrase.Read(words);
        words.TakeAny("tightly", "tight", "firmly");
        motions.LoopIsDropped = false;
        motions.Draw(new DrawDroppedLoop(), words.Since(start));
        return true;
    }
}
