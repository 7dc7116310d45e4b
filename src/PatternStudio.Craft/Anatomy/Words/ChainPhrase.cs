namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>'ch 1 to close', 'ch 3', 'chain 1 tightly'.</summary>
internal static class ChainPhrase
{
    public static bool TryRead(WordCursor words, MotionComposer motions)
    {
        int start = words.At;
        words.TakeAny("work", "make");
        int? before = words.TakeCount();
        bool named = words.Take("ch", "chain", "chs", "chains");
        int? count = before ?? (named ? words.TakeCount() : null);
        if (!named || count is not { } chains)
        {
            words.At = start;
            return false;
        }

        words.TakeAny("tightly", "tight", "loosely", "firmly");
        motions.Put(new LockingChain(chains), words.Since(start));
        return true;
    }
}
