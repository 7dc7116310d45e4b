using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>Turns rows placed along and across a ground into rows on paper.</summary>
internal static class Placings
{
    private const double Apart = 0.46;
    private const double Nudge = 1e-3;

    public static List<LaidRow> OnPaper(IReadOnlyList<PlacedRow> rows, Ground ground, PieceCells piece) => [.. rows.Select(row => OnPaper(row, ground, piece))];

    private static LaidRow OnPaper(PlacedRow row, Ground ground, PieceCells piece)
    {
        LaidCell[] cells = [.. row.Cells.Select((cell, i) => Cell(cell, ground, piece.Widths[row.Index][i]))];
        bool centre = row.Low < 0;
        bool unjoined = centre && !row.Row.Joined && row.Row.Kind == RowKind.Foundation;
        return new LaidRow(row.Row, row.Index, unjoined ? Small(row, cells) : cells, ground.At(row.LabelAt, (row.Low + row.MeanTop) / 2))
        {
            Out = piece.Radius[row.Index],
            Taller = piece.Taller[row.Index],
            IsCentre = centre,
            Radius = centre ? row.High : 0,
            Closed = (ground.Wraps && row.Row.Kind == RowKind.Round) || (centre && row.Row.Joined),
        };
    }

    private static LaidCell Cell(PlacedCell cell, Ground ground, double width)
    {
        Point top = ground.At(cell.U, cell.T);
        return new LaidCell(cell.Cell, cell.Form, top, (ground.At(cell.U, cell.T + Nudge) - top).Unit(), width) { Stance = cell.Stance };
    }

    /// <summary>Two or three chains that only one is worked into lie small in the centre.</summary>
    private static LaidCell[] Small(PlacedRow row, LaidCell[] cells) =>
        [.. cells.Select((cell, i) => cell with { Top = new Point(Apart * (i - ((cells.Length - 1) / 2.0)), 0), Up = new Point(0, -1), Width = row.Cells[i].Width })];
}
