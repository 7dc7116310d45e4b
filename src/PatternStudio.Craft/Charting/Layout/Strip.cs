using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>The strip of an edging worked sideways, without its scallops: a piece of its own, laid out in the usual way.</summary>
internal sealed class Strip(WorkedPiece piece, Dictionary<int, SideRun> runs, Cell[][] cells)
{
    private readonly int[][] own = [.. cells.Select((row, index) => Enumerable.Range(0, row.Length).Where(i => !runs.TryGetValue(index, out SideRun? run) || !run.Has(i)).ToArray())];

    /// <summary>The strip's rows; its cells are put where they belong among those of the whole.</summary>
    /// <param name="forms">How its stitches are built.</param>
    /// <param name="whole">The cells of all rows.</param>
    /// <param name="tall">How many times taller than its stitches a row is drawn.</param>
    public LaidRow[] Lay(StitchForms forms, LaidCell[][] whole, double tall)
    {
        WorkedPiece alone = piece with { Rows = piece.Rows.Select(row => row with { Runs = new[] { new Run(own[row.Index].Select((_, i) => Alone(row.Index, i)).ToEquatableArray(), 1, 0) }.ToEquatableArray() }).ToEquatableArray() };
        LaidRow[] rows = [.. new Layouts(alone, forms).InStraightRows().Select(row => Taller(row, tall))];
        foreach (LaidRow row in rows)
            for (int i = 0; i < row.Cells.Length; i++)
            {
                Cell cell = cells[row.Index][own[row.Index][i]];
                bool edge = IsEdge(row.Index, i);
                double width = edge && i + 1 < row.Cells.Length ? Math.Max(0.5, (2 * (row.Cells[i + 1].Top - row.Cells[i].Top).Length) - 1) : row.Cells[i].Width;
                whole[row.Index][own[row.Index][i]] = row.Cells[i] with { Cell = cell, Form = forms.Of(cell.Stitch), Width = width };
            }
        return rows;
    }

    private static LaidRow Taller(LaidRow row, double by) =>
        row with { Label = new Point(row.Label.X, row.Label.Y * by), Cells = [.. row.Cells.Select(cell => cell with { Top = new Point(cell.Top.X, cell.Top.Y * by) })] };

    /// <summary>A cell of the strip, its feet counted in strip rows.</summary>
    private Cell Alone(int row, int at)
    {
        Cell cell = cells[row][own[row][at]];
        if (!IsEdge(row, at)) return cell with { Feet = cell.Feet.Select(foot => Foot(row, foot)).ToEquatableArray() };
        Cell next = cells[row][own[row][at + 1]];
        Foot under = Foot(row, cells[row][runs[row].Last].Feet[0]);
        return new Cell(CellKind.TurningChain, next.Stitch, cell.Chains, new[] { under }.ToEquatableArray(), true, cell.Source);
    }

    /// <summary>Chains after a slip stitch on the strip stand for its first stitch, as turning chains do.</summary>
    private bool IsEdge(int row, int at) => at == 0 && own[row].Length > 1 && cells[row][own[row][0]].Kind == CellKind.Chains && runs.TryGetValue(row, out SideRun? run) && run.AtStart && cells[row][run.Last] is { Kind: CellKind.Stitch, Feet.Count: 1 };

    private Foot Foot(int row, Foot foot)
    {
        if (foot.Row < 0 || foot.Place < 0 || own[foot.Row].Length == 0) return foot with { Row = row - foot.Row };
        int place = Array.IndexOf(own[foot.Row], (int)foot.Place);
        if (place < 0) return foot with { Row = row - foot.Row, Place = foot.Place < own[foot.Row][0] ? 0 : own[foot.Row].Length - 1, Chain = -1, Kind = FootKind.BothLoops };
        return foot with { Row = row - foot.Row, Place = place };
    }
}
