using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>Older texts number rounds as rows ('2nd row: ... join'): a row whose end is joined to its start goes round, whatever it is called.</summary>
internal static class Rounded
{
    public static WorkedPiece Of(WorkedPiece piece) => piece.Rows.Any(GoesRound)
        ? piece with { Rows = piece.Rows.Select(row => GoesRound(row) ? row with { Kind = RowKind.Round } : row).ToEquatableArray() }
        : piece;

    private static bool GoesRound(WorkedRow row) => row is { Kind: RowKind.Row, Joined: true };
}
