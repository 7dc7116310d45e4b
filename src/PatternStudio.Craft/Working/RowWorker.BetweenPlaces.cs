using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>Places between two others, where no loop of a stitch is caught. What comes second is still to be met: the next such place lies behind it.</summary>
internal sealed partial class RowWorker
{
    private (Target?, Mishap?) Between(Placement where)
    {
        if (course is null) return (null, null);
        if (where.Within is { Noun: PlaceNoun.Space or PlaceNoun.ChainSpace } loop) return InLoop(loop, where);
        if (where.Within is { Noun: PlaceNoun.Group } && GapBeforeNextCell(-1) is { } gap) return (gap, null);
        if (where.Kind.Noun == PlaceNoun.Group) return BetweenTwo(EndOfGroup, where);
        if (where.Kind.Stitch?.Value == "picot") return BetweenTwo(PicotAfter, where);
        if (where is { Kind: { Noun: PlaceNoun.Stitch, Stitch: { } cluster }, Ordinal: null } && Places.IsCluster(cluster)) return BetweenClusters(where);
        if (where.Kind is { Noun: PlaceNoun.Stitch } kind && where.Count is not null && course.Find(at.Position, (cell, i) => places!.Offers(cell, i, kind) > 0) is var one and >= 0
            && course.Find(one + 1, (cell, i) => places!.Offers(cell, i, kind) > 0) is var other and >= 0)
            return (Gap(other), null);
        long space = course.Find(at.Position, (cell, _) => cell.Kind is CellKind.Chains or CellKind.Stitch or CellKind.TurningChain);
        if (space < 0) return (null, Missing(PlaceKind.AnyStitch, where.Span));
        if (context.Says(where.Span, "first") && at.Position <= 1) return (Gap(1), null);
        // Between the next two stitches: past the first of them, before the second.
        return at.Position + 1 < course.Length ? (Gap(at.Position + 1), null) : (null, Missing(PlaceKind.AnyStitch, where.Span));
    }

    /// <summary>'3 dc in next sp between groups', where a corner's groups are parted by chains and these are not: the gap where one group ends and the next begins.</summary>
    private Target? GapBetweenGroups(long spaceAhead, TextSpan words)
    {
        if (spaceAhead < 0 || !context.Says(words, "between")) return null;
        long end = course!.Find(at.Position, (cell, _) => EndsGroup(cell));
        return end >= 0 && end + 1 < spaceAhead ? Gap(end + 1) : null;
    }

    /// <summary>'between next 2 clusters': in the loop that parts them, or where there is none in the gap.</summary>
    private (Target?, Mishap?) BetweenClusters(Placement where)
    {
        long first = course!.Find(at.Position, (cell, i) => places!.Offers(cell, i, where.Kind) > 0);
        long second = first < 0 ? -1 : course.Find(first + 1, (cell, i) => places!.Offers(cell, i, where.Kind) > 0);
        if (second < 0) return (null, Missing(where.Kind, where.Span));
        if (second != first + 2 || course.At(first + 1).Kind != CellKind.Chains) return (Gap(first + 1), null);
        at = at with { Position = second, Chain = 0, Last = first + 1, LastChain = -1, InSpace = true };
        return (TargetAt(first + 1, -1, true, where), null);
    }

    /// <summary>'sc between picots of next loop': under the loop, in its middle.</summary>
    private (Target?, Mishap?) InLoop(PlaceKind loop, Placement where)
    {
        (Target target, Mishap? mishap) = TakeNext(loop, where.Span, where);
        return mishap is null ? (target, null) : (null, mishap);
    }

    /// <summary>'between next 2 petals', 'between next 2 picots': behind the next of them and before the one after it; behind the last of a round comes the first.</summary>
    private (Target?, Mishap?) BetweenTwo(Func<long, long> second, Placement where)
    {
        long behind = second(at.Position);
        if (behind < 0 || behind >= course!.Length && !GoesAround) return (null, new Mishap(MishapKind.CannotWork, where.Span));
        if (behind < course.Length) return (Gap(behind), null);
        at = at with { Position = course.Length, Chain = 0, Last = course.Length - 1, LastChain = -1, InSpace = true };
        return (new Target(new Foot(Down, course.PlaceOf(0), -1, FootKind.Between), course.Length - 1), null);
    }

    /// <summary>The index just behind the next group of stitches; -1 where there is none.</summary>
    private long EndOfGroup(long from)
    {
        long end = course!.Find(from, (cell, _) => EndsGroup(cell));
        return end < 0 ? -1 : end + 1;
    }

    /// <summary>The index of the second picot from here; behind the last one, the end of the row. Loops that a pattern calls picots count as such where it closes none.</summary>
    private long PicotAfter(long from)
    {
        bool closed = course!.Find(0, (cell, _) => cell.Kind == CellKind.Picot) >= 0;
        bool IsPicot(Cell cell, long _) => closed ? cell.Kind == CellKind.Picot : cell.Kind == CellKind.Chains;
        long first = course.Find(from, IsPicot);
        if (first < 0) return -1;
        long second = course.Find(first + 1, IsPicot);
        return second < 0 ? course.Length : second;
    }
}
