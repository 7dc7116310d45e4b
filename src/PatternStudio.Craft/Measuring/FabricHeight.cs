namespace PatternStudio.Craft.Measuring;

/// <summary>
/// How tall a stitch makes the fabric. Its height in chains (sc 1, hdc 2, dc 3, tr 4) says how its turning chain is made, not how tall the fabric grows: worked
/// double crochet is about twice as tall as single, not three times.
/// </summary>
/// <remarks>
/// Heights in stitch widths follow from the first rounds that make flat circles: sc 6, hdc 8, dc 12, tr 16–18 stitches (published rules for
/// flat circles), since a flat circle needs 2π × height ÷ width more each round: 6/2π = 0.95, 8/2π = 1.27, 12/2π = 1.91, 17/2π = 2.7.
/// Taller stitches go on by the last step (0.8); slip stitch 0.3 is common practice, no source.
/// </remarks>
public static class FabricHeight
{
    private static readonly double[] Known = [0.3, 0.95, 1.27, 1.91, 2.7];
    private const double Step = 0.8;

    /// <summary>Height in stitch widths of a stitch so many chains high.</summary>
    /// <param name="chains">0 or more; between whole numbers in proportion.</param>
    public static double OfChains(double chains)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(chains);
        int whole = (int)Math.Min(chains, 1000);
        return Whole(whole) + ((Math.Min(chains, 1000) - whole) * (Whole(whole + 1) - Whole(whole)));
    }

    private static double Whole(int chains) => chains < Known.Length ? Known[chains] : Known[^1] + (Step * (chains - Known.Length + 1));
}
