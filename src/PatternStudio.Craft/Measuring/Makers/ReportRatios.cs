namespace PatternStudio.Craft.Measuring.Makers;

/// <summary>One number of one report beside what was expected.</summary>
/// <param name="Reported">In the measure's own unit: to 10 cm, cm, m of yarn, minutes.</param>
/// <param name="Expected">In the same unit; above 0.</param>
/// <param name="Fineness">How finely it can be measured, as a share: half a step of the tape, the scales or the count, as a standard deviation.</param>
internal readonly record struct ReportedNumber(double Reported, double Expected, double Fineness)
{
    public double Ratio => Reported / Expected;
}

/// <summary>Lays a report beside the expected numbers.</summary>
internal static class ReportRatios
{
    /// <summary>A number read to half a step has a standard deviation of step ÷ √12: tapes to the half centimetre, counts to the half stitch, scales to the gram.</summary>
    private static readonly double Half = 0.5 / Math.Sqrt(12);
    private static readonly double Whole = 1 / Math.Sqrt(12);

    /// <summary>The number of one measure; null where the report has none, or nothing is expected.</summary>
    public static ReportedNumber? Of(MakerReport report, ExpectedNumbers expected, MakerMeasure measure)
    {
        ExpectedSize size = expected.Of(report.Size);
        return measure switch
        {
            MakerMeasure.Stitches => Stitches(report.Gauge, expected.Gauge),
            MakerMeasure.Rows => Rows(report.Gauge, expected.Gauge),
            MakerMeasure.StitchesBefore => Stitches(report.BeforeBlocking, expected.Gauge),
            MakerMeasure.RowsBefore => Rows(report.BeforeBlocking, expected.Gauge),
            MakerMeasure.Width => Side(report.Width, size.Width),
            MakerMeasure.Height => Side(report.Height, size.Height),
            MakerMeasure.Yarn => Yarn(report, expected, size.Yarn),
            MakerMeasure.Time => Number(report.Time?.TotalMinutes, size.Time?.TotalMinutes, 0.05),
            _ => throw new ArgumentOutOfRangeException(nameof(measure)),
        };
    }

    private static ReportedNumber? Stitches(CountedGauge? got, CountedGauge? printed) =>
        Number(got?.StitchesToTen, printed?.StitchesToTen, Half / got?.Stitches ?? 0);

    private static ReportedNumber? Rows(CountedGauge? got, CountedGauge? printed) =>
        Number(got?.RowsToTen, printed?.RowsToTen, Half / got?.Rows ?? 0);

    private static ReportedNumber? Side(Length? got, Length? wanted) =>
        Number(got?.Centimetres, wanted?.Centimetres, got is { } side ? Half / side.Centimetres : 0);

    private static ReportedNumber? Yarn(MakerReport report, ExpectedNumbers expected, YarnLength? needed) =>
        report.YarnUsed is { } used && (report.Yarn ?? expected.Yarn) is { } label ? Number(label.LengthOf(used).Metres, needed?.Metres, Whole / used.Grams) : null;

    private static ReportedNumber? Number(double? reported, double? expected, double fineness) =>
        reported is > 0 and { } got && expected is > 0 and { } wanted ? new ReportedNumber(got, wanted, fineness) : null;
}
