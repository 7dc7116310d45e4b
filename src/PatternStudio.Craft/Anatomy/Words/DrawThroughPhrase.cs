using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>What follows 'draw through': '2 loops', 'all 7 loops on hook', 'both loops', 'st and loop', 'st'.</summary>
internal static class DrawThroughPhrase
{
    private static readonly string[] PlaceWords =
    [
        "st", "stitch", "sp", "space", "ch", "chain", "ring", "place", "post", "loop", "lp", "work", "fabric", "same", "first", "top", "of", "next",
    ];

    public static bool Read(WordCursor words, MotionComposer motions, int start)
    {
        if (ReadLoops(words) is { } loops)
        {
            Trail(words);
            if (motions.HookIsIn) return ThroughPlace(words, motions, start);
            Motion motion = ByTwos(words) ? new WorkOffByTwos() : loops;
            TextSpan span = Ending(words, start);
            int times = Math.Min(TimesPhrase.Read(words)?.Count ?? 1, MotionLimits.Motions);
            for (int i = 0; i < times && !motions.IsFull; i++) motions.Draw(motion, span);
            return true;
        }

        if (ReadPlaceAndLoops(words) is { } slip)
        {
            Trail(words);
            motions.Draw(slip, Ending(words, start));
            return true;
        }

        return ThroughLoopOrPlace(words, motions, start);
    }

    /// <summary>
    /// With the hook still in the work the loops meant are those it holds there: under two stitches 'both loops' are theirs, and one
    /// loop comes up; in one stitch everything is drawn through in one move.
    /// </summary>
    private static bool ThroughPlace(WordCursor words, MotionComposer motions, int start)
    {
        TextSpan span = Ending(words, start);
        if (motions.HookIsInSeveral) motions.DrawUp(null, null, span);
        else motions.Draw(new DrawThroughPlace(null), span);
        return true;
    }

    private static TextSpan Ending(WordCursor words, int start)
    {
        words.TakeAll("at", "one", "time");
        words.TakeAll("at", "once");
        words.TakeAll("at", "a", "time");
        words.TakeAll("at", "the", "same", "time");
        words.Take("together", "only", "tightly", "loosely");
        return words.Since(start);
    }

    private static DrawThrough? ReadLoops(WordCursor words)
    {
        DrawThrough? read = null;
        words.Try(() => (read = Loops(words)) is not null);
        return read;
    }

    private static DrawThrough? Loops(WordCursor words)
    {
        words.TakeAny("the", "first", "next", "top", "only");
        if (words.TakeAny("all", "of", "rem", "remaining", "last", "final"))
        {
            words.TakeAny("the", "of", "these", "remaining", "rem", "last", "your");
            int? stated = words.TakeCount();
            words.TakeAny("remaining", "rem");
            bool named = TakeLoops(words);
            bool onlyLast = !named && stated is null && !words.Peek(-1).Is("all");
            return onlyLast ? null : new DrawThrough(null, stated);
        }

        if (words.Take("both"))
        {
            TakeLoops(words);
            return new DrawThrough(null, 2);
        }

        if (words.TakeCount() is { } count)
        {
            bool left = words.TakeAny("remaining", "rem", "last");
            bool named = TakeLoops(words);
            left |= words.Take("remaining", "left");
            if (words.Now.Text is "front" or "back") return null;
            return !named && PlacePhrase.IsPlaceWord(words.Now) ? null : left ? new DrawThrough(null, count) : new DrawThrough(count, null);
        }

        return words.Take("loops", "lps", "everything") ? new DrawThrough(null, null) : null;
    }

    /// <summary>'stitches' are loops in the oldest books: 'draw through 2 stitches'.</summary>
    private static bool TakeLoops(WordCursor words)
    {
        bool named = words.TakeAny("loops", "loop", "lps", "lp", "stitches", "sts");
        words.TakeAny("now", "remaining", "rem", "left", "still");
        if (words.Now.Is("on") && words.Peek(1).Text is "hook" or "hk" or "needle" or "the" or "your")
        {
            words.At++;
            words.TakeAny("the", "your", "hook", "hk", "needle");
        }

        return named;
    }

    private static void Trail(WordCursor words) => TakeLoops(words);

    /// <summary>'2 at a time', 'by twos'.</summary>
    private static bool ByTwos(WordCursor words) =>
        words.TakeAll("2", "at", "a", "time") || words.TakeAll("two", "at", "a", "time") || words.TakeAll("by", "twos") || words.TakeAll("2", "by", "2")
        || words.TakeAll("two", "by", "two");

    /// <summary>'draw through st and loop on hook', 'through both st and loop', 'through the st and all loops'.</summary>
    private static DrawThroughPlace? ReadPlaceAndLoops(WordCursor words)
    {
        DrawThroughPlace? read = null;
        words.Try(() =>
        {
            words.TakeAny("both", "the");
            if (!words.TakeAny(PlaceWords)) return false;
            if (!words.Take("and", "&")) return false;
            words.TakeAny("then", "through", "the");
            if (words.Now.Text is "draw" or "pull") return false;
            if (words.Take("all")) return (read = new DrawThroughPlace(null)) is not null;
            int? count = words.TakeCount() ?? (words.Take("both") ? 2 : null);
            return words.Take("loop", "lp", "loops", "lps", "st", "stitch") && (read = new DrawThroughPlace(count)) is not null;
        });
        return read;
    }

    /// <summary>'through loop' on its own is a chain; 'through st' draws a loop up; so does 'through' alone while the hook is in.</summary>
    private static bool ThroughLoopOrPlace(WordCursor words, MotionComposer motions, int start)
    {
        if (motions.HookIsIn)
        {
            words.TakeAny("a", "loop", "lp");
            if (PlacePhrase.IsPlaceWord(words.Now)) PlacePhrase.Read(words);
            motions.DrawUp(null, null, words.Since(start));
            return true;
        }

        words.TakeAny("the", "a", "this", "that", "last", "first", "remaining");
        bool first = words.Peek(-1).Is("first");
        if (!words.Take("loop", "lp") || (motions.Loops > 1 && !first)) return false;
        Trail(words);
        motions.Draw(new DrawThrough(1, null), Ending(words, start));
        return true;

    }
}
