using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>
/// Makes room where symbols lie over each other, as who draws a chart by hand stretches a stitch here and there: both symbols are pushed apart, and the fabric about them gives way a
/// little, the less the farther from them.
/// </summary>
internal sealed class Clearance(IReadOnlyList<LaidRow> rows)
{
    private const int Passes = 14;
    private const int MostInVain = 4;
    private const int Steps = 60;
    private const long MostCells = 4000;

    /// <summary>More collisions than this are no lack of room but a layout folded over itself.</summary>
    private const int MostPairs = 60;

    /// <summary>Symbols may share so much of the smaller; those in one place, or one on the other, meet at their feet and may share more.</summary>
    private const double Apart = 0.11;
    private const double Touching = 0.34;

    /// <summary>So much more than they may share is borne where nothing worse is: a drawing by custom is not bent for it.</summary>
    private const double Bearable = 0.04;

    /// <summary>A row bent sharper than this (cosine) runs back.</summary>
    private const double Back = -0.5;

    /// <summary>How stiffly a place stays where it is, a bar keeps its shape, and a pair is held apart.</summary>
    private const double Staying = 0.08;
    private const double Keeping = 1;
    private const double Pushing = 10;

    private static readonly ChartNames Names = new(Terminology.Us);

    /// <summary>The rows with room made; the same rows where nothing collides or nothing helps.</summary>
    public static List<LaidRow> Of(List<LaidRow> rows)
    {
        if (rows.Sum(row => (long)row.Cells.Length) > MostCells) return rows;
        List<Collision> collisions = new Clearance(rows).Collisions();
        if (collisions.Count > MostPairs || !collisions.Exists(collision => collision.Excess > Bearable)) return rows;
        (List<LaidRow> best, double least) = (rows, Trouble(rows, collisions));
        List<LaidRow> now = rows;
        int vain = 0;
        for (int pass = 0; pass < Passes && vain < MostInVain && collisions.Count > 0; pass++)
        {
            now = new Clearance(now).Cleared(collisions);
            collisions = new Clearance(now).Collisions();
            vain++;
            if (Trouble(now, collisions) is var trouble && trouble < least) (best, least, vain) = (now, trouble, 0);
        }
        return best;
    }

    /// <summary>How much lies over other symbols, in shares of symbols, and how often a row runs back.</summary>
    public static double TroubleOf(List<LaidRow> rows) => Trouble(rows, new Clearance(rows).Collisions());

    /// <summary>Rows that run back are worse than what they make room for.</summary>
    private static double Trouble(List<LaidRow> rows, List<Collision> collisions) => collisions.Sum(collision => collision.Excess) + rows.Sum(RunsBack);

    private static int RunsBack(LaidRow row)
    {
        Point[] tops = row.IsCentre ? [] : [.. row.Cells.Where(cell => cell.Width > 0).Select(cell => cell.Top)];
        int back = 0;
        for (int i = 2; i < tops.Length; i++)
        {
            (Point way, Point next) = (tops[i - 1] - tops[i - 2], tops[i] - tops[i - 1]);
            if ((way.X * next.X) + (way.Y * next.Y) < Back * way.Length * next.Length) back++;
        }
        return back;
    }

    private readonly record struct Place(int Row, int Cell);

    /// <param name="One">A symbol.</param>
    /// <param name="Other">Another that lies over it.</param>
    /// <param name="Move">How far the other must move from the first.</param>
    /// <param name="Excess">Share of the smaller that is too much.</param>
    private readonly record struct Collision(Place One, Place Other, Point Move, double Excess);

    private List<Collision> Collisions()
    {
        var tiles = new Dictionary<(int X, int Y), List<(Place At, SymbolOutline Outline)>>();
        foreach ((Place At, SymbolOutline Outline) symbol in Outlines())
            foreach ((int, int) tile in SymbolTiles.Of(symbol.Outline.Box))
                (tiles.TryGetValue(tile, out List<(Place, SymbolOutline)>? there) ? there : tiles[tile] = []).Add(symbol);
        var found = new List<Collision>();
        foreach (((int, int) at, List<(Place At, SymbolOutline Outline)> tile) in tiles)
            for (int i = 0; i < tile.Count; i++)
                for (int j = i + 1; j < tile.Count; j++)
                    if (MeetFirst(tile[i].Outline.Box, tile[j].Outline.Box) == at && Between(tile[i], tile[j]) is { } collision) found.Add(collision);
        return found;
    }

    private IEnumerable<(Place At, SymbolOutline Outline)> Outlines()
    {
        var symbols = new CellSymbols(rows, Names, SymbolStyle.Cyc);
        foreach (LaidRow row in rows.Where(row => !row.IsCentre || row.Row.Joined))
            foreach (Symbol symbol in symbols.Of(row))
                if (new Place(row.Index, (int)symbol.Cell) is var at && Stands(Cell(at)) && !Crosses(at) && new SymbolOutline(symbol.Shapes) is { Box: { Width: < SymbolTiles.Largest, Height: < SymbolTiles.Largest } } outline)
                    yield return (at, outline);
    }

    /// <summary>The tile of the corner where two boxes begin to meet, so that of all tiles that both are in one looks at them; null where they don't meet.</summary>
    private static (int X, int Y)? MeetFirst(Box one, Box other)
    {
        (double left, double top) = (Math.Max(one.Left, other.Left), Math.Max(one.Top, other.Top));
        return left < Math.Min(one.Right, other.Right) && top < Math.Min(one.Bottom, other.Bottom) ? SymbolTiles.Of(left, top) : null;
    }

    private Collision? Between((Place At, SymbolOutline Outline) one, (Place At, SymbolOutline Outline) other)
    {
        (double share, Point move) = one.Outline.Overlap(other.Outline);
        if (share <= Apart || CrossEachOther(one.At, other.At)) return null;
        double most = Touch(one.At, other.At) ? Touching : Apart;
        return share > most ? new Collision(one.At, other.At, move, share - most) : null;
    }

    private Cell Cell(Place at) => rows[at.Row].Cells[at.Cell].Cell;

    private static bool Stands(Cell cell) => cell.Kind is CellKind.Stitch or CellKind.Chains or CellKind.TurningChain or CellKind.FoundationChain;

    /// <summary>Posts reach round what they stand on and spikes down over it: they cross other symbols by their nature.</summary>
    private bool Crosses(Place at) => Cell(at).Feet.Any(foot => foot.Kind is FootKind.FrontPost or FootKind.BackPost || (foot.Row >= 0 && foot.Row < Math.Max(0, rows[at.Row].Row.Into) && foot.Row < rows.Count && rows[foot.Row].Row.Kind == rows[at.Row].Row.Kind));

    /// <summary>Crossed stitches: their feet come in the other order than the row has them.</summary>
    private bool CrossEachOther(Place one, Place other)
    {
        if (one.Row != other.Row || Cell(one).Feet.IsEmpty || Cell(other).Feet.IsEmpty || Cell(one).Feet[0].Row != Cell(other).Feet[0].Row) return false;
        return (Cell(other).Feet[0].Place - Cell(one).Feet[0].Place) * (other.Cell - one.Cell) * Direction(rows[one.Row]) < 0;
    }

    /// <summary>Which way a row runs along the row below: +1 or -1.</summary>
    private static int Direction(LaidRow row)
    {
        int first = Array.FindIndex(row.Cells, HasFoot);
        int last = Array.FindLastIndex(row.Cells, HasFoot);
        return first >= 0 && row.Cells[last].Cell.Feet[0].Place < row.Cells[first].Cell.Feet[0].Place ? -1 : 1;

        static bool HasFoot(LaidCell cell) => cell.Cell.Kind == CellKind.Stitch && !cell.Cell.Feet.IsEmpty;
    }

    private bool Touch(Place one, Place other)
    {
        EquatableArray<Foot> feet = Cell(one).Feet;
        return feet.Any(foot => foot.Row == other.Row && foot.Place == other.Cell) || Cell(other).Feet.Any(foot => (foot.Row == one.Row && foot.Place == one.Cell) || feet.Any(own => own.Row == foot.Row && own.Place == foot.Place));
    }

    /// <summary>All places moved as little as holds the colliding apart.</summary>
    private List<LaidRow> Cleared(List<Collision> collisions)
    {
        var builder = new NetBuilder(rows);
        FabricNet net = builder.Net;
        int count = net.Nodes;
        (int[] starts, int[] nodes, double[] shares) = net.Arrays();
        (Mix Apart, Point Move)[] pushes = [.. collisions.Select(collision => (builder, collision)).Select(at => (Between(at.builder, at.collision), at.collision.Move)).Where(push => push.Item1 is not null).Select(push => (push.Item1!.Value, push.Move))];
        if (pushes.Length == 0) return [.. rows];
        var diagonal = new double[count];
        Array.Fill(diagonal, Staying);
        for (int bar = 0; bar < net.Bars; bar++)
            for (int i = starts[bar]; i < starts[bar + 1]; i++) diagonal[nodes[i]] += Keeping * shares[i] * shares[i];
        (double[] x, double[] y) = (new double[count], new double[count]);
        (double[] rightX, double[] rightY) = (new double[count], new double[count]);
        foreach ((Mix mix, Point move) in pushes)
            foreach ((int node, double share) in mix.Parts)
            {
                diagonal[node] += Pushing * share * share;
                rightX[node] += Pushing * share * move.X;
                rightY[node] += Pushing * share * move.Y;
            }
        ConjugateGradients.Solve(Multiply, x, rightX, diagonal, Steps);
        ConjugateGradients.Solve(Multiply, y, rightY, diagonal, Steps);
        return Moved(builder, [.. x.Select((at, i) => new Point(at, y[i]))]);

        void Multiply(double[] by, double[] product)
        {
            for (int i = 0; i < count; i++) product[i] = Staying * by[i];
            for (int bar = 0; bar < net.Bars; bar++)
            {
                double pull = 0;
                for (int i = starts[bar]; i < starts[bar + 1]; i++) pull += shares[i] * by[nodes[i]];
                for (int i = starts[bar]; i < starts[bar + 1]; i++) product[nodes[i]] += Keeping * shares[i] * pull;
            }
            foreach ((Mix mix, _) in pushes)
            {
                double pull = 0;
                foreach ((int node, double share) in mix.Parts) pull += share * by[node];
                foreach ((int node, double share) in mix.Parts) product[node] += Pushing * share * pull;
            }
        }
    }

    /// <summary>The way from the middle of one symbol to that of the other, as a mix of nodes; null where both hang on the same.</summary>
    private static Mix? Between(NetBuilder builder, Collision collision)
    {
        var parts = new Dictionary<int, double>();
        foreach ((int node, double share) in builder.MiddleOf(collision.One.Row, collision.One.Cell).Parts) parts[node] = parts.GetValueOrDefault(node) - share;
        foreach ((int node, double share) in builder.MiddleOf(collision.Other.Row, collision.Other.Cell).Parts) parts[node] = parts.GetValueOrDefault(node) + share;
        (int, double)[] left = [.. parts.Where(part => Math.Abs(part.Value) > 1e-6).Select(part => (part.Key, part.Value))];
        return left.Length == 0 ? null : new Mix(left);
    }

    private List<LaidRow> Moved(NetBuilder builder, Point[] by)
    {
        var moved = new List<LaidRow>(rows.Count);
        foreach (LaidRow row in rows)
        {
            int[] node = builder.NodeOf[row.Index];
            Point Of(int cell) => builder.Carrier(row.Index, cell) is >= 0 and var carrier ? by[carrier] : default;
            Point centre = row.IsCentre && node.Length > 0 ? by[node[0]] : default;
            moved.Add(row with { Centre = row.Centre + centre, Label = row.Label + (node.Length == 0 ? default : Of(0)), Cells = [.. row.Cells.Select((cell, i) => cell with { Top = cell.Top + Of(i) })] });
        }
        return moved;
    }
}
