using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>
/// A last round with straps or handles, chains over a stretch that is skipped: the bag is drawn as it would be without that round, its stitches stand on it, and each strap is an arch beside the
/// opening, from one of its ends to the other.
/// </summary>
internal static class Straps
{
    /// <summary>More chains than this are no lace.</summary>
    private const int LongestLace = 24;

    /// <summary>Length of a chain in a strap, and how far the strap stands off from what it passes over.</summary>
    private const double OfChain = 0.5;
    private const double Off = 2.5;

    /// <summary>The rows; null for a piece without straps, or one that goes on over them.</summary>
    public static List<LaidRow>? Lay(WorkedPiece piece, StitchForms forms)
    {
        WorkedRow last = piece.Rows[^1];
        if (piece.Rows.Count < 3 || last is not { Kind: RowKind.Round, Status: RowStatus.Checked } || last.Into != last.Index - 1 || !HasStrap(last) || piece.Rows.Take(piece.Rows.Count - 1).Any(HasStrap)) return null;
        Cell[] cells = [.. last.Cells()];
        if (!Array.TrueForAll(cells, cell => IsStrap(cell) || (cell.Kind != CellKind.Chains && cell.Feet.All(foot => foot.Row == last.Into)))) return null;
        var rows = new List<LaidRow>(new Layouts(piece with { Rows = piece.Rows.Take(piece.Rows.Count - 1).ToEquatableArray() }, forms).Lay());
        if (rows[^1] is { Closed: false } or { Cells.Length: < 3 }) return null;
        rows.Add(OnTop(rows, last, cells, forms));
        return rows;
    }

    private static bool HasStrap(WorkedRow row) => row.Runs.Any(run => run.Unit.Any(IsStrap));

    /// <summary>True for the chains of a strap or a handle.</summary>
    public static bool IsStrap(Cell cell) => cell is { Kind: CellKind.Chains, Chains: > LongestLace };

    private static LaidRow OnTop(List<LaidRow> rows, WorkedRow last, Cell[] cells, StitchForms forms)
    {
        var standing = new Standing(rows);
        var laid = new LaidCell[cells.Length];
        for (int i = 0; i < cells.Length; i++)
        {
            StitchForm form = forms.Of(cells[i].Stitch);
            bool stands = RowTally.Width(cells[i]) > 0 && !cells[i].Feet.IsEmpty;
            LaidCell? host = cells[i].Feet.IsEmpty ? null : standing.Host(cells[i].Feet[0]);
            Point up = host?.Up ?? default;
            laid[i] = new LaidCell(cells[i], form, (host?.Top ?? default) + (up * Math.Max(1, form.Height)), up, stands ? 1 : 0);
        }
        // Two stitches in one place fan out of it.
        for (int i = 1; i < laid.Length; i++)
            if (laid[i].Width > 0 && laid[i - 1].Width > 0 && (laid[i].Top - laid[i - 1].Top).Length < 0.5) laid[i] = laid[i] with { Top = laid[i].Top + (Way(laid, i) * 0.9) };
        Point middle = rows[^1].Cells.Aggregate(default(Point), (sum, cell) => sum + cell.Top) * (1.0 / rows[^1].Cells.Length);
        for (int i = 0; i < laid.Length; i++)
            if (IsStrap(cells[i])) laid[i] = Arched(laid, i, rows[^1], middle);
        var row = new LaidRow(last, last.Index, laid, default) { Closed = true };
        for (int i = 0; i < laid.Length; i++)
            if (laid[i].Width <= 0) laid[i] = Uprights.Attached(row, i);
        return Labels.On(row);
    }

    private static Point Way(LaidCell[] laid, int at) => laid[at].Up.Right() * (at > 1 && Dot(laid[at - 1].Top - laid[at - 2].Top, laid[at].Up.Right()) < 0 ? -1 : 1);

    private static double Dot(Point one, Point other) => (one.X * other.X) + (one.Y * other.Y);

    /// <summary>As high as its chains are long, and at least off from the opening's edge between its ends.</summary>
    private static LaidCell Arched(LaidCell[] laid, int at, LaidRow below, Point middle)
    {
        LaidCell before = laid[(at - 1 + laid.Length) % laid.Length], after = laid[(at + 1) % laid.Length];
        Point chord = after.Top - before.Top, between = before.Top.Toward(after.Top, 0.5);
        Point outward = chord.Unit().Right();
        if (Dot(outward, between - middle) < 0) outward *= -1;
        double beyond = below.Cells.Where(cell => cell.Width > 0 && Math.Abs(Dot(cell.Top - between, chord.Unit())) < chord.Length / 2).Select(cell => Dot(cell.Top - between, outward)).DefaultIfEmpty(0).Max();
        double length = laid[at].Cell.Chains * OfChain;
        double rise = length > chord.Length ? Math.Sqrt(3.0 / 16 * ((length * length) - (chord.Length * chord.Length))) : 0;
        return laid[at] with { Top = between + (outward * Math.Max(rise, beyond + Off)), Up = outward, Width = length };
    }
}
