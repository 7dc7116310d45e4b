namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>'twice', '3 times', '2 more times', 'once more', 'x 3'.</summary>
/// <param name="Count">The number said.</param>
/// <param name="More">True where the words say 'more' or 'again'.</param>
internal readonly record struct TimesPhrase(int Count, bool More)
{
    public static TimesPhrase? Read(WordCursor words)
    {
        int start = words.At;
        bool bracketed = words.Take("(");
        int? count = Count1(words);
        if (count is { } number)
        {
            bool more = words.TakeAny("more", "again", "further");
            words.Take("times", "time");
            more |= words.TakeAny("more", "again");
            if (!bracketed || words.Take(")")) return new TimesPhrase(number, more);
        }

        words.At = start;
        return null;
    }

    private static int? Count1(WordCursor words)
    {
        if (words.Take("once")) return 1;
        if (words.Take("twice")) return 2;
        if (words.Take("thrice")) return 3;
        if (words.Now.Text is "x" or "×" && words.Peek(1).IsCount)
        {
            words.At++;
            return words.TakeCount();
        }

        bool counted = words.Now.IsCount
            && (words.Peek(1).Text is "times" or "time" or "x" or "×" || (words.Peek(1).Text is "more" or "further" && words.Peek(2).Text is "times" or "time"));
        if (!counted) return null;
        int? count = words.TakeCount();
        words.Take("x", "×");
        return count;
    }
}
