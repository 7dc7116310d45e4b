using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>Knots the net of a piece from its rows as first laid out.</summary>
internal sealed class NetBuilder
{
    private const double AlongRow = 1;
    private const double Stem = 1;

    private const double Shortest = 0.5;
    private const double ShortestChain = 0.8;

    /// <summary>The row below holds its own length; a panel's foot only helps.</summary>
    private const double AlongFeet = 0.4;

    private readonly IReadOnlyList<LaidRow> rows;
    private readonly FabricNet net = new();
    private readonly List<Point> places = [];
    private readonly int[][] nodeOf;
    private readonly double[][] along;
    private readonly double[] lengths;
    private readonly Point[] laid;
    private readonly int[]? known;
    private readonly Dictionary<Point, int> edgeOf = [];
    private int[]? ends;

    /// <param name="rows">The rows as they lie.</param>
    /// <param name="senses">To which side of its way each row grows, where that is known; null to see it from how they lie.</param>
    public NetBuilder(IReadOnlyList<LaidRow> rows, int[]? senses = null)
    {
        known = senses;
        Senses = new int[rows.Count];
        this.rows = rows;
        nodeOf = [.. rows.Select(row => new int[row.Cells.Length])];
        along = [.. rows.Select(row => new double[row.Cells.Length])];
        lengths = new double[rows.Count];
        foreach (LaidRow row in rows) Number(row);
        net.Nodes = places.Count;
        laid = [.. places];
        foreach (LaidRow row in rows) Knot(row);
    }

    public FabricNet Net => net;

    /// <summary>+1 for a row whose tops are to the left of its way, -1 to the right; 0 for one that has no net.</summary>
    public int[] Senses { get; }

    /// <summary>Where each node is in the first layout.</summary>
    public Point[] Places => laid;

    /// <summary>The node of each cell; -1 for one that takes no room.</summary>
    public int[][] NodeOf => nodeOf;

    /// <summary>The node that carries a cell: its own, or that of the neighbour it lies on or stands beside; -1 where its row has none.</summary>
    public int Carrier(int row, int cell)
    {
        int[] numbers = nodeOf[row];
        if (numbers[cell] >= 0) return numbers[cell];
        if (rows[row].Cells[cell].Cell.Kind == CellKind.TurningChain && Array.FindIndex(numbers, cell, node => node >= 0) is >= 0 and var next) return numbers[next];
        return Near(numbers, cell) ?? -1;
    }

    /// <summary>The middle of a symbol: half way from what it stands on to its top.</summary>
    public Mix MiddleOf(int row, int cell)
    {
        int carrier = Carrier(row, cell);
        if (carrier < 0) return new Mix([]);
        return nodeOf[row][cell] >= 0 && Feet(rows[row], rows[row].Cells[cell]) is { } feet ? Mix.Middle([Mix.Of(carrier), feet]) : Mix.Of(carrier);
    }

    private void Number(LaidRow row)
    {
        double at = 0;
        int centre = row.IsCentre && row.Cells.Length > 0 ? NewNode(row.Centre) : -1;
        for (int i = 0; i < row.Cells.Length; i++)
        {
            double width = row.Cells[i].Width;
            along[row.Index][i] = at + (width / 2);
            at += width;
            nodeOf[row.Index][i] = centre >= 0 ? centre : width > 0 ? NewNode(row.Cells[i].Top) : -1;
        }
        lengths[row.Index] = at;
    }

    private int NewNode(Point at)
    {
        places.Add(at);
        return places.Count - 1;
    }

    /// <summary>Panels from each standing cell to the next, the chains between them on their tops.</summary>
    private void Knot(LaidRow row)
    {
        if (row.IsCentre) return;
        int[] taking = [.. Enumerable.Range(0, row.Cells.Length).Where(i => nodeOf[row.Index][i] >= 0)];
        if (taking.Length < 2) return;
        Mix?[] feet = [.. taking.Select(i => Feet(row, row.Cells[i]))];
        int[] standing = [.. Enumerable.Range(0, taking.Length).Where(k => feet[k] is not null)];
        int sense = Senses[row.Index] = known?[row.Index] is { } told and not 0 ? told : Sense(row, taking, feet, standing);
        int direction = Direction(row, taking, standing);
        if (standing.Length < 2)
        {
            for (int k = 0; k + 1 < taking.Length; k++) Panel(row, taking, feet, k, Math.Min(k + 2, taking.Length - 1), sense, direction);
            return;
        }
        for (int s = 0; s + 1 < standing.Length; s++) Panel(row, taking, feet, s == 0 ? 0 : standing[s], s + 2 == standing.Length && !row.Closed ? taking.Length - 1 : standing[s + 1], sense, direction);
        if (row.Closed) Panel(row, taking, feet, standing[^1], standing[0] + taking.Length, sense, direction);
    }

    private void Panel(LaidRow row, int[] taking, Mix?[] feet, int first, int last, int sense, int direction)
    {
        int panel = net.Panels++;
        int count = taking.Length;
        int[] standing = [.. Enumerable.Range(first, last - first + 1).Where(k => feet[k % count] is not null)];
        double start = 0;
        var tops = new double[last - first + 1];
        for (int k = first + 1; k <= last; k++)
            tops[k - first] = tops[k - first - 1] + ((WidthOf(row, taking[(k - 1) % count]) + WidthOf(row, taking[k % count])) / 2);
        double gap = 0;
        if (standing.Length == 2)
        {
            (int a, int b) = (standing[0], standing[1]);
            gap = Gap(row, taking[a % count], taking[b % count], feet[a % count]!.Value, feet[b % count]!.Value, direction, tops[b - first] - tops[a - first]);
            start = ((tops[a - first] + tops[b - first]) / 2) - (gap / 2);
            net.Add(panel, feet[a % count]!.Value, feet[b % count]!.Value, new Point(sense * gap, 0), AlongFeet);
        }
        double HeightOf(int k) => feet[k % count] is null ? standing.Length == 0 ? 0 : standing.Average(s => Height(row, row.Cells[taking[s % count]])) : Height(row, row.Cells[taking[k % count]]);
        for (int k = first; k < last; k++)
            net.Add(panel, NodeMix(row, taking[k % count]), NodeMix(row, taking[(k + 1) % count]), new Point(sense * (tops[k + 1 - first] - tops[k - first]), HeightOf(k) - HeightOf(k + 1)), AlongRow);
        for (int s = 0; s < standing.Length; s++)
        {
            int k = standing[s];
            double foot = standing.Length == 2 ? start + (s * gap) : tops[k - first];
            net.Add(panel, feet[k % count]!.Value, NodeMix(row, taking[k % count]), new Point(sense * (tops[k - first] - foot), -HeightOf(k)), Stem);
        }
    }

    private Mix NodeMix(LaidRow row, int cell) => Mix.Of(nodeOf[row.Index][cell]);

    private static double WidthOf(LaidRow row, int cell) => row.Cells[cell].Width;

    /// <summary>A stitch's own height; from the middle of a ring its radius more.</summary>
    private double Height(LaidRow row, LaidCell cell)
    {
        double own = row.Taller * (cell.Form.Kind == FormKind.Unknown ? 1 : Math.Max(cell.Cell.Kind == CellKind.TurningChain ? ShortestChain : Shortest, cell.Form.Height));
        if (cell.Ground is { } ground && EdgeNode(ground) is >= 0 and var edge) return own + (laid[edge] - ground).Length;
        if (!cell.Cell.Feet.IsEmpty && Known(row, cell.Cell.Feet[0]) && rows[cell.Cell.Feet[0].Row].Cells[cell.Cell.Feet[0].Place] is { Cell.Kind: CellKind.Chains } host) own += ChainPath.Rise(host.Cell);
        if (row.Closed && cell.Cell.Feet is [{ } inner, ..] && Known(row, inner) && rows[inner.Row].Closed && !rows[inner.Row].IsCentre) own += Math.Max(0, Innermost(row) - rows[inner.Row].Out);
        return own + (cell.Cell.Feet.Count > 0 && cell.Cell.Feet[0].Row is >= 0 and var below && below < rows.Count && rows[below].IsCentre ? rows[below].Radius : 0);
    }

    /// <summary>A layer behind other rounds is drawn outside them: its feet reach in under those.</summary>
    private double Innermost(LaidRow row) => row.Index == 0 ? 0 : rows.Take(row.Index).Max(inner => inner.Out);

    /// <summary>How far apart two feet are in the row below; below 0 where stitches cross.</summary>
    private double Gap(LaidRow row, int a, int b, Mix footA, Mix footB, int direction, double usual)
    {
        FeetAlong left = FeetOf(row, a);
        FeetAlong right = FeetOf(row, b);
        if (left.Row < 0 || left.Row != right.Row || rows[left.Row].IsCentre) return left.Row >= 0 && left.Row == right.Row ? 0 : Math.Min(2 * usual, (footB.At(laid) - footA.At(laid)).Length);
        double way = right.At - left.At;
        double length = lengths[left.Row];
        if (rows[left.Row].Closed && length > 0) way -= length * Math.Round(way / length);
        return rows[left.Row].Row.Kind == RowKind.Foundation ? Math.Abs(way) : direction * way;
    }

    private readonly record struct FeetAlong(int Row, double At);

    private FeetAlong FeetOf(LaidRow row, int cell)
    {
        Foot[] known = [.. row.Cells[cell].Cell.Feet.Where(foot => Known(row, foot))];
        return known.Length == 0 || known.Any(foot => foot.Row != known[0].Row) ? new(-1, 0) : new(known[0].Row, known.Average(Along));
    }

    private double Along(Foot foot)
    {
        Cell host = rows[foot.Row].Cells[foot.Place].Cell;
        double share = foot.Chain >= 0 && host.Chains > 1 ? ((foot.Chain + 0.5) / host.Chains) - 0.5 : 0;
        return along[foot.Row][foot.Place] + (share * rows[foot.Row].Cells[foot.Place].Width);
    }

    private bool Known(LaidRow row, Foot foot) =>
        foot.Row >= 0 && foot.Row < rows.Count && foot.Row <= row.Index && foot.Place >= 0 && foot.Place < rows[foot.Row].Cells.Length && foot.Kind != FootKind.RowEnd;

    /// <summary>What a cell stands on, as nodes; null for chains and for stitches that reach below the row that the others stand on.</summary>
    private Mix? Feet(LaidRow row, LaidCell laidCell)
    {
        Cell cell = laidCell.Cell;
        if (cell.Feet.IsEmpty || cell.Kind is not (CellKind.Stitch or CellKind.TurningChain)) return null;
        if (laidCell.Ground is { } ground) return EdgeNode(ground) is >= 0 and var edge ? Mix.Of(edge) : null;
        Mix[] known = [.. cell.Feet.Where(foot => Known(row, foot) && !Deep(row, foot)).Select(MixOf).OfType<Mix>()];
        return known.Length == 0 ? null : Mix.Middle(known);
    }

    /// <summary>Spikes and posts two rows down say nothing of how tall their row is.</summary>
    private bool Deep(LaidRow row, Foot foot) => !row.Closed && row.Row.Into >= 0 && foot.Row < row.Row.Into && !rows[foot.Row].IsCentre && rows[foot.Row].Row.Kind != RowKind.Foundation;

    private Mix? MixOf(Foot foot)
    {
        int[] numbers = nodeOf[foot.Row];
        int place = (int)foot.Place;
        if (numbers[place] < 0) return Near(numbers, place) is { } near ? Mix.Of(near) : null;
        Cell host = rows[foot.Row].Cells[place].Cell;
        if (foot.Chain < 0 || host.Chains < 2) return Mix.Of(numbers[place]);
        double share = ((foot.Chain + 0.5) / host.Chains) - 0.5;
        int step = share < 0 ? -1 : 1;
        if (Neighbour(rows[foot.Row], place, step) is not { } beside) return Mix.Of(numbers[place]);
        double apart = (rows[foot.Row].Cells[place].Width + rows[foot.Row].Cells[beside].Width) / 2.0;
        return Mix.Between(numbers[place], numbers[beside], Math.Abs(share) * rows[foot.Row].Cells[place].Width / Math.Max(0.1, apart));
    }

    /// <summary>The end of a row that is nearest to a place on the fabric's edge; -1 where there is none.</summary>
    private int EdgeNode(Point ground)
    {
        ends ??= [.. rows.Where(row => row.Row.Kind == RowKind.Row && row.Cells.Length > 0).SelectMany(Ends).Concat(nodeOf[0]).Where(node => node >= 0)];
        if (edgeOf.TryGetValue(ground, out int known)) return known;
        return edgeOf[ground] = ends.Length == 0 ? -1 : ends.MinBy(node => (laid[node] - ground).Length);
    }

    private IEnumerable<int> Ends(LaidRow row) => row.Index + 1 < rows.Count && rows[row.Index + 1].Row.Kind == RowKind.Row
        ? [nodeOf[row.Index].FirstOrDefault(node => node >= 0, -1), nodeOf[row.Index].LastOrDefault(node => node >= 0, -1)]
        : nodeOf[row.Index];

    private int? Neighbour(LaidRow row, int place, int step)
    {
        for (int i = place + step; i >= 0 && i < row.Cells.Length; i += step)
            if (nodeOf[row.Index][i] >= 0)
                return i;
        return null;
    }

    /// <summary>A slip stitch or picot lies on what comes before it.</summary>
    private static int? Near(int[] numbers, int place)
    {
        for (int i = place; i >= 0; i--) if (numbers[i] >= 0) return numbers[i];
        for (int i = place; i < numbers.Length; i++) if (numbers[i] >= 0) return numbers[i];
        return null;
    }

    /// <summary>+1 where the tops are to the left of the way that the row runs, as in rows worked to the right; else -1.</summary>
    private int Sense(LaidRow row, int[] taking, Mix?[] feet, int[] standing)
    {
        double turn = 0;
        for (int s = 0; s + 1 < standing.Length; s++)
        {
            Point way = places[nodeOf[row.Index][taking[standing[s + 1]]]] - places[nodeOf[row.Index][taking[standing[s]]]];
            Point stem = places[nodeOf[row.Index][taking[standing[s]]]] - feet[standing[s]]!.Value.At(laid);
            turn += (way.X * -stem.Y) + (way.Y * stem.X);
        }
        return turn < 0 ? -1 : 1;
    }

    /// <summary>+1 where the row runs along the row below as that was worked; -1 where it runs back.</summary>
    private int Direction(LaidRow row, int[] taking, int[] standing)
    {
        double lean = 0;
        for (int s = 0; s + 1 < standing.Length; s++)
        {
            FeetAlong a = FeetOf(row, taking[standing[s]]);
            FeetAlong b = FeetOf(row, taking[standing[s + 1]]);
            if (a.Row < 0 || a.Row != b.Row) continue;
            lean += Math.Sign(b.At - a.At);
        }
        return lean < 0 ? -1 : 1;
    }
}
