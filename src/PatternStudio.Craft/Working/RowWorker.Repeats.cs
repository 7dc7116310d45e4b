using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>Repeats: so many times, to the end, to the last few stitches.</summary>
internal sealed partial class RowWorker
{
    /// <summary>Why the last repeat 'to the end' stopped before the row was used up; the cause of what fails behind it.</summary>
    private Mishap? stopped;

    private Mishap? WorkRepeat(RepeatStep step, EquatableArray<Step> all, int index)
    {
        Need reserve = Reserve(all, index);
        if (RowAlong(step.Steps) is { } other && course?.Row.Number != other) return InOtherRow(other, step.Span, () => WorkRepeat(step, all, index));
        if (ClosingSlipStitch(step, all, index) is { } slip)
            return WorkRepeat(step with { Ending = step.Ending.Take(step.Ending.Count - 1).ToEquatableArray() }, all, index) ?? Join(new JoinStep(slip.Stitch, slip.Where, false, slip.Span));
        if (!step.Ending.IsEmpty) return WorkWithEnding(step, reserve);
        if (step.Extent.Kind != ExtentKind.Times && EndingTold(step, all, index) is { } told)
        {
            endingTold = told;
            return WorkWithEnding(step with { Ending = [told] }, Reserve(all, index + 1));
        }
        return step.Extent.Kind switch
        {
            ExtentKind.Times => WorkTimes(step, context.Number(step.Extent.Count)),
            ExtentKind.ToLast when LastIsTurningSpace(step.Extent, index + 1 < all.Count ? all[index + 1] : null) => RoundAgain(step, reserve with { Spaces = 0 }, null),
            ExtentKind.ToLast => ToLast(step.Extent, step.Steps, () => ToEnd(step.Span, LastPlaces(step.Extent), () => WorkAll(step.Steps), exactly: true)),
            ExtentKind.ToPlace => UpTo(step),
            _ when context.Says(step.Span, "diagram") => new Mishap(MishapKind.CannotWork, step.Span),
            ExtentKind.Unstated when OnSample && !GoesAround && index == all.Count - 1 => ToTheEndOfSample(step, reserve),
            _ when context.Says(step.Span, "to correspond") => ToCorrespond(step, reserve, index + 1 < all.Count ? all[index + 1] : null),
            _ => RoundAgain(step, reserve, index + 1 < all.Count ? all[index + 1] : null),
        };
    }

    /// <summary>
    /// '… ending to correspond, ch 4, join': the words behind the repeat tell its last chain once more; '… ending to correspond, join': the chain that closes the
    /// last loop is the repeat's own.
    /// </summary>
    private Mishap? CloseLoop(RepeatStep step, int stopped, Step? behind)
    {
        if (behind is ChainStep chain)
        {
            if (builder.Last is { Kind: CellKind.Chains } made && made.Chains == context.Number(chain.Count)) builder.RemoveLast();
            return null;
        }
        return stopped + 1 < step.Steps.Count && step.Steps[stopped + 1] is ChainStep closing && behind is JoinStep ? WorkAll([closing]) : null;
    }

    private static bool IntoSpace(Step step) => step switch
    {
        StitchStep { Where: { } where } => IsSpace(where.Kind) || where.Within is { } whole && IsSpace(whole),
        GroupStep group => IsSpace(group.Where.Kind),
        RepeatStep repeat => repeat.Steps.Any(IntoSpace),
        _ => false,
    };

    private static bool IsSpace(PlaceKind kind) => kind.Noun is PlaceNoun.Space or PlaceNoun.ChainSpace;

    private Mishap? RoundAgain(RepeatStep step, Need reserve, Step? behind)
    {
        if (GoesAround && step.Steps is [SkipStep { Kind.Noun: PlaceNoun.AnyStitch or PlaceNoun.Stitch } skip, ..]) skippedEachTurn = context.Number(skip.Count) ?? 0;
        Mishap? mishap = ToEnd(step.Span, reserve, () => WorkAll(step.Steps), partial: Shortened(step));
        if (mishap is null && AtTop) EndOnFirst(step, reserve, behind);
        return mishap;
    }

    /// <summary>
    /// 'repeat from * all around ending to correspond': the round began in the middle of the passage, and ends where it began. The last turn goes just so far as
    /// there are places; where no step of it ends there, the words leave more open than can be worked.
    /// </summary>
    private Mishap? ToCorrespond(RepeatStep step, Need reserve, Step? behind)
    {
        bool usesSpaces = step.Steps.Any(IntoSpace);
        if (ToEnd(step.Span, reserve, () => WorkAll(step.Steps)) is { } failed) return failed;
        if (stopped is null && Left().Stitches <= reserve.Stitches && (!usesSpaces || Left().Spaces <= reserve.Spaces)) return null;
        stopped = null;
        for (int i = 0; i < step.Steps.Count; i++)
        {
            if (WorkAll([step.Steps[i]]) is not null) break;
            if (Left().Stitches <= reserve.Stitches && (!usesSpaces || Left().Spaces <= reserve.Spaces)) return CloseLoop(step, i, behind);
        }
        return new Mishap(MishapKind.CannotWork, step.Span);
    }

    /// <summary>
    /// 'repeat from *' and no more, over a foundation of open length: whole turns, and where the row below has one stitch more, the stitch that a turn begins with, so that
    /// the row ends as it begins.
    /// </summary>
    private Mishap? ToTheEndOfSample(RepeatStep step, Need reserve)
    {
        int mark = builder.Mark;
        if (ToEnd(step.Span, reserve, () => WorkAll(step.Steps)) is { } failed) return failed;
        if (builder.Mark == mark) return new Mishap(MishapKind.CannotWork, step.Span);
        if (!LeavesPlaces && builder.Last is not { Kind: CellKind.Chains }) return null;
        stopped = null;
        return LeavesPlaces && step.Steps[0] is (StitchStep or GroupStep) ? WorkAll([step.Steps[0]]) : new Mishap(MishapKind.CannotWork, step.Span);
    }

    private Mishap? Repeated(RepeatStep step, EquatableArray<Step> steps, Need leave, bool quietly = false)
    {
        if (step.Extent.Kind == ExtentKind.Times) return Times(context.Number(step.Extent.Count) - (quietly ? 1 : 0), () => WorkAll(steps));
        Mishap? mishap = ToEnd(step.Span, leave, () => WorkAll(steps));
        if (quietly) stopped = null;
        return quietly && mishap?.Kind is MishapKind.PastTheEnd or MishapKind.RepeatUneven ? null : mishap;
    }

    /// <summary>'to last 2 dc': while this repeat goes on, what is left is counted in places of that kind.</summary>
    private Mishap? ToLast(Extent extent, EquatableArray<Step> steps, Func<Mishap?> repeat)
    {
        PlaceKind? outer = countedLeft;
        countedLeft = extent.Place is { Noun: PlaceNoun.Group, Stitch: { } name } group && !HasGroup(name) ? PlaceInGroup(steps, group)
            : extent.Place is { Noun: not PlaceNoun.AnyStitch } ? extent.Place : null;
        Mishap? mishap = repeat();
        countedLeft = outer;
        return mishap;
    }

    /// <summary>'rep from * to last ch-sp, sc in the ch-2 sp', where the ch-2 is the turning chain: that space is the last, and no other stays.</summary>
    private bool LastIsTurningSpace(Extent extent, Step? behind) =>
        extent.Place is { Noun: PlaceNoun.ChainSpace or PlaceNoun.Space, Chains: null } && context.Number(extent.Count) == 1 && course is not null && course.At(course.IndexOf(0)) is { Kind: CellKind.TurningChain, Chains: > 1 } turning
        && behind is StitchStep { Where.Kind: { Noun: PlaceNoun.ChainSpace, Chains: var named } } && named == turning.Chains && course.Find(0, (cell, _) => cell.Kind == CellKind.Chains && cell.Chains == named) < 0;

    /// <summary>A group that the row below does not know by name ('tile') is counted by the place in it that the repeat works into.</summary>
    private static PlaceKind? PlaceInGroup(EquatableArray<Step> steps, PlaceKind group) =>
        steps.OfType<StitchStep>().FirstOrDefault(step => step.Where?.Within?.Stitch == group.Stitch)?.Where!.Kind
        ?? (steps is [GroupStep { Where: { Choice: PlaceChoice.Next, Count: null } where }] && IsSpace(where.Kind) ? where.Kind : null);

    /// <summary>'…; rep from * across, working last sc in top of tch': the stitch told behind the repeat is the repeat's own last one.</summary>
    private StitchStep? EndingTold(RepeatStep step, EquatableArray<Step> all, int index) =>
        index + 1 < all.Count && all[index + 1] is StitchStep told && (context.Says(TextSpan.FromTo(step.Span.End, told.Span.End), "working") || Words(told.Span).TrimStart().StartsWith("last", StringComparison.OrdinalIgnoreCase)) ? told : null;

    private StitchStep? endingTold;

    private PlaceKind? countedLeft;

    private Mishap? WorkTimes(RepeatStep step, int? times)
    {
        if (times is null or 0) return null;
        if (IsTimesInAll(step, times.Value)) times--;
        inTimes |= AtTop;
        if (step.LastStopsAfter is not { } stop) return Times(times, () => WorkAll(step.Steps));
        return Times(times - 1, () => WorkAll(step.Steps)) ?? WorkAll(step.Steps.Take(stop).ToEquatableArray());
    }

    /// <summary>
    /// '1 sc, inc, repeat 3 times' with no star: three more turns or three in all. Where three in all just use up the round, and one more cannot be worked, it is those.
    /// </summary>
    private bool IsTimesInAll(RepeatStep step, int times)
    {
        if (step.Mark != RepeatMark.Words || !AtTop || times < 2 || course is null || !context.Says(step.Span, "rep") || !step.Steps.All(inner => inner is StitchStep { Where: null or { Choice: PlaceChoice.Next, And: null, Further: null } })) return false;
        Need turn = NeedOf(step.Steps, 0);
        return turn.Stitches > 0 && turn.Stitches * (times - 1) == Left().Stitches;
    }

    private static (EquatableArray<Step> First, EquatableArray<Step> After)? Shortened(RepeatStep step) =>
        step.LastStopsAfter is { } stop ? (step.Steps.Take(stop).ToEquatableArray(), step.Steps.Skip(stop).ToEquatableArray()) : null;

    private Need LastPlaces(Extent extent) =>
        new Need(context.Number(extent.Count) ?? 1, 0);

    /// <summary>'in each st across', 'in each st to last 2 sts'.</summary>
    private Mishap? ToExtent(Placement where, Need reserve, Func<Target, Mishap?> work)
    {
        Placement once = where with { Choice = PlaceChoice.Next, Extent = null, Count = null, And = null };
        if (where.Extent?.Kind == ExtentKind.Times) return Times(context.Number(where.Extent.Count), () => AtNext(once, work));
        if (where.Extent is null && !AtTop && next is StitchStep { Where.Kind.Noun: PlaceNoun.Space or PlaceNoun.ChainSpace } or GroupStep { Where.Kind.Noun: PlaceNoun.Space or PlaceNoun.ChainSpace } && course is not null)
        {
            // '1 sc in each sc, 2 sc in next loop': each up to that loop.
            long loop = course.Find(at.Position, (cell, _) => cell.Kind == CellKind.Chains);
            return ToEnd(where.Span, default, () => AtEachOf(once, work), each: true, upTo: loop < 0 ? course.Length : loop);
        }
        if (MovedInto(where.Kind)) at = at with { Position = at.Last };
        Need leave = where.Extent?.Kind == ExtentKind.ToLast ? LastPlaces(where.Extent) : reserve;
        if (where.Kind.Noun == PlaceNoun.RowEnd) return new Mishap(MishapKind.CannotWork, where.Span);
        if (where.Extent is { Kind: ExtentKind.ToPlace, Place: { } stop } && course is not null)
        {
            long limit = course.Find(at.Position, (cell, i) => places!.Offers(cell, i, stop) > 0);
            return limit < 0 ? Missing(stop, where.Span) : ToEnd(where.Span, default, () => AtEachOf(once, work), each: true, upTo: limit);
        }
        if (where.Kind.Noun == PlaceNoun.Stitch && next is StitchStep { Where: { Choice: PlaceChoice.Last } last } && last.Kind == where.Kind && where.Extent is null)
        {
            // '1 sc in each sc, sl st in last sc': the last of that kind is left for it.
            PlaceKind? outer = countedLeft;
            countedLeft = where.Kind;
            Mishap? each = ToEnd(where.Span, new Need(context.Number(last.Count) ?? 1, 0), () => AtEachOf(once, work), each: true);
            countedLeft = outer;
            return each;
        }
        return where.Extent?.Kind == ExtentKind.ToLast
            ? ToLast(where.Extent, [], () => ToEnd(where.Span, leave, () => AtEachOf(once, work), each: true))
            : ToEnd(where.Span, leave, () => AtEachOf(once, work), each: true);
    }

    /// <summary>'Sl st into first ch-1 sp, ch 1, 2 sc in each ch-1 sp around': the space that the hook has only moved into is one of them.</summary>
    private bool MovedInto(PlaceKind kind) =>
        GoesAround && kind.Noun is PlaceNoun.Space or PlaceNoun.ChainSpace && at.InSpace && at.Last >= 0 && at.Last == movedTo && at.Position == at.Last + 1
        && builder.Last is { Kind: CellKind.TurningChain, Counts: false } && !builder.Has(cell => cell.Kind is not (CellKind.Join or CellKind.TurningChain)) && places!.Offers(course!.At(at.Last), at.Last, kind) > 0;

    /// <summary>'each dc' passes over what is no dc: that is what 'each' says.</summary>
    private Mishap? AtEachOf(Placement next, Func<Target, Mishap?> work)
    {
        if (course is null) return new Mishap(MishapKind.NoFoundation, next.Span);
        if (at.Chain > 0 || IsInGroup(next)) return AtNext(next, work);
        long index = course.Find(at.Position, new PlacesOfKind(places!, next.Kind));
        if (next.Kind.Noun == PlaceNoun.Space && (index < 0 ? GapBeforeNextCell(index) : GapBetweenGroups(index, next.Span)) is { } gap) return work(gap);
        return index < 0 ? Missing(next.Kind, next.Span) : work(Arrive(index, next.Kind, next));
    }

    private Mishap? UpTo(RepeatStep step)
    {
        if (course is null || step.Extent.Place is not { } place) return new Mishap(MishapKind.CannotWork, step.Span);
        long limit = course.Find(at.Position, (cell, i) => places!.Offers(cell, i, place) > 0);
        if (limit < 0) return Missing(place, step.Extent.Span);
        return ToEnd(step.Span, default, () => WorkAll(step.Steps), upTo: limit);
    }

    private Mishap? Times(long? times, Func<Mishap?> once)
    {
        if (times is null) return null;
        Mishap? failed = null;
        Loop(times.Value, () => (failed = once()) is null);
        return failed;
    }

    /// <summary>Works as often as fits, leaving what the steps behind it need.</summary>
    /// <param name="span">The words of the repeat.</param>
    /// <param name="leave">Places that must be left.</param>
    /// <param name="once">One turn.</param>
    /// <param name="exactly">'to last 3 sts': just these must be left, neither more nor less.</param>
    /// <param name="each">One turn takes one place, so that what is left can only be what must be left.</param>
    /// <param name="partial">'ending last rep at **': the part of the steps that the last turn works.</param>
    /// <param name="upTo">An index that no turn may pass.</param>
    private Mishap? ToEnd(TextSpan span, Need leave, Func<Mishap?> once, bool exactly = false, bool each = false, (EquatableArray<Step> First, EquatableArray<Step> After)? partial = null, long? upTo = null)
    {
        stopped = null;
        if (course is null) return new Mishap(MishapKind.NoFoundation, span);
        Mishap? failed = null;
        bool ended = false, worked = false;
        bool Turn()
        {
            if (ended || upTo <= at.Position || !Leaves(leave) || (leave.IsNothing ? at.Position >= course!.Length : Left().Equals(leave) && exactly)) return false;
            (State before, int mark) = (at, builder.Mark);
            turnBegan = at.Position;
            failed = partial is { } parts ? WorkAll(parts.First) : once();
            if (failed is null && partial is { } all)
            {
                if (Left().Stitches <= leave.Stitches && Left().Spaces <= leave.Spaces) ended = worked = true;
                else failed = WorkAll(all.After);
            }
            // '* 1 dc over each st, * repeat': the first turn has done it all.
            if (failed is null && before == at && worked && mark == builder.Mark) return false;
            if (failed is null && before == at) failed = new Mishap(MishapKind.CannotWork, span);
            if (failed is null && Leaves(leave) && !(at.Position > upTo)) return worked = true;
            at = before;
            failed ??= new Mishap(MishapKind.RepeatUneven, span) { Found = Left().Stitches, Wanted = leave.Stitches, Named = "st", Met = course!.Row.Label };
            builder.RollBack(mark);
            return false;
        }
        long outer = turnBegan;
        Loop(long.MaxValue, Turn, leave);
        turnBegan = outer;
        if (ended) return null;
        if (failed is { Kind: MishapKind.TooLarge or MishapKind.CannotWork }) return failed;
        if (!worked && failed is not null && !(exactly && Left().Equals(leave))) return each && failed.Kind == MishapKind.PastTheEnd ? null : failed;
        return Ended(span, leave, exactly, each, failed);
    }

    /// <summary>The repeat has stopped: is what it leaves what may be left?</summary>
    private Mishap? Ended(TextSpan span, Need leave, bool exactly, bool each, Mishap? failed)
    {
        Need left = Left();
        if (each || at.InSpace && !exactly || exactly && left.Stitches == leave.Stitches) return null;
        if (left.Stitches <= leave.Stitches) return null;
        var uneven = new Mishap(failed?.Kind == MishapKind.OtherKind ? MishapKind.OtherKind : MishapKind.RepeatUneven, failed?.Kind == MishapKind.OtherKind ? failed.Span : span)
        {
            Found = left.Stitches,
            Wanted = leave.Stitches,
            Named = failed?.Kind == MishapKind.OtherKind ? failed.Named : "st",
            Met = failed?.Kind == MishapKind.OtherKind ? failed.Met : course!.Row.Label,
        };
        if (exactly) return uneven;
        stopped = uneven;
        return null;
    }

    private bool Leaves(Need need) => need.IsNothing || Left() is var left && left.Stitches >= need.Stitches && left.Spaces >= need.Spaces;

    /// <summary>The places still to be met.</summary>
    private Need Left()
    {
        if (course is null) return default;
        // Counted on from where it was counted last: a long row would else be walked again for each of its stitches.
        Need ahead = counted.Course == course && counted.Kind == countedLeft
            ? at.Position >= counted.Position ? counted.Ahead - Between(counted.Position, at.Position) : counted.Ahead + Between(at.Position, counted.Position)
            : Between(at.Position, course.Length);
        counted = (course, countedLeft, at.Position, ahead);
        return at.Chain > 0 && countedLeft is null && context.Conventions.ChainsAreStitches ? ahead with { Stitches = ahead.Stitches - at.Chain } : ahead;
    }

    private (Course? Course, PlaceKind? Kind, long Position, Need Ahead) counted;

    /// <summary>The places from one index up to, not including, another.</summary>
    private Need Between(long from, long to)
    {
        if (countedLeft is { } kind) return new Need(course!.Sum(from, to, new PlacesOfKind(places!, kind)), 0);
        long spaces = places!.HasSpaces
            ? course!.Sum(from, to, new IsSpaces())
            : course!.Sum(from, Math.Min(to, course.Length - 1), (cell, _) => EndsGroup(cell) ? 1 : 0);
        return new Need(course.Sum(from, to, new StitchesOf(places)), spaces);
    }

    /// <summary>
    /// Goes round while <paramref name="turn"/> says so. Where the hook comes back to the same phase of the same run of the row below, and a turn
    /// has done what the one before it did, every turn from there on does the same until the run ends: the turns between are taken in one leap.
    /// </summary>
    private void Loop(long times, Func<bool> turn, Need leave = default)
    {
        Rounds? rounds = null;
        for (long done = 0; done < times; done++)
        {
            if (times > 3 && !context.Unroll && course is not null && builder.Entries > 0)
                done += Leap(rounds ??= new Rounds(), done, times, leave);
            if (done >= times || !turn()) return;
            if (++steps > MostSteps) return;
        }
    }

    /// <summary>What a loop remembers of its turns.</summary>
    private sealed class Rounds
    {
        public Dictionary<(int Run, long Phase), Met> Met { get; } = [];

        /// <summary>A run in which coming round takes too many cells to be folded; no use in trying again.</summary>
        public int Hopeless { get; set; } = -1;
    }

    /// <summary>When the hook was at a phase last, and the time before that.</summary>
    /// <param name="At">Where the hook was.</param>
    /// <param name="Done">Turns done by then.</param>
    /// <param name="Mark">What was worked by then.</param>
    /// <param name="Before">What was worked by the time before that; -1 where there was none.</param>
    /// <param name="Left">Places left, where some must be left.</param>
    private sealed record Met(State At, long Done, int Mark, int Before, Need Left);

    private long Leap(Rounds rounds, long done, long times, Need leave)
    {
        (int Run, long Phase) key = course!.PhaseAt(at.Position);
        if (key.Run == rounds.Hopeless) return 0;
        Met? then = rounds.Met.GetValueOrDefault(key);
        if (then is not null && !builder.CanRepeat(then.Mark))
        {
            rounds.Hopeless = key.Run;
            return 0;
        }
        long turns = then is not null && then.Before >= 0 && CameRound(then) ? Leap(then, done, times, leave) : 0;
        if (turns > 0) rounds.Met.Clear();
        else rounds.Met[key] = new Met(at, done, builder.Mark, then?.Mark ?? -1, leave.IsNothing ? default : Left());
        return turns;
    }

    private long Leap(Met then, long done, long times, Need leave)
    {
        long consumed = at.Position - then.At.Position, turns = done - then.Done;
        long room = Math.Min((course!.RunEnd(at.Position) - at.Position) / consumed - 1, (times - done) / turns - 1);
        room = Math.Min(room, RoomFor(leave, then.Left));
        int stride = (int)(course.Turned ? -consumed : consumed);
        if (room <= 0 || !builder.DidTheSame(then.Before, then.Mark, stride, Down)) return 0;
        builder.Repeat(then.Mark, room, stride);
        at = at with
        {
            Position = at.Position + room * consumed,
            Last = at.Last + room * (at.Last - then.At.Last),
            Skipped = at.Skipped + room * (at.Skipped - then.At.Skipped),
        };
        return room * turns;
    }

    /// <summary>True where the hook stands to its place as it did then, some way on; what it skipped has moved on as far, or not at all.</summary>
    private bool CameRound(Met then)
    {
        long consumed = at.Position - then.At.Position;
        return consumed > 0 && at.OwnChains == 0
            && at with { Position = 0, Last = 0, Skipped = 0 } == then.At with { Position = 0, Last = 0, Skipped = 0 }
            && (at.Last - then.At.Last == consumed || at.Last == then.At.Last && at.Last < 0)
            && (at.Skipped - then.At.Skipped == consumed || at.Skipped == then.At.Skipped);
    }

    /// <summary>How many leaps leave the places that must be left, with one to spare.</summary>
    private long RoomFor(Need leave, Need then)
    {
        if (leave.IsNothing) return long.MaxValue;
        Need now = Left();
        long stitches = then.Stitches > now.Stitches ? (now.Stitches - leave.Stitches) / (then.Stitches - now.Stitches) - 1 : long.MaxValue;
        long spaces = then.Spaces > now.Spaces ? (now.Spaces - leave.Spaces) / (then.Spaces - now.Spaces) - 1 : long.MaxValue;
        return Math.Min(stitches, spaces);
    }
}
