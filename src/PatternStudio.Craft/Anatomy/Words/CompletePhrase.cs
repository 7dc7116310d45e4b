using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>'yo and complete the dc', 'complete as for tr', 'finish dc as usual'.</summary>
internal static class CompletePhrase
{
    public static bool TryRead(WordCursor words, MotionComposer motions, Terminology terminology)
    {
        int start = words.At;
        if (!words.Take("complete", "completing", "finish")) return false;
        words.TakeAny("st", "stitch", "it", "the", "a", "as", "for", "if", "you", "would", "like", "normal", "regular", "usual", "in");
        if (StitchNames.Take(words, terminology) is not { } stitch || PlainStitch.Find(stitch) is not { } plain)
        {
            words.At = start;
            return false;
        }

        words.TakeAny("as", "usual", "normal", "normally");
        foreach (Motion motion in plain.Finish()) motions.Draw(motion, words.Since(start));
        return true;
    }
}
