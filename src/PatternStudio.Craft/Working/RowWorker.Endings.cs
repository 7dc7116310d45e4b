using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>How a row ends behind its repeat: 'rep from * around, ending with …'.</summary>
internal sealed partial class RowWorker
{
    /// <summary>'… ending with ch 8, sl st in 3rd st of ch': the slip stitch closes the round, as a join does.</summary>
    private StitchStep? ClosingSlipStitch(RepeatStep step, EquatableArray<Step> all, int index) =>
        AtTop && GoesAround && !step.Ending.IsEmpty && step.Ending[step.Ending.Count - 1] is StitchStep { Where.Choice: PlaceChoice.TurningChainTop or PlaceChoice.First } slip
        && slip.Stitch == StitchId.SlipStitch && !all.Skip(index + 1).Any(behind => behind is StitchStep or GroupStep or RepeatStep or SkipStep) ? slip : null;

    /// <summary>
    /// 'ending with sc in last sc': the ending comes behind the last repeat; where that does not come out, it stands in the place of the last
    /// repeat's own end.
    /// </summary>
    private Mishap? WorkWithEnding(RepeatStep step, Need reserve)
    {
        (State before, int mark, int loopsBefore) = (at, builder.Mark, ownLoops);
        if (ClosesLastTurn(step) && WorkToOwnEnd(step, reserve)) return null;
        Need ending = NeedOf(WithoutClosing(step.Ending), 0);
        (Mishap? behind, bool twice) = ThenClose(Repeated(step, step.Steps, ending + reserve) ?? WorkAll(InSamePlace(step)), step.Ending);
        bool closed = behind is null && closedRound;
        if (closed && !twice && Left().Spaces <= reserve.Spaces)
        {
            stopped = null;
            return null;
        }
        if (behind is null && !twice && stopped is null && Left().Stitches <= reserve.Stitches) return null;
        if (behind is null && !twice && GoesAround && step.Ending[step.Ending.Count - 1] is ChainStep && Left().Stitches is var passed && step.Steps.Any(inner => inner is SkipStep && context.Number(((SkipStep)inner).Count) == passed))
        {
            // The loop that closes the round passes over as many as the others do.
            (stopped, skippedEachTurn) = (null, passed);
            return null;
        }
        (State after, Mishap? stop) = (at, stopped);
        IEnumerable<EquatableArray<Step>> parts = PartsOf(OneByOne(step.Steps), closed && step.Ending[0] is ChainStep);
        foreach (EquatableArray<Step> start in twice ? parts.Append([]) : parts)
        {
            List<RowBuilder.Entry> undone = builder.TakeBack(mark);
            (at, closedRound, ownLoops) = (before, false, loopsBefore);
            Need room = (start.IsEmpty ? NeedOf(step.Steps, 0) : NeedOf(start, 0)) + ending + reserve;
            (Mishap? instead, bool again) = ThenClose(Repeated(step, step.Steps, room, quietly: true) ?? WorkAll(start), step.Ending);
            if (instead is null && !again && (closedRound || Left().Stitches <= reserve.Stitches))
            {
                stopped = null;
                return null;
            }
            builder.RollBack(mark);
            builder.PutBack(undone);
        }
        (at, stopped, closedRound) = (after, closed ? null : stop, closed);
        return behind ?? (twice ? new Mishap(MishapKind.CannotWork, step.Span) : null);
    }

    /// <summary>
    /// '*ch 1, sc in next ch-1 sp; rep from * across, ending with sc in turning ch sp': the last turn has its chain as the others do, and only its stitch stands
    /// elsewhere. Behind a whole turn, two stitches would stand side by side.
    /// </summary>
    private static bool ClosesLastTurn(RepeatStep step) =>
        step is { Extent.Kind: not ExtentKind.Times, Ending: [StitchStep { Where: not null, ChainsBetween: null } closing], Steps: [ChainStep, .., StitchStep last] }
        && last.Stitch == closing.Stitch && last.PerPlace?.Values == closing.PerPlace?.Values && IntoSpace(last) && step.Steps.Count(inner => inner is not RemarkStep) == 2;

    /// <summary>Works whole turns, then the last one with the ending for its stitch; nothing is worked where that does not come out.</summary>
    private bool WorkToOwnEnd(RepeatStep step, Need reserve)
    {
        (State before, int mark, int loopsBefore) = (at, builder.Mark, ownLoops);
        EquatableArray<Step> start = step.Steps.Take(step.Steps.Count - 1).ToEquatableArray();
        (Mishap? mishap, bool twice) = ThenClose(Repeated(step, step.Steps, NeedOf(step.Ending, 0) + reserve, quietly: true) ?? WorkAll(start), step.Ending);
        if (mishap is null && !twice && stopped is null && Left() is var left && left.Stitches <= reserve.Stitches && left.Spaces <= reserve.Spaces) return true;
        builder.RollBack(mark);
        (at, closedRound, ownLoops, stopped) = (before, false, loopsBefore, null);
        return false;
    }

    /// <summary>Works the ending behind what was repeated. Twice: where the last repeat has worked already into the very place that the ending closes on, it has gone too far.</summary>
    private (Mishap? Mishap, bool Twice) ThenClose(Mishap? repeated, EquatableArray<Step> steps)
    {
        if (repeated is not null) return (repeated, false);
        (Cell? last, int mark) = (builder.Last, builder.Mark);
        (bool outer, inEnding) = (inEnding, true);
        Mishap? failed = WorkAll(steps);
        inEnding = outer;
        if (failed is not null) return (failed, false);
        bool twice = closedRound && builder.Mark > mark && last is { Kind: CellKind.Stitch, Feet: [var worked] } && builder.Last is { Kind: CellKind.Stitch, Feet: [var closing] }
            && (worked.Row, worked.Place) == (closing.Row, closing.Place);
        return (null, twice);
    }

    /// <summary>True while the words behind 'ending with' are worked.</summary>
    private bool inEnding;

    /// <summary>'…, dc in each of next 2 dc; rep from * ending with dc in top of ch 3': the ending may stand in the place of the last of the two.</summary>
    private EquatableArray<Step> OneByOne(EquatableArray<Step> steps) =>
        steps[steps.Count - 1] is StitchStep { Where: { Choice: PlaceChoice.Each or PlaceChoice.Next, Count: not null, And: null } where } last && context.Number(where.Count) is > 1 and < 20 and var times
            ? [.. steps.Take(steps.Count - 1), .. Enumerable.Repeat(last with { Where = where with { Choice = PlaceChoice.Next, Count = null } }, times)]
            : steps;
    /// <summary>
    /// '*ch 10, sc in same loop, ch 10, sc in next loop; rep from * around, ending with ch 5, dtr in same space as beginning': what the last loop still gets before the
    /// ending that closes the round; nothing where the ending tells it.
    /// </summary>
    private EquatableArray<Step> InSamePlace(RepeatStep step)
    {
        static bool IsSame(Step inner) => inner is StitchStep { Where: { Choice: PlaceChoice.Same, Further: null } };
        if (!GoesAround || step.Extent.Kind == ExtentKind.Times || step.Ending.Any(IsSame) || step.Ending is not [ChainStep, StitchStep closing, ..] || context.Traits(closing.Stitch).Height < 2) return [];
        int last = -1;
        for (int i = 0; i < step.Steps.Count && (step.Steps[i] is ChainStep || IsSame(step.Steps[i])); i++)
            if (IsSame(step.Steps[i])) last = i;
        return step.Steps.Take(last + 1).ToEquatableArray();
    }

    /// <summary>How far the last repeat may go before the ending stands in its place: some of its steps, the longest part first; an inner repeat once less.</summary>
    private IEnumerable<EquatableArray<Step>> PartsOf(EquatableArray<Step> steps, bool closing)
    {
        for (int kept = steps.Count; kept > 0; kept--)
        {
            // What ends with a chain goes on with the ending's own chain: that would be one loop of both.
            if (kept < steps.Count && (!closing || steps.Take(kept).LastOrDefault(step => step is not SkipStep) is not ChainStep)) yield return steps.Take(kept).ToEquatableArray();
            if (steps[kept - 1] is RepeatStep { Extent: { Kind: ExtentKind.Times } extent } inner && context.Number(extent.Count) is > 1 and var times)
                yield return [.. steps.Take(kept - 1), inner with { Extent = extent with { Count = SizedNumber.Of(times - 1) } }];
        }
    }
}
