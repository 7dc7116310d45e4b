namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>'[…] 3 times', '(…) twice in same st', '*…* 3 times', and round brackets that hold a remark.</summary>
internal sealed class BracketPhrase(WordCursor words, MotionComposer motions, RepeatMarks marks)
{
    private readonly Stack<int> opened = new();

    public bool TryRead()
    {
        if (words.Now.Sort != WordSort.Mark) return false;
        switch (words.Now.Text)
        {
            case "(" when Remark():
                return true;
            case "(" or "[" or "{":
                motions.SettleWraps();
                opened.Push(motions.Count);
                words.At++;
                return true;
            case ")" or "]" or "}":
                return Close();
            case "*" or "**" or "†":
                return Star(words.Now.Text);
            default:
                return false;
        }
    }

    private bool Close()
    {
        int start = words.At;
        if (!opened.TryPop(out int from)) return false;
        marks.Bracket = from;
        words.At++;
        motions.SettleWraps();
        Times(from, start);
        return true;
    }

    /// <summary>The first star marks where a repeat begins; a second one with 'twice' after it closes it.</summary>
    private bool Star(string mark)
    {
        int start = words.At;
        motions.SettleWraps();
        words.At++;
        if (marks.Star(mark) is { } from && Times(from, start)) return true;
        marks.Set(mark, motions.Count);
        return true;
    }

    private bool Times(int from, int start)
    {
        TimesPhrase? times = TimesPhrase.Read(words);
        Place? place = null;
        int before = words.At;
        words.Take("all", ",");
        if (PlacePhrase.Begins(words)) place = PlacePhrase.Read(words);
        else words.At = before;
        int turns = times?.Count ?? place?.Count ?? 1;
        if (!motions.Repeat(from, Math.Max(0, turns - 1), place)) motions.LeaveUnread(words.Since(start));
        return times is not null;
    }

    /// <summary>'(counts as first dc)', '(ch made)', '(from front to back)': said in passing.</summary>
    private bool Remark()
    {
        int start = words.At;
        int close = 1;
        while (close < 12 && words.Peek(close).Text is not (")" or "")) close++;
        if (!words.Peek(close).Is(")") || !SaidInPassing(close)) return false;
        words.At = start + close + 1;
        return true;
    }

    private bool SaidInPassing(int close)
    {
        string first = words.Peek(1).Text;
        string last = words.Peek(close - 1).Text;
        if (first is "counts" or "count" or "does" or "do" or "note" or "note:" || last is "made" or "complete" or "completed" or "formed") return true;
        for (int i = 1; i < close; i++)
            if (!PlacePhrase.IsPlaceWord(words.Peek(i)) && !words.Peek(i).Is("and"))
                return false;
        return !StatedLoopsPhrase.Follows(words, 1) && StitchNames.Take(new WordCursor([words.Peek(1)]), Terms.Terminology.Us) is null && !words.Peek(1).IsCount;
    }
}
