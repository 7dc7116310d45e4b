using MathNet.Numerics.Distributions;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Measuring.Makers;

namespace PatternStudio.Craft.Tests.Measuring.Makers;

/// <summary>
/// Simulated makers with a fixed seed: their hands are normal around a middle that the designer does not know. What is promised is that the next maker lies in the interval 9 times
/// of 10, whether or not one of the testers wrote inches for centimetres, for hands that spread by 4 to 12 %.
/// </summary>
public sealed class CoverageTests
{
    private const int Times = 10_000;
    private static readonly ExpectedNumbers Expected = new(new CountedGauge(16, null, Length.FromCentimetres(10), Length.FromCentimetres(10)), [], null);

    /// <summary>Spreads of hands from hardly any to more than is usual, each with three, five and ten testers, with and without a slip.</summary>
    public static TheoryData<int, double, bool> Rounds
    {
        get
        {
            var rounds = new TheoryData<int, double, bool>();
            foreach (int testers in new[] { 3, 5, 10 })
                foreach (double spread in new[] { 0.04, 0.05, 0.07, 0.1, 0.12 })
                    foreach (bool oneSlip in new[] { false, true }) rounds.Add(testers, spread, oneSlip);
            return rounds;
        }
    }

    [Theory]
    [MemberData(nameof(Rounds))]
    public void Ninety_of_a_hundred_makers_lie_in_the_interval(int testers, double spread, bool oneSlip)
    {
        var chance = new Random(19_930 + testers);
        var hands = new Normal(16.7, 16.7 * spread, chance);
        int within = 0;
        for (int i = 0; i < Times; i++)
        {
            double[] counts = [.. Enumerable.Range(0, testers).Select(_ => hands.Sample())];
            if (oneSlip) counts[^1] *= chance.Next(2) == 0 ? 2.54 : 1 / 2.54;
            Prediction next = Next(counts).Times(16);
            double maker = hands.Sample();
            if (maker >= next.Low && maker <= next.High) within++;
        }

        Assert.InRange(within * 100.0 / Times, 88, 92);
    }

    /// <summary>As makers count.</summary>
    private static double ToTheHalf(double count) => Math.Round(count * 2) / 2;

    private static Prediction Next(double[] counts) =>
        RoundEvidence.Of([.. counts.Select(ToTheHalf).Select((count, at) => new MakerReport($"M{at}", 0) { Gauge = new CountedGauge(count, null, Length.FromCentimetres(10), Length.FromCentimetres(10)) })], Expected)
            .Of(MakerMeasure.Stitches)!.Next!.Value;
}
