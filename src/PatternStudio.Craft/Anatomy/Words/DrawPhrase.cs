namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>'draw up a loop', 'pull loop through', 'draw through 2 loops', 'work off all loops at one time'.</summary>
internal static class DrawPhrase
{
    public static bool TryRead(WordCursor words, MotionComposer motions)
    {
        int start = words.At;
        if (TakeVerb(words, motions) && (motions.LoopIsDropped ? DroppedLoopPhrase.Close(words, motions, start) : Draw(words, motions, start))) return true;
        words.At = start;
        return false;
    }

    /// <summary>'draw', 'pull', 'work off'; and 'yo, through 2 loops' with no verb at all.</summary>
    private static bool TakeVerb(WordCursor words, MotionComposer motions)
    {
        if (words.Take("draw", "draws", "drawing", "pull", "pulls", "pulling", "bring", "bringing")) return true;
        if (words.Now.Text is "take" or "catch" && words.Peek(1).Text is "up") return words.Take("take", "catch");
        if (words.Now.Text is "work" or "working" && words.Peek(1).Text is "off" or "loops" or "through" or "them") return words.Take("work", "working");
        return motions.HasWraps && (words.Now.Is("through") || (words.Now.Is("off") && words.Peek(1).IsCount));
    }

    private static bool Draw(WordCursor words, MotionComposer motions, int start)
    {
        bool indefinite = words.Now.Text is "a" or "up";
        words.TakeAny("the", "yarn", "wool", "thread", "hook", "it", "a", "back", "long", "loose", "tall", "and", "draw", "pull", "them");
        if (words.Take("up")) return DrawUpPhrase.Read(words, motions, start);
        if (words.Now.Sort == WordSort.Fraction) return DrawUpPhrase.Read(words, motions, start);
        if (words.Now.Text is "loop" or "lp" or "loops")
        {
            if (words.Peek(1).Is("off")) words.At++;
            else if (indefinite || words.Peek(1).Text is "up" or "through" or "in" or "out") return DrawUpPhrase.Read(words, motions, start);
        }

        return words.Take("through", "thru", "off") && DrawThroughPhrase.Read(words, motions, start);
    }
}
