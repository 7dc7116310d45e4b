namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>Words that move no hook: commas, 'and then', 'to close', 'puff made'.</summary>
internal static class FillerPhrase
{
    private static readonly string[] Empty =
    [
        ",", ".", ";", ":", "–", "—", "'", "’", "and", "then", "now", "again", "also", "next", "all", "on", "hook", "as", "follows",
        "carefully", "tightly", "firmly", "!", "&"
    ];

    private static readonly string[] Purposes =
    [
        "close", "secure", "lock", "complete", "finish", "form", "make", "fasten", "end", "tighten", "seal", "anchor",
    ];

    /// <summary>Within so many words a remark must come to its point.</summary>
    private const int Reach = 7;

    public static bool TryRead(WordCursor words) =>
        words.Take(Empty)
        || words.TakeAll("as", "usual") || words.TakeAll("at", "the", "same", "time") || words.TakeAll("at", "same", "time")
        || words.Try(() => Purpose(words))
        || words.Try(() => NoChain(words))
        || words.Try(() => Skip(words))
        || words.Try(() => Remark(words))
        || (PlacePhrase.Begins(words) && !words.Now.Is("through") && Place(words))
        || (words.Peek(1).Text is "in" or "into" or "over" or "around" or "as" or "the" && words.Take("working", "work"));

    private static bool Place(WordCursor words)
    {
        int start = words.At;
        PlacePhrase.Read(words);
        return words.At > start;
    }

    /// <summary>'to close', 'to secure st', 'to form a cluster'.</summary>
    private static bool Purpose(WordCursor words)
    {
        if (!words.Take("to", "forming", "completing")) return false;
        if (words.Peek(-1).Is("to") && !words.Take(Purposes)) return false;
        for (int i = 0; i < Reach && words.Now.Sort != WordSort.Mark && !words.AtEnd && !words.Now.Is("and"); i++) words.At++;
        return true;
    }

    /// <summary>'skip st behind post st just made': it moves the work on, not the hook.</summary>
    private static bool Skip(WordCursor words) =>
        words.Take("skip", "sk", "miss") && SkippedPlace(words);

    private static bool SkippedPlace(WordCursor words)
    {
        int start = words.At;
        do PlacePhrase.Read(words);
        while (words.Take("fpdc", "bpdc", "fptr", "bptr", "fpst", "bpst"));
        return words.At > start;
    }

    /// <summary>'do not ch 1'.</summary>
    private static bool NoChain(WordCursor words) =>
        words.TakeAll("do", "not") && words.Take("ch", "chain") && words.TakeCount() is not null;

    /// <summary>'puff st made', 'first leg complete', '3-dc cluster formed'.</summary>
    private static bool Remark(WordCursor words)
    {
        for (int i = 0; i < Reach; i++)
        {
            if (words.Now.Sort == WordSort.Mark) return false;
            bool closes = words.Take("made", "complete", "completed", "formed", "done", "finished");
            if (closes) return words.AtEnd || words.Now.Sort == WordSort.Mark;
            words.At++;
        }

        return false;
    }
}
