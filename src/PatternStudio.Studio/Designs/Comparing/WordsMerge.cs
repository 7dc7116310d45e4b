using DiffPlex;
using DiffPlex.Model;

namespace PatternStudio.Studio.Designs.Comparing;

/// <summary>Puts together what two have written from the same words.</summary>
/// <remarks>From two comparisons of DiffPlex. Its own merge of three texts (1.9.0) loses lines where the two changed neighbouring ones.</remarks>
public static class WordsMerge
{
    /// <summary>The words with what both have changed, line by line. Null where both changed the same lines, or added lines at the same place, each in another way: that only a person can decide.</summary>
    /// <param name="basis">The words that both began with.</param>
    public static string? Together(string basis, string theirs, string mine) =>
        Plain(basis.ReplaceLineEndings("\n"), theirs.ReplaceLineEndings("\n"), mine.ReplaceLineEndings("\n"));

    private static string? Plain(string basis, string theirs, string mine)
    {
        // Also what is left of words that were empty: they have no line to compare.
        if (theirs == basis || theirs == mine) return mine;
        if (mine == basis) return theirs;
        if (basis.Length == 0) return null;
        List<Change> changes = [.. Changes(basis, theirs).Union(Changes(basis, mine)).Order()];
        if (changes.Zip(changes.Skip(1)).Any(pair => pair.First.IsAtOddsWith(pair.Second))) return null;
        var lines = new List<string>(basis.Split('\n'));
        foreach (Change change in Enumerable.Reverse(changes))
        {
            lines.RemoveRange(change.Start, change.Count);
            lines.InsertRange(change.Start, change.Lines.Split('\n').Skip(1));
        }

        return string.Join('\n', lines);
    }

    private static IEnumerable<Change> Changes(string basis, string after)
    {
        DiffResult compared = Differ.Instance.CreateLineDiffs(basis, after, ignoreWhitespace: false);
        for (int i = 0; i < compared.DiffBlocks.Count; i++)
        {
            DiffBlock block = compared.DiffBlocks[i];
            int until = i + 1 < compared.DiffBlocks.Count ? compared.DiffBlocks[i + 1].DeleteStartA : compared.PiecesOld.Count;
            yield return Lowest(block, compared, until);
        }
    }

    /// <summary>Of some lines alike it can't be told which was added or removed: it is always taken to be the last, so that two who did the same are seen to.</summary>
    private static Change Lowest(DiffBlock block, DiffResult compared, int until)
    {
        var added = new List<string>(compared.PiecesNew.Skip(block.InsertStartB).Take(block.InsertCountB));
        int start = block.DeleteStartA;
        for (; block.InsertCountB == 0 && start + block.DeleteCountA < until && compared.PiecesOld[start] == compared.PiecesOld[start + block.DeleteCountA]; start++) ;
        for (; block.DeleteCountA == 0 && start < until && added[0] == compared.PiecesOld[start]; start++)
        {
            added.Add(added[0]);
            added.RemoveAt(0);
        }

        return new Change(start, block.DeleteCountA, string.Concat(added.Select(line => "\n" + line)), added.Count);
    }

    /// <summary>Lines that stand in the place of some of the words that both began with.</summary>
    /// <param name="Lines">Each with a line's end before it: two changes alike are equal.</param>
    private sealed record Change(int Start, int Count, string Lines, int LineCount) : IComparable<Change>
    {
        private int End => Start + Count;

        private int More => LineCount - Count;

        public int CompareTo(Change? other) => (Start, End).CompareTo((other!.Start, other.End));

        /// <summary>Whether both change the same lines; of two that only touch, whether both add or both remove lines: it may be the same place or the same lines.</summary>
        /// <param name="next">Begins no earlier.</param>
        public bool IsAtOddsWith(Change next) =>
            next.Start < End || (next.Start == Start && Count > 0 && next.Count > 0) || (next.Start == End && More * next.More > 0);
    }
}
