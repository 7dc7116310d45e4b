namespace PatternStudio.Craft.Working;

/// <summary>
/// The row below as the hook meets it: turned work meets it backwards, a round may start anywhere and goes once around.
/// Indices here count cells in that order, from 0; nothing is unrolled.
/// </summary>
internal sealed class Course
{
    private readonly List<Segment> segments = [];
    private readonly bool turned;
    private readonly long rotation;

    private readonly record struct Segment(Cell[] Unit, long Times, long Start)
    {
        public long Length => Unit.Length * Times;

        public long End => Start + Length;
    }

    /// <param name="row">The row that is worked into.</param>
    /// <param name="rowIndex">Its index in the piece.</param>
    /// <param name="turned">True where the work was turned.</param>
    /// <param name="start">The first cell met, as an index in meeting order; cells before it are met last.</param>
    public Course(WorkedRow row, int rowIndex, bool turned, long start = 0)
    {
        (Row, RowIndex, this.turned) = (row, rowIndex, turned);
        IEnumerable<Run> runs = turned ? row.Runs.Reverse() : row.Runs;
        foreach (Run run in runs)
            Add(turned ? [.. run.Unit.Reverse()] : [.. run.Unit], run.Times);
        rotation = Length == 0 ? 0 : start % Length;
        if (rotation > 0) Rotate(rotation);
    }

    public WorkedRow Row { get; }

    public int RowIndex { get; }

    public long Length { get; private set; }

    public bool Turned => turned;

    /// <summary>The same row met from another cell on.</summary>
    public Course StartingAt(long index) => new(Row, RowIndex, turned, (rotation + index) % Math.Max(1, Length));

    /// <summary>The cell met at an index; its feet may be those of an earlier turn of its run.</summary>
    public Cell At(long index)
    {
        Segment segment = segments[SegmentAt(index)];
        return segment.Unit[(int)((index - segment.Start) % segment.Unit.Length)];
    }

    /// <summary>The index of that cell in the row, in the order the row was worked.</summary>
    public long PlaceOf(long index)
    {
        long met = (index + rotation) % Length;
        return turned ? Length - 1 - met : met;
    }

    /// <summary>The index at which a cell of the row is met.</summary>
    public long IndexOf(long place)
    {
        long met = turned ? Length - 1 - place : place;
        return (met - rotation + Length) % Length;
    }

    /// <summary>The first index from <paramref name="from"/> and before <paramref name="to"/> whose cell fits, or -1.</summary>
    public long Find(long from, Func<Cell, long, bool> fits, long to = long.MaxValue) => Find(from, new Fits(fits), to);

    /// <summary>The first index from <paramref name="from"/> and before <paramref name="to"/> whose cell offers what is asked for, or -1.</summary>
    public long Find<TQuestion>(long from, TQuestion asked, long to = long.MaxValue)
        where TQuestion : struct, ICellQuestion
    {
        if (from >= Length) return -1;
        for (int s = SegmentAt(from); s < segments.Count && segments[s].Start < to; s++)
        {
            Segment segment = segments[s];
            long start = Math.Max(from, segment.Start);
            long end = Math.Min(Math.Min(segment.End, to), start + segment.Unit.Length);
            for (long i = start; i < end; i++)
                if (asked.Of(segment.Unit[(int)((i - segment.Start) % segment.Unit.Length)], i) > 0) return i;
        }
        return -1;
    }

    /// <summary>The last index whose cell fits, or -1.</summary>
    public long FindLast(Func<Cell, long, bool> fits)
    {
        for (int s = segments.Count - 1; s >= 0; s--)
        {
            Segment segment = segments[s];
            for (long i = segment.End - 1; i >= Math.Max(segment.Start, segment.End - segment.Unit.Length); i--)
                if (fits(segment.Unit[(int)((i - segment.Start) % segment.Unit.Length)], i)) return i;
        }
        return -1;
    }

    /// <summary>The sum of <paramref name="weigh"/> over the cells from one index up to, not including, another.</summary>
    public long Sum(long from, long to, Func<Cell, long, long> weigh) => Sum(from, to, new Weighs(weigh));

    /// <summary>How much of what is asked for lies between one index and, not included, another.</summary>
    public long Sum<TQuestion>(long from, long to, TQuestion asked)
        where TQuestion : struct, ICellQuestion
    {
        long sum = 0;
        if (from >= to) return 0;
        for (int s = SegmentAt(from); s < segments.Count && segments[s].Start < to; s++)
        {
            Segment segment = segments[s];
            long start = Math.Max(from, segment.Start), end = Math.Min(to, segment.End);
            long whole = (end - start) / segment.Unit.Length;
            if (whole > 1)
            {
                long unit = 0;
                for (long i = start; i < start + segment.Unit.Length; i++) unit += Weigh(segment, i, asked);
                sum += unit * whole;
                start += whole * segment.Unit.Length;
            }
            for (long i = start; i < end; i++) sum += Weigh(segment, i, asked);
        }
        return sum;
    }

    /// <summary>Where an index stands in its run: equal phases meet equal cells until the run ends.</summary>
    public (int Segment, long Phase) PhaseAt(long index)
    {
        if (index >= Length) return (segments.Count, 0);
        int s = SegmentAt(index);
        return (s, (index - segments[s].Start) % segments[s].Unit.Length);
    }

    /// <summary>The index just after the run that holds <paramref name="index"/>.</summary>
    public long RunEnd(long index) => index >= Length ? Length : segments[SegmentAt(index)].End;

    private static long Weigh<TQuestion>(in Segment segment, long index, TQuestion asked)
        where TQuestion : struct, ICellQuestion =>
        asked.Of(segment.Unit[(int)((index - segment.Start) % segment.Unit.Length)], index);

    private void Add(Cell[] unit, long times)
    {
        if (times == 0 || unit.Length == 0) return;
        segments.Add(new Segment(unit, times, Length));
        Length += unit.Length * times;
    }

    private void Rotate(long by)
    {
        Segment[] before = [.. segments];
        segments.Clear();
        Length = 0;
        foreach (Segment segment in before) AddPart(segment, by, long.MaxValue);
        foreach (Segment segment in before) AddPart(segment, 0, by);
    }

    /// <summary>Adds what of a run lies between two indices; a cut turn becomes a run of its own.</summary>
    private void AddPart(Segment segment, long from, long to)
    {
        long start = Math.Max(from, segment.Start) - segment.Start, end = Math.Min(to, segment.End) - segment.Start;
        int size = segment.Unit.Length;
        if (start >= end) return;
        if (start % size != 0)
        {
            long cut = Math.Min(end, (start / size + 1) * size);
            Add(segment.Unit[(int)(start % size)..(int)(cut - start / size * size)], 1);
            start = cut;
        }
        Add(segment.Unit, (end - start) / size);
        int rest = (int)((end - start) % size);
        if (rest > 0) Add(segment.Unit[..rest], 1);
    }

    private int SegmentAt(long index)
    {
        int low = 0, high = segments.Count - 1;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (index < segments[middle].End) high = middle;
            else low = middle + 1;
        }
        return low;
    }
}
