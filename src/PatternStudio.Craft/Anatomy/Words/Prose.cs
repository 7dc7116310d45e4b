namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>Sentences around a definition that move no hook: its full name before it, a remark after the stitch is finished.</summary>
internal static class Prose
{
    private const int TitleWords = 8;

    private static readonly HashSet<string> MotionWords = new(StringComparer.Ordinal)
    {
        "yo", "yoh", "yrh", "yarn", "wool", "thread", "insert", "inserting", "hook", "needle", "draw", "drawing", "pull", "pulling", "loop",
        "loops", "lp", "lps", "rep", "repeat", "repeating", "over", "wrap", "drop", "complete", "finish", "twice", "times", "*", "keeping",
        "holding", "leaving",
    };

    /// <summary>'front post double crochet: yo, …': the name, told once more.</summary>
    public static void SkipTitle(WordCursor words)
    {
        for (int ahead = 0; ahead < TitleWords; ahead++)
        {
            MotionWord word = words.Peek(ahead);
            if (word.Is(":")) words.At += ahead + 1;
            if (word.Text.Length == 0 || word.Sort == WordSort.Mark || TellsMotion(word)) return;
        }
    }

    /// <summary>'Bobbles are worked on WS rows.': with the stitch finished, a sentence without any word of the hook's is a remark.</summary>
    public static void SkipRemark(WordCursor words)
    {
        int end = 0;
        while (words.Peek(end).Text.Length > 0 && !words.Peek(end).EndsSentence)
            if (TellsMotion(words.Peek(end++)))
                return;
        if (end > 0 && !words.Peek(0).IsCount && !StitchFollows(words, end)) words.At += end;
    }

    /// <summary>'5 dc in same st' is no remark.</summary>
    private static bool StitchFollows(WordCursor words, int end)
    {
        for (int ahead = 0; ahead < end; ahead++)
            if (words.Peek(ahead).IsCount && !words.Peek(ahead - 1).Is("ch"))
                return true;
        return false;
    }

    private static bool TellsMotion(MotionWord word) => MotionWords.Contains(word.Text);
}
