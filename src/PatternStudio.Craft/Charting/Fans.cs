using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>Stitches that stand in one place: shells, V-stitches, increases.</summary>
internal static class Fans
{
    /// <summary>True for two stitches in the same place.</summary>
    public static bool SameFoot(Cell left, Cell right) =>
        left.Kind == CellKind.Stitch && right.Kind == CellKind.Stitch && left.Feet.Count == 1 && right.Feet.Count == 1
        && (left.Feet[0].Row, left.Feet[0].Place) == (right.Feet[0].Row, right.Feet[0].Place);

    /// <summary>True where a stitch shares its place with its neighbour.</summary>
    public static bool IsFanned(Cell[] cells, int at) =>
        (at > 0 && SameFoot(cells[at - 1], cells[at])) || (at + 1 < cells.Length && SameFoot(cells[at + 1], cells[at]));
}
