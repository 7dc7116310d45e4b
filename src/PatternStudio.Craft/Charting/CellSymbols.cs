using PatternStudio.Craft.Charting.Layout;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>Draws the laid out cells of a piece.</summary>
internal sealed class CellSymbols(IReadOnlyList<LaidRow> rows, ChartNames names, SymbolStyle style)
{
    /// <summary>More chains than this in one run may be drawn as a line.</summary>
    private const int MostSingle = 24;

    private const double ChainHeight = 0.6;

    /// <summary>A turning chain begins somewhat above what it stands on.</summary>
    private const double AboveFoot = 0.4;
    private const double AboveRing = 1.15;

    /// <summary>Length of one chain of a bow.</summary>
    private const double BowedChain = 0.5;

    private readonly Standing standing = new(rows);

    public EquatableArray<Symbol> Of(LaidRow row, ColourPatches? patches = null)
    {
        var symbols = new List<Symbol>(row.Cells.Length);
        for (int i = 0; i < row.Cells.Length; i++)
        {
            Cell cell = row.Cells[i].Cell;
            string name = names.Short(cell);
            EquatableArray<Shape> shapes = (patches is null ? Shapes(row, i, name) : patches.Of(row, i)).ToEquatableArray();
            if (!shapes.IsEmpty) symbols.Add(new Symbol(row.Index, i, cell.Stitch, name, cell.Source, shapes));
        }
        return symbols.ToEquatableArray();
    }

    private IEnumerable<Shape> Shapes(LaidRow row, int at, string name)
    {
        LaidCell laid = row.Cells[at];
        Cell cell = laid.Cell;
        return cell.Kind switch
        {
            CellKind.Stitch => Stitch(row, laid, name),
            CellKind.Chains when laid.Ground is { } foot => Dots.Chain(cell.Chains, share => foot.Toward(laid.Top, share)),
            CellKind.Chains when cell.Chains > MostSingle => LongChain(row, at),
            CellKind.Chains => cell.Chains == 0 ? [] : Dots.Chain(cell.Chains, new ChainPath(row, at).At),
            CellKind.TurningChain when laid.Ground is { } foot => Dots.Chain(Math.Max(1, cell.Chains), share => foot.Toward(laid.Top, share)),
            CellKind.TurningChain => cell.Chains == 0 ? [] : Dots.Chain(cell.Chains, Upright(row, laid)),
            CellKind.FoundationChain when laid.Stance == Stance.Hidden => [],
            CellKind.FoundationChain when laid.Stance == Stance.Upright => Dots.Chain(1, share => laid.Top + (laid.Up * (ChainHeight * (share - 0.5)))),
            CellKind.FoundationChain when row.IsCentre && !row.Row.Joined => Dots.Chain(1, share => laid.Top + (laid.Up.Right() * (0.44 * (share - 0.5)))),
            CellKind.FoundationChain => Dots.Chain(Math.Max(1, cell.Chains), new ChainPath(row, at).At, Dots.OfFoundation),
            CellKind.Ring => Ring(cell, row),
            CellKind.Picot => Picot(row, at),
            _ => [Dots.At(JoinAt(row, laid))],
        };
    }

    /// <summary>A long chain over a short way is a line with its number.</summary>
    private static IEnumerable<Shape> LongChain(LaidRow row, int at)
    {
        int chains = row.Cells[at].Cell.Chains;
        var path = new ChainPath(row, at);
        if (row.Cells[at].Width > chains * 0.4) return Dots.Chain(chains, path.At);
        Point middle = path.At(0.5);
        return [new Curve(path.At(0), (middle * 2) - path.At(0).Toward(path.At(1), 0.5), path.At(1)), new Words(middle + (row.Cells[at].Up * 0.6), $"{chains} ch", 0.7)];
    }

    private Point JoinAt(LaidRow row, LaidCell laid) =>
        (!laid.Cell.Feet.IsEmpty && standing.Of(laid.Cell.Feet[0], laid.Top) is { } at ? at : laid.Top) + (laid.Up * 0.2);

    private IEnumerable<Shape> Stitch(LaidRow row, LaidCell laid, string name)
    {
        Point[] feet = Feet(row, laid);
        IEnumerable<Shape> shapes = SymbolComposer.Compose(laid.Form, feet, laid.Top, laid.Up, name, style);
        Shape? mark = laid.Cell.Feet.IsEmpty ? null : SymbolComposer.LoopMark(laid.Cell.Feet[0].Kind, feet[0], laid.Top, style);
        return mark is null ? shapes : shapes.Append(mark);
    }

    private Point[] Feet(LaidRow row, LaidCell laid)
    {
        Point[] feet = laid.Ground is { } ground ? [ground] : [.. laid.Cell.Feet.Select(foot => standing.Of(foot, laid.Top)).OfType<Point>()];
        return feet.Length > 0 ? feet : [laid.Top - (laid.Up * Math.Max(0.9, laid.Form.Height))];
    }

    private Func<double, Point> Upright(LaidRow row, LaidCell laid)
    {
        bool own = !laid.Cell.Feet.IsEmpty && laid.Cell.Feet[0].Row != row.Index && (laid.Width > 0 || LeadsAway(row, laid)) && (laid.Cell.Counts || laid.Cell.Chains > 1);
        Point foot = own && Feet(row, laid) is { } feet ? feet[0] : laid.Top - (laid.Up * Math.Max(ChainHeight, laid.Cell.Counts ? laid.Form.Height : laid.Cell.Chains * ChainHeight));
        if (!own && laid.Width <= 0 && Aside(row, laid) is var by && by != default) return share => foot.Toward(laid.Top, share) + by;
        if (own && laid.Width <= 0 && Bow(row, laid, foot) is { } bow) return bow;
        Point start = own ? foot + ((laid.Top - foot).Unit() * Math.Min(InCentre(laid) ? AboveRing : AboveFoot, (laid.Top - foot).Length / 2)) : foot;
        return share => start.Toward(laid.Top, share);
    }

    /// <summary>A chain longer than its way bows outward; null for one that is not.</summary>
    private static Func<double, Point>? Bow(LaidRow row, LaidCell chain, Point foot)
    {
        double length = chain.Cell.Chains * BowedChain;
        double way = (chain.Top - foot).Length;
        if (way >= length || row.Beside(Array.IndexOf(row.Cells, chain), 1) is not { } first) return null;
        Point outward = (chain.Top - first.Top).Unit();
        Point toward = foot.Toward(chain.Top, 0.5) + (outward * Math.Sqrt((length * length) - (way * way)));
        return share => foot.Toward(toward, share).Toward(toward.Toward(chain.Top, share), share);
    }

    /// <summary>True for a chain that stands on another place than the first stitch does, and leads from there to it.</summary>
    private static bool LeadsAway(LaidRow row, LaidCell chain) =>
        row.Beside(Array.IndexOf(row.Cells, chain), 1) is { Cell: { Kind: CellKind.Stitch, Feet: [{ } first, ..] } } && (first.Row, first.Place) != (chain.Cell.Feet[0].Row, chain.Cell.Feet[0].Place);

    /// <summary>How far a chain beside its row must move out for a first stitch that leans toward it.</summary>
    private Point Aside(LaidRow row, LaidCell chain)
    {
        if (row.Beside(Array.IndexOf(row.Cells, chain), 1) is not { } first || first.Cell.Kind != CellKind.Stitch) return default;
        Point outward = (chain.Top - first.Top).Unit();
        Point lean = Feet(row, first)[0] - first.Top;
        double by = (lean.X * outward.X) + (lean.Y * outward.Y);
        return by > 0.1 ? outward * by : default;
    }

    private bool InCentre(LaidCell laid) => laid.Cell.Feet is [{ } foot, ..] && foot.Row >= 0 && foot.Row < rows.Count && rows[foot.Row].IsCentre;

    private static IEnumerable<Shape> Ring(Cell cell, LaidRow row)
    {
        double radius = row.Radius;
        if (cell.Chains == 0) return [new Oval(row.Centre, radius - 0.1, radius - 0.1, 0), new Oval(row.Centre, radius - 0.2, radius - 0.2, 0)];
        var round = new RoundGround();
        return Dots.Chain(cell.Chains, share => row.Centre + round.At(PolygonGround.Bottom + share, radius - 0.15));
    }

    /// <summary>A small loop of chains on the stitch before it, closed by a slip stitch.</summary>
    private static IEnumerable<Shape> Picot(LaidRow row, int at)
    {
        LaidCell host = row.Beside(at, -1) ?? row.Cells[at];
        double size = 0.14 * Math.Max(3, row.Cells[at].Cell.Chains);
        Point up = host.Up;
        Point centre = host.Top + (up * size);
        Point Path(double share)
        {
            double angle = 2 * Math.PI * (0.08 + (0.84 * share));
            return centre - (up * (size * Math.Cos(angle))) + (up.Right() * (size * Math.Sin(angle)));
        }
        return Dots.Chain(Math.Max(1, row.Cells[at].Cell.Chains), Path).Append(Dots.At(host.Top));
    }
}
