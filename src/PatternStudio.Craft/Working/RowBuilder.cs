using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>Collects the cells of a row as it is worked, and keeps what repeats as runs.</summary>
/// <param name="expected">How many entries it is likely to have.</param>
internal sealed class RowBuilder(int expected = 0)
{
    /// <summary>Runs longer than this are not folded: no pattern's repeat is longer, and memory stays bounded.</summary>
    private const int LongestUnit = 4096;

    private readonly List<Entry> entries = new(expected);

    /// <summary>A single cell, or a run of many.</summary>
    public readonly record struct Entry(Cell? Cell, Run? Run)
    {
        public long Length => Run?.Length ?? 1;

        public Cell At(long index) => Cell ?? Run!.At(index);
    }

    /// <summary>A place to come back to with <see cref="RollBack"/>.</summary>
    public int Mark => entries.Count;

    /// <summary>Number of entries that are kept; bounds the memory of a row.</summary>
    public int Entries => entries.Count;

    /// <summary>Number of cells in all turns.</summary>
    public long Cells => entries.Sum(entry => entry.Length);

    public bool IsEmpty => entries.Count == 0;

    public Cell? Last => entries.Count == 0 ? null : entries[^1].At(entries[^1].Length - 1);

    /// <summary>The last cell but one; null where there is none.</summary>
    public Cell? BeforeLast =>
        entries.Count == 0 ? null
        : entries[^1].Length > 1 ? entries[^1].At(entries[^1].Length - 2)
        : entries.Count < 2 ? null : entries[^2].At(entries[^2].Length - 1);

    /// <summary>The first cell that is no slip stitch to move there, and no chain that only climbs; null where there is none.</summary>
    public Cell? FirstWorked => entries.Select(entry => entry.At(0)).FirstOrDefault(cell => !OnlyMoves(cell));

    /// <summary>The place of that cell in the row.</summary>
    public long PlaceOfFirstWorked => entries.TakeWhile(entry => OnlyMoves(entry.At(0))).Sum(entry => entry.Length);

    private static bool OnlyMoves(Cell cell) => cell is { Kind: CellKind.Join } or { Kind: CellKind.TurningChain, Counts: false };

    /// <summary>What the row's first stitch stands in; null where it has none, or begins with a loop of chains.</summary>
    public Foot? FirstFoot
    {
        get
        {
            Foot? foot = null;
            foreach (Entry entry in entries)
            {
                Cell cell = entry.At(0);
                if (cell.Kind != CellKind.Join) return cell.Feet.IsEmpty ? foot : cell.Feet[0];
                foot = cell.Feet.IsEmpty ? foot : cell.Feet[0];
            }
            return foot;
        }
    }

    /// <summary>The row's first loop of chains, and its place in the row; null where it has none.</summary>
    public (Cell Cell, long Place)? FirstChains
    {
        get
        {
            long place = 0;
            foreach (Entry entry in entries)
            {
                for (long i = 0; i < (entry.Run?.Unit.Count ?? 1); i++)
                    if (entry.At(i) is { Kind: CellKind.Chains } chains) return (chains, place + i);
                place += entry.Length;
            }
            return null;
        }
    }

    /// <summary>True where the row has come to a picot in a loop of chains: chains made now go on with that loop.</summary>
    public bool IsInPicotLoop
    {
        get
        {
            bool picot = false;
            for (int i = entries.Count - 1; i >= 0; i--)
            {
                for (long k = (entries[i].Run?.Unit.Count ?? 1) - 1; k >= 0; k--)
                {
                    CellKind kind = entries[i].At(k).Kind;
                    if (kind != CellKind.Picot) return picot && kind == CellKind.Chains;
                    picot = true;
                }
            }
            return false;
        }
    }

    public void Add(Cell cell) => entries.Add(new Entry(cell, null));

    public void Add(Run run) => entries.Add(run.Length == 1 ? new Entry(run.Unit[0], null) : new Entry(null, run));

    public void RollBack(int mark) => entries.RemoveRange(mark, entries.Count - mark);

    /// <summary>Takes back what came after a mark, and hands it over.</summary>
    public List<Entry> TakeBack(int mark)
    {
        List<Entry> taken = entries.GetRange(mark, entries.Count - mark);
        RollBack(mark);
        return taken;
    }

    /// <summary>Puts back what was taken.</summary>
    public void PutBack(List<Entry> taken) => entries.AddRange(taken);

    /// <summary>Takes back the last cell.</summary>
    public void RemoveLast()
    {
        Run? run = entries[^1].Run;
        entries.RemoveAt(entries.Count - 1);
        if (run is null) return;
        if (run.Times > 1) Add(run with { Times = run.Times - 1 });
        for (long i = run.Length - run.Unit.Count; i < run.Length - 1; i++) Add(run.At(i));
    }

    /// <summary>
    /// True where the entries since <paramref name="mark"/> are those from <paramref name="before"/> to <paramref name="mark"/> once more, the
    /// feet moved on by <paramref name="stride"/> in the row that lies <paramref name="down"/> below: one turn did what the turn before it did.
    /// </summary>
    public bool DidTheSame(int before, int mark, int stride, int down)
    {
        if (entries.Count - mark != mark - before) return false;
        for (int i = mark; i < entries.Count; i++)
            if (!RunFolding.IsMoved(entries[before + i - mark], entries[i], stride, down)) return false;
        return true;
    }

    /// <summary>True where the entries since <paramref name="mark"/> are some, and few enough to be folded.</summary>
    public bool CanRepeat(int mark) => LengthSince(mark) is > 0 and <= LongestUnit;

    /// <summary>
    /// Turns the entries since <paramref name="mark"/> into one run of <paramref name="times"/> turns more, the feet moving on by
    /// <paramref name="stride"/> each turn.
    /// </summary>
    public void Repeat(int mark, long times, int stride)
    {
        List<Cell> unit = CellsSince(mark, (int)LengthSince(mark));
        RollBack(mark);
        entries.Add(new Entry(null, new Run(unit.ToEquatableArray(), times + 1, stride)));
    }

    private long LengthSince(int mark)
    {
        long length = 0;
        for (int i = mark; i < entries.Count && length <= LongestUnit; i++) length += entries[i].Length;
        return length;
    }

    /// <summary>True where some cell fits.</summary>
    public bool Has(Func<Cell, bool> fits) => entries.Exists(entry => entry.Cell is { } cell ? fits(cell) : entry.Run!.Unit.Any(fits));

    /// <summary>Marks the cells since <paramref name="mark"/> as one group of a name.</summary>
    public void MarkGroup(int mark, StitchId? name)
    {
        long size = LengthSince(mark);
        if (size is < 1 or > LongestUnit || size == 1 && name is null) return;
        List<Cell> cells = CellsSince(mark, (int)size);
        RollBack(mark);
        for (int i = 0; i < cells.Count; i++) Add(cells[i] with { Group = name ?? cells[i].Group, GroupIndex = i, GroupSize = (int)size });
    }

    /// <summary>'Ch 3, dc, ch 3, 2 dc in same space, * ch 7, shell in next shell': the first shell is one of them, begun with the chain.</summary>
    public void NameOpening()
    {
        int first = entries.FindIndex(entry => entry.At(0).Kind != CellKind.Join);
        if (first < 0 || entries[first].Cell is not { Kind: CellKind.TurningChain, Counts: true, Group: null }) return;
        List<Cell> beginning = [.. entries.Skip(first).Take(LongestOpening).SelectMany(entry => entry.Run is { } run ? run.Unit : (IEnumerable<Cell>)[entry.Cell!]).Take(LongestOpening)];
        int named = beginning.FindIndex(cell => cell is { Group: not null, GroupIndex: 0, GroupSize: > 1 });
        // 'Ch 3, dc in same sp, 2 dc in each sp around': pairs without a name, so it is the place that tells.
        bool nameless = named < 0;
        if (nameless) named = beginning.FindIndex(cell => cell is { GroupIndex: 0, GroupSize: > 1 });
        if (named < 2 || beginning[named].GroupSize is var size && (named < size || beginning.Count < named + size || entries.Count < first + size)) return;
        for (int i = 0; i < size; i++)
            if (entries[first + i].Cell is not { } cell || !LooksLike(cell, beginning[named + i]) || nameless && !StandsWith(cell, beginning[0])) return;
        for (int i = 0; i < size; i++)
            entries[first + i] = new Entry(entries[first + i].Cell! with { Group = beginning[named].Group, GroupIndex = i, GroupSize = size }, null);
    }

    /// <summary>Cells in which the first group of a row is looked for.</summary>
    private const int LongestOpening = 64;

    private static bool LooksLike(Cell opening, Cell member) =>
        opening.Stitch == member.Stitch && (opening.Kind == member.Kind && opening.Chains == member.Chains || opening.Kind == CellKind.TurningChain && member.Kind == CellKind.Stitch);

    private static bool StandsWith(Cell member, Cell opening) =>
        member.Feet is [var foot, ..] ? opening.Feet is [var first, ..] && (foot.Row, foot.Place) == (first.Row, first.Place) : member.Kind == CellKind.Chains;

    /// <summary>The finished row, as few runs as it comes to.</summary>
    public EquatableArray<Run> Build() => new RunFolding(entries).Fold();

    private List<Cell> CellsSince(int mark, int length)
    {
        var cells = new List<Cell>(length);
        for (int i = mark; i < entries.Count; i++)
            for (long k = 0; k < entries[i].Length; k++)
                cells.Add(entries[i].At(k));
        return cells;
    }
}
