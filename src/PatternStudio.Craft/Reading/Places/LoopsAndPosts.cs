using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Places;

/// <summary>Reads which loops of a stitch are taken, and whether the hook goes round its post.</summary>
internal static class LoopsAndPosts
{
    private static readonly Phrase BackLoop = new("in|through|into|under? the? back|blo|bl loop|only? only? of? the?");
    private static readonly Phrase FrontLoop = new("in|through|into|under? the? front|flo|fl loop|only? only? of? the?");
    private static readonly Phrase BothLoops = new("in|through|under? both loop of? the?");

    /// <summary>'in the back bump of the 2nd ch': a chain all the same.</summary>
    private static readonly Phrase BackBump = new("in|through|into|under the? back|bottom|rear bump|bumps|ridge|ridges|hump|humps only? of the?");
    private static readonly Phrase AroundFrontPost = new("around|rnd the? front post|stem of? the?");
    private static readonly Phrase AroundBackPost = new("around|rnd the? back post|stem of? the?");
    private static readonly Phrase AroundPost = new("around|rnd the? post|stem of? the?");

    private static readonly Phrase BackWords = new("in|through? the? back|blo|bl loop?");
    private static readonly Phrase FrontWords = new("in|through? the? front|flo|fl loop?");

    /// <summary>'in back loop of', 'BLO of', 'around post of' before the place itself.</summary>
    public static (LoopChoice Loop, PostChoice Post) TakeBefore(Cursor cursor)
    {
        if (IsLoop(cursor, BackWords) && cursor.Take(BackLoop)) return (LoopChoice.Back, PostChoice.None);
        if (IsLoop(cursor, FrontWords) && cursor.Take(FrontLoop)) return (LoopChoice.Front, PostChoice.None);
        if (TakeThird(cursor)) return (LoopChoice.Third, PostChoice.None);
        if (cursor.Take(BackBump)) return (LoopChoice.Both, PostChoice.None);
        if (cursor.Take(BothLoops)) return (LoopChoice.Both, PostChoice.None);
        if (cursor.Take(AroundFrontPost)) return (LoopChoice.Both, PostChoice.Front);
        if (cursor.Take(AroundBackPost)) return (LoopChoice.Both, PostChoice.Back);
        cursor.Take(AroundPost);
        return (LoopChoice.Both, PostChoice.None);
    }

    /// <summary>'in back loop only', 'BLO' after the place.</summary>
    public static LoopChoice TakeAfter(Cursor cursor)
    {
        if (IsLoop(cursor, BackWords) && cursor.Take(BackLoop)) return LoopChoice.Back;
        if (IsLoop(cursor, FrontWords) && cursor.Take(FrontLoop)) return LoopChoice.Front;
        return TakeThird(cursor) ? LoopChoice.Third : LoopChoice.Both;
    }

    /// <summary>'back' alone may be the back of the work: only with 'loop', or abbreviated, does it choose one.</summary>
    private static bool IsLoop(Cursor cursor, Phrase words)
    {
        int from = cursor.At;
        bool loop = cursor.Take(words) && cursor.Ahead(-1) is { Word: "loop" or "blo" or "flo" or "bl" or "fl" };
        cursor.At = from;
        return loop;
    }

    private static bool TakeThird(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Now.IsWord("in") || cursor.Now.IsWord("through")) cursor.At++;
        if (cursor.Now.IsWord("the")) cursor.At++;
        if (Numbers.TakeOrdinal(cursor) == 3 && cursor.TakeWord("loop"))
        {
            cursor.TakeWord("only");
            cursor.TakeWord("of");
            cursor.TakeWord("the");
            return true;
        }
        cursor.At = from;
        return false;
    }
}
