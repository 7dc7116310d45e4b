namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>Where the hook goes, as far as motions care: into a new place, the same, or several in turn.</summary>
/// <param name="IsNext">'next', 'following': a place of its own.</param>
/// <param name="IsSame">'same'.</param>
/// <param name="Count">4 for 'next 4 sts'; else 1.</param>
/// <param name="IsEach">'each of next 4 sts': one after the other.</param>
internal readonly record struct Place(bool IsNext, bool IsSame, int Count, bool IsEach)
{
    public static readonly Place Here = new(false, false, 1, false);
}

/// <summary>Reads the words of a place: 'in next st', 'under both loops of same st', 'from front to back around post of dc indicated'.</summary>
internal static class PlacePhrase
{
    private static readonly HashSet<string> Openers = new(StringComparer.Ordinal)
    {
        "in", "into", "through", "under", "around", "round", "over", "across", "from", "behind", "between", "at", "down",
    };

    private static readonly HashSet<string> Words = new(StringComparer.Ordinal)
    {
        "in", "into", "through", "under", "around", "round", "across", "from", "behind", "between", "to", "of", "the", "a", "an", "each",
        "any", "all", "both", "next", "same", "following", "foll", "previous", "prev", "last", "beginning", "beg", "st", "sts", "stitch",
        "stitches", "sp", "sps", "space", "spaces", "ch", "chain", "chains", "tch", "loop", "loops", "lp", "lps", "ring", "post", "posts",
        "top", "tops", "bottom", "foot", "base", "leg", "legs", "strand", "strands", "bar", "bars", "horizontal", "vertical", "diagonal",
        "front", "back", "only", "side", "right", "left", "wrong", "corner", "center", "centre", "middle", "row", "rows", "rounds", "rnd",
        "below", "above", "again", "indicated", "designated", "specified", "desired", "required", "given", "skipped", "unworked", "free",
        "made", "worked", "just", "or", "st's", "place", "it", "that", "this", "these", "where", "you", "down", "thread", "threads", "flo",
        "blo", "third", "hump", "bump", "motif", "petal", "group", "cluster", "shell", "puff", "bobble", "popcorn", "sc", "dc", "hdc", "tr",
        "dtr", "trtr", "htr", "ttr", "s", "d", "c", "single", "double", "half", "treble", "triple", "crochet", "doubles", "slip", "knot",
        "edge", "outside", "inside", "loose", "part", "turning", "foundation", "upper", "lower", "outer", "inner", "picot", "mesh", "2nd",
        "pattern", "opposite", "way", "long", "as",
    };

    public static bool Begins(WordCursor words) => Openers.Contains(words.Now.Text) && (!words.Now.Is("over") || IsPlaceWord(words.Peek(1)));

    public static bool IsPlaceWord(MotionWord word) => Words.Contains(word.Text) || word.Sort == WordSort.Ordinal || word.IsCount;

    /// <summary>Reads as many words as tell a place; none is a place too: 'insert hook, yo'.</summary>
    public static Place Read(WordCursor words)
    {
        bool next = false, same = false;
        bool each = false;
        int count = 1;
        int start = words.At;
        while (Continues(words, words.At == start))
        {
            MotionWord word = words.Now;
            next |= word.Text is "next" or "following" or "foll";
            same |= word.Is("same");
            each |= word.Is("each");
            if (IsCountOfPlaces(words)) count = word.Number!.Value;
            words.At++;
        }

        return new Place(next && !same, same, count, each);
    }

    private static bool Continues(WordCursor words, bool opens)
    {
        MotionWord word = words.Now;
        if (word.Is("hook")) return words.Peek(-1).Is("from");
        if (word.Is("over")) return opens || words.Peek(1).Text is "next" or "same" or "the" or "first" or "each" or "post";
        if (word.Is("on")) return IsOnThePlace(words);
        if (word.Is("and")) return Openers.Contains(words.Peek(1).Text) || words.Peek(1).Text is "to" or "out" or "up" or "back";
        if (word.Text is "out" or "up") return words.Peek(-1).Is("and");
        if (word.IsCount) return !StatedLoopsPhrase.Follows(words, 0);
        return IsPlaceWord(word);
    }

    /// <summary>'on previous row', 'on the right side': but not 'on hook'.</summary>
    private static bool IsOnThePlace(WordCursor words) =>
        words.Peek(1).Text is "previous" or "prev" or "row" or "last" or "right" or "wrong" or "top"
        || (words.Peek(1).Is("the") && !(words.Peek(2).Text is "hook" or "needle"));

    /// <summary>'next 2 sts', 'each of 4 sts': but not 'ch-1 sp', nor '2 rows below'.</summary>
    private static bool IsCountOfPlaces(WordCursor words) =>
        words.Now.IsCount
        && (words.Peek(-1).Text is "next" or "following" or "foll" || (words.Peek(-1).Is("of") && words.Peek(-2).Is("each")))
        && !words.Peek(1).Text.StartsWith("row", StringComparison.Ordinal);
}
