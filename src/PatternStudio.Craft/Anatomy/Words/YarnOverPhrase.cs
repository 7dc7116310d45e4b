namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>'yo', 'yrh', 'yarn over hook twice', 'thread over', 'wool round hook', 'over', 'wrap yarn around hook 7 times'.</summary>
internal static class YarnOverPhrase
{
    public static bool TryRead(WordCursor words, MotionComposer motions)
    {
        int start = words.At;
        int before = 1;
        if (words.Now.IsCount && words.Peek(1).Text is "yo" or "yos" or "yarn" or "times")
        {
            before = words.TakeCount() ?? 1;
            words.Take("times");
        }

        if (!TakeName(words))
        {
            words.At = start;
            return false;
        }

        words.TakeAny("the", "your", "hook", "needle", "again");
        Abbreviation(words);
        int times = before * (TimesPhrase.Read(words)?.Count ?? 1);
        Abbreviation(words);
        motions.HoldWraps(Math.Min(times, MotionLimits.Number), words.Since(start));
        return true;
    }

    private static bool TakeName(WordCursor words)
    {
        if (words.Take("yo", "yos", "yoh", "yrh", "yrn", "woh", "wrh")) return true;
        if (words.Now.Text is "take" or "catch" or "grab" or "pick" && words.Try(() => Catch(words))) return true;
        if (words.TakeAll("y", "o") || words.TakeAll("y", "r", "h")) return true;
        if (words.Now.Text is "yarn" or "wool" or "thread" or "cotton" && words.Peek(1).Text is "over" or "overs" or "round" or "around" or "on")
        {
            words.At += 2;
            return true;
        }

        return words.Now.Text is "wrap" or "wind" or "put" or "bring" or "throw" or "lay" or "pass" ? words.Try(() => Wrap(words)) : BareOver(words);
    }

    /// <summary>'take up wool', 'catch the thread'.</summary>
    private static bool Catch(WordCursor words)
    {
        words.At++;
        words.TakeAny("up", "the");
        return words.Take("yarn", "wool", "thread", "cotton");
    }

    private static bool Wrap(WordCursor words)
    {
        bool alone = words.Now.Text is "wrap" or "wind";
        words.At++;
        words.Take("the");
        bool yarn = words.Take("yarn", "wool", "thread", "cotton", "hook");
        bool over = words.Take("over", "round", "around");
        words.TakeAny("the", "your");
        return words.Take("hook", "needle") ? yarn || over : alone && !words.Now.Is("index");
    }

    /// <summary>The old books' 'over, draw through 2 loops'.</summary>
    private static bool BareOver(WordCursor words)
    {
        if (!words.Now.Is("over")) return false;
        MotionWord then = words.Peek(1);
        if (then.Sort != WordSort.Mark && !(then.Text is "and" or "hook" or "needle" or "twice" or "draw" or "the") && !then.IsCount) return false;
        words.At++;
        return true;
    }

    /// <summary>'yarn over (yo)'.</summary>
    private static void Abbreviation(WordCursor words)
    {
        if (words.Now.Is("(") && words.Peek(1).Text is "yo" or "yoh" or "yrh" && words.Peek(2).Is(")")) words.At += 3;
    }
}
