using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Measuring;

/// <summary>
/// Rows of one stitch in each stitch below. They hold the width of an edging: its arches and shells lie over the same stretch, however many stitches they have.
/// </summary>
internal static class PlainRows
{
    /// <summary>Pieces with more cells than this are not unrolled to look: no edging has them.</summary>
    private const long Limit = 200_000;

    /// <summary>Fewer stitches are a corner or a point.</summary>
    private const long Fewest = 8;

    /// <summary>So few rows hang together however many are lace; in more rows, a quarter must be plain.</summary>
    private const int Short = 6;
    private const int Share = 4;

    /// <summary>The part of the row below that a row must reach over to be as wide as that.</summary>
    private const double Reach = 0.85;

    /// <summary>Stitches across the plain rows, where they agree and all other rows reach over their whole width; else null.</summary>
    public static long? Across(List<WorkedRow> rows, List<RowTally> tallies)
    {
        if (rows.Sum(row => row.Length) > Limit) return null;
        bool[] plain = [.. rows.Select(IsPlain)];
        List<long> places = [.. tallies.Where((_, i) => plain[i]).Select(tally => tally.Places)];
        if (places.Count == 0 || places.Count == rows.Count || places.Min() < Fewest || places.Max() - places.Min() > Math.Max(1, places.Max() / 20)) return null;
        if (rows.Count > Short && places.Count * Share < rows.Count) return null;
        return Enumerable.Range(1, rows.Count - 1).All(i => plain[i] || Reaches(rows[i], rows[i - 1])) && (plain[0] || rows.Count > 1 && Reaches(rows[1], rows[0])) ? places[0] : null;
    }

    private static bool IsPlain(WorkedRow row)
    {
        if (row.Kind != RowKind.Row) return false;
        var seen = new HashSet<Foot>();
        foreach (Cell cell in row.Cells())
            if (cell.Kind is CellKind.Chains or CellKind.Picot || (cell.Kind == CellKind.Stitch && (cell.Feet.Count != 1 || cell.Feet[0].Kind == FootKind.Space || !seen.Add(cell.Feet[0]))))
                return false;
        return seen.Count > 0;
    }

    private static bool Reaches(WorkedRow row, WorkedRow below)
    {
        if (row.Into != below.Index || below.Length == 0) return false;
        List<long> feet = [.. row.Cells().Where(cell => cell.Kind == CellKind.Stitch).SelectMany(cell => cell.Feet).Where(foot => foot.Row == below.Index).Select(foot => foot.Place)];
        return feet.Count > 1 && feet.Max() - feet.Min() + 1 >= Reach * below.Length;
    }
}
