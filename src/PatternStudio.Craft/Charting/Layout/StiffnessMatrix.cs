namespace PatternStudio.Craft.Charting.Layout;

/// <summary>How a net resists moves of its nodes: row by row, only what is not zero. It stays the same while its panels turn.</summary>
internal sealed class StiffnessMatrix
{
    private readonly int[] starts;
    private readonly int[] columns;
    private readonly double[] values;

    /// <param name="net">The net.</param>
    /// <param name="stay">How firmly each node stays in its place; null for not at all.</param>
    public StiffnessMatrix(FabricNet net, double[]? stay = null)
    {
        (int[] ends, int[] nodes, double[] shares) = net.Arrays();
        int[] first = FirstOfRows(net, ends, nodes);
        var column = new int[first[^1]];
        var value = new double[first[^1]];
        int[] next = first[..^1];
        for (int i = 0; i < net.Nodes; i++) (column[next[i]], value[next[i]++]) = (i, stay?[i] ?? 0);
        for (int bar = 0; bar < net.Bars; bar++)
            for (int i = ends[bar]; i < ends[bar + 1]; i++)
                for (int j = ends[bar]; j < ends[bar + 1]; j++)
                {
                    ref int at = ref next[nodes[i]];
                    (column[at], value[at++]) = (nodes[j], net.Stiffness[bar] * shares[i] * shares[j]);
                }
        (starts, columns, values) = Summed(first, column, value);
    }

    /// <summary>Room for each row: its diagonal, and for each bar end in it all ends of that bar.</summary>
    private static int[] FirstOfRows(FabricNet net, int[] ends, int[] nodes)
    {
        var first = new int[net.Nodes + 1];
        Array.Fill(first, 1, 1, net.Nodes);
        for (int bar = 0; bar < net.Bars; bar++)
            for (int i = ends[bar]; i < ends[bar + 1]; i++) first[nodes[i] + 1] += ends[bar + 1] - ends[bar];
        for (int i = 0; i < net.Nodes; i++) first[i + 1] += first[i];
        return first;
    }

    /// <summary>What stands in one place added up.</summary>
    private static (int[] Starts, int[] Columns, double[] Values) Summed(int[] first, int[] column, double[] value)
    {
        var starts = new int[first.Length];
        var place = new int[first.Length];
        Array.Fill(place, -1);
        int kept = 0;
        for (int row = 0; row + 1 < first.Length; row++)
        {
            for (int i = first[row]; i < first[row + 1]; i++)
            {
                if (place[column[i]] >= starts[row])
                {
                    value[place[column[i]]] += value[i];
                    continue;
                }
                place[column[i]] = kept;
                (column[kept], value[kept++]) = (column[i], value[i]);
            }
            starts[row + 1] = kept;
        }
        return (starts, column[..kept], value[..kept]);
    }

    /// <summary>Multiplies moves into the forces that hold them.</summary>
    public void Multiply(double[] by, double[] product)
    {
        for (int row = 0; row < product.Length; row++)
        {
            double sum = 0;
            for (int i = starts[row]; i < starts[row + 1]; i++) sum += values[i] * by[columns[i]];
            product[row] = sum;
        }
    }
}
