namespace PatternStudio.Craft.Measuring;

/// <summary>
/// The scale that turns relative yarn into metres. How much a stitch takes beside a chain comes from its hook motions (the anatomy's yarn model, our own); how
/// much that is in metres comes from a weighed swatch alone and is never assumed.
/// </summary>
/// <param name="PerChain">The yarn of one chain.</param>
/// <param name="Trace">How it was found.</param>
public sealed record YarnScale(YarnLength PerChain, string Trace)
{
    /// <summary>Finds the scale from a weighed swatch.</summary>
    /// <param name="swatch">The swatch.</param>
    /// <param name="yarn">The yarn it is worked in.</param>
    /// <param name="perStitch">Relative yarn of its stitch, or the mean of the pattern's stitches; 0 where not known.</param>
    public static Measured<YarnScale> From(Swatch? swatch, YarnLabel? yarn, double perStitch)
    {
        if (swatch is null) return Measured.NotKnown<YarnScale>("Yarn is not known: there is no swatch. Add one with its weight, such as '16 sts, 18 rows = 10 x 10 cm, 12 g'.");
        if (swatch.Weight is not { } weight) return Measured.NotKnown<YarnScale>($"Yarn is not known: the swatch ({swatch}) has no weight. Weigh it and add the grams.");
        if (yarn is null) return Measured.NotKnown<YarnScale>("Yarn is not known: there is no ball band to turn grams into metres. Add it, such as '200 m = 100 g'.");
        if (perStitch <= 0) return Measured.NotKnown<YarnScale>("Yarn is not known: the pattern does not tell how the swatch's stitch is worked.");
        YarnLength perChain = yarn.LengthOf(weight) / (swatch.Stitches * swatch.Rows * perStitch);
        string trace = $"swatch {swatch}; yarn {yarn}; shared among the stitches by their hook motions";
        return Measured.Known(new YarnScale(perChain, trace), trace);
    }

    /// <summary>The yarn of so much relative yarn.</summary>
    public YarnLength Of(double chains) => PerChain * chains;
}
