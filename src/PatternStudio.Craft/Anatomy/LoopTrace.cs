namespace PatternStudio.Craft.Anatomy;

/// <summary>Counts the loops on the hook, motion by motion. A stitch begins with one, the working loop, and ends with one.</summary>
public static class LoopTrace
{
    /// <summary>Loops on the hook before a stitch.</summary>
    public const int AtStart = 1;

    /// <summary>The loops on the hook after each motion.</summary>
    public static IEnumerable<int> Of(IEnumerable<Motion> motions)
    {
        int loops = AtStart;
        foreach (Motion motion in motions) yield return loops = After(loops, motion);
    }

    /// <summary>
    /// The loops after one motion. A draw through more loops than there are takes all of them: what is wrong
    /// with that is said by <see cref="LoopTroubles"/>.
    /// </summary>
    public static int After(int loops, Motion motion) => motion switch
    {
        YarnOver over => loops + over.Times,
        DrawUpLoop => loops + 1,
        DrawThrough { Loops: { } taken } => Math.Max(1, loops - taken + 1),
        DrawThroughPlace { Loops: { } taken } => Math.Max(1, loops - taken + 1),
        DrawThrough or DrawThroughPlace or WorkOffByTwos => 1,
        _ => loops,
    };
}
