namespace PatternStudio.Craft.Charting;

/// <summary>
/// Lets the cells of a row yield toward their feet: springs hold neighbours at their distance, weaker springs pull each cell above its own feet. The row of
/// least strain solves a tridiagonal system.
/// </summary>
internal static class Yielding
{
    /// <summary>How much stiffer the row is than the pull of the feet.</summary>
    private const double Stiffness = 4;

    /// <summary>The relaxed places.</summary>
    /// <param name="feet">Where each cell's feet are; null for none; where none is known the places stay.</param>
    /// <param name="even">The places at even distances.</param>
    public static double[] Toward(double?[] feet, double[] even)
    {
        if (Array.TrueForAll(feet, foot => foot is null)) return even;
        int count = even.Length;
        var diagonal = new double[count];
        var right = new double[count];
        for (int i = 0; i < count; i++)
        {
            if (feet[i] is { } foot) (diagonal[i], right[i]) = (1, foot);
            if (i > 0) Spring(diagonal, right, even, i);
        }
        return Solve(diagonal, right);
    }

    private static void Spring(double[] diagonal, double[] right, double[] even, int at)
    {
        double distance = Stiffness * (even[at] - even[at - 1]);
        diagonal[at] += Stiffness;
        diagonal[at - 1] += Stiffness;
        right[at] += distance;
        right[at - 1] -= distance;
    }

    /// <summary>Elimination downward, substitution upward; every value beside the diagonal is -<see cref="Stiffness"/>.</summary>
    private static double[] Solve(double[] diagonal, double[] right)
    {
        for (int i = 1; i < diagonal.Length; i++)
        {
            double factor = -Stiffness / diagonal[i - 1];
            diagonal[i] += factor * Stiffness;
            right[i] -= factor * right[i - 1];
        }
        for (int i = diagonal.Length - 1; i >= 0; i--)
            right[i] = (right[i] + (i + 1 < right.Length ? Stiffness * right[i + 1] : 0)) / diagonal[i];
        return right;
    }
}
