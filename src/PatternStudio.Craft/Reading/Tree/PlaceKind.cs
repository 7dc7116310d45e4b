using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Reading.Tree;

/// <summary>What sort of place the words name.</summary>
public enum PlaceNoun
{
    /// <summary>'st': any stitch, and a chain of the foundation.</summary>
    AnyStitch,

    /// <summary>A stitch of one kind: 'dc', 'puff' (see <see cref="PlaceKind.Stitch"/>).</summary>
    Stitch,

    /// <summary>A single chain: 'next ch', '3rd ch'.</summary>
    Chain,

    /// <summary>A space under chains: 'ch-2 sp', 'ch-3 lp'; the number of chains in <see cref="PlaceKind.Chains"/> when it is named.</summary>
    ChainSpace,

    /// <summary>'sp', 'space', 'loop', 'mesh': a space of any length, also between two stitches where no chain is.</summary>
    Space,

    /// <summary>A group that the pattern names: 'shell', 'V-st' (see <see cref="PlaceKind.Stitch"/>).</summary>
    Group,

    /// <summary>'each space between sts': under no loop and in no chain space, between a stitch and the one after it.</summary>
    Gap,

    /// <summary>'st or sp', 'each st and ch-1 sp': stitches, and each chain space as one place.</summary>
    StitchOrSpace,

    /// <summary>'each st and ch': stitches, and each single chain as one place.</summary>
    StitchOrChain,

    /// <summary>The turning chain.</summary>
    TurningChain,

    /// <summary>The end of a row at the side of the fabric.</summary>
    RowEnd,

    /// <summary>A ring at the centre of rounds.</summary>
    Ring,

    /// <summary>'corner', 'corner sp'.</summary>
    Corner,
}

/// <summary>The kind of place that a stitch is worked into, skipped or repeated up to.</summary>
/// <param name="Noun">What sort of place.</param>
/// <param name="Stitch">Which stitch or group, for <see cref="PlaceNoun.Stitch"/> and <see cref="PlaceNoun.Group"/>.</param>
/// <param name="Chains">How many chains, for <see cref="PlaceNoun.ChainSpace"/>; null where the words don't say.</param>
public sealed record PlaceKind(PlaceNoun Noun, StitchId? Stitch = null, int? Chains = null)
{
    public static readonly PlaceKind AnyStitch = new(PlaceNoun.AnyStitch);
    public static readonly PlaceKind Space = new(PlaceNoun.Space);
    public static readonly PlaceKind Chain = new(PlaceNoun.Chain);
    public static readonly PlaceKind TurningChain = new(PlaceNoun.TurningChain);
    public static readonly PlaceKind Ring = new(PlaceNoun.Ring);

    /// <summary>A stitch of one kind.</summary>
    public static PlaceKind Of(StitchId stitch) => new(PlaceNoun.Stitch, stitch);

    /// <summary>A chain space, of a named length or of any.</summary>
    public static PlaceKind ChainSpace(int? chains = null) => new(PlaceNoun.ChainSpace, Chains: chains);
}
