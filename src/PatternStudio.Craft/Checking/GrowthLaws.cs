using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Checking;

/// <summary>
/// Finds how counts grow over repeated rows. A law is stated only where induction on the runs carries it: the rows one period apart are made of
/// the same runs (same stitches in the same order), and from one period to the next every run's number of turns changes by the same amount. Working a
/// row walks the runs below it from start to end, so a row made that way on runs that differ by so many turns makes runs that differ by as many again.
/// </summary>
public static class GrowthLaws
{
    /// <summary>Periods longer than this are no repeat that anyone would say in a sentence.</summary>
    private const int LongestPeriod = 8;

    /// <summary>The laws of a fabric, in the order of its rows.</summary>
    public static EquatableArray<GrowthLaw> Of(Fabric fabric) => fabric.Pieces.SelectMany(piece => OfPiece(piece.Rows)).ToEquatableArray();

    private static IEnumerable<GrowthLaw> OfPiece(WorkedRows rows)
    {
        for (int first = 0; first < rows.Count;)
        {
            (int period, int end) = Longest(rows, first);
            if (period == 0)
            {
                first++;
                continue;
            }
            yield return Law(rows, first, end, period);
            first = end;
        }
    }

    /// <summary>The period that holds for most rows from <paramref name="first"/> on; three turns of it at least.</summary>
    private static (int Period, int End) Longest(WorkedRows rows, int first)
    {
        for (int period = 1; period <= LongestPeriod; period++)
        {
            int end = first + period;
            while (end < rows.Count && GoesOn(rows, first, end, period)) end = Next(rows, first, end, period);
            if (end - first >= 3 * period) return (period, end);
        }
        return (0, first);
    }

    /// <summary>The next row to look at. Where rows come round, what has held for one turn of them holds for all.</summary>
    private static int Next(WorkedRows rows, int first, int index, int period) =>
        rows.StretchAt(index) is { } stretch && index + 1 >= Math.Max(stretch.Start, first + stretch.Period) + (2 * period) ? stretch.End : index + 1;

    /// <summary>True where the row at <paramref name="index"/> follows from the rows one and two periods before it.</summary>
    private static bool GoesOn(WorkedRows rows, int first, int index, int period)
    {
        WorkedRow row = rows[index], before = rows[index - period];
        if (row.Status != RowStatus.Checked || before.Status != RowStatus.Checked || row.Section != before.Section || row.Kind == RowKind.Foundation || before.Kind == RowKind.Foundation) return false;
        if (row.Number != before.Number + period || !SameShape(row.Runs, before.Runs)) return false;
        if (index - first < 2 * period) return index - first == period || Step(rows, index, period) == Step(rows, first + period, period);
        return Step(rows, index, period) == Step(rows, first + period, period) && EvenSteps(row.Runs, before.Runs, rows[index - 2 * period].Runs);
    }

    private static long Step(WorkedRows rows, int index, int period) => rows[index].Total - rows[index - period].Total;

    private static bool SameShape(EquatableArray<Run> a, EquatableArray<Run> b)
    {
        if (a.Count != b.Count) return false;
        for (int i = 0; i < a.Count; i++)
            if (a[i].Unit.Count != b[i].Unit.Count || !a[i].Unit.Zip(b[i].Unit).All(pair => Alike(pair.First, pair.Second))) return false;
        return true;
    }

    private static bool EvenSteps(EquatableArray<Run> now, EquatableArray<Run> before, EquatableArray<Run> earlier)
    {
        if (!SameShape(before, earlier)) return false;
        for (int i = 0; i < now.Count; i++)
            if (now[i].Times - before[i].Times != before[i].Times - earlier[i].Times) return false;
        return true;
    }

    private static bool Alike(Cell a, Cell b) => a.Kind == b.Kind && a.Stitch == b.Stitch && a.Chains == b.Chains && a.Counts == b.Counts && a.GroupSize == b.GroupSize && a.Group == b.Group;

    private static GrowthLaw Law(WorkedRows rows, int first, int end, int period) => new(
        rows[first].Section, rows[first].Number, rows[end - 1].Number, period, Step(rows, first + period, period),
        Enumerable.Range(first, period).Select(index => rows[index].Total).ToEquatableArray(), rows[first].Kind == RowKind.Round);
}
