using System.Globalization;

namespace PatternStudio.Craft.Measuring;

/// <summary>
/// A rough guess of yarn where no swatch was weighed: from how wide stitches are (an unweighed swatch, or the standard's range for the yarn weight and hook) and how much yarn goes into
/// a stitch so wide. Always marked, with a wide interval.
/// </summary>
internal static class RoughYarn
{
    /// <summary>
    /// Yarn of a chain in stitch widths. Four published dishcloths in worsted cotton with a 4.5 mm hook (7 to 9 in across, 39.5 to 73.5 yd) take 11.4 to 12.9 cm of yarn for each cm²; at
    /// 15 single crochet to 10 cm that is about 4 stitch widths for each loop. The document on yarn has the arithmetic.
    /// </summary>
    public const double WidthsPerChain = 4;

    /// <summary>How far yarns and hands lie about that, as a standard deviation: no source; chosen so that the interval is wide.</summary>
    public const double Spread = 0.25;

    /// <summary>A range holds 90 of 100: it is 2 × 1.645 standard deviations.</summary>
    private const double RangeInDeviations = 3.29;

    /// <summary>Null where nothing is known to guess from.</summary>
    public static Measured<YarnScale>? Find(MeasuringBasis basis, Gauge? gauge)
    {
        YarnWeightClass? standard = basis.YarnWeight is { } number ? YarnStandards.Of(number) : null;
        if (standard is null && !basis.IsStated) return null;
        if (gauge is { IsWidthAssumed: false, Tile: null } && gauge.StitchWidth > Length.Zero) return Guess(gauge.StitchWidth, Spread, $"the stitch width of {gauge.StitchWidth.Millimetres:0.#} mm ({gauge.Trace})");
        if (standard is null) return null;
        (Length narrow, Length wide) = standard.StitchWidths(basis.Hook);
        Length middle = (narrow + wide) / 2;
        double ofRange = (wide - narrow) / middle / RangeInDeviations;
        string hook = basis.Hook is { } known ? $" with a {known} hook" : "";
        return Guess(middle, Math.Sqrt((Spread * Spread) + (ofRange * ofRange)), string.Create(CultureInfo.InvariantCulture, $"the standard's gauge for {standard.Name} yarn ({standard.Number}){hook}, stitches {narrow.Millimetres:0.#} to {wide.Millimetres:0.#} mm wide"));
    }

    private static Measured<YarnScale> Guess(Length width, double spread, string from)
    {
        double perChain = width.Millimetres / 1000 * WidthsPerChain;
        string trace = $"a rough guess, for no swatch was weighed: from {from}, {WidthsPerChain:0} stitch widths of yarn for each loop";
        return Measured.Known(
            new YarnScale(YarnLength.FromMetres(perChain), trace)
            {
                PerMaker = Prediction.Assumed(perChain, spread, 0),
                Assumption = string.Create(CultureInfo.InvariantCulture, $"A rough guess with a standard deviation of {spread * 100:0} %: weigh a swatch before you print an amount. The amount to buy is the one that 90 of 100 makers will not exceed, as far as the guess holds."),
                IsRough = true,
            },
            trace);
    }
}
