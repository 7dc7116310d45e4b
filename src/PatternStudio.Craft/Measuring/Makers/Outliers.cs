namespace PatternStudio.Craft.Measuring.Makers;

/// <summary>
/// The modified z-score of B. Iglewicz and D. Hoaglin, How to Detect and Handle Outliers (1993), as the NIST/SEMATECH e-Handbook of Statistical Methods gives it in 1.3.5.17:
/// |x − median| · 0.6745 ÷ MAD, an outlier above 3.5.
/// </summary>
/// <remarks>
/// With three makers two may agree by chance, and the third would be thrown out for a hand of her own. So the spread is taken no smaller than measuring is fine and hands usually differ.
/// </remarks>
internal static class Outliers
{
    /// <summary>Above it a value is an outlier (the handbook's recommendation).</summary>
    public const double Limit = 3.5;

    /// <summary>MAD of a normal distribution beside its standard deviation.</summary>
    private const double MadOfNormal = 0.6745;

    /// <summary>The middle value; between the two middle ones where their number is even.</summary>
    /// <param name="values">At least one.</param>
    public static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        ArgumentOutOfRangeException.ThrowIfZero(sorted.Length, nameof(values));
        int half = sorted.Length / 2;
        return sorted.Length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    /// <summary>Median absolute deviation: the median of the distances from the median.</summary>
    public static double Mad(IReadOnlyList<double> values)
    {
        double median = Median(values);
        return Median(values.Select(value => Math.Abs(value - median)));
    }

    /// <summary>The modified z-score of a value among others.</summary>
    /// <param name="value">The value.</param>
    /// <param name="median">The middle of all.</param>
    /// <param name="mad">Their median absolute deviation.</param>
    /// <param name="least">The spread is taken no smaller: a standard deviation.</param>
    public static double Score(double value, double median, double mad, double least = 0)
    {
        double spread = Math.Max(mad, MadOfNormal * least);
        double off = Math.Abs(value - median);
        return off == 0 ? 0 : off * MadOfNormal / spread;
    }
}
