namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>What follows 'draw up': 'a loop', 'a long loop in next st', 'a loop even with ch-3', 'a ½ inch loop'.</summary>
internal static class DrawUpPhrase
{
    public static bool Read(WordCursor words, MotionComposer motions, int start)
    {
        var height = new DrawnHeight(words);
        words.TakeAny("a", "the", "long", "loose", "tall", "another", "1", "one", "yarn", "each");
        bool measured = height.Read();
        words.TakeAny("loop", "lp", "loops", "lps", "yarn", "long");
        words.TakeAny("up", "through", "out", "long", "loosely");
        words.Take("onto");
        measured |= height.Read();
        Place? place = PlacePhrase.Begins(words) || (words.Peek(-1).Is("through") && PlacePhrase.IsPlaceWord(words.Now)) ? PlacePhrase.Read(words) : null;
        measured |= height.Read();
        return motions.HookIsIn || place is not null
            ? DrawUp(words, motions, start, place, height.Chains)
            : Lengthen(words, motions, start, measured);
    }

    private static bool DrawUp(WordCursor words, MotionComposer motions, int start, Place? place, int? chains)
    {
        motions.DrawUp(place, chains, words.Since(start));
        return true;
    }

    /// <summary>With the hook in no stitch a loop is not drawn up but out; that must be said by a length, or come first.</summary>
    private static bool Lengthen(WordCursor words, MotionComposer motions, int start, bool measured)
    {
        if (motions.HasWraps || !(measured || motions.Count == 0)) return false;
        motions.Put(new LengthenLoop(), words.Since(start));
        return true;
    }
}

/// <summary>Reads how high a loop is drawn: 'to ½"', 'even with ch-3', 'to height of row', 'about 2 cm long'.</summary>
internal sealed class DrawnHeight(WordCursor words)
{
    private static readonly HashSet<string> HeightWords = new(StringComparer.Ordinal)
    {
        "to", "with", "the", "a", "an", "of", "height", "high", "long", "tall", "ch", "chain", "tch", "turning", "row", "level", "same",
        "as", "dc", "hdc", "sc", "tr", "st", "stitch", "sts", "stitches", "previous", "prev", "beginning", "beg", "current", "desired",
        "rnd", "round", "fourth", "half", "quarter", "third", "edge", "top", "working", "last", "first",
    };

    /// <summary>The height in chains where the words give it so.</summary>
    public int? Chains { get; private set; }

    public bool Read()
    {
        int start = words.At;
        while (Opens() || (words.At > start && Goes()))
        {
            if (words.Now.Is("ch") && words.Peek(1).IsCount) Chains = words.Peek(1).Number;
            words.At++;
        }

        return words.At > start;
    }

    private bool Opens() =>
        words.Now.Text is "even" or "level" or "measuring" or "about" or "approximately" or "approx" or "loosely" or "high" or "long"
        || (words.Now.Is("to") && BeginsHeight(words.Peek(1)))
        || (words.Now.Is("to") && (words.Peek(1).Sort == WordSort.Fraction || (words.Peek(1).IsCount && IsUnit(words.Peek(2)))))
        || words.Now.Sort == WordSort.Fraction
        || (words.Now.IsCount && (IsUnit(words.Peek(1)) || words.Peek(1).Sort == WordSort.Fraction))
        || (words.Now.Is("one") && words.Peek(1).Text is "fourth" or "half" or "quarter");

    private static bool BeginsHeight(MotionWord word) =>
        word.Text is "height" or "the" or "about" or "approximately" or "approx" or "a" or "same" or "measure" or "desired" or "current" or "row" or "match";

    private bool Goes() =>
        HeightWords.Contains(words.Now.Text)
        || IsUnit(words.Now)
        || words.Now.Sort == WordSort.Fraction
        || words.Now.Text is "match" or "approx" or "approximately" or "about"
        || (words.Now.Is(".") && words.Peek(-1).Is("approx"))
        || (words.Now.IsCount && IsUnit(words.Peek(1)))
        || (words.Now.IsCount && words.Peek(-1).Text is "ch" or "chain")
        || (words.Now.Is("(") && words.Peek(1).Number is not null | words.Peek(1).Sort == WordSort.Fraction && IsUnit(words.Peek(2)))
        || (words.Now.Is(")") && IsUnit(words.Peek(-1)));

    private static bool IsUnit(MotionWord word) => word.Text is "inch" or "inches" or "in" or "cm" or "mm" or "\"" or "″" or "”";
}
