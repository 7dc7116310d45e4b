using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>
/// Rounds of loops whose last one is closed by a tall stitch: 'ch 3, dc in first sc (this brings thread in position for next round)'. The stitch is the other half
/// of the loop; its top is the loop's middle, where the next round begins and ends. So a round of 78 loops stays one of 78.
/// </summary>
internal sealed partial class RowWorker
{
    /// <summary>The widest loop of chains, in stitches that it passes over, that closes a round.</summary>
    private const int WidestLoop = 8;

    /// <summary>The top of the stitch that closes the round below, where this round has begun there; null where it has not.</summary>
    private Foot? middleOfLoop;

    /// <summary>True where this round ends so. To be asked when it is worked.</summary>
    public bool EndsInLoop => GoesAround && !Joined && course is { Turned: false } && builder.Last is { Kind: CellKind.Stitch, Feet: [var foot] } closing && context.Traits(closing.Stitch).Height >= 2
        && builder.BeforeLast is { Kind: CellKind.Chains } && (foot.Row == 0 || foot == builder.FirstFoot || foot == middleOfLoop || closedRound && foot == StartFoot());

    /// <summary>A round that goes on with a chain from the middle of the loop below has taken that loop; one that begins with stitches 'in each loop' has not.</summary>
    private void BeginInLoop(EquatableArray<Step> all)
    {
        if (BeginsWithChain(all) && AllSteps(all).Any(step => step.Where?.Further is { } words && IsInJoining(words))) LeaveFirst();
        if (!GoesAround || course is not { Turned: false, Row.EndsInLoop: true, Length: > 2 } || !BeginsWithChain(all)) return;
        middleOfLoop = TargetAt(course.Length - 1, -1, false, null).Foot;
        Meet(course.StartingAt(course.Length - 2));
        at = at with { Position = 2, Chain = 0, Last = 0, LastChain = -1, InSpace = true };
    }

    /// <summary>Where the round below was joined, as the hook meets it: the hook stands there.</summary>
    private long joined;

    /// <summary>
    /// '*Ch 16, sc in next sc; rep from * 14 times, ch 7, tr in joining': the hook stands where the round below was joined, on its first stitch, and a loop of chains leads away from
    /// there; 'next' is the second, and the first is worked last.
    /// </summary>
    private void LeaveFirst()
    {
        if (!GoesAround || course is not { Row: { Joined: true, Kind: RowKind.Round or RowKind.Row, EndsInLoop: false }, Turned: false } || at != State.Start with { Colour = at.Colour }) return;
        long first = course.Find(0, (cell, _) => places!.Stitches(cell) > 0 || cell.Kind == CellKind.Chains);
        if (first < 0 || course.At(first).Kind == CellKind.Chains || first + 1 >= course.Length) return;
        Meet(course.StartingAt(first + 1));
        joined = course!.Length - 1;
    }

    /// <summary>What an ending needs of the row below: not the stitch that closes the round where it began.</summary>
    private EquatableArray<Step> WithoutClosing(EquatableArray<Step> ending)
    {
        int last = ending.Count - 1;
        while (last >= 0 && ending[last] is not (StitchStep or GroupStep or RepeatStep)) last--;
        bool closes = GoesAround && last > 0 && ending[last - 1] is ChainStep && ending[last] is StitchStep { Where: { Choice: PlaceChoice.Next, Count: null, Kind: { Noun: PlaceNoun.Stitch, Stitch: { } named } } } tall
            && context.Traits(tall.Stitch).Height >= 2 && (named == StitchId.SlipStitch || middleOfLoop is not null);
        return closes ? ending.Where((_, i) => i != last).ToEquatableArray() : ending;
    }

    private static bool BeginsWithChain(EquatableArray<Step> all) => all.FirstOrDefault(step => step is not (RemarkStep or ColourStep or MarkerStep)) switch
    {
        ChainStep => true,
        RepeatStep repeat => BeginsWithChain(repeat.Steps),
        _ => false,
    };

    /// <summary>'ending with ch 3, tr in tr': the stitch whose top the round began on, where no other of its kind is to come.</summary>
    private Target? StitchBegunOn(PlaceKind kind) =>
        middleOfLoop is { } middle && previous is ChainStep && kind.Noun == PlaceNoun.Stitch && places!.Offers(course!.At(1), 1, kind) > 0 ? new Target(middle, -1) : null;

    /// <summary>
    /// 'Sl st in next ch-1 loop, *ch 7, sc in next ch-1 loop; rep from * 7 times': the round comes back to the loop that the slip stitch only moved to, and works into it last.
    /// </summary>
    private Target? LoopBegunIn(PlaceKind kind)
    {
        if (!GoesAround || !inTimes || opening == 0 || turningChain >= 0 || movedTo < 0 || kind.Noun is not (PlaceNoun.Space or PlaceNoun.ChainSpace) || places!.Offers(course!.At(movedTo), movedTo, kind) == 0) return null;
        long loop = movedTo;
        movedTo = -1;
        at = at with { Position = course.Length, Chain = 0, InSpace = true };
        return TargetAt(loop, -1, true, null);
    }

    /// <summary>True inside the turns of a repeat of the row's own steps that is told by number.</summary>
    private bool inTimes;

    /// <summary>The place that slip stitches at the start moved to; -1 for none.</summary>
    private long movedTo = -1;

    /// <summary>The stitch that is being worked.</summary>
    private (StitchId Stitch, bool IsTall) inHand;

    /// <summary>
    /// '*ch 6, 2 cl in next loop, ch 6, sc in next loop; rep from * around, join in 1st sc': the stitch that would end the last turn is the one that the round began
    /// with.
    /// </summary>
    private void EndOnFirst(RepeatStep step, Need reserve, Step? behind)
    {
        if (!GoesAround || step.Steps.Count < 3 || behind is not (null or JoinStep or FastenOffStep) || step.Steps.Reverse().Skip(1).FirstOrDefault(inner => inner is not SkipStep) is not ChainStep) return;
        if (step.Steps[step.Steps.Count - 1] is not StitchStep { Where.Choice: PlaceChoice.Next } last || last.Stitch != openingStitch || Number(last, 1) != 1) return;
        if (stopped is null && (!step.Steps.Any(IntoSpace) || Left().Spaces <= reserve.Spaces)) return;
        (State before, int mark, Mishap? stop) = (at, builder.Mark, stopped);
        if (WorkAll(step.Steps.Take(step.Steps.Count - 1).ToEquatableArray()) is null && (BegunOnLastOf(last.Where!.Kind) || Left().Spaces <= reserve.Spaces && (at.InSpace || Left().Stitches <= reserve.Stitches)))
        {
            stopped = null;
            return;
        }
        builder.RollBack(mark);
        (at, stopped) = (before, stop);
    }

    /// <summary>'sc in next sc', where the round began on an sc and no other is to come: whatever lies before the first is passed over, as in the turns before.</summary>
    private bool BegunOnLastOf(PlaceKind kind) =>
        kind is { Noun: PlaceNoun.Stitch, Stitch: not null } && course!.Find(0, (cell, _) => places!.Stitches(cell) > 0) is var first and >= 0
        && places!.Offers(course.At(first), first, kind) > 0 && course.Find(at.Position, (cell, i) => places.Offers(cell, i, kind) > 0) < 0;

    /// <summary>'…, ch 2, dc in first sc' as the last words of a round: its own first sc.</summary>
    private Target? OwnFirst(Placement where)
    {
        if (!IsOwnFirst(where)) return null;
        closedRound = true;
        at = at with { InSpace = true };
        return new Target(new Foot(0, builder.PlaceOfFirstWorked, -1, FootKind.BothLoops), -1);
    }

    private bool IsOwnFirst(Placement where)
    {
        if (!GoesAround || course is null || course.Turned || previous is not ChainStep || next is not (null or RemarkStep or FastenOffStep) || !inHand.IsTall || where.Kind is not { Noun: PlaceNoun.Stitch, Stitch: { } named }) return false;
        return builder.Mark >= 3 && builder.FirstWorked is { Kind: CellKind.Stitch } first && Places.Matches(first.Stitch, named) && Left().Stitches <= WidestLoop;
    }

    /// <summary>'ending with ch 2, dc in 4th st of ch': at the end of a round, the chain that the round itself began with.</summary>
    private (Target?, Mishap?)? OwnBeginning(Placement where)
    {
        if (!GoesAround || course is null || course.Turned || previous is not ChainStep || where.Choice is not (PlaceChoice.TurningChainTop or PlaceChoice.Centre) || !inHand.IsTall) return null;
        if (builder.FirstWorked is not { Kind: CellKind.TurningChain or CellKind.Chains } || builder.Mark < 3) return null;
        if (Left().Stitches > WidestLoop) return (null, new Mishap(MishapKind.CannotWork, where.Span));
        at = at with { InSpace = true };
        closedRound = true;
        return (new Target(new Foot(0, builder.PlaceOfFirstWorked, -1, FootKind.BothLoops), -1), null);
    }
}
