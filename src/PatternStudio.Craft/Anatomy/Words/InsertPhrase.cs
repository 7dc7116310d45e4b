namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>'insert hook in next st', 'insert in loop', 'hook in ring', 'inserting hook under both loops'.</summary>
internal static class InsertPhrase
{
    public static bool TryRead(WordCursor words, MotionComposer motions)
    {
        int start = words.At;
        bool inserts = words.Take("insert", "inserting");
        bool verb = inserts || words.Take("put", "push");
        if (verb) words.Take("the", "your");
        bool hook = words.Take("hook", "needle");
        bool placed = PlacePhrase.Begins(words);
        if (!(hook ? verb || placed : inserts && placed))
        {
            words.At = start;
            return false;
        }

        Place place = PlacePhrase.Read(words);
        motions.EnterPlace(place, words.Since(start));
        return true;
    }
}
