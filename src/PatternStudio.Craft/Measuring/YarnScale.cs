namespace PatternStudio.Craft.Measuring;

/// <summary>
/// How much yarn a stitch takes beside others: one length for every time the yarn goes over the hook. A chain and a slip stitch take one, a
/// single crochet two (draw up a loop, draw through), a half double three, a double four, a treble six.
/// </summary>
/// <remarks>
/// Every loop on the hook has passed round the same hook, so loops are of one length to first order; pulled-up loops (puffs) are longer, which the
/// swatch's weight takes up where it is worked in the same stitches. The model only shares the swatch's weight among rows: its scale is
/// never assumed. From hook motions (published stitch instructions); equal loop lengths are an assumption, no source.
/// </remarks>
/// <param name="PerLoop">The yarn of one loop.</param>
/// <param name="Trace">How it was found.</param>
public sealed record YarnScale(YarnLength PerLoop, string Trace)
{
    /// <summary>Finds the yarn of one loop from a weighed swatch.</summary>
    /// <param name="swatch">The swatch.</param>
    /// <param name="yarn">The yarn it is worked in.</param>
    /// <param name="loopsPerStitch">Loops of its stitch, or the mean of the pattern's stitches; above 0.</param>
    public static Measured<YarnScale> From(Swatch? swatch, YarnLabel? yarn, double loopsPerStitch)
    {
        if (swatch is null) return Measured.NotKnown<YarnScale>("Yarn is not known: there is no swatch. Add one with its weight, such as '16 sts, 18 rows = 10 x 10 cm, 12 g'.");
        if (swatch.Weight is not { } weight) return Measured.NotKnown<YarnScale>($"Yarn is not known: the swatch ({swatch}) has no weight. Weigh it and add the grams.");
        if (yarn is null) return Measured.NotKnown<YarnScale>("Yarn is not known: there is no ball band to turn grams into metres. Add it, such as '200 m = 100 g'.");
        if (loopsPerStitch <= 0) return Measured.NotKnown<YarnScale>("Yarn is not known: the pattern does not tell how the swatch's stitch is worked.");
        double loops = swatch.Stitches * swatch.Rows * loopsPerStitch;
        YarnLength perLoop = yarn.LengthOf(weight) / loops;
        string trace = $"swatch {swatch}; yarn {yarn}; shared among the stitches by how often yarn goes over the hook";
        return Measured.Known(new YarnScale(perLoop, trace), trace);
    }

    /// <summary>The yarn of so many loops.</summary>
    public YarnLength Of(double loops) => PerLoop * loops;
}
