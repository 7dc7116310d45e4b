using MathNet.Numerics.LinearRegression;
using PatternStudio.Craft.Measuring;

namespace PatternStudio.Craft.Tests.Measuring;

public sealed class PredictionTests
{
    /// <summary>Published t table (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2): upper critical values.</summary>
    [Theory]
    [InlineData(0.90, 1, 3.078)]
    [InlineData(0.95, 1, 6.314)]
    [InlineData(0.90, 2, 1.886)]
    [InlineData(0.95, 2, 2.920)]
    [InlineData(0.90, 5, 1.476)]
    [InlineData(0.95, 5, 2.015)]
    [InlineData(0.90, 10, 1.372)]
    [InlineData(0.975, 10, 2.228)]
    [InlineData(0.95, 30, 1.697)]
    [InlineData(0.99, 100, 2.364)]
    public void Quantiles_are_those_of_the_published_table(double share, int degrees, double t) => Assert.Equal(t, StudentT.Quantile(share, degrees), 3);

    [Fact]
    public void Quantiles_agree_with_a_library_of_statistics()
    {
        foreach (int degrees in (int[])[1, 2, 3, 4, 7, 12, 29, 60])
            foreach (double share in (double[])[0.01, 0.3, 0.5, 0.9, 0.95, 0.995])
                Assert.Equal(Library(share, degrees), StudentT.Quantile(share, degrees), 6);
    }

    private static double Library(double share, int degrees) => MathNet.Numerics.Distributions.StudentT.InvCDF(0, 1, degrees, share);

    /// <summary>Four swatches of 100, 104, 96, 108 m: mean 102, s = √(80/3) = 5.164; reach s √1.25 = 5.7735; t(0.95, 3) = 2.353, t(0.9, 3) = 1.638.</summary>
    [Fact]
    public void A_prediction_is_wider_than_the_spread_of_the_mean()
    {
        Prediction prediction = Prediction.From([100, 104, 96, 108]);
        Assert.Equal(102, prediction.Expected, 9);
        Assert.Equal(102 + (2.353 * 5.7735), prediction.High, 2);
        Assert.Equal(102 - (2.353 * 5.7735), prediction.Low, 2);
        Assert.Equal(102 + (1.638 * 5.7735), prediction.Buy, 2);
    }

    [Fact]
    public void Swatches_that_happen_to_agree_are_not_taken_for_certainty() =>
        Assert.Equal(100 + (3.078 * 3 * Math.Sqrt(1.5)), Prediction.From([100, 100], 0.03).Buy, 2);

    [Fact]
    public void One_swatch_has_the_assumed_spread()
    {
        Prediction one = Prediction.Assumed(100, 0.1);
        Assert.Equal((112.816, 83.551, 116.449), (Math.Round(one.Buy, 3), Math.Round(one.Low, 3), Math.Round(one.High, 3)));
    }

    /// <summary>A simulation with a fixed seed: makers' use is normal; from n of them the interval is found, and the next maker lies in it 9 times of 10, and below 'buy' 9 times of 10.</summary>
    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(6)]
    [InlineData(15)]
    public void Ninety_of_a_hundred_makers_lie_in_the_interval(int swatches)
    {
        var hands = new MathNet.Numerics.Distributions.Normal(100, 8, new Random(20_240 + swatches));
        int within = 0, enough = 0;
        const int Times = 10_000;
        for (int i = 0; i < Times; i++)
        {
            Prediction prediction = Prediction.From([.. Enumerable.Range(0, swatches).Select(_ => hands.Sample())]);
            double next = hands.Sample();
            if (next >= prediction.Low && next <= prediction.High) within++;
            if (next <= prediction.Buy) enough++;
        }

        Assert.InRange(within * 100.0 / Times, 88, 92);
        Assert.InRange(enough * 100.0 / Times, 88, 92);
    }

    /// <summary>Three swatches — sc rows 5.5 mm, dc rows 11 mm, rows half of each 8.4 mm — for two heights; checked with a library's least squares.</summary>
    [Fact]
    public void Row_heights_are_the_least_squares_of_the_swatches()
    {
        double[][] shares = [[1, 0], [0, 1], [0.5, 0.5]];
        double[] heights = [5.5, 11, 8.4];
        double[] expected = MultipleRegression.QR(shares, heights, false);
        double[] found = RowHeights.Solve(shares, heights)!;
        Assert.Equal(expected[0], found[0], 9);
        Assert.Equal(expected[1], found[1], 9);
    }

    [Fact]
    public void Swatches_that_say_the_same_twice_solve_nothing() => Assert.Null(RowHeights.Solve([[0.5, 0.5], [0.5, 0.5]], [8, 8.2]));
}
