using System.Globalization;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Measuring.Makers;
using PatternStudio.Studio.Rounds;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.Testing.Designers;

/// <summary>Evidence in words and units.</summary>
internal static class EvidenceLines
{
    /// <summary>'17.5 where 17 was expected', or '103 % of what was expected' where sizes differ.</summary>
    public static string Middle(MeasureEvidence measure)
    {
        double expected = measure.Answers[0].Expected;
        return measure.Answers.All(answer => Math.Abs(answer.Expected - expected) < 1e-6)
            ? $"median {Amount(measure.Measure, expected * measure.Median)}, expected {Amount(measure.Measure, expected)}"
            : $"median {Percent(measure.Median)} of what was expected";
    }

    /// <summary>Where 90 of 100 makers will lie; null with fewer than two.</summary>
    public static string? Next(MeasureEvidence measure)
    {
        if (measure.Next is not { } next) return null;
        double expected = measure.Answers[0].Expected;
        return measure.Answers.All(answer => Math.Abs(answer.Expected - expected) < 1e-6)
            ? $"{Amount(measure.Measure, next.Low * expected)} to {Amount(measure.Measure, next.High * expected)}"
            : $"{Percent(next.Low)} to {Percent(next.High)} of what is expected";
    }

    /// <summary>Size by size what most makers will get.</summary>
    public static IReadOnlyList<string> Sizes(RoundTelling telling)
    {
        var lines = new List<string>();
        for (int size = 0; size < telling.Sizes.Count; size++)
        {
            ExpectedSize expected = telling.Expected.Sizes[size];
            string[] parts =
            [
                .. Part(telling, MakerMeasure.Width, "wide", expected.Width?.Centimetres),
                .. Part(telling, MakerMeasure.Height, "high", expected.Height?.Centimetres),
                .. Yarn(telling, expected.Yarn),
            ];
            if (parts.Length > 0) lines.Add(string.Join("; ", parts.Prepend(telling.Sizes[size]).Where(part => part.Length > 0)));
        }

        return lines;
    }

    public static string Amount(MakerMeasure measure, double amount) => measure switch
    {
        MakerMeasure.Width or MakerMeasure.Height => $"{amount.ToString("0.#", CultureInfo.InvariantCulture)} cm",
        MakerMeasure.Yarn => $"{Numbers.Amount(amount)} m",
        MakerMeasure.Time => Numbers.Time(amount),
        _ => amount.ToString("0.#", CultureInfo.InvariantCulture),
    };

    public static string Percent(double ratio) => Numbers.Percent(ratio);

    private static IEnumerable<string> Part(RoundTelling telling, MakerMeasure measure, string how, double? expected)
    {
        if (expected is { } cm && telling.Evidence.Of(measure)?.Of(cm) is { } next)
            yield return $"{Amount(measure, next.Low)} to {Amount(measure, next.High)} {how} (printed or predicted {Amount(measure, cm)})";
    }

    private static IEnumerable<string> Yarn(RoundTelling telling, YarnLength? expected)
    {
        if (expected is { } yarn && telling.Evidence.Of(MakerMeasure.Yarn)?.Of(yarn.Metres) is { } next)
            yield return $"nine in ten use no more than {Amount(MakerMeasure.Yarn, next.Buy)} of yarn (predicted {Amount(MakerMeasure.Yarn, yarn.Metres)})";
    }
}
