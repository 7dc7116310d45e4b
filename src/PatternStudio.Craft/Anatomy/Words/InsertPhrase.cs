namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>'insert hook in next st', 'insert in loop', 'hook in ring', 'inserting hook under both loops'.</summary>
internal static class InsertPhrase
{
    public static bool TryRead(WordCursor words, MotionComposer motions)
    {
        int start = words.At;
        bool verb = words.Take("insert", "inserting", "put", "push", "re");
        if (verb && words.Take("the", "your", "insert")) verb = true;
        bool hook = words.Take("hook", "needle");
        bool entered = hook ? verb || PlacePhrase.Begins(words) : verb && words.Peek(-1).Text.StartsWith("insert", StringComparison.Ordinal) && PlacePhrase.Begins(words);
        if (!entered)
        {
            words.At = start;
            return false;
        }

        Place place = PlacePhrase.Read(words);
        motions.EnterPlace(place, words.Since(start));
        return true;
    }
}
