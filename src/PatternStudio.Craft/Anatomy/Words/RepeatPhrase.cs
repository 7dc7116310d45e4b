namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>'rep from * 2 more times', 'repeat from * once', 'rep between *s twice', 'repeat 2 more times', 'until there are 7 loops on hook'.</summary>
internal static class RepeatPhrase
{
    public static bool TryRead(WordCursor words, MotionComposer motions, RepeatMarks marks)
    {
        int start = words.At;
        if (TheSame(words, motions, marks) || ForEach(words, motions, marks)) return true;
        if (!words.Take("rep", "repeat", "repeating", "reps") || From(words, marks, motions.Count) is not { } from || More(words, motions, from) is not { } more)
        {
            words.At = start;
            return false;
        }

        Place? places = PlacePhrase.Begins(words) || words.Now.Is("all") ? PlacePhrase.Read(words) : null;
        if (!motions.Repeat(from, more, places)) motions.LeaveUnread(words.Since(start));
        return true;
    }

    /// <summary>'then the same 4 times more in the same st': the bracket just read.</summary>
    private static bool TheSame(WordCursor words, MotionComposer motions, RepeatMarks marks) => words.Try(() =>
    {
        if (!words.TakeAll("the", "same") || TimesPhrase.Read(words) is not { } times) return false;
        Place? places = PlacePhrase.Begins(words) ? PlacePhrase.Read(words) : null;
        return motions.Repeat(marks.Bracket, times.Count, places);
    });

    /// <summary>'*…; rep from * for each fsc': the passage tells the stitches after the first, which are like it.</summary>
    private static bool ForEach(WordCursor words, MotionComposer motions, RepeatMarks marks) => words.Try(() =>
    {
        if (!words.Take("rep", "repeat") || !words.Take("from") || !words.Take("*")) return false;
        if (marks.Star("*") is not { } star || star == 0) return false;
        if (!words.TakeAll("for", "each") && !words.TakeAll("across") && !words.TakeAll("for", "desired")) return false;
        while (!words.AtEnd && words.Now.Sort != WordSort.Mark) words.At++;
        motions.Forget(star);
        return true;
    });

    private static int? From(WordCursor words, RepeatMarks marks, int told)
    {
        words.TakeAny("from", "between", "the", "last", "first");
        string mark = words.Now.Text;
        if (mark is "*" or "**" or "†")
        {
            words.At++;
            words.TakeAny("s", "to", "and", "*", "**", "†");
            return marks.Star(mark);
        }

        words.TakeAny("beginning", "start", "these", "this", "steps", "step", "process", "that", "above", "beg", "sequence");
        // 'Repeat 4 more times.' as a sentence of its own: all that was told.
        return marks.Sentence == told ? 0 : marks.Sentence;
    }

    /// <summary>How many turns more: 'rep from *' says of itself that the first has been worked.</summary>
    private static int? More(WordCursor words, MotionComposer motions, int from)
    {
        bool paused = words.Take(",");
        if (words.Now.Text is "until" && UntilLoops(words) is { } loops) return motions.TurnsUntil(loops, from);
        return TimesPhrase.Read(words)?.Count ?? (paused || Nothing(words) ? 1 : null);
    }

    private static bool Nothing(WordCursor words) => words.AtEnd || words.Now.Sort == WordSort.Mark || words.Now.Is("and");

    private static int? UntilLoops(WordCursor words)
    {
        words.TakeAny("until", "you", "there", "are", "have", "a", "total", "of");
        int? loops = words.TakeCount();
        words.TakeAny("loops", "lps", "on", "the", "your", "hook", "remain", "needle");
        return loops;
    }
}

/// <summary>Where the marks of a definition stand, as numbers of motions before them.</summary>
internal sealed class RepeatMarks
{
    private readonly Dictionary<string, int> stars = new(StringComparer.Ordinal);

    /// <summary>Where the sentence began: a repeat without a star goes back there.</summary>
    public int Sentence { get; set; }

    /// <summary>Where the bracket closed last began.</summary>
    public int Bracket { get; set; }

    public int? Star(string mark) => stars.TryGetValue(mark, out int at) ? at : null;

    public void Set(string mark, int at) => stars[mark] = at;
}
