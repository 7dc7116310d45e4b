using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Measuring;

/// <summary>How a stitch is built, as far as size, yarn and symbol depend on it.</summary>
public enum FormKind
{
    /// <summary>A chain.</summary>
    Chain,

    /// <summary>A slip stitch.</summary>
    SlipStitch,

    /// <summary>One leg, worked off two loops at a time (a half double: three at once).</summary>
    Plain,

    /// <summary>Legs in places of their own, closed by one loop: 'dc2tog'.</summary>
    Together,

    /// <summary>Legs in one place, each worked to its last loops, closed by one loop: cluster, bobble.</summary>
    Cluster,

    /// <summary>Long loops drawn up in one place, closed at once: puff.</summary>
    Puff,

    /// <summary>Whole stitches in one place, gathered by drawing the loop through the first: popcorn.</summary>
    Popcorn,

    /// <summary>A stitch that the pattern names and nowhere tells how to work.</summary>
    Unknown,
}

/// <summary>The build of one kind of stitch.</summary>
/// <param name="Id">The stitch.</param>
/// <param name="Kind">How it is built.</param>
/// <param name="Base">The plain stitch its legs are: dc for a 3-dc cluster.</param>
/// <param name="YarnOvers">Yarn overs before the hook goes in, on each leg: the bars of its symbol.</param>
/// <param name="Legs">Number of legs; at least 1.</param>
/// <param name="Height">Its height in widths of a single crochet; 0 for chains and for stitches that nothing is known of.</param>
/// <param name="Yarn">Yarn it takes beside a chain, which takes 1; 0 where not known.</param>
public sealed record StitchForm(StitchId Id, FormKind Kind, StitchId Base, int YarnOvers, int Legs, double Height, double Yarn)
{
    /// <summary>Front or back post: its foot is a hook round the post below.</summary>
    public bool FrontPost { get; init; }

    public bool BackPost { get; init; }

    /// <summary>A stitch that nothing is known of.</summary>
    public static StitchForm UnknownOf(StitchId id) => new(id, FormKind.Unknown, id, 0, 1, 0, 0);
}
