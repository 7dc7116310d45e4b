namespace PatternStudio.Craft.Measuring;

/// <summary>
/// Student's t distribution for whole degrees of freedom, by the finite series of Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.3 and 26.7.4.
/// </summary>
internal static class StudentT
{
    /// <summary>The t below which a share of the distribution lies: <c>Quantile(0.9, 5)</c> = 1.476.</summary>
    /// <param name="share">Above 0 and below 1.</param>
    /// <param name="degrees">Degrees of freedom; at least 1.</param>
    public static double Quantile(double share, int degrees)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(degrees, 1);
        if (share is not (> 0 and < 1)) throw new ArgumentOutOfRangeException(nameof(share), share, "A share lies between 0 and 1.");
        if (share < 0.5) return -Quantile(1 - share, degrees);
        double low = 0, high = 1;
        while (Below(high, degrees) < share) high *= 2;
        for (int step = 0; step < 200 && high - low > 1e-12 * high; step++)
        {
            double middle = (low + high) / 2;
            if (Below(middle, degrees) < share) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }

    /// <summary>The share of the distribution below t, which is 0 or more.</summary>
    private static double Below(double t, int degrees)
    {
        double angle = Math.Atan(t / Math.Sqrt(degrees));
        double sine = Math.Sin(angle), cosine = Math.Cos(angle);
        bool odd = degrees % 2 == 1;
        double term = odd ? cosine : 1, sum = degrees == 1 ? 0 : term;
        for (int i = odd ? 3 : 2; i <= degrees - 2; i += 2)
        {
            term *= cosine * cosine * (i - 1) / i;
            sum += term;
        }

        double within = odd ? 2 / Math.PI * (angle + (sine * sum)) : sine * sum;
        return 0.5 + (within / 2);
    }
}
