using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>
/// Lays out an edited piece from where it lay: rows worked as before keep their places, those changed between them grow anew, and rows above move with what they stand on.
/// </summary>
internal sealed class Edited
{
    /// <summary>More changed rows than this are drawn as a new piece.</summary>
    private const int MostChanged = 12;

    /// <summary>How firmly the rows beside the change, the next ones and all farther ones stay.</summary>
    private const double Beside = 0.02;
    private const double Near = 0.3;
    private const double Far = 4;

    private readonly IReadOnlyList<LaidRow> former;
    private readonly PieceCells piece;

    private Edited(IReadOnlyList<LaidRow> former, PieceCells piece) => (this.former, this.piece) = (former, piece);

    /// <summary>The rows before they come to rest, and how firmly each stays; null where too much has changed.</summary>
    public static (List<LaidRow> Rows, double[] Stay)? Of(IReadOnlyList<LaidRow> former, PieceCells piece, StitchForms forms) => new Edited(former, piece).Of(forms);

    private (List<LaidRow> Rows, double[] Stay)? Of(StitchForms forms)
    {
        int count = piece.Cells.Length;
        int below = 0;
        while (below < Math.Min(count, former.Count) && Same(below, below)) below++;
        int above = 0;
        while (above < Math.Min(count, former.Count) - below && Same(former.Count - 1 - above, count - 1 - above)) above++;
        int changed = count - above - below;
        if (below == 0 || changed > MostChanged || below + above < changed) return null;
        var rows = new List<LaidRow>(count);
        for (int i = 0; i < below; i++) rows.Add(Kept(i, i, default));
        var growth = new Growth(piece, forms);
        for (int i = below; i < count - above; i++) rows.Add(growth.On(rows, piece.Piece.Rows[i]));
        Point by = above > 0 && changed > 0 ? Rise(growth.On(rows, piece.Piece.Rows[count - above]), former[former.Count - above]) : default;
        for (int i = count - above; i < count; i++) rows.Add(Kept(former.Count - count + i, i, by));
        return (rows, [.. Enumerable.Range(0, count).Select(i => Firmness(i < below ? below - i : i - (count - above) + 1))]);
    }

    private static double Firmness(int away) => away switch { <= 0 => 0, 1 => Beside, 2 => Near, _ => Far };

    /// <summary>True for a row worked as it was before; where its words stand in the text does not matter.</summary>
    private bool Same(int before, int now)
    {
        LaidCell[] was = former[before].Cells;
        Cell[] cells = piece.Cells[now];
        if (was.Length != cells.Length || former[before].Row.Kind != piece.Piece.Rows[now].Kind) return false;
        for (int i = 0; i < cells.Length; i++)
            if (!Same(was[i].Cell, before, cells[i], now)) return false;
        return true;
    }

    private static bool Same(Cell one, int row, Cell other, int otherRow)
    {
        if (one.Kind != other.Kind || one.Stitch != other.Stitch || one.Chains != other.Chains || one.Counts != other.Counts || one.Feet.Count != other.Feet.Count) return false;
        for (int i = 0; i < one.Feet.Count; i++)
            if (one.Feet[i] with { Row = row - one.Feet[i].Row } != other.Feet[i] with { Row = otherRow - other.Feet[i].Row }) return false;
        return true;
    }

    private LaidRow Kept(int before, int now, Point by)
    {
        LaidRow row = former[before];
        return row with
        {
            Row = piece.Piece.Rows[now],
            Index = now,
            Taller = piece.Taller[now],
            Out = piece.Radius[now],
            Label = row.Label + by,
            Centre = row.Centre + by,
            Cells = [.. row.Cells.Select((cell, i) => cell with { Cell = piece.Cells[now][i], Width = piece.Widths[now][i], Top = cell.Top + by, Ground = cell.Ground + by })],
        };
    }

    /// <summary>How far a row moves that stands on changed ones.</summary>
    private static Point Rise(LaidRow grown, LaidRow was)
    {
        Point[] moves = [.. grown.Cells.Zip(was.Cells).Where(pair => pair.First.Width > 0).Select(pair => pair.First.Top - pair.Second.Top)];
        return moves.Length == 0 ? default : moves.Aggregate((sum, move) => sum + move) * (1.0 / moves.Length);
    }
}
