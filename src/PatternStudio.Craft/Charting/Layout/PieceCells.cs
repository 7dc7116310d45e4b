using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>
/// The cells of a piece, counted out once, and the room that each takes in its row. Chains over skipped stitches take the room of what they skip, as an arch does. A round
/// that could not lie flat for lack of stitches takes the room that a flat one takes, one with too many stands taller: a chart is flat, whatever the fabric does.
/// </summary>
internal sealed class PieceCells
{
    /// <summary>Chains over a short way rise in an arch, but not to less than this share of their length.</summary>
    private const double TightestArch = 0.25;
    private const double LongestArch = 6;
    /// <summary>Petals ruffle; drawn taller than this they are no longer the stitches they are.</summary>
    private const double MostTaller = 1.5;
    private const double Seam = 0.85;
    private const double ShortestStretched = 8;
    private const double MostStretch = 2;
    private const int MostSkipped = 8;

    private readonly StitchForms forms;
    private readonly double[] round;
    private readonly bool flat;

    public PieceCells(WorkedPiece piece, StitchForms forms, bool flat)
    {
        this.forms = forms;
        this.flat = flat;
        Piece = piece;
        int count = piece.Rows.Count;
        Cells = [.. piece.Rows.Select(row => row.Status == RowStatus.Checked ? row.Cells().ToArray() : [])];
        (Widths, Along) = (new double[count][], new double[count][]);
        (Lengths, Taller, Radius, round) = (new double[count], new double[count], new double[count], new double[count]);
        InRounds = Tones.InRounds(piece);
        for (int row = 0; row < count; row++)
        {
            Add(row);
            if (row == 1) StretchFoundation();
        }
    }

    public WorkedPiece Piece { get; }

    public Cell[][] Cells { get; }

    /// <summary>Room of each cell in its row, in stitch widths; 0 for what lies on its neighbour or stands beside the row.</summary>
    public double[][] Widths { get; }

    /// <summary>Middle of each cell along its row.</summary>
    public double[][] Along { get; }

    /// <summary>Length of each row.</summary>
    public double[] Lengths { get; }

    /// <summary>How many times taller than its stitches a row is drawn.</summary>
    public double[] Taller { get; }

    /// <summary>How far a flat round's tops are from the row that the rounds began on.</summary>
    public double[] Radius { get; }

    public bool InRounds { get; }

    /// <summary>True for a round, whose end lies beside its start.</summary>
    public bool Closed(int row) => Piece.Rows[row].Kind == RowKind.Round;

    /// <summary>Where a foot is along its row; null where that is not known.</summary>
    public double? AlongOf(Foot foot)
    {
        if (foot.Row < 0 || foot.Row >= Along.Length || foot.Kind == FootKind.RowEnd || Along[foot.Row] is not { } along || foot.Place < 0 || foot.Place >= along.Length) return null;
        Cell host = Cells[foot.Row][foot.Place];
        double share = foot.Chain >= 0 && host.Chains > 1 ? ((foot.Chain + 0.5) / host.Chains) - 0.5 : 0;
        return along[foot.Place] + (share * Widths[foot.Row][foot.Place]);
    }

    private void Add(int row)
    {
        Cell[] cells = Cells[row];
        bool closed = Closed(row);
        double[] widths = [.. cells.Select(cell => closed && cell is { Kind: CellKind.TurningChain, Counts: false, Chains: > 0 } ? Seam : RowTally.Width(cell))];
        HideSkipped(row, cells, widths);
        Arches(cells, widths, closed);
        (Widths[row], Taller[row]) = (widths, 1);
        if (closed && flat) Flatten(row, cells, widths);
        Along[row] = Middles(widths);
        Lengths[row] = widths.Sum();
    }

    /// <summary>A foundation chain gives to the first row, where that has somewhat more stitches.</summary>
    private void StretchFoundation()
    {
        if (Piece.Rows[0].Kind != RowKind.Foundation || Piece.Rows[0].Joined || Piece.Rows[1].Kind != RowKind.Row || Lengths[0] < ShortestStretched) return;
        double stretch = Lengths[1] / Lengths[0];
        if (stretch is < 1 or > MostStretch) return;
        for (int i = 0; i < Widths[0].Length; i++) Widths[0][i] *= stretch;
        Along[0] = Middles(Widths[0]);
        Lengths[0] *= stretch;
    }

    private static double[] Middles(double[] widths)
    {
        var along = new double[widths.Length];
        double at = 0;
        for (int i = 0; i < widths.Length; i++)
        {
            along[i] = at + (widths[i] / 2);
            at += widths[i];
        }
        return along;
    }

    /// <summary>Chains skipped at the end of a foundation stand up as the first row's turning chain.</summary>
    private void HideSkipped(int row, Cell[] cells, double[] widths)
    {
        if (row > 0 || Piece.Rows[row].Kind != RowKind.Foundation || Piece.Rows[row].Joined || FirstOn(row) is not { } first) return;
        long last = first.Cells().SelectMany(cell => cell.Feet).Where(foot => foot.Row == row).Select(foot => foot.Place).DefaultIfEmpty(cells.Length).Max();
        if (cells.Length - 1 - last is >= 1 and <= MostSkipped)
            for (long i = last + 1; i < cells.Length; i++) widths[i] = 0;
    }

    private WorkedRow? FirstOn(int row) => Piece.Rows.FirstOrDefault(other => other.Index > row && other.Status == RowStatus.Checked);

    private void Arches(Cell[] cells, double[] widths, bool closed)
    {
        for (int i = 0; i < cells.Length; i++)
        {
            if (cells[i].Kind != CellKind.Chains || Beside(cells, widths, i, -1, closed) is not { } left || Beside(cells, widths, i, 1, closed) is not { } right || left == right) continue;
            if (FootOf(cells[left]) is not { } from || FootOf(cells[right]) is not { } to || from.Row != to.Row || AlongOf(from) is not { } start || AlongOf(to) is not { } end) continue;
            double gap = Math.Abs(end - start);
            if (Closed(from.Row)) gap = Math.Min(gap, Lengths[from.Row] - gap);
            if (gap < 0.5 || (from.Row == 0 && Piece.Rows[0].Joined)) continue;
            widths[i] = Math.Clamp(gap - ((widths[left] + widths[right]) / 2), Math.Max(Math.Min(1, widths[i]), Math.Min(LongestArch, TightestArch * widths[i])), widths[i]);
        }
    }

    private static int? Beside(Cell[] cells, double[] widths, int at, int step, bool closed)
    {
        for (int hop = 1, i = at + step; hop < cells.Length; hop++, i += step)
        {
            if ((i < 0 || i >= cells.Length) && !closed) return null;
            i = (i + cells.Length) % cells.Length;
            if (widths[i] > 0) return i;
        }
        return null;
    }

    private static Foot? FootOf(Cell cell) => cell.Feet.Count == 1 && cell.Kind is CellKind.Stitch or CellKind.TurningChain && cell.Feet.Count > 0 ? cell.Feet[0] : null;

    /// <summary>Each flat round is longer than the one inside it by 2π times its height.</summary>
    private void Flatten(int row, Cell[] cells, double[] widths)
    {
        double length = widths.Sum();
        int below = Enumerable.Range(0, row).Where(Closed).DefaultIfEmpty(Piece.Rows[row].Into == 0 ? 0 : -1).MaxBy(inner => round[Math.Max(0, inner)]);
        double inside = below < 0 || below >= row ? 0 : Closed(below) ? round[below] : Piece.Rows[0].Joined ? 2 * Math.PI * Rings.Radius(Piece.Rows[0].Chains()) : Inner(cells);
        double[] heights = [.. cells.Where(cell => cell.Kind == CellKind.Stitch).Select(HeightOf)];
        double height = heights.Length == 0 ? 1 : heights.Average();
        double flat = inside + (2 * Math.PI * height);
        if (inside > 0 && length > 0 && length < flat) Stretch(cells, widths, length, flat);
        else if (inside > 0 && length > flat) Taller[row] = Math.Min(MostTaller, (length - inside) / (2 * Math.PI * height));
        round[row] = widths.Sum();
        Radius[row] = (below >= 0 ? Radius[below] : 0) + (height * Taller[row]);
    }

    /// <summary>A handle is as long as what it passes over, and that was stretched already; the rest of its round is stretched in its place.</summary>
    private static void Stretch(Cell[] cells, double[] widths, double length, double flat)
    {
        double handles = widths.Where((_, i) => Straps.IsStrap(cells[i])).Sum();
        if (handles >= length) handles = 0;
        double by = Math.Max(1, (flat - handles) / (length - handles));
        for (int i = 0; i < widths.Length; i++)
            if (handles == 0 || !Straps.IsStrap(cells[i])) widths[i] *= by;
    }

    /// <summary>Round what a first round stands: one chain, or both sides of many.</summary>
    private static double Inner(Cell[] cells)
    {
        long places = cells.SelectMany(cell => cell.Feet).Where(foot => foot.Row == 0).Select(foot => foot.Place).Distinct().Count();
        return places <= 1 ? 2 * Math.PI * Rings.MagicRadius : 2 * places;
    }

    private double HeightOf(Cell cell)
    {
        StitchForm form = forms.Of(cell.Stitch);
        return form.Kind == FormKind.Unknown ? 1 : Math.Max(0.5, form.Height);
    }
}
