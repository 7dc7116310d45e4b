using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Working;

/// <summary>What a row may leave of the row below, and what it may not.</summary>
internal sealed partial class RowWorker
{
    /// <summary>
    /// '*sk 1, dc in next, ch 1; rep from * around, join': what the next turn would skip lies between the last stitch and the join, skipped like the others.
    /// </summary>
    private long skippedEachTurn;

    /// <summary>'ch 11, *sk 2, dc in next, ch 8; rep from * 6 times, join': the loop that the join closes passes over as many as the loops before it.</summary>
    private long skippedLast;

    private bool ClosesOverSkipped(long left) => Joined && left == skippedLast && builder.Last is { Kind: CellKind.Chains };

    /// <summary>'Start petals: ch 1, sc in same space, 1 sc in each of next 4 sc, ch 1, turn': on a joined round, a row that turns back goes as far as it says.</summary>
    private bool IsShortRow => TurnsAfter && !joins && stopped is null && course is { Row.Joined: true };

    /// <summary>True where the work is turned behind the row.</summary>
    public bool TurnsAfter { get; init; }

    /// <summary>True where all of the row stands in one place of a chain ring ('ch 4, join, 18 dc in this st'): a ring is never used up.</summary>
    private bool IsRing => course is { Row: { Kind: RowKind.Foundation, Joined: true } } && !builder.IsEmpty
        && !builder.Has(cell => cell.Counts && cell.Feet.Any(foot => foot.Place != (builder.FirstFoot?.Place ?? foot.Place)));

    /// <summary>
    /// '1 dc in each dc to last 4 dc, turn': the words say which stitches the row leaves, as at armholes. 'sc to last sc, turn' has more likely forgotten what goes into the last.
    /// </summary>
    private bool SaysWhereItTurns() =>
        TurnsAfter && !joins && stopped is null && lastWorked is StitchStep { Where: { Choice: PlaceChoice.Each, Extent: { Kind: ExtentKind.ToLast, Count: { } count } } } && context.Number(count) is >= FewestLeft and { } told && told == Left().Stitches;

    private const int FewestLeft = 3;

    /// <summary>Nothing may be left over, unless the row says so, works into spaces, or goes along an edge.</summary>
    private Mishap? CheckEnd()
    {
        if (course is null || leavesUnworked || alongEdge || at.InSpace || lastWorked is null || IsRing) return null;
        if (IsShortRow || SaysWhereItTurns()) return null;
        long left = Left().Stitches;
        if (left == 0 || (onOtherSide || comesBack) && left == 1 || Joined && left == skippedEachTurn || ClosesOverSkipped(left)) return null;
        return stopped ?? new Mishap(MishapKind.LeftOver, lastWorked.Span) { Found = left, Named = "st", Met = course.Row.Label };
    }
}
