using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>
/// Older texts number rounds as rows ('2nd row: ... join'): a row whose end is joined to its start goes round, whatever it is called. One worked only across open rows can't: its ends are
/// as far apart as those rows are wide, so it stays the row that was worked.
/// </summary>
internal static class Rounded
{
    public static WorkedPiece Of(WorkedPiece piece)
    {
        if (!piece.Rows.Any(row => row is { Kind: RowKind.Row, Joined: true })) return piece;
        var rows = new List<WorkedRow>(piece.Rows.Count);
        foreach (WorkedRow row in piece.Rows)
            rows.Add(row is { Kind: RowKind.Row, Joined: true } && !IsAcross(row, rows) ? row with { Kind = RowKind.Round } : row);
        return piece with { Rows = rows.ToEquatableArray() };
    }

    /// <summary>True where all stitches stand on tops of one row that goes to and fro.</summary>
    private static bool IsAcross(WorkedRow row, List<WorkedRow> below)
    {
        Foot[] feet = [.. row.Cells().Where(cell => cell.Kind == CellKind.Stitch).SelectMany(cell => cell.Feet).Where(foot => foot.Row >= 0 && foot.Row < row.Index)];
        return feet.Length > 0 && Array.TrueForAll(feet, foot => foot.Row == feet[0].Row && foot.Kind is not (FootKind.RowEnd or FootKind.Ring))
            && below[feet[0].Row] is { Kind: RowKind.Row, Joined: false };
    }
}
