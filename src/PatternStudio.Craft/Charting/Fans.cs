using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>Stitches that stand in one place: shells, V-stitches, increases.</summary>
internal static class Fans
{
    /// <summary>True for two stitches in the same place.</summary>
    public static bool SameFoot(Cell left, Cell right) =>
        left.Kind == CellKind.Stitch && right.Kind == CellKind.Stitch && left.Feet.Count == 1 && right.Feet.Count == 1
        && (left.Feet[0].Row, left.Feet[0].Place) == (right.Feet[0].Row, right.Feet[0].Place);

    /// <summary>The index after the last stitch that shares its place with the one at <paramref name="first"/>.</summary>
    public static int End(Cell[] cells, int first)
    {
        int next = first + 1;
        while (next < cells.Length && SameFoot(cells[next], cells[first])) next++;
        return next;
    }
}
