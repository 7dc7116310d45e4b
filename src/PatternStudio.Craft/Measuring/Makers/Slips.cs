namespace PatternStudio.Craft.Measuring.Makers;

/// <summary>Slips of the pen and the tape that makers are known for.</summary>
public enum Slip
{
    /// <summary>Far from the others, and no usual slip explains it.</summary>
    None,

    /// <summary>Inches written as centimetres, or the other way round: 2.54 times.</summary>
    InchesAndCentimetres,

    /// <summary>Counted over another length than was written: 5 for 10 cm, an inch for four.</summary>
    OtherLength,

    /// <summary>Stitches of the other terms: 'dc' is the taller stitch in the United States.</summary>
    OtherTerms,

    /// <summary>Before and after blocking exchanged.</summary>
    BlockingExchanged,

    /// <summary>Whole balls weighed, or balls counted, where the grams used were asked for.</summary>
    WholeBalls,

    /// <summary>Ounces written as grams.</summary>
    OuncesForGrams,

    /// <summary>Width and height exchanged.</summary>
    SidesExchanged,

    /// <summary>Hours written as minutes, or the other way round.</summary>
    HoursAndMinutes,
}

/// <summary>Recognises a usual slip from how far a number is from the middle of the others.</summary>
/// <param name="report">The whole report: one number alone does not tell stitches of the other terms from another length.</param>
/// <param name="expected">What was expected.</param>
/// <param name="middles">The middle ratio of each measure, over all makers.</param>
internal sealed class Slips(MakerReport report, ExpectedNumbers expected, IReadOnlyDictionary<MakerMeasure, double> middles)
{
    /// <summary>A slip comes on top of the maker's own hand: so far from the exact factor it is still recognised.</summary>
    private const double Near = 0.12;

    private const double Inch = 2.54;
    private const double Ounce = 28.349523125;
    private const double GramsAreSo = 0.5;

    /// <summary>The slip that brings the number back among the others; <see cref="Slip.None"/> where none does.</summary>
    public Slip Find(MakerMeasure measure)
    {
        double off = Off(measure) ?? 1;
        return measure switch
        {
            MakerMeasure.Yarn => OfYarn(off),
            MakerMeasure.Time => Is(off, 60) ? Slip.HoursAndMinutes : Slip.None,
            MakerMeasure.Width or MakerMeasure.Height => OfSide(off),
            _ => OfGauge(measure, off),
        };
    }

    /// <summary>Before and after blocking: where the other makers' counts change one way by some hundredths, hers the other way by as much.</summary>
    /// <param name="change">The middle of the others' 'after' divided by 'before', stitches to 10 cm.</param>
    /// <param name="after">Stitches or rows after blocking.</param>
    /// <param name="before">The same before.</param>
    public bool BlockingLooksExchanged(double change, MakerMeasure after, MakerMeasure before)
    {
        const double Noticeable = 0.06, Alike = 0.04;
        if (Ratio(after) is not { } got || Ratio(before) is not { } was || Math.Abs(Math.Log(change)) < Noticeable) return false;
        return Math.Abs(Math.Log(got / was) + Math.Log(change)) < Alike;
    }

    private Slip OfGauge(MakerMeasure measure, double off)
    {
        if (Is(off, Inch)) return Slip.InchesAndCentimetres;
        bool rows = measure is MakerMeasure.Rows or MakerMeasure.RowsBefore;
        if (rows && StitchesAreUsual(measure) && IsAnotherHeight(off)) return Slip.OtherTerms;
        return Is(off, 2) || Is(off, 4) || Is(off, 10 / Inch) ? Slip.OtherLength : Slip.None;
    }

    private Slip OfSide(double off)
    {
        if (Is(off, Inch)) return Slip.InchesAndCentimetres;
        if (report is { Width: { } width, Height: { } height } && expected.Of(report.Size) is { Width: { } wide, Height: { } high } && Fits(width / high) && Fits(height / wide)) return Slip.SidesExchanged;
        return off < 1 && Off(MakerMeasure.Width) is { } across && Fits(across) && IsAnotherHeight(off) ? Slip.OtherTerms : Slip.None;
    }

    private Slip OfYarn(double off)
    {
        if (Is(off, Ounce) && off < 1) return Slip.OuncesForGrams;
        if (report.YarnUsed is not { } used || (report.Yarn ?? expected.Yarn) is not { BallWeight.Grams: > 0 } label) return Slip.None;
        double balls = used.Grams / label.BallWeight.Grams;
        bool whole = Math.Round(balls) >= 1 && Math.Abs(balls - Math.Round(balls)) * label.BallWeight.Grams < GramsAreSo;
        // '2' for two balls: as many balls' grams, or a little less, is what the others used.
        double counted = off * label.BallWeight.Grams;
        return (off > 1 && whole) || (off < 1 && used.Grams <= 40 && counted is > 0.8 and < 2.2) ? Slip.WholeBalls : Slip.None;
    }

    private bool StitchesAreUsual(MakerMeasure rows) =>
        Off(rows == MakerMeasure.Rows ? MakerMeasure.Stitches : MakerMeasure.StitchesBefore) is { } stitches && Fits(stitches);

    /// <summary>A double crochet is about twice as high as a single, a treble half as high again as a double (the stitch forms of the yarn model).</summary>
    private static bool IsAnotherHeight(double off) => Is(off, 2) || Is(off, 1.5);

    private static bool Fits(double ratio) => Math.Abs(ratio - 1) < 0.2;

    /// <summary>True where a number is off by a factor, either way.</summary>
    private static bool Is(double off, double factor) => Math.Abs(Math.Abs(Math.Log(off)) - Math.Log(factor)) < Near;

    private double? Ratio(MakerMeasure measure) => ReportRatios.Of(report, expected, measure)?.Ratio;

    private double? Off(MakerMeasure measure) =>
        Ratio(measure) is { } ratio ? ratio / (middles.TryGetValue(measure, out double middle) ? middle : 1) : null;
}
