using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>Draws the placed cells of a piece.</summary>
internal sealed class CellSymbols(IReadOnlyList<PlacedRow> rows, Ground ground, ChartNames names)
{
    /// <summary>A stitch worked into a space has its foot under the chains.</summary>
    private const double UnderChain = 0.15;

    public EquatableArray<Symbol> Of(PlacedRow row)
    {
        var symbols = new List<Symbol>(row.Cells.Length);
        for (int i = 0; i < row.Cells.Length; i++)
        {
            Cell cell = row.Cells[i].Cell;
            string name = names.Short(cell);
            EquatableArray<Shape> shapes = Shapes(row, i, name).ToEquatableArray();
            if (!shapes.IsEmpty) symbols.Add(new Symbol(row.Index, i, cell.Stitch, name, cell.Source, shapes));
        }
        return symbols.ToEquatableArray();
    }

    private IEnumerable<Shape> Shapes(PlacedRow row, int at, string name)
    {
        PlacedCell placed = row.Cells[at];
        Cell cell = placed.Cell;
        return cell.Kind switch
        {
            CellKind.Stitch => Stitch(row, placed, name),
            CellKind.Chains => cell.Chains == 0 ? [] : Dots.Chain(cell.Chains, share => Hanging(row, placed, share)),
            CellKind.TurningChain => cell.Chains == 0 ? [] : Dots.Chain(cell.Chains, Upright(row, placed)),
            CellKind.FoundationChain when placed.Stance == Stance.Hidden => [],
            CellKind.FoundationChain when placed.Stance == Stance.Upright => Dots.Chain(1, share => ground.At(placed.U, placed.T + (0.6 * (share - 0.5)))),
            CellKind.FoundationChain => Dots.Chain(Math.Max(1, cell.Chains), share => Foundation(row, placed, share)),
            CellKind.Ring => Ring(cell, placed.T),
            CellKind.Picot => Picot(row, at),
            _ => [Dots.At(ground.At(placed.U, placed.T + 0.2))],
        };
    }

    private IEnumerable<Shape> Stitch(PlacedRow row, PlacedCell placed, string name)
    {
        Point top = ground.At(placed.U, placed.T);
        Point[] feet = [.. placed.Cell.Feet.Select(foot => FootPoint(foot, placed, row))];
        if (feet.Length == 0) feet = [ground.At(placed.U, row.Low)];
        Point up = (ground.At(placed.U, placed.T + 1) - top).Unit();
        IEnumerable<Shape> shapes = SymbolComposer.Compose(placed.Form, feet, top, up, name);
        Shape? mark = placed.Cell.Feet.IsEmpty ? null : SymbolComposer.LoopMark(placed.Cell.Feet[0].Kind, feet[0], top);
        return mark is null ? shapes : shapes.Append(mark);
    }

    private Point FootPoint(Foot foot, PlacedCell placed, PlacedRow row)
    {
        if (Spot(foot) is not { } spot) return ground.At(placed.U, row.Low);
        if (spot.Centre) return ground.At(placed.U, spot.T);
        bool post = foot.Kind is FootKind.FrontPost or FootKind.BackPost;
        double down = post ? spot.HostHeight / 2 : foot.Kind == FootKind.Space ? UnderChain : 0;
        return ground.At(spot.U, spot.T - down);
    }

    private Spot? Spot(Foot foot) => foot.Row < 0 || foot.Row >= rows.Count ? null : Charting.Spot.In(rows[foot.Row], foot);

    /// <summary>Chains lie along the tops of their neighbours; three and more rise in an arch.</summary>
    private Point Hanging(PlacedRow row, PlacedCell placed, double share)
    {
        double arch = placed.Cell.Chains < 3 ? 0 : 4 * share * (1 - share) * Math.Min(1.2, placed.Cell.Chains * 0.14);
        return ground.At(placed.U + (row.Direction * placed.Width * (share - 0.5)), placed.T - 0.2 + arch);
    }

    private Func<double, Point> Upright(PlacedRow row, PlacedCell placed)
    {
        double low = row.Index == 0 ? 0 : LowAt(row, placed);
        return share => ground.At(placed.U, low + ((placed.T - low) * share));
    }

    private double LowAt(PlacedRow row, PlacedCell placed)
    {
        double u = placed.U;
        if (!placed.Cell.Feet.IsEmpty && placed.Cell.Feet[0].Row != row.Index && Spot(placed.Cell.Feet[0]) is { } spot) return spot.T;
        PlacedRow below = rows[row.Row.Into >= 0 && row.Row.Into < row.Index ? row.Row.Into : row.Index - 1];
        return below.Cells.Length == 0 ? row.Low : below.Cells.MinBy(cell => Math.Abs(ground.Difference(cell.U, u))).T;
    }

    /// <summary>Chains of a foundation lie flat, round the ring that they form, or, two or three that only the first is worked into, small in the centre.</summary>
    private Point Foundation(PlacedRow row, PlacedCell placed, double share)
    {
        double u = placed.U + (row.Direction * placed.Width * (share - 0.5));
        if (row.Low >= 0) return ground.At(u, placed.T - 0.2);
        return row.Row.Joined ? new RoundGround().At(u, placed.T - 0.15) : new Point((placed.Width * (share - 0.5)) + placed.U - PolygonGround.Bottom - 0.5, 0);
    }

    private static IEnumerable<Shape> Ring(Cell cell, double radius)
    {
        if (cell.Chains == 0) return [new Oval(new Point(0, 0), Rings.MagicRadius - 0.1, Rings.MagicRadius - 0.1, 0), new Oval(new Point(0, 0), Rings.MagicRadius - 0.2, Rings.MagicRadius - 0.2, 0)];
        var round = new RoundGround();
        return Dots.Chain(cell.Chains, share => round.At(PolygonGround.Bottom + share, radius - 0.15));
    }

    /// <summary>A small loop of chains on the stitch before it, closed by a slip stitch.</summary>
    private IEnumerable<Shape> Picot(PlacedRow row, int at)
    {
        PlacedCell host = row.Cells[Math.Max(0, at - 1)];
        Point foot = ground.At(host.U, host.T);
        Point up = (ground.At(host.U, host.T + 1) - foot).Unit();
        double size = 0.14 * Math.Max(3, row.Cells[at].Cell.Chains);
        Point centre = foot + (up * size);
        Point Path(double share)
        {
            double angle = 2 * Math.PI * (0.08 + (0.84 * share));
            return centre - (up * (size * Math.Cos(angle))) + (up.Right() * (size * Math.Sin(angle)));
        }
        return Dots.Chain(Math.Max(1, row.Cells[at].Cell.Chains), Path).Append(Dots.At(foot));
    }
}
