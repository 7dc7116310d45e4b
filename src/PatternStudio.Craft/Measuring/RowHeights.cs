namespace PatternStudio.Craft.Measuring;

/// <summary>
/// The heights of single kinds of row from several swatches, by least squares: a swatch in sc rows, one in dc rows and one in the design's mix are three equations for the two
/// heights. Where the swatches don't determine every kind, nothing is solved and the anatomy's proportions stand.
/// </summary>
internal sealed record RowHeights(IReadOnlyDictionary<double, Length> Kinds, string Trace)
{
    /// <summary>Below this share of the largest pivot, equations say the same thing twice.</summary>
    private const double Dependent = 1e-3;

    /// <summary>What a swatch's row is made of, by height in stitch widths and share, and how high the row is.</summary>
    internal sealed record Observation(IReadOnlyDictionary<double, double> Shares, Length Row);

    /// <summary>Null where the swatches are too few or too much alike.</summary>
    public static RowHeights? From(IEnumerable<Observation> swatches)
    {
        Observation[] seen = [.. swatches];
        double[] kinds = [.. seen.SelectMany(swatch => swatch.Shares.Keys).Distinct().Order()];
        if (kinds.Length < 2 || seen.Length < kinds.Length) return null;
        double[][] shares = [.. seen.Select(swatch => kinds.Select(kind => swatch.Shares.GetValueOrDefault(kind)).ToArray())];
        double[] heights = [.. seen.Select(swatch => swatch.Row.Millimetres)];
        if (Solve(shares, heights) is not { } solved || Array.Exists(solved, height => height <= 0)) return null;
        double worst = seen.Select((swatch, i) => Math.Abs(shares[i].Zip(solved, (share, height) => share * height).Sum() - heights[i])).Max();
        var byKind = kinds.Zip(solved).ToDictionary(pair => pair.First, pair => Length.FromMillimetres(pair.Second));
        return new RowHeights(byKind, $", row heights of {kinds.Length} kinds of stitch by least squares from {seen.Length} swatches (largest difference {worst:0.0} mm a row)");
    }

    /// <summary>Shares of the kinds, on average over rows.</summary>
    public static Dictionary<double, double> Mean(IReadOnlyList<RowTally> rows)
    {
        var mean = new Dictionary<double, double>();
        foreach (RowTally row in rows)
            foreach ((double height, double share) in row.Heights)
                mean[height] = mean.GetValueOrDefault(height) + (share / rows.Count);
        return mean;
    }

    /// <summary>Least squares by the normal equations, which are small: as many as kinds of stitch. Null where they are dependent.</summary>
    internal static double[]? Solve(double[][] rows, double[] right)
    {
        int n = rows[0].Length;
        var normal = new double[n][];
        for (int i = 0; i < n; i++)
        {
            normal[i] = new double[n + 1];
            for (int j = 0; j < n; j++) normal[i][j] = rows.Sum(row => row[i] * row[j]);
            normal[i][n] = rows.Select((row, at) => row[i] * right[at]).Sum();
        }

        return Eliminate(normal, n);
    }

    private static double[]? Eliminate(double[][] normal, int n)
    {
        double largest = normal.Max(row => row.Take(n).Max(Math.Abs));
        for (int column = 0; column < n; column++)
        {
            int pivot = Enumerable.Range(column, n - column).MaxBy(row => Math.Abs(normal[row][column]));
            (normal[column], normal[pivot]) = (normal[pivot], normal[column]);
            if (Math.Abs(normal[column][column]) <= largest * Dependent) return null;
            for (int row = 0; row < n; row++)
            {
                double factor = row == column ? 0 : normal[row][column] / normal[column][column];
                for (int j = column; j <= n && factor != 0; j++) normal[row][j] -= factor * normal[column][j];
            }
        }

        return [.. Enumerable.Range(0, n).Select(i => normal[i][n] / normal[i][i])];
    }
}
