using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>
/// Lays out tiles worked from corner to corner. Each tile is a square: its chain stands along one side, its stitches beside it. The tiles of odd rows stand up, those of even
/// rows lie to the right, since each stands on the chain of the tile below it; so the piece grows upward and to the right from its first tile.
/// </summary>
internal sealed class Tiles(WorkedPiece piece, StitchForms forms)
{
    private const double Side = 2.9;
    private const double FirstPost = 0.3;
    private const double Foot = 0.01;
    private const double Corner = 0.03;
    private const double Above = 0.25;
    private const double Head = 0.86;
    private const double NumberOff = 1;

    private readonly Dictionary<(int Row, long Cell), (int X, int Y)> squares = [];
    private readonly List<LaidRow> done = [];
    private (int X, int Y) last;

    /// <summary>The rows; null where one of them is not made of tiles.</summary>
    public List<LaidRow>? Lay()
    {
        foreach (WorkedRow row in piece.Rows)
        {
            Cell[] cells = [.. row.Cells()];
            if (row.Kind == RowKind.Foundation) done.Add(Base(row, cells));
            else if (row.Kind == RowKind.Row && row.Status == RowStatus.Checked && Lay(row, cells) is { } laid) done.Add(laid);
            else return null;
        }
        return [.. done.Select(Numbered)];
    }

    /// <summary>Later tiles lie beside the one that a row begins with: its number stands outside of all of them, at the nearest side.</summary>
    private LaidRow Numbered(LaidRow row)
    {
        if (!squares.TryGetValue((row.Index, Array.FindIndex(row.Cells, cell => !IsSlip(cell.Cell))), out (int X, int Y) square)) return row;
        Box all = squares.Values.Aggregate(Box.Empty, (box, at) => box.With(new Point(at.X, at.Y)));
        var middle = new Point((square.X + 0.5) * Side, (-square.Y - 0.5) * Side);
        (double Far, Point At)[] sides =
        [
            (square.X - all.Left, new Point(-1, 0)), (square.Y - all.Top, new Point(0, 1)), (all.Right - square.X, new Point(1, 0)), (all.Bottom - square.Y, new Point(0, -1)),
        ];
        (double far, Point by) = row.Row.Index % 2 == 1 ? sides.Skip(1).Append(sides[0]).MinBy(side => side.Far) : sides.MinBy(side => side.Far);
        return row with { Label = middle + (by * (((far + 0.5) * Side) + NumberOff)) };
    }

    /// <summary>The chain that the first tile stands on, under it; its last chains stand up as the tile's first post.</summary>
    private LaidRow Base(WorkedRow row, Cell[] cells)
    {
        var first = piece.Rows.FirstOrDefault(next => next.Index > row.Index);
        long used = first is null ? cells.Length : first.Cells().SelectMany(cell => cell.Feet).Where(foot => foot.Row == row.Index).Select(foot => foot.Place + 1).DefaultIfEmpty(cells.Length).Max();
        double step = Side / Math.Max(1, used);
        return new LaidRow(row, row.Index, [.. cells.Select((cell, i) => new LaidCell(cell, forms.Of(cell.Stitch), new Point((i + 0.5) * step, 0), new Point(0, -1), step) { Stance = i < used ? Stance.Lying : Stance.Hidden })], default);
    }

    private LaidRow? Lay(WorkedRow row, Cell[] cells)
    {
        bool odd = row.Index % 2 == 1;
        var laid = new LaidCell[cells.Length];
        bool any = false;
        for (int first = 0, next; first < cells.Length; first = next)
        {
            next = first + 1;
            if (IsSlip(cells[first])) continue;
            while (next < cells.Length && cells[next].Kind == CellKind.Stitch && !IsSlip(cells[next])) next++;
            if (next - first < 3 && any) return null;
            (int X, int Y) square = Square(row, cells, first, next, odd, any);
            for (int i = first; i < next; i++)
            {
                squares[(row.Index, i)] = square;
                laid[i] = Post(cells[i], square, odd, i - first, next - first);
            }
            any = true;
        }
        if (!any) return null;
        for (int i = 0; i < cells.Length; i++)
            if (IsSlip(cells[i])) laid[i] = Slip(cells, laid, i);
        last = squares[(row.Index, Array.FindLastIndex(cells, cell => !IsSlip(cell)))];
        return new LaidRow(row, row.Index, laid, default);
    }

    /// <summary>A tile stands on the tile that its stitches are worked into; the first of a growing row has a chain of its own, and stands beyond the end of the row below.</summary>
    private (int X, int Y) Square(WorkedRow row, Cell[] cells, int first, int next, bool odd, bool any)
    {
        foreach (Foot foot in cells[first..next].SelectMany(cell => cell.Feet))
            if (foot.Row < row.Index && squares.TryGetValue((foot.Row, foot.Place), out (int X, int Y) below))
                return odd ? (below.X, below.Y + 1) : (below.X + 1, below.Y);
        return row.Index == 1 || any ? (0, 0) : odd ? (last.X + 1, last.Y) : (last.X, last.Y + 1);
    }

    /// <summary>Posts side by side, the chain first: from the right in tiles that stand, from the top in tiles that lie.</summary>
    private LaidCell Post(Cell cell, (int X, int Y) square, bool odd, int number, int count)
    {
        double across = Side * (FirstPost + (number * (count - (2 * FirstPost)) / Math.Max(1, count - 1))) / count;
        Point At(double along) => odd
            ? new Point(((square.X + 1) * Side) - across, -((square.Y + along) * Side))
            : new Point((square.X + along) * Side, -(((square.Y + 1) * Side) - across));
        if (cell.Kind != CellKind.Stitch) return new LaidCell(cell, forms.Of(cell.Stitch), At(1 - Corner), odd ? new Point(0, -1) : new Point(1, 0), RowTally.Width(cell)) { Ground = At(Corner) };
        return new LaidCell(cell, forms.Of(cell.Stitch), At(Head), odd ? new Point(0, -1) : new Point(1, 0), RowTally.Width(cell)) { Ground = At(Foot) };
    }

    /// <summary>A slip stitch joins a tile to the corner of the next one's chain.</summary>
    private LaidCell Slip(Cell[] cells, LaidCell[] laid, int at)
    {
        if (cells[at].Feet is [{ } foot, ..] && foot.Row < done.Count && foot.Row > 0 && foot.Place >= 0 && foot.Place < done[foot.Row].Cells.Length && done[foot.Row].Cells[foot.Place] is { Cell.Kind: CellKind.Stitch } host)
            return new LaidCell(cells[at], forms.Of(cells[at].Stitch), host.Top + (host.Up * Above), host.Up, 0) { Ground = host.Top + (host.Up * Above) };
        int beside = Enumerable.Range(0, cells.Length).Where(i => !IsSlip(cells[i])).MinBy(i => (Math.Abs(i - at), -i));
        int chain = beside > at ? beside : Array.FindIndex(cells, Math.Min(at + 1, cells.Length - 1), cell => !IsSlip(cell)) is >= 0 and var next ? next : beside;
        Point place = beside > at ? laid[chain].Ground!.Value - (laid[chain].Up * (Side * Foot * 0.7)) : laid[beside].Top;
        return new LaidCell(cells[at], forms.Of(cells[at].Stitch), place, laid[chain].Up, 0) { Ground = place };
    }

    private bool IsSlip(Cell cell) => cell.Kind == CellKind.Join || (cell.Kind == CellKind.Stitch && forms.Of(cell.Stitch).Kind == FormKind.SlipStitch);
}
