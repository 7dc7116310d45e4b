using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Charting.Layout;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Charting;

/// <summary>What a maker needs of a chart, measured on the drawing: symbols apart, feet on what they are worked into, neighbours in order, straight edges straight.</summary>
internal sealed class ChartQuality
{
    public const double MostOverlap = 0.15;
    /// <summary>Stitches in one place meet at their feet, and a stitch touches what it stands on: so charts show that they belong together.</summary>
    public const double MostTouching = 0.4;
    /// <summary>No symbol reaches over a whole chart; a strap is as long as its chains.</summary>
    public const double MostSpread = 60;
    public const double FarthestFoot = 0.35;
    public const double MostUneven = 0.2;

    private readonly WorkedPiece piece;
    private readonly StitchForms forms;
    private readonly Dictionary<(int Row, long Cell), (Symbol Symbol, Outline Outline)> drawn = [];

    public ChartQuality(Drawing drawing, WorkedPiece piece, int number, StitchForms forms)
    {
        this.forms = forms;
        this.piece = piece = Rounded.Of(piece);
        foreach (DrawnRow row in drawing.Rows.Where(row => row.Piece == number))
            foreach (Symbol symbol in row.Symbols)
                drawn[(symbol.Row, symbol.Cell)] = (symbol, Outline.Of([.. symbol.Shapes]));
        Troubles = [.. Overlaps().Concat(Feet()).Concat(Order()).Concat(Edges())];
    }

    public IReadOnlyList<string> Troubles { get; }

    /// <summary>True for what stands in its row; slip stitches that move and picots lie on others by their nature.</summary>
    private static bool Stands(Cell cell) => cell.Kind is CellKind.Stitch or CellKind.Chains or CellKind.TurningChain or CellKind.FoundationChain;

    private IEnumerable<string> Overlaps()
    {
        var tiles = new Dictionary<(int, int), List<(int Row, long Cell)>>();
        foreach (((int Row, long Cell) at, (Symbol, Outline Outline) symbol) in drawn)
        {
            Box box = symbol.Outline.Box;
            if (Math.Max(MostSpread, CellAt(at).Chains) is var most && !(box.Width < most && box.Height < most))
            {
                yield return $"symbol {Name(at)} is {box.Width:0} wide and {box.Height:0} high";
                continue;
            }
            if (!Stands(CellAt(at))) continue;
            for (int x = (int)Math.Floor(box.Left / 3); x <= (int)Math.Floor(box.Right / 3); x++)
                for (int y = (int)Math.Floor(box.Top / 3); y <= (int)Math.Floor(box.Bottom / 3); y++)
                    (tiles.TryGetValue((x, y), out List<(int, long)>? tile) ? tile : tiles[(x, y)] = []).Add(at);
        }
        var seen = new HashSet<((int, long), (int, long))>();
        foreach (List<(int Row, long Cell)> tile in tiles.Values)
            for (int i = 0; i < tile.Count; i++)
                for (int j = i + 1; j < tile.Count; j++)
                    if (!BelongTogether(tile[i], tile[j]) && seen.Add((tile[i], tile[j])) && drawn[tile[i]].Outline.Overlap(drawn[tile[j]].Outline) is var share && share > (Touch(tile[i], tile[j]) ? MostTouching : MostOverlap))
                        yield return $"overlap {Name(tile[i])} and {Name(tile[j])}: {share:0.00}";
    }

    private bool Touch((int Row, long Cell) one, (int Row, long Cell) other)
    {
        EquatableArray<Foot> feet = CellAt(one).Feet;
        return feet.Any(foot => (foot.Row, foot.Place) == other) || CellAt(other).Feet.Any(foot => (foot.Row, foot.Place) == one || feet.Any(own => (own.Row, own.Place) == (foot.Row, foot.Place)));
    }

    /// <summary>A post stitch reaches round the stitch below, a spike down over it: there symbols cross by their nature, and crossed stitches cross.</summary>
    private bool BelongTogether((int Row, long Cell) one, (int Row, long Cell) other)
    {
        (Cell left, Cell right) = (CellAt(one), CellAt(other));
        return Layered(one.Row, other.Row) || Post(one) || Post(other) || InCentre(one) || InCentre(other) || ReachesDown(one.Row, left) || ReachesDown(other.Row, right) || (one.Row == other.Row && Crossed(one, other));
    }

    private bool Post((int Row, long Cell) at) => drawn[at].Symbol.Name.StartsWith("FP", StringComparison.OrdinalIgnoreCase) || drawn[at].Symbol.Name.StartsWith("BP", StringComparison.OrdinalIgnoreCase);

    /// <summary>The two or three chains that a round stands in are only hinted at, small in its middle.</summary>
    private bool InCentre((int Row, long Cell) at) => at.Row == 0 && !piece.Rows[0].Joined && piece.Rows[0].Length <= 6 && piece.Rows[1].Kind == RowKind.Round;

    /// <summary>Rounds worked behind others, into a round further in, lie under those in the fabric too.</summary>
    private bool Layered(int one, int other)
    {
        (int front, int back) = (Math.Min(one, other), Math.Max(one, other));
        return Enumerable.Range(front + 1, back - front).Any(row => piece.Rows[row].Kind == RowKind.Round && piece.Rows[row].Into >= 0 && piece.Rows[row].Into < front && piece.Rows[front].Kind == RowKind.Round);
    }

    private bool ReachesDown(int row, Cell cell) =>
        cell.Feet.Any(foot => foot.Kind is FootKind.FrontPost or FootKind.BackPost || (foot.Row < Math.Max(0, piece.Rows[row].Into) && piece.Rows[foot.Row].Kind == piece.Rows[row].Kind));

    /// <summary>True where the feet come in the other order than the row has them.</summary>
    private bool Crossed((int Row, long Cell) one, (int Row, long Cell) other)
    {
        (Cell left, Cell right) = one.Cell < other.Cell ? (CellAt(one), CellAt(other)) : (CellAt(other), CellAt(one));
        if (left.Feet.IsEmpty || right.Feet.IsEmpty || left.Feet[0].Row != right.Feet[0].Row) return false;
        long step = right.Feet[0].Place - left.Feet[0].Place;
        return step * Direction(one.Row) < 0;
    }

    /// <summary>Which way most of a row runs along the row below: +1 or -1.</summary>
    private int Direction(int row)
    {
        Foot[] feet = [.. piece.Rows[row].Cells().Where(cell => cell.Kind == CellKind.Stitch && !cell.Feet.IsEmpty).Select(cell => cell.Feet[0])];
        return feet.Length > 0 && feet[^1].Place < feet[0].Place ? -1 : 1;
    }

    private IEnumerable<string> Feet()
    {
        foreach (((int Row, long Cell) at, (Symbol, Outline Outline) symbol) in drawn)
            foreach (Foot foot in CellAt(at).Feet)
                if (CellAt(at).Kind == CellKind.Stitch && foot.Kind is not (FootKind.RowEnd or FootKind.Ring) && drawn.TryGetValue((foot.Row, foot.Place), out (Symbol, Outline Outline) host)
                    && CellAt((foot.Row, foot.Place)).Kind is not (CellKind.Picot or CellKind.Join) && Distance(at, foot) is > FarthestFoot and var far)
                    yield return $"foot {Name(at)} is {far:0.00} from {Name((foot.Row, foot.Place))}";
    }

    private static bool RunsBack(Point first, Point second, Point third)
    {
        (Point way, Point next) = (second - first, third - second);
        return (way.X * next.X) + (way.Y * next.Y) < -0.6 * way.Length * next.Length;
    }

    /// <summary>How far a stitch's drawing ends from what it is worked into; of a chain that a whole first round is worked into, the centre counts.</summary>
    private double Distance((int Row, long Cell) at, Foot foot)
    {
        Outline outline = drawn[at].Outline;
        bool centre = piece.Rows[at.Row].Kind == RowKind.Round && foot.Row == 0;
        return centre ? drawn.Where(host => host.Key.Row == 0).Min(host => outline.Distance(host.Value.Outline)) : outline.Distance(drawn[(foot.Row, foot.Place)].Outline);
    }

    /// <summary>Along its row each symbol comes after the one before: the row never runs back.</summary>
    private IEnumerable<string> Order()
    {
        foreach (WorkedRow row in piece.Rows)
        {
            (int Row, long Cell)[] along = [.. Enumerable.Range(0, (int)row.Length).Select(i => (row.Index, (long)i)).Where(at => drawn.ContainsKey(at) && Stands(CellAt(at)) && (CellAt(at).Kind != CellKind.TurningChain || CellAt(at).Counts))];
            for (int i = 2; i < along.Length; i++)
            {
                if (Crossed(along[i - 2], along[i - 1]) || Crossed(along[i - 1], along[i])) continue;
                if (RunsBack(Head(along[i - 2]), Head(along[i - 1]), Head(along[i])) && RunsBack(drawn[along[i - 2]].Outline.Middle, drawn[along[i - 1]].Outline.Middle, drawn[along[i]].Outline.Middle))
                    yield return $"order {Name(along[i - 1])} to {Name(along[i])} runs back";
            }
        }
    }

    /// <summary>The end of a symbol that is farthest from what it stands on; the middle of chains.</summary>
    private Point Head((int Row, long Cell) at)
    {
        Cell cell = CellAt(at);
        Outline outline = drawn[at].Outline;
        if (cell.Kind == CellKind.Chains || cell.Feet.IsEmpty || !drawn.TryGetValue((cell.Feet[0].Row, cell.Feet[0].Place), out (Symbol, Outline Outline) host)) return outline.Middle;
        Point foot = host.Outline.Middle;
        Point end = outline.Corners.MaxBy(corner => (corner - foot).Length);
        return outline.Middle.Toward(end, 0.5);
    }

    /// <summary>Rows with as many stitches as each other stand in a rectangle.</summary>
    private IEnumerable<string> Edges()
    {
        WorkedRow[] rows = [.. piece.Rows.Where(row => row is { Kind: RowKind.Row, Status: RowStatus.Checked } && row.Index > 0)];
        if (rows.Length != piece.Rows.Count - 1 || rows.Length < 2 || rows.Any(row => Width(row) != Width(rows[0]))) yield break;
        LaidRow[] laid = [.. new Layouts(piece, forms).Lay().Skip(1)];
        foreach (bool left in new[] { true, false })
        {
            double[] edge = [.. laid.Select(row => row.Cells.Where(cell => cell.Width > 0).Select(cell => cell.Top.X)).Select(tops => left ? tops.Min() : tops.Max())];
            double middle = (edge.Min() + edge.Max()) / 2;
            if (edge.Max(at => Math.Abs(at - middle)) is > MostUneven and var most) yield return $"edge {(left ? "left" : "right")} varies by {most:0.00}";
        }
    }

    private static long Width(WorkedRow row) => row.Cells().Sum(RowTally.Width);

    private readonly Dictionary<int, Cell[]> cells = [];

    private Cell CellAt((int Row, long Cell) at) => (cells.TryGetValue(at.Row, out Cell[]? row) ? row : cells[at.Row] = [.. piece.Rows[at.Row].Cells()])[at.Cell];

    private string Name((int Row, long Cell) at) => $"{piece.Rows[at.Row].Label}.{at.Cell} {drawn[at].Symbol.Name}";
}
