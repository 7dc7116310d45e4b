using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Measuring;

/// <summary>
/// Finds the corners of a round: chain spaces whose neighbours on both sides stand in the same place, as in '(3 dc, ch 2, 3 dc) in corner sp'; or, in
/// rounds without such spaces, the middle of three or more stitches in one place, as in '3 sc in corner st'.
/// </summary>
public static class Corners
{
    /// <summary>Rounds longer than this are not searched: a corner that comes thousands of times is none.</summary>
    private const long Limit = 200_000;

    /// <summary>0-based cell indexes of the corners, in the order worked; none for rows too long to search.</summary>
    public static IReadOnlyList<int> Of(WorkedRow row)
    {
        if (row.Length > Limit) return [];
        List<Cell> cells = [.. row.Cells()];
        List<int> stitches = [.. Enumerable.Range(0, cells.Count).Where(i => HasPlace(cells[i]) && cells[i].Kind != CellKind.Join)];
        var corners = new List<int>();
        for (int i = 0; i < stitches.Count; i++)
        {
            if (cells[stitches[i]].Kind != CellKind.Chains) continue;
            Foot? before = FootBefore(cells, stitches, i);
            Foot? after = FootAfter(cells, stitches, i);
            if (before is { } foot && after is { } next && (foot.Row, foot.Place) == (next.Row, next.Place)) corners.Add(stitches[i]);
        }
        return corners.Count > 0 ? corners : Threes(cells);
    }

    private static List<int> Threes(List<Cell> cells)
    {
        var corners = new List<int>();
        for (int first = 0, next; first < cells.Count; first = next)
        {
            next = first + 1;
            while (next < cells.Count && SamePlace(cells[first], cells[next])) next++;
            if (next - first >= 3) corners.Add((first + next - 1) / 2);
        }
        return corners;
    }

    private static bool SamePlace(Cell left, Cell right) =>
        left is { Kind: CellKind.Stitch, Feet.Count: 1 } && right is { Kind: CellKind.Stitch, Feet.Count: 1 } && left.Feet[0] == right.Feet[0] && left.Feet[0].Kind != FootKind.Ring;

    private static bool HasPlace(Cell cell) => cell.Kind is CellKind.Stitch or CellKind.Chains or CellKind.TurningChain;

    /// <summary>Going round: before the first cell comes the last.</summary>
    private static Foot? FootBefore(List<Cell> cells, List<int> stitches, int at) => FootNear(cells, stitches, at, -1);

    private static Foot? FootAfter(List<Cell> cells, List<int> stitches, int at) => FootNear(cells, stitches, at, 1);

    /// <summary>A turning chain has no foot of its own; it stands where the stitch next to it stands.</summary>
    private static Foot? FootNear(List<Cell> cells, List<int> stitches, int at, int step)
    {
        for (int hop = 1; hop <= 2; hop++)
        {
            Cell near = cells[stitches[(at + (hop * step) + (stitches.Count * 2)) % stitches.Count]];
            if (near.Kind == CellKind.Chains) return null;
            if (!near.Feet.IsEmpty) return near.Feet[0];
        }
        return null;
    }
}
