using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>'5 dc in same st'; with 'keeping last loop of each on hook' or 'until 2 loops remain' the stitches stay open.</summary>
internal static class NamedStitchPhrase
{
    public static bool TryRead(WordCursor words, MotionComposer motions, Terminology terminology)
    {
        int start = words.At;
        words.TakeAny("work", "working", "make", "a");
        int count = words.TakeCount() ?? 1;
        words.Take("more", "complete", "unfinished", "incomplete");
        bool open = words.Peek(-1).Text is "unfinished" or "incomplete";
        if (StitchNames.Take(words, terminology) is not { } stitch)
        {
            words.At = start;
            return false;
        }

        Place place = PlacePhrase.Begins(words) ? PlacePhrase.Read(words) : Place.Here;
        var span = words.Since(start);
        open |= KeepLastLoopPhrase.Unfinished(words) || KeepLastLoopPhrase.Follows(words, terminology) || motions.KeepsLastLoop;
        if (!open && motions.Loops > 1) return Doubtful(words, motions, start);
        if (!open || PlainStitch.Find(stitch) is not { } plain) motions.Put(new WholeStitch(stitch, count * Math.Max(1, place.Count)), span);
        else PutOpen(motions, plain, count, place, span);
        return true;
    }

    /// <summary>A whole stitch while the hook holds more than its one loop: whether it takes the others in, the words don't say.</summary>
    private static bool Doubtful(WordCursor words, MotionComposer motions, int start)
    {
        motions.LeaveUnread(words.Since(start));
        return true;
    }

    /// <summary>One leg for each stitch; a place of its own for each of 'next 3 sts'.</summary>
    private static void PutOpen(MotionComposer motions, PlainStitch plain, int count, Place place, Text.TextSpan span)
    {
        for (int at = 0; at < place.Count && !motions.IsFull; at++)
            for (int i = 0; i < count && !motions.IsFull; i++)
                motions.Put(plain.OpenLeg(i == 0 && place.IsNext), span);
    }
}
