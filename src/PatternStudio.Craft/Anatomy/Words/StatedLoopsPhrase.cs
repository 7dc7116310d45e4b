namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>'(3 loops on hook)', 'you should have 7 loops on hook', '2 loops remain'.</summary>
internal static class StatedLoopsPhrase
{
    /// <summary>'3, 5 and 7 loops': as many as a repeat has turns.</summary>
    private const int MostTurns = 12;

    public static bool TryRead(WordCursor words, MotionComposer motions)
    {
        int start = words.At;
        bool told = TakeOpening(words);
        for (int i = 0; i < MostTurns && Follows(words, 1) && words.Now.IsCount && words.Peek(1).Is(","); i++) words.At += 2;
        bool listed = words.At > start && words.Peek(-1).Is(",") && words.Peek(-2).IsCount;
        if (!words.Now.IsCount || !Follows(words, 0))
        {
            words.At = start;
            return false;
        }

        int loops = words.TakeCount()!.Value;
        words.TakeAny("loops", "loop", "lps", "lp");
        bool placed = TakeEnd(words);
        if (!told && !placed && !words.Now.Is(")"))
        {
            words.At = start;
            return false;
        }

        motions.SettleWraps();
        if (!listed) motions.Put(new StatedLoops(loops, words.Since(start)), words.Since(start));
        return true;
    }

    /// <summary>True where a number so many words ahead counts loops.</summary>
    public static bool Follows(WordCursor words, int ahead)
    {
        if (!words.Peek(ahead).IsCount) return ahead == 1 && words.Peek(1).Is(",") && words.Peek(2).IsCount;
        return words.Peek(ahead + 1).Text is "loops" or "lps" or "loop" or "lp"
            && words.Peek(ahead + 2).Text is "on" or "remain" or "remaining" or "left" or "total" or "now" or "in" or ")" or "rem" or "remains" or "are";
    }

    /// <summary>'you should now have', 'there will be a total of', 'leaving'.</summary>
    private static readonly string[] Opening =
    [
        "you", "there", "now", "will", "should", "ll", "you'll", "you’ll", "have", "be", "are", "is", "a", "total", "of", "leaving", "with", "until", "=", "—", "–",
    ];

    private static bool TakeOpening(WordCursor words)
    {
        int start = words.At;
        words.TakeAny(Opening);
        return words.At > start;
    }

    private static bool TakeEnd(WordCursor words)
    {
        int start = words.At;
        words.TakeAny("now", "remain", "remains", "remaining", "rem", "left", "total", "are", "in", "all");
        if (words.Take("on")) words.TakeAny("the", "your", "hook", "hk", "needle");
        words.TakeAny("in", "total", "at", "this", "point", "all");
        return words.At > start;
    }
}
