namespace PatternStudio.Craft.Anatomy;

/// <summary>
/// How much yarn a stitch takes beside a single chain, from its motions. A model of our own, no published source: it sets the
/// proportions between stitches of a mix; how many grams they weigh comes from the designer's swatch.
/// <list type="bullet">
/// <item>Every loop drawn, up or through, is a loop round the hook like that of a chain: 1. A loop drawn up high takes two strands
/// for each chain of height.</item>
/// <item>A yarn over goes round the hook once and is then held fast as a slanting bar, without the loop's return: ¾.</item>
/// <item>Drawing dropped loops or locking chains are chains; stitches told by name take what their own motions take.</item>
/// </list>
/// </summary>
internal static class YarnModel
{
    private const double DrawnLoop = 1;
    private const double Wrap = 0.75;

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
