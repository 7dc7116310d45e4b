using PatternStudio.Craft.Reading.Counts;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>
/// Reads instructions that are understood but give no count (<c>Terms/uncounted.txt</c>): 'continue all around in same manner', 'skip about ¼ inch',
/// 'increasing 1 s c at the beginning and end of row'. Tried last of all.
/// </summary>
internal static class UncountedSteps
{
    private static readonly IReadOnlyList<(Phrase Words, UncountedReason Reason)> Phrases = [.. ReadPhrases()];

    private static readonly PhraseSet Words = new(Phrases.Select(phrase => phrase.Words));

    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (Words.IndexAt(cursor) is >= 0 and int index)
        {
            UncountedReason reason = Phrases[index].Reason;
            if (reason is UncountedReason.MakeMore) Clauses.TakeToStop(cursor);
            else Clauses.TakeClause(cursor);
            if (reason is UncountedReason.Shaping or UncountedReason.Rows) LeaveCount(cursor, from);
            steps.Add(new UncountedStep(cursor.Slice(from, cursor.At), reason, cursor.SpanFrom(from)));
            return true;
        }
        return false;
    }

    /// <summary>'Drop one shell on each side (20 shells)': how many there are then is a count like any other.</summary>
    private static void LeaveCount(Cursor cursor, int from)
    {
        int end = cursor.At;
        for (cursor.At = from + 1; cursor.At < end; cursor.At++)
            if (cursor.Kind == TokenKind.Open && cursor.Partner() == end - 1 && StatedCounts.Whole(cursor.Inside(end - 1), cursor.Context.Source) is not null) return;
        cursor.At = end;
    }

    private static IEnumerable<(Phrase, UncountedReason)> ReadPhrases()
    {
        foreach (string line in TermFiles.Lines("uncounted.txt").Where(line => line.Length > 0))
        {
            (string key, string values) = TermFiles.Split(line);
            UncountedReason reason = key switch
            {
                "likewise" => UncountedReason.Likewise,
                "measure" => UncountedReason.ByMeasure,
                "shaping" => UncountedReason.Shaping,
                "makemore" => UncountedReason.MakeMore,
                _ => UncountedReason.Rows,
            };
            foreach (string phrase in TermFiles.List(values)) yield return (new Phrase(phrase), reason);
        }
    }
}
