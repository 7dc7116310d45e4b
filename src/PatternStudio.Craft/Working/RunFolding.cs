using System.Runtime.InteropServices;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>
/// Folds a row's entries into runs, each as long as it can be: what lies before a repeat and after it is taken in where it goes on
/// in the same way. Rows that are alike then have equal runs, however their repeats happened to begin and end.
/// </summary>
internal sealed class RunFolding(List<RowBuilder.Entry> entries)
{
    private readonly List<Run> runs = [];
    private readonly List<Cell> alone = [];
    private int next;

    public EquatableArray<Run> Fold()
    {
        // The chain that begins a row is met otherwise than its like further on: patterns call it by either length.
        if (entries.Count > 0 && entries[0].Cell is { Kind: CellKind.Chains or CellKind.TurningChain } opening)
        {
            runs.Add(new Run([opening], 1, 0));
            next = 1;
        }
        while (next < entries.Count)
        {
            (Cell? cell, Run? run) = entries[next++];
            if (cell is not null) alone.Add(cell);
            else if (run!.Times == 1) alone.AddRange(run.Unit);
            else Stretch(Primitive(run));
        }
        Flush();
        return runs.ToEquatableArray();
    }

    /// <summary>True where an entry is another with the feet moved on; feet elsewhere than in the row below keep it from being so.</summary>
    public static bool IsMoved(RowBuilder.Entry from, RowBuilder.Entry to, int stride, int down)
    {
        if (from.Cell is { } cell) return to.Cell is { } moved && IsMoved(cell, moved, stride) && StandsIn(cell, down);
        if (to.Run is not { } run || from.Run!.Times != run.Times || from.Run.Stride != run.Stride || from.Run.Unit.Count != run.Unit.Count) return false;
        for (int i = 0; i < run.Unit.Count; i++)
            if (!IsMoved(from.Run.Unit[i], run.Unit[i], stride) || !StandsIn(run.Unit[i], down)) return false;
        return true;
    }

    private static bool StandsIn(Cell cell, int down)
    {
        foreach (Foot foot in cell.Feet.Span)
            if (foot.Row != down) return false;
        return true;
    }

    private static bool IsMoved(Cell from, Cell to, long by)
    {
        if (!SameButFeet(from, to) || from.Feet.Count != to.Feet.Count) return false;
        for (int f = 0; f < from.Feet.Count; f++)
            if (from.Feet[f] with { Place = from.Feet[f].Place + by } != to.Feet[f]) return false;
        return true;
    }

    private static bool SameButFeet(Cell a, Cell b) =>
        a.Kind == b.Kind && a.Stitch == b.Stitch && a.Chains == b.Chains && a.Counts == b.Counts && a.Source == b.Source
        && a.Group == b.Group && a.GroupIndex == b.GroupIndex && a.GroupSize == b.GroupSize && a.Colour == b.Colour && a.GoesOn == b.GoesOn;

    /// <summary>'sc in next 4 sts' a hundred times is one sc four hundred times.</summary>
    private static Run Primitive(Run run)
    {
        int size = run.Unit.Count;
        for (int part = 1; part <= size / 2; part++)
            if (size % part == 0 && run.Stride % (size / part) == 0 && Repeats(run, part, run.Stride / (size / part)))
                return new Run(run.Unit.Take(part).ToEquatableArray(), run.Times * (size / part), run.Stride / (size / part));
        return run;
    }

    private static bool Repeats(Run run, int part, int stride)
    {
        for (int i = part; i < run.Unit.Count; i++)
            if (!IsMoved(run.Unit[i - part], run.Unit[i], stride)) return false;
        return true;
    }

    /// <summary>Adds a run together with the cells around it that go on in the same way.</summary>
    private void Stretch(Run run)
    {
        int before = 0;
        while (before < alone.Count && IsAt(run, -1 - before, alone[alone.Count - 1 - before])) before++;
        alone.RemoveRange(alone.Count - before, before);
        Flush();
        long length = run.Length;
        while (next < entries.Count && GoesOn(run, length, entries[next])) length += entries[next++].Length;
        int size = run.Unit.Count;
        run = new Run([.. Enumerable.Range(-before, size).Select(i => At(run, i))], (length + before) / size, run.Stride);
        runs.Add(run);
        for (long i = run.Length; i < length + before; i++) alone.Add(At(run, i));
    }

    private static bool GoesOn(Run run, long index, RowBuilder.Entry entry)
    {
        if (entry.Cell is { } cell) return IsAt(run, index, cell);
        Run other = entry.Run!;
        if (other.Times > 1) other = Primitive(other);
        bool alike = other.Times == 1 || other.Unit.Count == run.Unit.Count && other.Stride == run.Stride;
        for (int i = 0; alike && i < other.Unit.Count; i++) alike = IsAt(run, index + i, other.Unit[i]);
        return alike;
    }

    /// <summary>The cell at an index of a run that would go on before its start and behind its end.</summary>
    private static Cell At(Run run, long index)
    {
        (long turn, int part) = Split(run, index);
        return Moved(run.Unit[part], turn * run.Stride);
    }

    private static bool IsAt(Run run, long index, Cell cell)
    {
        (long turn, int part) = Split(run, index);
        return IsMoved(run.Unit[part], cell, turn * run.Stride);
    }

    private static (long Turn, int Part) Split(Run run, long index)
    {
        (long turn, long part) = Math.DivRem(index, run.Unit.Count);
        return part < 0 ? (turn - 1, (int)part + run.Unit.Count) : (turn, (int)part);
    }

    private static Cell Moved(Cell cell, long by) =>
        cell.Feet.IsEmpty || by == 0 ? cell : cell with { Feet = cell.Feet.Select(foot => foot with { Place = foot.Place + by }).ToEquatableArray() };

    /// <summary>Cells outside repeats: four or more alike are a run, the others between share one of a single turn.</summary>
    private void Flush()
    {
        int mixed = 0;
        for (int start = 0; start < alone.Count;)
        {
            int alike = Alike(start);
            if (alike < 4)
            {
                start++;
                continue;
            }
            AddMixed(mixed, start);
            runs.Add(new Run([alone[start]], alike, Stride(start)));
            mixed = start += alike;
        }
        AddMixed(mixed, alone.Count);
        alone.Clear();
    }

    private void AddMixed(int from, int to)
    {
        if (to > from) runs.Add(new Run(EquatableArray.Create<Cell>(CollectionsMarshal.AsSpan(alone)[from..to]), 1, 0));
    }

    /// <summary>How many cells from here on are the same with the feet moving evenly.</summary>
    private int Alike(int start)
    {
        int end = start + 1, stride = Stride(start);
        while (end < alone.Count && IsMoved(alone[end - 1], alone[end], stride)) end++;
        return end - start;
    }

    private int Stride(int start) =>
        start + 1 < alone.Count && !alone[start].Feet.IsEmpty && !alone[start + 1].Feet.IsEmpty
            ? (int)(alone[start + 1].Feet[0].Place - alone[start].Feet[0].Place)
            : 0;
}
