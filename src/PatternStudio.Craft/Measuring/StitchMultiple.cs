namespace PatternStudio.Craft.Measuring;

/// <summary>'Multiple of a + b' in stitches: any whole number of a, and b once. Chains that only turn are a number of their own and not in it.</summary>
/// <param name="Each">Stitches of one repeat; at least 1.</param>
/// <param name="Extra">Stitches that come once; 0 or more.</param>
public readonly record struct StitchMultiple(int Each, int Extra)
{
    /// <summary>Stitches of so many repeats.</summary>
    public long Of(int repeats) => ((long)Each * repeats) + Extra;

    /// <summary>True where a count is one of the multiple's, with one repeat at least.</summary>
    public bool Allows(long stitches) => stitches > Extra && (stitches - Extra) % Each == 0;

    /// <summary>The allowed count below (or at) a wish, and the one above (or at) it; never fewer than one repeat.</summary>
    public (long Below, long Above) Around(double wish)
    {
        long repeats = (long)Math.Floor((wish - Extra) / Each);
        long below = Extra + (Each * Math.Max(1, repeats));
        return (below, below >= wish ? below : below + Each);
    }

    /// <summary>The allowed count nearest a wish; of two as near, the smaller.</summary>
    public long Nearest(double wish)
    {
        (long below, long above) = Around(wish);
        return wish - below <= above - wish ? below : above;
    }
}
