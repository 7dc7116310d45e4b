using System.Globalization;

namespace PatternStudio.Craft.Measuring;

/// <summary>Finds the yarn scale of one piece from the weighed swatches.</summary>
/// <param name="basis">Swatches and yarn.</param>
/// <param name="design">What swatches refer to.</param>
/// <param name="rows">The piece's rows, without its foundation.</param>
/// <param name="tiles">Tiles of the piece; 0 for none.</param>
internal sealed class YarnEvidence(MeasuringBasis basis, DesignRows design, IReadOnlyList<RowTally> rows, long tiles)
{
    private const string OneSwatch = "With one swatch the spread between makers is not known; a standard deviation of 10 % is assumed (from memory: the trade adds 5 to 15 %). The amount to buy is the one that 90 of 100 makers will not exceed.";

    /// <summary>Kitchen scales show grams and tapes are read to the half centimetre: a rounding by up to half a step has a standard deviation of step ÷ √12.</summary>
    private static readonly double GramError = 1 / Math.Sqrt(12);
    private static readonly double CentimetreError = 0.5 / Math.Sqrt(12);

    /// <param name="gauge">The gauge, for a rough guess from stitch widths; null where none is known.</param>
    public Measured<YarnScale> Find(Gauge? gauge)
    {
        (Swatch Swatch, double PerChain)[] weighed = [.. basis.Swatches.Select(swatch => (swatch, PerChain(swatch) ?? 0)).Where(pair => pair.Item2 > 0)];
        if (weighed.Length == 0) return RoughYarn.Find(basis, gauge) ?? Measured.NotKnown<YarnScale>(WhyNot());
        return weighed.Length == 1 ? FromOne(weighed[0].Swatch, weighed[0].PerChain) : FromSeveral(weighed);
    }

    private Measured<YarnScale> FromOne(Swatch swatch, double perChain)
    {
        string trace = $"swatch {swatch}; yarn {swatch.Yarn ?? basis.Yarn}; shared among the stitches by their hook motions";
        return Known(perChain, trace, Prediction.Assumed(perChain, YarnNeed.AssumedSpread), OneSwatch);
    }

    /// <summary>Makers are what varies: where several are named, each speaks once, by the mean of her swatches.</summary>
    private Measured<YarnScale> FromSeveral((Swatch Swatch, double PerChain)[] weighed)
    {
        double[] byMaker = [.. weighed.GroupBy(pair => pair.Swatch.Maker, StringComparer.OrdinalIgnoreCase).Select(maker => maker.Average(pair => pair.PerChain))];
        double[] observed = byMaker.Length > 1 ? byMaker : [.. weighed.Select(pair => pair.PerChain)];
        Prediction prediction = Prediction.From(observed, weighed.Average(pair => Fineness(pair.Swatch)));
        string who = byMaker.Length > 1 ? $"{observed.Length} makers" : $"{observed.Length} swatches of one maker, so other hands may differ more";
        string spread = string.Create(CultureInfo.InvariantCulture, $"The spread comes from {who} (Student's t, {observed.Length - 1} degrees of freedom). The amount to buy is the one that 90 of 100 makers will not exceed.");
        string trace = $"mean of {weighed.Length} weighed swatches ({string.Join("; ", weighed.Select(pair => pair.Swatch))}); yarn {basis.Yarn ?? weighed[0].Swatch.Yarn}; shared among the stitches by their hook motions";
        return Known(prediction.Expected, trace, prediction, spread);
    }

    private static Measured<YarnScale> Known(double perChain, string trace, Prediction prediction, string assumption) =>
        Measured.Known(new YarnScale(YarnLength.FromMetres(perChain), trace) { PerMaker = prediction, Assumption = assumption }, trace);

    private static double Fineness(Swatch swatch)
    {
        double weight = GramError / swatch.Weight!.Value.Grams, width = CentimetreError / swatch.Width.Centimetres, height = CentimetreError / swatch.Height.Centimetres;
        return Math.Sqrt((weight * weight) + (width * width) + (height * height));
    }

    /// <summary>Metres of one chain by one swatch; null where it can't be told.</summary>
    private double? PerChain(Swatch swatch)
    {
        if (swatch.Weight is not { Grams: > 0 } weight || (swatch.Yarn ?? basis.Yarn) is not { } yarn || Chains(swatch) is not (> 0 and { } chains)) return null;
        return yarn.LengthOf(weight).Metres / chains;
    }

    /// <summary>Relative yarn of a whole swatch.</summary>
    private double? Chains(Swatch swatch) => swatch.Kind switch
    {
        SwatchKind.Rounds => swatch.Over is { } over && rows.Count >= over.Last ? rows.Take(over.Last).Sum(row => row.Yarn) : null,
        SwatchKind.Tiles => tiles > 0 ? rows.Sum(row => row.Yarn) / tiles * swatch.Stitches * swatch.Rows : null,
        _ => swatch.InStitches(design.Multiple) is { } counted ? counted.Stitches * counted.Rows * PerStitch(counted) : null,
    };

    /// <summary>Relative yarn of one stitch of the swatch: of its named stitch, or the mean over the rows that it names, or over the piece's (all their chains included).</summary>
    private double PerStitch(Swatch swatch)
    {
        if (swatch.Stitch is { } stitch) return design.Forms.Of(stitch).Yarn;
        IReadOnlyList<RowTally> own = swatch.Over is { } over && design.Rows(over) is { Count: > 0 } named ? named : rows;
        return own.Any(row => row.Unknown is not null) ? 0 : own.Sum(row => row.Yarn) / Math.Max(1, own.Sum(row => row.Places));
    }

    private string WhyNot()
    {
        if (basis.Gauge is not { } swatch) return "Yarn is not known: there is no swatch. Add one with its weight, such as '16 sts, 18 rows = 10 x 10 cm, 12 g'.";
        if (swatch.Weight is not { } weight) return $"Yarn is not known: the swatch ({swatch}) has no weight. Weigh it and add the grams.";
        if (weight.Grams <= 0) return $"Yarn is not known: the swatch ({swatch}) weighs nothing. Weigh it on finer scales, or several together.";
        if ((swatch.Yarn ?? basis.Yarn) is null) return "Yarn is not known: there is no ball band to turn grams into metres. Add it, such as '200 m = 100 g'.";
        return swatch.Rows <= 0 ? $"Yarn is not known: the swatch ({swatch}) does not count rows." : "Yarn is not known: the pattern does not tell how the swatch's stitch is worked.";
    }
}
