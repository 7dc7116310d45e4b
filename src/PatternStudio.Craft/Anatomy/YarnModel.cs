namespace PatternStudio.Craft.Anatomy;

/// <summary>
/// How much yarn a stitch takes beside a single chain, from its motions: one length for every time the yarn goes over the hook, for each loop
/// has passed round the same hook. So sc takes 2, hdc 3, dc 4, tr 6. A loop that the words draw up as high as a chain of n takes as much
/// as n loops. Equal loops are an assumption, no source: the model only sets the proportions in a mix; the designer's swatch gives the scale.
/// </summary>
internal static class YarnModel
{
    private const double DrawnLoop = 1;
    private const double Wrap = 1;

    public static double LengthOf(IEnumerable<Motion> motions)
    {
        int loops = LoopTrace.AtStart;
        double length = 0;
        foreach (Motion motion in motions)
        {
            length += LengthOf(motion, loops);
            loops = LoopTrace.After(loops, motion);
        }

        return length;
    }

    private static double LengthOf(Motion motion, int loops) => motion switch
    {
        YarnOver over => over.Times * Wrap,
        DrawUpLoop up => Math.Max(1, up.Chains ?? 1) * DrawnLoop,
        DrawThrough or DrawThroughPlace => DrawnLoop,
        WorkOffByTwos => (loops - 1) * DrawnLoop,
        LockingChain chain => chain.Chains * DrawnLoop,
        WholeStitch whole => whole.Times * PlainStitch.YarnLengthOf(whole.Stitch),
        _ => 0,
    };
}
