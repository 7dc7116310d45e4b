using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>
/// Lays out straight rows with rounds about them as charts draw them: the body a rectangle, each round a rectangle about it with its corners in the corners, the rows' numbers outside.
/// </summary>
internal sealed class Borders(WorkedPiece piece, PieceCells cells, StitchForms forms, Construction construction)
{
    /// <summary>Half a stitch beyond the last one's middle; and beyond the turning chains that stand there.</summary>
    private const double HalfStitch = 0.5;
    private const double BesideChains = 1.35;
    private const double BelowChain = 0.6;

    /// <summary>How much a stitch taller or shorter than its round stands out of it.</summary>
    private const double StandsOut = 0.7;
    private const double NumberRoom = 0.8;

    /// <summary>Chains that turn a corner lie as low as the heads beside them.</summary>
    private const double InsideCorner = 0.4;

    /// <summary>Stitches that begin nearer than this stand in one place.</summary>
    private const double OnePlace = 0.3;

    private readonly List<LaidRow> rows = [];

    /// <summary>The rows; null for a body that is no rectangle.</summary>
    public List<LaidRow>? Lay()
    {
        int body = piece.Rows.TakeWhile(row => row.Kind != RowKind.Round).Count();
        if (construction.Body is not { Kind: ConstructionKind.StraightRows } || body < 2) return null;
        rows.AddRange(new Layouts(piece with { Rows = piece.Rows.Take(body).ToEquatableArray() }, forms).Lay());
        Frame frame = About(rows);
        foreach (WorkedRow row in piece.Rows.Skip(body))
        {
            if (row.Kind != RowKind.Round || row.Status != RowStatus.Checked || cells.Cells[row.Index].Length == 0) return null;
            frame = frame.Grow(HeightOf(cells.Cells[row.Index]));
            rows.Add(Round(row, frame));
        }
        for (int i = 1; i < body; i++) rows[i] = rows[i] with { Label = Outside(rows[i].Label, frame) };
        return rows;
    }

    private static Frame About(IReadOnlyList<LaidRow> body)
    {
        LaidCell[] standing = [.. body.SelectMany(row => row.Cells).Where(cell => cell.Width > 0)];
        bool chains = body.Any(row => row.Cells.Any(cell => cell.Width <= 0 && (cell.Stance == Stance.Upright || cell.Cell is { Kind: CellKind.TurningChain, Chains: > 0 })));
        double beside = chains ? BesideChains : HalfStitch;
        return new Frame(standing.Min(cell => cell.Top.X) - beside, standing.Min(cell => cell.Top.Y), standing.Max(cell => cell.Top.X) + beside, standing.Max(cell => cell.Top.Y) + BelowChain);
    }

    /// <summary>Numbers of rows stand outside the border, each at the side where its row begins.</summary>
    private static Point Outside(Point label, Frame frame) =>
        new(label.X < (frame.Left + frame.Right) / 2 ? frame.Left - NumberRoom : frame.Right + NumberRoom, label.Y);

    private double HeightOf(Cell[] round)
    {
        double[] heights = [.. round.Where(cell => cell.Kind == CellKind.Stitch).Select(HeightOf)];
        return heights.Length == 0 ? 1 : heights.Average();
    }

    private double HeightOf(Cell cell) => forms.Of(cell.Stitch) is { Kind: not FormKind.Unknown } form ? Math.Max(0.5, form.Height) : 1;

    private LaidRow Round(WorkedRow row, Frame frame)
    {
        Cell[] round = cells.Cells[row.Index];
        double[] widths = cells.Widths[row.Index];
        double mean = HeightOf(round);
        Sprout[] sprouts = new Sprouts(rows, forms, widths, true, 1).Of(round);
        int[] taking = [.. Enumerable.Range(0, round.Length).Where(i => widths[i] > 0)];
        IReadOnlyList<int> corners = CornersOf(row);
        double[] along = new BorderSpread(frame, mean, sprouts).Of(taking, widths, corners);
        var laid = new LaidCell[round.Length];
        for (int i = 0; i < round.Length; i++) laid[i] = new LaidCell(round[i], forms.Of(round[i].Stitch), sprouts[i].Top, sprouts[i].Up, widths[i]);
        for (int k = 0; k < taking.Length; k++)
        {
            int i = taking[k];
            double beyond = round[i].Kind == CellKind.Stitch ? (HeightOf(round[i]) - mean) * StandsOut : 0;
            Point side = frame.Out(along[k]);
            Point top = frame.At(along[k]) + (side * beyond);
            if (round[i].Kind == CellKind.Chains && (frame.At(frame.Corner(top)) - top).Length < OnePlace) top += (frame.Middle - top).Unit() * InsideCorner;
            Point up = sprouts[i].Stands && (top - sprouts[i].Base).Length > 1e-6 ? (top - sprouts[i].Base).Unit() : side;
            laid[i] = laid[i] with { Top = top, Up = corners.Any(corner => (sprouts[corner].Base - sprouts[i].Base).Length < OnePlace) ? up : side, Ground = sprouts[i].OnEdge ? frame.Grow(-mean).At(frame.Grow(-mean).Along(top, side)) : null };
        }
        LaidRow whole = new(row, row.Index, laid, default) { Closed = true };
        for (int i = 0; i < round.Length; i++)
            if (widths[i] <= 0) laid[i] = Uprights.Attached(whole, i);
        return Labels.On(whole);
    }

    /// <summary>The round's corners; where its words don't show them ('3 sc in corner', along a row end), those that the next round makes in it.</summary>
    private IReadOnlyList<int> CornersOf(WorkedRow row)
    {
        IReadOnlyList<int> own = [.. Corners.Of(row).Where(corner => !cells.Cells[row.Index][corner].Feet.Any(foot => foot.Kind == FootKind.RowEnd))];
        if (own.Count >= 4 || piece.Rows.FirstOrDefault(next => next.Index > row.Index && next.Into == row.Index && next.Status == RowStatus.Checked) is not { } above) return own;
        Cell[] outer = cells.Cells[above.Index];
        int[] under = [.. Corners.Of(above).SelectMany(corner => outer[corner].Feet).Where(foot => foot.Row == row.Index && foot.Place < row.Length).Select(foot => (int)foot.Place).Distinct()];
        return under.Length == 4 ? under : own;
    }
}
