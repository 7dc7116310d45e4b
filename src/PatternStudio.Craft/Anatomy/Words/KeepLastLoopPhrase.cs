using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>'keeping last loop of each st on hook', 'holding back on hook the last loop of each dc', 'leaving last loop on hook'.</summary>
internal static class KeepLastLoopPhrase
{
    public static bool TryRead(WordCursor words, MotionComposer motions, Terminology terminology)
    {
        if (!words.Try(() => Keeping(words, terminology))) return false;
        motions.KeepsLastLoop = true;
        return true;
    }

    /// <summary>'2 dc in same st, keeping last loop of each on hook': said after the stitches it opens.</summary>
    public static bool Follows(WordCursor words, Terminology terminology) => words.Try(() =>
    {
        words.Take(",");
        return Keeping(words, terminology);
    });

    private static bool Keeping(WordCursor words, Terminology terminology)
    {
        if (!words.Take("keeping", "holding", "leaving", "retaining", "keep", "hold", "leave", "retain", "omitting", "omit")) return false;
        words.TakeAny("back", "on", "hook", "the", "needle");
        if (!words.Take("last", "final") || !words.Take("loop", "lp", "yo", "step", "loops")) return false;
        if (words.Take("of"))
        {
            words.TakeAny("each", "the", "every", "these", "all", "both");
            if (StitchNames.Take(words, terminology) is null) words.TakeAny("st", "sts", "stitch", "stitches", "one", "leg", "of");
        }

        words.TakeAny("back");
        if (words.Take("on")) words.TakeAny("the", "your", "hook", "needle");
        return true;
    }

    /// <summary>'dc in next st until 2 loops remain on hook', 'up to last yo': said of the one stitch before it.</summary>
    public static bool Unfinished(WordCursor words) => words.Try(() =>
    {
        words.Take(",");
        bool until = words.TakeAny("until", "up", "to", "before", "without", "the", "working", "there", "are");
        if (!until) return false;
        if (words.Take("last", "final"))
        {
            bool step = words.Take("yo", "step", "pull", "draw", "loop") || words.TakeAll("yarn", "over");
            words.TakeAny("through", "remains", "on", "hook");
            return step;
        }

        words.TakeAny("last", "only");
        return words.TakeCount() is not null
            && words.Take("loops", "lps", "loop")
            && (words.TakeAny("remain", "remains", "are", "left", "rem") | words.TakeAny("on", "the", "hook"));
    });
}
