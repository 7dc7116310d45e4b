using MathNet.Numerics.Statistics;
using PatternStudio.Craft.Measuring.Makers;

namespace PatternStudio.Craft.Tests.Measuring.Makers;

/// <summary>NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17 (Iglewicz and Hoaglin 1993).</summary>
public sealed class OutliersTests
{
    [Theory]
    [InlineData(new double[] { 3, 1, 2 }, 2)]
    [InlineData(new double[] { 4, 1, 2, 3 }, 2.5)]
    [InlineData(new double[] { 7 }, 7)]
    public void The_median_is_the_middle(double[] values, double middle) => Assert.Equal(middle, Outliers.Median(values));

    /// <summary>1, 2, 3, 4, 10: median 3; distances 2, 1, 0, 1, 7; their median 1. Score of 10: 7 · 0.6745 ÷ 1 = 4.7215.</summary>
    [Fact]
    public void The_score_is_the_distance_in_deviations()
    {
        double[] values = [1, 2, 3, 4, 10];
        Assert.Equal(1, Outliers.Mad(values));
        Assert.Equal(4.7215, Outliers.Score(10, 3, 1), 10);
        Assert.Equal(0, Outliers.Score(3, 3, 0));
    }

    /// <summary>Where all others agree the deviation is 0: the floor keeps a small difference from being endless. 0.1 ÷ 0.05 = 2 standard deviations.</summary>
    [Fact]
    public void A_floor_of_spread_keeps_small_differences_small() => Assert.Equal(2, Outliers.Score(1.1, 1, 0, 0.05), 10);

    [Fact]
    public void Median_and_deviation_agree_with_a_library_of_statistics()
    {
        var chance = new Random(20_261);
        for (int times = 0; times < 200; times++)
        {
            double[] values = [.. Enumerable.Range(0, 1 + chance.Next(12)).Select(_ => chance.NextDouble())];
            double median = values.Median();
            Assert.Equal(median, Outliers.Median(values), 12);
            Assert.Equal(values.Select(value => Math.Abs(value - median)).Median(), Outliers.Mad(values), 12);
        }
    }
}
