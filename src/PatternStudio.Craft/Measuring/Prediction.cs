namespace PatternStudio.Craft.Measuring;

/// <summary>What the next maker will use, from what makers before used: a prediction interval, not the spread of their mean.</summary>
/// <param name="Expected">The mean.</param>
/// <param name="Low">19 makers of 20 use more.</param>
/// <param name="High">19 makers of 20 use less; between the two lie 90 of 100.</param>
/// <param name="Buy">9 makers of 10 use no more: what to buy.</param>
/// <param name="Makers">How many observations it rests on.</param>
public readonly record struct Prediction(double Expected, double Low, double High, double Buy, int Makers)
{
    /// <summary>90 and 95 % points of the normal distribution, where the spread is taken as known.</summary>
    private const double Ninety = 1.2815515655446004;
    private const double NinetyFive = 1.6448536269514722;

    /// <summary>
    /// mean ± t · s · √(1 + 1/n) with n − 1 degrees of freedom. Needs two observations at least.
    /// </summary>
    /// <param name="observed">What makers used.</param>
    /// <param name="leastSpread">The standard deviation is taken no smaller: scales and tape measures are only so fine. A share of the mean.</param>
    public static Prediction From(IReadOnlyList<double> observed, double leastSpread = 0)
    {
        ArgumentNullException.ThrowIfNull(observed);
        ArgumentOutOfRangeException.ThrowIfLessThan(observed.Count, 2, nameof(observed));
        int n = observed.Count;
        double mean = observed.Average();
        double spread = Math.Sqrt(observed.Sum(value => (value - mean) * (value - mean)) / (n - 1));
        double reach = Math.Max(spread, leastSpread * mean) * Math.Sqrt(1 + (1.0 / n));
        return Around(mean, reach, StudentT.Quantile(0.95, n - 1), StudentT.Quantile(0.9, n - 1), n);
    }

    /// <summary>From one observation and a spread that is assumed, as a share of the amount.</summary>
    public static Prediction Assumed(double expected, double spread, int makers = 1) =>
        Around(expected, expected * spread, NinetyFive, Ninety, makers);

    /// <summary>The same for so many times as much.</summary>
    public Prediction Times(double times) => this with { Expected = Expected * times, Low = Low * times, High = High * times, Buy = Buy * times };

    private static Prediction Around(double mean, double reach, double both, double one, int n) =>
        new(mean, Math.Max(0, mean - (both * reach)), mean + (both * reach), mean + (one * reach), n);
}
