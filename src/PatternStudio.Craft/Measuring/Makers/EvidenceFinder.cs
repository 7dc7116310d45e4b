using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring.Makers;

/// <summary>Weighs the reports measure by measure.</summary>
/// <remarks>Outliers are looked for among the logarithms of the ratios: half as much is then as far off as twice as much.</remarks>
internal sealed class EvidenceFinder(IReadOnlyList<MakerReport> reports, ExpectedNumbers expected)
{
    /// <summary>
    /// Two numbers that agree to a step, each uniform within it, lie anywhere from 0 to a step apart, with the density 2 · (1 − d). A spread is a scale, and the mean of a scale is that of its logarithm:
    /// ∫ ln d · 2 (1 − d) = −3/2, so e^(−3/2) = 0.22 of a step, a standard deviation of that ÷ √2; a single number's rounding is step ÷ √12. Makers who happen to agree are not taken for certainty.
    /// </summary>
    private static readonly double AgreeingSpread = Math.Exp(-1.5) / Math.Sqrt(2) * Math.Sqrt(12);

    private readonly Dictionary<MakerMeasure, double> middles = [];

    public IEnumerable<MeasureEvidence> All()
    {
        MakerMeasure[] measures = Enum.GetValues<MakerMeasure>();
        foreach (MakerMeasure measure in measures)
            if (ByMaker(Numbers(measure)) is { Length: > 0 } ratios)
                middles[measure] = Outliers.Median(ratios);
        return [.. measures.Where(middles.ContainsKey).Select(Weigh)];
    }

    private MeasureEvidence Weigh(MakerMeasure measure)
    {
        (int Report, ReportedNumber Number)[] numbers = [.. Numbers(measure)];
        double[] ratios = ByMaker(numbers);
        double middle = Math.Log(middles[measure]), mad = Outliers.Mad([.. ratios.Select(ratio => Math.Log(ratio))]);
        double least = Math.Max(UsualHands.Spread(measure), numbers.Average(it => it.Number.Fineness));
        MakerAnswer[] answers = [.. numbers.Select(it => Judge(measure, it.Report, it.Number, Outliers.Score(Math.Log(it.Number.Ratio), middle, mad, least), ratios.Length))];
        (int Report, ReportedNumber Number)[] kept = [.. numbers.Where((_, at) => !answers[at].LeftOut)];
        double[] counted = ByMaker(kept);
        return new MeasureEvidence(measure, answers.ToEquatableArray(), counted.Length, Outliers.Median(counted), Outliers.Mad(counted),
            counted.Length < 2 ? null : Prediction.From(counted, kept.Average(it => it.Number.Fineness) * AgreeingSpread));
    }

    /// <summary>An outlier is left out. What is no outlier but looks like a slip — with one or two makers nobody can be one — is asked about and still counts.</summary>
    private MakerAnswer Judge(MakerMeasure measure, int at, ReportedNumber number, double score, int makers)
    {
        MakerReport report = reports[at];
        var answer = new MakerAnswer(at, report.Maker, number.Reported, number.Expected, score);
        if (score > Outliers.Limit)
        {
            Slip slip = new Slips(report, expected, middles).Find(measure);
            return answer with { LeftOut = true, Slip = slip, Reason = MakerSentences.LeftOut(measure, number.Ratio / middles[measure], slip) };
        }

        bool few = makers < 3 && Math.Abs(number.Ratio - 1) > UsualHands.Reach(measure);
        Slip asked = few ? new Slips(report, expected, new Dictionary<MakerMeasure, double>()).Find(measure) : Slip.None;
        if (asked == Slip.None && Exchanged(measure, report, makers)) asked = Slip.BlockingExchanged;
        return asked == Slip.None ? answer : answer with { Slip = asked, Reason = MakerSentences.Asked(asked) };
    }

    private bool Exchanged(MakerMeasure measure, MakerReport report, int makers)
    {
        if (makers < 3 || measure is not (MakerMeasure.Stitches or MakerMeasure.Rows)) return false;
        MakerMeasure before = measure == MakerMeasure.Stitches ? MakerMeasure.StitchesBefore : MakerMeasure.RowsBefore;
        double[] changes = [.. reports.Where(it => it != report).Select(it => Change(it, measure, before)).OfType<double>()];
        return changes.Length >= 2 && new Slips(report, expected, middles).BlockingLooksExchanged(Outliers.Median(changes), measure, before);
    }

    private double? Change(MakerReport report, MakerMeasure after, MakerMeasure before) =>
        ReportRatios.Of(report, expected, after)?.Ratio / ReportRatios.Of(report, expected, before)?.Ratio;

    private IEnumerable<(int Report, ReportedNumber Number)> Numbers(MakerMeasure measure) =>
        from at in Enumerable.Range(0, reports.Count)
        let number = ReportRatios.Of(reports[at], expected, measure)
        where number is not null
        select (at, number.Value);

    /// <summary>Makers are what varies: each speaks once, by the mean of her pieces.</summary>
    private double[] ByMaker(IEnumerable<(int Report, ReportedNumber Number)> numbers) =>
        [.. numbers.GroupBy(it => reports[it.Report].Maker, StringComparer.OrdinalIgnoreCase).Select(maker => maker.Average(it => it.Number.Ratio))];
}
