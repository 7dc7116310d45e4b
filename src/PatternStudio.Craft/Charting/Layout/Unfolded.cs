namespace PatternStudio.Craft.Charting.Layout;

/// <summary>
/// Spreads a piece out by its distances alone: each node as far from a few chosen ones as the shortest way through the fabric is long (multidimensional scaling on pivots, Brandes and
/// Pich 2006; from memory). What grows round itself, as a scallop on the edge of its own rows does, comes to lie unfolded, where resting from a folded layout could not turn it over.
/// </summary>
internal static class Unfolded
{
    private const int Pivots = 48;
    private const int Powers = 60;

    /// <summary>The rows spread out and come to rest, seen from the side that they are seen from now.</summary>
    public static List<LaidRow> Of(List<LaidRow> rows, int turns, int steps, Effort effort)
    {
        var builder = new NetBuilder(rows);
        int count = builder.Net.Nodes;
        if (count < 3) return rows;
        Point[] places = Places(Ways(builder.Net), count);
        List<LaidRow> one = Placed(rows, builder, places);
        List<LaidRow> other = Placed(rows, builder, [.. places.Select(at => new Point(-at.X, at.Y))]);
        return Relaxed.Of(Agreement(one, builder) >= Agreement(other, builder) ? one : other, turns, steps, builder.Senses, effort);
    }

    /// <summary>How many of the rows' cells are seen from the same side.</summary>
    private static int Agreement(List<LaidRow> placed, NetBuilder before)
    {
        int[] senses = new NetBuilder(placed).Senses;
        return placed.Sum(row => senses[row.Index] * before.Senses[row.Index] * row.Cells.Length);
    }

    /// <summary>A row's cells stand up from what they are worked into; where that is not known they keep their way.</summary>
    private static List<LaidRow> Placed(IReadOnlyList<LaidRow> rows, NetBuilder builder, Point[] places)
    {
        List<LaidRow> placed = Relaxed.Placed(rows, builder, places, turnUp: false);
        var standing = new Standing(placed);
        for (int i = 1; i < placed.Count; i++)
        {
            LaidRow row = placed[i];
            LaidCell[] cells = [.. row.Cells.Select(cell => cell.Cell.Feet.IsEmpty || standing.Of(cell.Cell.Feet[0], cell.Top) is not { } foot || (cell.Top - foot).Length < 1e-6 ? cell : cell with { Up = (cell.Top - foot).Unit() })];
            for (int k = 0; k < cells.Length; k++)
                if (cells[k].Cell.Feet.IsEmpty && Standing(cells, k) is { } up) cells[k] = cells[k] with { Up = up };
            placed[i] = Labels.On(Uprights.Of(row with { Cells = cells }));
        }
        return placed;
    }

    /// <summary>Chains go up as the stitch before them does.</summary>
    private static Point? Standing(LaidCell[] cells, int at)
    {
        int beside = Array.FindLastIndex(cells, at, cell => !cell.Cell.Feet.IsEmpty);
        if (beside < 0) beside = Array.FindIndex(cells, cell => !cell.Cell.Feet.IsEmpty);
        return beside < 0 ? null : cells[beside].Up;
    }

    /// <summary>From each node its neighbours in the net and how far they are.</summary>
    private static List<(int To, double Length)>[] Ways(FabricNet net)
    {
        (int[] starts, int[] nodes, double[] shares) = net.Arrays();
        var ways = new List<(int, double)>[net.Nodes];
        for (int i = 0; i < ways.Length; i++) ways[i] = [];
        for (int bar = 0; bar < net.Bars; bar++)
        {
            (int from, int to) = (Heaviest(starts[bar], starts[bar + 1], -1), Heaviest(starts[bar], starts[bar + 1], 1));
            if (from < 0 || to < 0 || from == to) continue;
            double length = Math.Max(0.1, net.Rest[bar].Length);
            ways[from].Add((to, length));
            ways[to].Add((from, length));
        }
        return ways;

        int Heaviest(int first, int end, int sign)
        {
            int best = -1;
            for (int i = first; i < end; i++)
                if (shares[i] * sign > 0 && (best < 0 || shares[i] * sign > shares[best] * sign)) best = i;
            return best < 0 ? -1 : nodes[best];
        }
    }

    /// <summary>The two directions in which the distances to the pivots differ most.</summary>
    private static Point[] Places(List<(int To, double Length)>[] ways, int count)
    {
        int pivots = Math.Min(Pivots, count);
        double[][] squares = Distances(ways, pivots);
        for (int p = 0; p < pivots; p++)
            for (int i = 0; i < count; i++) squares[p][i] *= squares[p][i];
        double[] means = [.. Enumerable.Range(0, count).Select(i => squares.Average(column => column[i]))];
        double all = means.Average();
        foreach (double[] column in squares)
        {
            double mean = column.Average();
            for (int i = 0; i < count; i++) column[i] = -0.5 * (column[i] - mean - means[i] + all);
        }
        double[] first = Direction(squares, null);
        double[] second = Direction(squares, first);
        (double[] x, double[] y) = (Along(squares, first), Along(squares, second));
        double scale = Scale(ways, x, y);
        return [.. x.Select((at, i) => new Point(at * scale, y[i] * scale))];
    }

    private static double[][] Distances(List<(int To, double Length)>[] ways, int pivots)
    {
        var found = new double[pivots][];
        double[] nearest = [.. Enumerable.Repeat(double.MaxValue, ways.Length)];
        int pivot = 0;
        for (int p = 0; p < pivots; p++)
        {
            found[p] = From(pivot, ways);
            for (int i = 0; i < nearest.Length; i++) nearest[i] = Math.Min(nearest[i], found[p][i]);
            pivot = Array.IndexOf(nearest, nearest.Max());
        }
        return found;
    }

    /// <summary>Shortest ways from one node; what hangs together with nothing is as far as the farthest.</summary>
    private static double[] From(int start, List<(int To, double Length)>[] ways)
    {
        double[] far = [.. Enumerable.Repeat(double.MaxValue, ways.Length)];
        far[start] = 0;
        var queue = new PriorityQueue<int, double>([(start, 0)]);
        while (queue.TryDequeue(out int at, out double way))
        {
            if (way > far[at]) continue;
            foreach ((int to, double length) in ways[at])
                if (way + length < far[to])
                {
                    far[to] = way + length;
                    queue.Enqueue(to, far[to]);
                }
        }
        double farthest = far.Where(way => way < double.MaxValue).Max();
        return [.. far.Select(way => Math.Min(way, farthest))];
    }

    /// <summary>Power iteration over the pivots; the second direction stays at a right angle to the first.</summary>
    private static double[] Direction(double[][] columns, double[]? apartFrom)
    {
        double[] way = [.. columns.Select((_, i) => 1 + (0.37 * ((i * 7) % 11)))];
        for (int power = 0; power < Powers; power++)
        {
            if (apartFrom is not null)
            {
                double share = way.Zip(apartFrom, (a, b) => a * b).Sum();
                for (int i = 0; i < way.Length; i++) way[i] -= share * apartFrom[i];
            }
            double[] along = Along(columns, way);
            way = [.. columns.Select(column => column.Zip(along, (a, b) => a * b).Sum())];
            double length = Math.Sqrt(way.Sum(part => part * part));
            if (length < 1e-12) return way;
            for (int i = 0; i < way.Length; i++) way[i] /= length;
        }
        return way;
    }

    private static double[] Along(double[][] columns, double[] way)
    {
        var along = new double[columns[0].Length];
        for (int p = 0; p < columns.Length; p++)
            for (int i = 0; i < along.Length; i++) along[i] += columns[p][i] * way[p];
        return along;
    }

    /// <summary>So that neighbours are on the whole as far apart as they are in the fabric.</summary>
    private static double Scale(List<(int To, double Length)>[] ways, double[] x, double[] y)
    {
        double wanted = 0;
        double drawn = 0;
        for (int i = 0; i < ways.Length; i++)
            foreach ((int to, double length) in ways[i])
            {
                wanted += length;
                drawn += new Point(x[i] - x[to], y[i] - y[to]).Length;
            }
        return drawn < 1e-9 ? 1 : wanted / drawn;
    }
}
