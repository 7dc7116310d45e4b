using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>Collects the cells of a row as it is worked, and keeps what repeats as runs.</summary>
internal sealed class RowBuilder
{
    /// <summary>Runs longer than this are not folded: no pattern's repeat is longer, and memory stays bounded.</summary>
    private const int LongestUnit = 4096;

    private readonly List<Run> entries = [];

    /// <summary>A place to come back to with <see cref="RollBack"/>.</summary>
    public int Mark => entries.Count;

    /// <summary>Number of entries that are kept; bounds the memory of a row.</summary>
    public int Entries => entries.Count;

    public bool IsEmpty => entries.Count == 0;

    public Cell? Last => entries.Count == 0 ? null : entries[^1].At(entries[^1].Length - 1);

    public void Add(Cell cell) => entries.Add(new Run([cell], 1, 0));

    public void Add(Run run) => entries.Add(run);

    public void RollBack(int mark) => entries.RemoveRange(mark, entries.Count - mark);

    /// <summary>Takes back what came after a mark, and hands it over.</summary>
    public List<Run> TakeBack(int mark)
    {
        List<Run> taken = entries.GetRange(mark, entries.Count - mark);
        RollBack(mark);
        return taken;
    }

    /// <summary>Takes back the last cell, which must stand alone.</summary>
    public void RemoveLast() => entries.RemoveAt(entries.Count - 1);

    /// <summary>
    /// Turns the entries since <paramref name="mark"/> into one run of <paramref name="times"/> turns more, the feet moving on by
    /// <paramref name="stride"/> each turn. False where they can't be folded.
    /// </summary>
    public bool TryRepeat(int mark, long times, int stride, int down)
    {
        long length = 0;
        for (int i = mark; i < entries.Count; i++) length += entries[i].Length;
        if (length is 0 or > LongestUnit) return false;
        var unit = new List<Cell>((int)length);
        for (int i = mark; i < entries.Count; i++)
            for (long k = 0; k < entries[i].Length; k++)
                unit.Add(entries[i].At(k));
        if (unit.Exists(cell => cell.Feet.Any(foot => foot.Row != down))) return false;
        RollBack(mark);
        entries.Add(new Run(unit.ToEquatableArray(), times + 1, stride));
        return true;
    }

    /// <summary>True where some cell fits.</summary>
    public bool Has(Func<Cell, bool> fits) => entries.Exists(entry => entry.Unit.Any(fits));

    /// <summary>Marks the cells since <paramref name="mark"/> as one group of a name.</summary>
    public void MarkGroup(int mark, StitchId? name)
    {
        long size = 0;
        for (int i = mark; i < entries.Count; i++) size += entries[i].Length;
        if (size is < 1 or > LongestUnit || size == 1 && name is null) return;
        int index = 0;
        List<Cell> cells = [];
        for (int i = mark; i < entries.Count; i++)
            for (long k = 0; k < entries[i].Length; k++)
                cells.Add(entries[i].At(k) with { Group = name, GroupIndex = index++, GroupSize = (int)size });
        RollBack(mark);
        entries.AddRange(cells.Select(cell => new Run([cell], 1, 0)));
    }

    /// <summary>The finished row: neighbours that stand alone become one run of one turn, or of many where they are alike.</summary>
    public EquatableArray<Run> Build()
    {
        var runs = new List<Run>();
        var alone = new List<Cell>();
        foreach (Run entry in entries)
        {
            if (entry.Times == 1 && entry.Unit.Count == 1)
            {
                alone.Add(entry.Unit[0]);
                continue;
            }
            Flush(alone, runs);
            runs.Add(entry);
        }
        Flush(alone, runs);
        return runs.ToEquatableArray();
    }

    private static void Flush(List<Cell> alone, List<Run> runs)
    {
        int start = 0;
        while (start < alone.Count)
        {
            int stride = 0, end = start + 1;
            while (end < alone.Count && Continues(alone, start, end, ref stride)) end++;
            if (end - start >= 4)
            {
                runs.Add(new Run([alone[start]], end - start, stride));
                start = end;
                continue;
            }
            int mixed = start;
            // Cells that differ from their neighbours share one run of a single turn.
            while (mixed < alone.Count && !StartsAlike(alone, mixed)) mixed++;
            if (mixed == start) mixed = end;
            runs.Add(new Run(alone.GetRange(start, mixed - start).ToEquatableArray(), 1, 0));
            start = mixed;
        }
        alone.Clear();
    }

    private static bool StartsAlike(List<Cell> cells, int start)
    {
        int stride = 0;
        for (int i = start + 1; i < start + 4; i++)
            if (i >= cells.Count || !Continues(cells, start, i, ref stride)) return false;
        return true;
    }

    /// <summary>True where the cell at <paramref name="next"/> is the one at <paramref name="first"/> moved on by an even stride.</summary>
    private static bool Continues(List<Cell> cells, int first, int next, ref int stride)
    {
        Cell a = cells[first], b = cells[next];
        if (!SameButFeet(a, b)) return false;
        if (a.Feet.Count != b.Feet.Count) return false;
        for (int f = 0; f < a.Feet.Count; f++)
        {
            long step = b.Feet[f].Place - a.Feet[f].Place;
            if (a.Feet[f] with { Place = 0 } != b.Feet[f] with { Place = 0 }) return false;
            if (next == first + 1 && f == 0) stride = (int)step;
            if (step != (long)stride * (next - first)) return false;
        }
        return true;
    }

    private static bool SameButFeet(Cell a, Cell b) =>
        a.Kind == b.Kind && a.Stitch == b.Stitch && a.Chains == b.Chains && a.Counts == b.Counts && a.Source == b.Source
        && a.Group == b.Group && a.GroupIndex == b.GroupIndex && a.GroupSize == b.GroupSize && a.Colour == b.Colour;
}
