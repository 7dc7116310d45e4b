namespace PatternStudio.Craft.Charting.Layout;

/// <summary>
/// Conjugate gradients, preconditioned by a diagonal: the usual way to bring a sparse net to rest (Hestenes and Stiefel, 1952; from memory).
/// </summary>
internal static class ConjugateGradients
{
    /// <summary>Energy left for each unknown, below which more steps change nothing that is drawn.</summary>
    private const double Rest = 1e-12;

    /// <summary>Moves <paramref name="at"/> towards the solution.</summary>
    /// <param name="multiply">Multiplies the first by the net's matrix, into the second.</param>
    /// <param name="right">The right side of the equations.</param>
    /// <param name="scale">The matrix's diagonal.</param>
    /// <param name="steps">The most steps taken.</param>
    /// <param name="share">Ends too where the energy has fallen to this share of what it was; 0 for never.</param>
    public static void Solve(Action<double[], double[]> multiply, double[] at, double[] right, double[] scale, int steps, double share = 0)
    {
        int count = at.Length;
        var way = new double[count];
        var product = new double[count];
        var left = new double[count];
        multiply(at, product);
        double energy = 0;
        for (int i = 0; i < count; i++)
        {
            left[i] = right[i] - product[i];
            way[i] = left[i] / scale[i];
            energy += left[i] * way[i];
        }
        double first = energy;
        for (int step = 0; step < steps && energy > Rest * count && energy > first * share; step++)
        {
            multiply(way, product);
            double curvature = 0;
            for (int i = 0; i < count; i++) curvature += way[i] * product[i];
            if (curvature <= 0) break;
            double length = energy / curvature;
            double next = 0;
            for (int i = 0; i < count; i++)
            {
                at[i] += length * way[i];
                left[i] -= length * product[i];
                next += left[i] * left[i] / scale[i];
            }
            double keep = next / energy;
            for (int i = 0; i < count; i++) way[i] = (left[i] / scale[i]) + (keep * way[i]);
            energy = next;
        }
    }
}
