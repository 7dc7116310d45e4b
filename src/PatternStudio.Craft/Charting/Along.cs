using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>Where each cell of a row is along it.</summary>
/// <param name="U">Middle of each cell.</param>
/// <param name="Width">Share of each cell.</param>
/// <param name="Direction">+1 or -1.</param>
/// <param name="LabelAt">Where the row number stands.</param>
/// <param name="Unit">One stitch width in units of u.</param>
internal sealed record Spread(double[] U, double[] Width, int Direction, double LabelAt, double Unit);

/// <summary>Spreads the cells of a row along it: evenly, and as near above their feet as the row as a whole allows.</summary>
internal sealed class Along(Ground ground, Construction construction, double pitch)
{
    /// <summary>Room for the round's number at its start, in stitch widths.</summary>
    private const double Seam = 1.2;

    /// <summary>A turning chain that does not count stands beside the first stitch, and is narrower than one.</summary>
    private const double Aside = 0.9;

    /// <summary>A chain made later goes on beside the last stitch.</summary>
    private const double BesideLast = 1.2;

    public Spread Of(WorkedRow row, Cell[] cells, double[] room, double?[] feet, PlacedRow? below, int turn)
    {
        double[] widths = [.. cells.Zip(room, WidthOf)];
        double[] centres = Centres(widths);
        double total = widths.Sum() + (ground.Wraps ? Seam : 0);
        double unit = ground.Span is { } span ? span / Math.Max(total, 1) : pitch;
        int direction = ground.Wraps ? turn : Direction(centres, feet) ?? turn;
        double[] u = CornerSpread.Of(ground, row, centres, total, feet, construction.Corners, direction) ?? Even(cells, centres, feet, direction * unit, below);
        if (row.Kind == RowKind.Foundation && below is not null && ground.Span is null)
            for (int i = 0; i < u.Length; i++) u[i] += direction * unit * BesideLast;
        if (ground.Span is null && below is not null) StandAside(cells, u, below, direction * unit);
        double[] shares = [.. widths.Select(width => width * unit)];
        return new Spread(u, shares, direction, LabelAt(cells, u, shares, direction, unit), unit);
    }

    /// <summary>A turning chain that does not count stands beside the edge of the row below, also where the row becomes narrower.</summary>
    private static void StandAside(Cell[] cells, double[] u, PlacedRow below, double step)
    {
        if (cells.Length == 0 || cells[0] is not { Kind: CellKind.TurningChain, Counts: false }) return;
        int sign = Math.Sign(step);
        double[] edge = [.. below.Cells.Where(cell => cell.Cell.Kind == CellKind.Stitch || cell.Cell.Counts).Select(cell => cell.U * sign)];
        if (edge.Length == 0) return;
        double beside = edge.Min() - Math.Abs(step) * (0.5 + (Aside / 2));
        u[0] = sign * Math.Min(sign * u[0], beside);
    }

    private static double WidthOf(Cell cell, double room) =>
        cell is { Kind: CellKind.TurningChain, Counts: false } ? Math.Max(room, Aside) : room;

    private static double[] Centres(double[] widths)
    {
        var centres = new double[widths.Length];
        double at = 0;
        for (int i = 0; i < widths.Length; i++)
        {
            centres[i] = at + (widths[i] / 2);
            at += widths[i];
        }
        return centres;
    }

    /// <summary>Which way the row runs, told by its feet; null where they don't tell.</summary>
    private static int? Direction(double[] centres, double?[] feet)
    {
        int[] standing = [.. Enumerable.Range(0, feet.Length).Where(i => feet[i] is not null)];
        if (standing.Length < 2) return null;
        double middle = standing.Average(i => centres[i]);
        double lean = standing.Sum(i => (centres[i] - middle) * feet[i]!.Value);
        return Math.Abs(lean) < 1e-6 ? null : Math.Sign(lean);
    }

    private double Start(PlacedRow? below, double step) =>
        ground.Wraps ? PolygonGround.Bottom + (step * Seam / 2)
        : ground.Span is { } span ? (step > 0 ? 0 : span)
        : below is { Cells.Length: > 0 } row ? row.Cells[^1].U : step < 0 ? 0 : 0.5;

    /// <summary>Even steps, moved as a whole so that the cells are on average right above their feet; in rows each then yields a little toward its own.</summary>
    private double[] Even(Cell[] cells, double[] centres, double?[] feet, double step, PlacedRow? below)
    {
        double start = Start(below, step);
        double[] u = [.. centres.Select(centre => start + (step * centre))];
        if (construction.Kind == ConstructionKind.StraightRows && below is { Cells.Length: > 0, Row.Kind: not RowKind.Foundation }) return Plumb(cells, u, below);
        double[] away = [.. Enumerable.Range(0, u.Length).Where(i => feet[i] is not null).Select(i => ground.Difference(u[i], feet[i]!.Value))];
        double move = away.Length == 0 || ground is HalfRoundGround ? 0 : away.Average();
        for (int i = 0; i < u.Length; i++) u[i] += move;
        return ground.Span is not null ? u : Yielding.Toward(Pull.Of(cells, feet, u, Math.Abs(step)), u);
    }

    /// <summary>The sides of straight rows are upright: each row's middle is above the middle of the row below.</summary>
    private static double[] Plumb(Cell[] cells, double[] u, PlacedRow below)
    {
        double move = Middle(below.Cells.Select(cell => (cell.Cell, cell.U))) - Middle(cells.Zip(u));
        return [.. u.Select(at => at + move)];
    }

    private static double Middle(IEnumerable<(Cell Cell, double U)> cells)
    {
        double[] standing = [.. cells.Where(at => RowTally.Width(at.Cell) > 0).Select(at => at.U)];
        return standing.Length == 0 ? 0 : (standing.Min() + standing.Max()) / 2;
    }

    private double LabelAt(Cell[] cells, double[] u, double[] shares, int direction, double unit)
    {
        double room = ground.Span is null ? 0.8 : 0.6;
        int first = Array.FindIndex(cells, cell => cell.Kind is not (CellKind.Join or CellKind.Picot));
        return first < 0 ? 0 : u[first] - (direction * ((shares[first] / 2) + (room * unit)));
    }
}
