using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Working;

/// <summary>The instruction of each row number told so far, as later rows refer to them.</summary>
internal sealed class RowsByNumber
{
    private readonly Dictionary<int, RowInstruction> single = [];
    private readonly List<(int First, int Last, RowInstruction[] Cycle)> stretches = [];

    public bool IsEmpty => single.Count == 0;

    /// <summary>The lowest number.</summary>
    public int Lowest => single.Keys.Min();

    /// <summary>The row of a number; null where none is told.</summary>
    public RowInstruction? this[int number]
    {
        get
        {
            if (single.TryGetValue(number, out RowInstruction? row)) return row;
            for (int i = stretches.Count - 1; i >= 0; i--)
                if (number >= stretches[i].First && number <= stretches[i].Last) return stretches[i].Cycle[(number - stretches[i].First) % stretches[i].Cycle.Length];
            return null;
        }
    }

    public void Set(int number, RowInstruction row) => single[number] = row;

    /// <summary>So many numbers behind <paramref name="last"/> stand for the last <paramref name="cycle"/> rows in turn.</summary>
    public void ComeRound(int last, int cycle, int rows)
    {
        RowInstruction[] repeated = [.. Enumerable.Range(last - cycle + 1, cycle).Select(number => this[number]!)];
        foreach (int older in single.Keys.Where(number => number > last && number <= last + rows).ToArray()) single.Remove(older);
        stretches.Add((last + 1, last + rows, repeated));
    }

    public void Clear()
    {
        single.Clear();
        stretches.Clear();
    }
}
