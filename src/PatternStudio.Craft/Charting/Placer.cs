using PatternStudio.Craft.Charting.Layout;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>
/// Places every cell of a piece: each stitch above its feet, rows alternating as they were worked, heights as the stitches give them.
/// </summary>
internal sealed class Placer(WorkedPiece piece, PieceCells known, StitchForms forms, Construction construction, Ground ground, double pitch)
{
    /// <summary>Room for the words that stand in place of rows.</summary>
    private const double GapHeight = 2.6;

    /// <summary>How far a row number moves out for a chain that stands beside its row.</summary>
    private const double BesideChain = 0.7;

    private readonly List<PlacedRow> placed = [];
    private readonly Along along = new(ground, construction, pitch);

    public IReadOnlyList<PlacedRow> Place()
    {
        for (int i = 0; i < piece.Rows.Count; i++)
        {
            placed.Add(Place(piece.Rows[i], i));
            if (i > 0 && ground.Span is null && placed[i].Row.Kind == RowKind.Row && SkippedChains.StandUp(placed[i - 1], placed[i]))
                placed[i] = placed[i] with { LabelAt = placed[i].LabelAt - (placed[i].Direction * BesideChain) };
        }
        return placed;
    }

    private PlacedRow? Below(WorkedRow row, int index) =>
        index == 0 ? null : placed[row.Into >= 0 && row.Into < index ? row.Into : index - 1];

    private PlacedRow Place(WorkedRow row, int index)
    {
        PlacedRow? below = Below(row, index);
        double low = below?.High ?? 0;
        if (row.Status != RowStatus.Checked) return new PlacedRow(row, index, [], Turn(row, below), low, low + (below is { Cells.Length: 0 } ? 0 : GapHeight)) { LabelAt = below?.LabelAt ?? 0 };
        Cell[] cells = known.Cells[index];
        if (ground.Span is not null && Rings.IsCentre(row, cells)) return Rings.Place(row, index, cells, forms);
        Spread spread = along.Of(row, cells, known.Widths[index], Feet(cells), below, Turn(row, below));
        double[] tops = new Tops(ground, this, spread).Of(row, cells, below);
        return Together(row, index, cells, spread, tops, below);
    }

    private PlacedRow Together(WorkedRow row, int index, Cell[] cells, Spread spread, double[] tops, PlacedRow? below)
    {
        var all = new PlacedCell[cells.Length];
        for (int i = 0; i < cells.Length; i++)
            all[i] = new PlacedCell(cells[i], FormOf(cells[i]), spread.U[i], tops[i], spread.Width[i]);
        var whole = new PlacedRow(row, index, all, spread.Direction, below?.MeanTop ?? 0, tops.DefaultIfEmpty(0).Max()) { LabelAt = spread.LabelAt };
        for (int i = 0; i < cells.Length; i++)
            if (cells[i].Kind == CellKind.Join && JoinSpot(cells[i], whole, index) is { } spot)
                all[i] = all[i] with { U = spot.U, T = spot.T };
        return whole;
    }

    /// <summary>A join stands on what it joins to, which may be a stitch of its own round.</summary>
    private Spot? JoinSpot(Cell join, PlacedRow own, int index) =>
        join.Feet.IsEmpty ? null : join.Feet[0].Row == index ? Spot.In(own, join.Feet[0]) : FindSpot(join.Feet[0]);

    /// <summary>Where a foot stands; null where its row could not be placed.</summary>
    public Spot? FindSpot(Foot foot) =>
        foot.Row >= 0 && foot.Row < placed.Count ? Spot.In(placed[foot.Row], foot) : null;

    /// <summary>Height of the outermost row so far.</summary>
    public double Outermost => placed.Max(row => row.MeanTop);

    public StitchForm FormOf(Cell cell) => forms.Of(cell.Stitch);

    /// <summary>For each cell the mean u of its feet; null where it has none that is known, or stands in the ring.</summary>
    private double?[] Feet(Cell[] cells) =>
        [.. cells.Select(cell => cell.Kind == CellKind.Join || cell is { Kind: CellKind.TurningChain, Counts: false } ? null : MeanU(cell.Feet.Select(FindSpot).OfType<Spot>().Where(spot => !spot.Centre).ToList()))];

    private double? MeanU(List<Spot> spots) =>
        spots.Count == 0 ? null : spots[0].U + spots.Average(spot => ground.Difference(spots[0].U, spot.U));

    /// <summary>+1 to the right (or anticlockwise). A foundation runs to the right, so the first row comes back to the left.</summary>
    private int Turn(WorkedRow row, PlacedRow? below)
    {
        if (ground.Wraps && (below is null || below.Low < 0)) return 1;
        if (ground.Wraps || (row.Kind == RowKind.Round && below is { Row.Kind: not RowKind.Foundation })) return (below?.Direction ?? 1) * (row.Turned ? -1 : 1);
        return row.Kind == RowKind.Foundation ? (row.Joined ? -1 : 1) : below is null ? -1 : -below.Direction;
    }
}

/// <summary>A place that stitches stand on.</summary>
/// <param name="U">Along the row.</param>
/// <param name="T">Height of the place.</param>
/// <param name="HostHeight">Height of the stitch there, for post stitches that go round it.</param>
/// <param name="Centre">True for the ring, where every u is as good.</param>
internal readonly record struct Spot(double U, double T, double HostHeight, bool Centre)
{
    /// <summary>The place of a foot in a row; null where the row has no such cell.</summary>
    public static Spot? In(PlacedRow row, Foot foot)
    {
        if (foot.Place < 0 || foot.Place >= row.Cells.Length) return null;
        PlacedCell host = row.Cells[foot.Place];
        double u = host.U;
        if (foot.Chain >= 0 && host.Cell.Chains > 1)
            u += row.Direction * host.Width * (((foot.Chain + 0.5) / host.Cell.Chains) - 0.5);
        double rise = host.Cell.Kind == CellKind.Chains ? ChainPath.Rise(host.Cell) : 0;
        return new Spot(u, host.T + rise, host.Form.Height, row.Low < 0 && (host.Cell.Kind == CellKind.Ring || foot.Kind == FootKind.Ring || !row.Row.Joined));
    }
}
