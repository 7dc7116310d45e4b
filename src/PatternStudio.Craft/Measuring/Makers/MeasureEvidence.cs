using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring.Makers;

/// <summary>One maker's number, and whether it counts.</summary>
/// <param name="Report">0-based index of the report.</param>
/// <param name="Maker">Who.</param>
/// <param name="Reported">To 10 cm, cm, m of yarn, minutes.</param>
/// <param name="Expected">In the same unit.</param>
/// <param name="Score">Modified z-score among the makers; above 3.5 it is left out.</param>
public sealed record MakerAnswer(int Report, string Maker, double Reported, double Expected, double Score)
{
    public double Ratio => Reported / Expected;

    /// <summary>True where it is an outlier: shown, but not counted.</summary>
    public bool LeftOut { get; init; }

    /// <summary>The slip that would explain it.</summary>
    public Slip Slip { get; init; }

    /// <summary>Why it is left out or asked about, in a sentence; empty for an ordinary number.</summary>
    public string Reason { get; init; } = "";
}

/// <summary>What makers say about one measure.</summary>
/// <param name="Measure">The measure.</param>
/// <param name="Answers">In the order of the reports, those that are left out too; never empty.</param>
/// <param name="Makers">How many makers are counted, each once.</param>
/// <param name="Median">The middle ratio of reported to expected, over the makers counted.</param>
/// <param name="Mad">Their median absolute deviation.</param>
/// <param name="Next">The ratio that the next maker will get; null with fewer than two makers counted.</param>
public sealed record MeasureEvidence(
    MakerMeasure Measure, EquatableArray<MakerAnswer> Answers, int Makers, double Median, double Mad, Prediction? Next)
{
    /// <summary>
    /// True where the makers differ from what was expected by more than chance and by more than matters: at least three of them, a 90 % confidence interval of their mean
    /// (mean ± t · s ÷ √n) that leaves 1 out, and a middle at least <paramref name="least"/> away.
    /// </summary>
    public bool Differs(double least)
    {
        if (Makers < 3 || Next is not { } next || Math.Abs(Median - 1) < least) return false;
        // The interval for the next maker reaches √(1 + 1/n) · s · t; that of the mean √(1/n) · s · t.
        double reach = (next.High - next.Expected) / Math.Sqrt(Makers + 1);
        return Math.Abs(next.Expected - 1) > reach && Math.Sign(next.Expected - 1) == Math.Sign(Median - 1);
    }

    /// <summary>What most makers will get of an expected amount, in its own unit; null where not known.</summary>
    public Prediction? Of(double expected) => Next?.Times(expected);
}
