using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Anatomy;

/// <summary>One motion of the hook.</summary>
public abstract record Motion;

/// <summary>'yo' n times before inserting: each lays one more loop on the hook.</summary>
public sealed record YarnOver(int Times) : Motion;

/// <summary>'insert hook in …'. <paramref name="NextPlace"/> is true where the hook goes into a place of its own after the first ('in next st').</summary>
public sealed record Insert(bool NextPlace) : Motion;

/// <summary>'yo and draw up a loop': one loop more on the hook.</summary>
public sealed record DrawUpLoop : Motion
{
    /// <summary>How high the loop is drawn, in chains, where the words say it ('even with ch-3'); null where they don't.</summary>
    public int? Chains { get; init; }
}

/// <summary>'draw up a ½ inch loop' with the hook in no stitch: the loop on the hook grows, none is added.</summary>
public sealed record LengthenLoop : Motion;

/// <summary>'yo and draw through n loops': n loops become one. Null means all loops on the hook.</summary>
/// <param name="Loops">At least 1.</param>
/// <param name="Stated">The number that the words claim are on the hook ('through all 7 loops'), to compare with the loops really there.</param>
public sealed record DrawThrough(int? Loops, int? Stated) : Motion;

/// <summary>'yo and draw through st and loop on hook' in one move, as a slip stitch ends. Null means all loops on the hook.</summary>
public sealed record DrawThroughPlace(int? Loops) : Motion;

/// <summary>'work off all loops 2 at a time': 'yo and draw through 2 loops' until one is left.</summary>
public sealed record WorkOffByTwos : Motion;

/// <summary>A chain made to lock a stitch: 'ch 1 to close'; or, before anything else, one to stand on. The loops on the hook stay as they are.</summary>
public sealed record LockingChain(int Chains) : Motion;

/// <summary>'drop loop, insert in first st, draw dropped loop through': a popcorn's closing.</summary>
public sealed record DrawDroppedLoop : Motion;

/// <summary>A whole stitch told by its name inside a definition: '5 dc in same st' before a popcorn is closed. Loops on the hook stay as they are.</summary>
public sealed record WholeStitch(Terms.StitchId Stitch, int Times) : Motion;

/// <summary>A statement on the way: '(3 loops on hook)'.</summary>
public sealed record StatedLoops(int Loops, TextSpan Span) : Motion;
