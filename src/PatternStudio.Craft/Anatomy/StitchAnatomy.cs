using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Anatomy;

/// <summary>How the top of a stitch looks: what the next row works into, and what a chart draws at its head.</summary>
public enum TopKind
{
    /// <summary>No top of its own: a slip stitch.</summary>
    Slip,

    /// <summary>One leg, one top.</summary>
    Plain,

    /// <summary>Several legs closed by one draw through: 'sc2tog', a cluster, a puff.</summary>
    Gathered,

    /// <summary>Gathered, then locked with a chain.</summary>
    Locked,

    /// <summary>Whole stitches pulled together through the first of them.</summary>
    Popcorn,

    /// <summary>Whole stitches with a top each: a shell.</summary>
    Several,
}

/// <summary>A stitch taken apart: what its motions do to the hook, how tall it stands and how much yarn it takes.</summary>
/// <param name="Loops">Loops on the hook after each motion.</param>
/// <param name="Legs">How often the hook goes into the work; a whole stitch told by name is a leg.</param>
/// <param name="Feet">How many places it takes: 2 for 'sc2tog', 1 for a cluster in one stitch.</param>
/// <param name="YarnOvers">Yarn overs before the hook first goes in: 0 for sc, 1 for dc, 2 for tr.</param>
/// <param name="HeightInChains">How tall it stands beside a chain: sc 1, hdc 2, dc 3, tr 4.</param>
/// <param name="YarnLength">Yarn it takes, a single chain being 1. Only proportions matter: a swatch's weight fixes the scale.</param>
/// <param name="Top">Its head.</param>
public sealed record StitchAnatomy(
    EquatableArray<int> Loops,
    int Legs,
    int Feet,
    int YarnOvers,
    double HeightInChains,
    double YarnLength,
    TopKind Top)
{
    /// <summary>Loops left on the hook; 1 for a finished stitch.</summary>
    public int LoopsLeft => Loops.IsEmpty ? LoopTrace.AtStart : Loops[^1];

    /// <summary>Takes a definition apart; null where some of its words were not read.</summary>
    public static StitchAnatomy? Of(ReadMotions read) =>
        read.IsWhole ? Of(read.Motions.Select(located => located.Motion).ToList()) : null;

    /// <summary>Takes motions apart.</summary>
    public static StitchAnatomy Of(IReadOnlyList<Motion> motions)
    {
        int inserts = motions.Count(motion => motion is Insert);
        int wholes = motions.OfType<WholeStitch>().Sum(whole => whole.Times);
        return new StitchAnatomy(
            LoopTrace.Of(motions).ToEquatableArray(),
            inserts + wholes,
            Math.Max(1, motions.Count(motion => motion is Insert { NextPlace: true }) + 1),
            YarnOversBeforeInserting(motions),
            StitchHeight.Of(motions),
            YarnModel.LengthOf(motions),
            TopOf(motions, inserts, wholes));
    }

    private static int YarnOversBeforeInserting(IReadOnlyList<Motion> motions) =>
        motions.TakeWhile(motion => motion is not Insert).OfType<YarnOver>().Sum(over => over.Times);

    private static TopKind TopOf(IReadOnlyList<Motion> motions, int inserts, int wholes)
    {
        if (motions.Any(motion => motion is DrawDroppedLoop)) return TopKind.Popcorn;
        if (inserts == 0 && wholes > 0) return wholes > 1 ? TopKind.Several : TopKind.Plain;
        if (motions.Any(motion => motion is DrawThroughPlace)) return TopKind.Slip;
        if (motions.Count > 0 && motions[^1] is LockingChain) return TopKind.Locked;
        return inserts > 1 ? TopKind.Gathered : TopKind.Plain;
    }
}
