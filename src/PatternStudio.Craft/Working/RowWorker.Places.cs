using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>Finding the place that the words name, and moving the hook to it.</summary>
internal sealed partial class RowWorker
{
    /// <summary>Works at every place that a placement names, in order.</summary>
    /// <param name="where">The placement.</param>
    /// <param name="reserve">Places that the steps behind it still need: 'each' leaves them.</param>
    /// <param name="work">What is done at each place.</param>
    private Mishap? AtEach(Placement where, Need reserve, Func<Target, Mishap?> work)
    {
        // 'Ch 5, sl st to form a loop … 3 dc in loop': a space in a closed chain is the ring itself.
        if (where is { Choice: PlaceChoice.Next, Kind.Noun: PlaceNoun.Space or PlaceNoun.ChainSpace, Count: null } && course is { Row: { Kind: RowKind.Foundation, Joined: true } }) where = where with { Choice = PlaceChoice.InRing, Kind = PlaceKind.Ring };
        if (where is { Further: { } further, Choice: PlaceChoice.Same })
        {
            if (context.Says(further, "with last") || context.Says(further, "with the last")) where = where with { Further = null };
            else if (context.Says(further, "first") || context.Says(further, "1st") || context.Says(further, "beg")) return InFirstPlace(where, work);
        }
        if (where is { Further: { } words } && IsJoiningOfRoundBelow(words)) return AtStartOfRoundBelow(work);
        if (where is { Further: { } chain, Kind.Noun: PlaceNoun.Chain } && IsOfFoundation(chain))
            return (onOtherSide ? null : GoToOtherSide(chain)) ?? AtEach(where with { Further = null }, reserve, work);
        if (where is { Choice: PlaceChoice.Next, Kind.Noun: PlaceNoun.ChainSpace, Further: { } between } && Words(between).StartsWith("between next 2 ", StringComparison.OrdinalIgnoreCase)) where = where with { Further = null };
        if (where.Further is { } told && AddsNothing(told, where)) where = where with { Further = null };
        if (where.Further is not null) return new Mishap(MishapKind.CannotWork, where.Further.Value);
        if (where is { Choice: PlaceChoice.Next or PlaceChoice.First, Kind: { Noun: PlaceNoun.Stitch, Stitch: { } slip } } && slip == StitchId.SlipStitch && OwnSlipStitch() is { } made) return CloseOn(made, work);
        // '18 sc evenly down side, 3 sc in corner': the corner of the fabric's own edge.
        if (where is { Choice: PlaceChoice.Next or PlaceChoice.Last, Kind.Noun: PlaceNoun.Corner, Count: null } && alongEdge) return work(new Target(new Foot(1, 0, -1, FootKind.RowEnd), -1));
        if (where.InRow is { } other) return AtEachOfRow(other, where, reserve, work);
        Mishap? mishap = AtEachHere(where, where.And is null ? reserve : reserve + NeedOf(where.And), work);
        return mishap is null && where.And is { } and ? AtEach(and, reserve, work) : mishap;
    }

    /// <summary>'3 sc in first ch of foundation', 'sc in next 18 ch along bottom', in a round that has come to the chain's other side.</summary>
    private bool IsOfFoundation(TextSpan words) =>
        course?.Row.Kind != RowKind.Foundation && (Words(words).StartsWith("of", StringComparison.OrdinalIgnoreCase) ? context.Says(words, "foundation")
            : alongEdge && (context.Says(words, "bottom") || context.Says(words, "lower") || context.Says(words, "foundation") || context.Says(words, "beg")));

    private Mishap? AtEachOfRow(int number, Placement where, Need reserve, Func<Target, Mishap?> work) =>
        InOtherRow(number, where.Span, () => AtEach(where with { InRow = null }, reserve, work));

    private Mishap? AtEachHere(Placement where, Need reserve, Func<Target, Mishap?> work) => where.Choice switch
    {
        PlaceChoice.Next or PlaceChoice.Skipped when where.RowsBelow > 0 => Times(where.Count is null ? 1 : context.Number(where.Count), () => AtNextBelow(where, work)),
        PlaceChoice.Next or PlaceChoice.Over => Times(where.Count is null ? 1 : context.Number(where.Count), () => AtNext(where, work)),
        // 'FPtr around each of the 2 skipped sts'
        PlaceChoice.Skipped when context.Number(where.Count) is > 1 and var passed => Times(passed, () => AtOne(where, work)),
        PlaceChoice.FromHook when context.Number(where.Count) is > 1 and var several => AtOne(where, work) ?? Times(several - 1, () => AtNext(where with { Kind = PlaceKind.AnyStitch }, work)),
        // '*1 hdc in first st, 2 hdc in next*': in what is repeated, the first is the next one of each turn.
        PlaceChoice.First when !AtTop && ambient is null && !(inEnding && IsOwnFirst(where)) => Times(where.Count is null ? 1 : context.Number(where.Count), () => AtNext(where with { Choice = PlaceChoice.Next }, work)),
        PlaceChoice.First when context.Number(where.Count) > 1 => FirstPlaces(where, work),
        PlaceChoice.Last when context.Number(where.Count) > 1 => LastPlaces(where, work),
        PlaceChoice.Each when where.Count is not null => Times(context.Number(where.Count), () => AtNext(where, work)),
        PlaceChoice.Each => ToExtent(where, reserve, work),
        _ => AtOne(where, work),
    };

    /// <summary>'ch-2 sp of next V-st' where the row below has such groups; a name it does not know ('tile') adds nothing to the place itself.</summary>
    private bool IsInGroup(Placement where) =>
        where.Within is { Noun: PlaceNoun.Group, Stitch: { } name } && HasGroup(name);

    private bool HasGroup(StitchId name) => places?.HasGroup(name) ?? false;

    /// <summary>'in first 2 sts'; 'sl st in first 3 dc' over a round that begins with an sc goes to the first of the dc.</summary>
    private Mishap? FirstPlaces(Placement where, Func<Target, Mishap?> work)
    {
        long first = course is null ? 0 : Math.Max(0, course.Find(0, (cell, i) => places!.Offers(cell, i, where.Kind) > 0));
        at = at with { Position = first, Chain = 0 };
        return Times(context.Number(where.Count), () => AtNext(where, work));
    }

    /// <summary>'in last 2 sts': all that is left, and just so many.</summary>
    private Mishap? LastPlaces(Placement where, Func<Target, Mishap?> work)
    {
        long left = course is null ? 0 : course.Sum(at.Position, course.Length, (cell, i) => places!.Offers(cell, i, where.Kind)), wanted = context.Number(where.Count) ?? 0;
        if (left > wanted && !at.InSpace && !leavesUnworked && where.Kind.Noun is PlaceNoun.AnyStitch or PlaceNoun.Stitch or PlaceNoun.Chain)
            return new Mishap(MishapKind.LeftOver, where.Span) { Found = left - wanted, Named = context.Name(where.Kind), Met = course!.Row.Label };
        while (left-- > wanted)
            if (TakeNext(where.Kind, where.Span).Mishap is { } mishap) return mishap;
        return Times(wanted, () => AtNext(where, work));
    }

    /// <summary>'Sl st to corner, ch 3, (2 dc, ch 2, 3 dc) in corner, …': the space that the hook has moved into, where no word says 'next'.</summary>
    private bool StandsIn(Placement where) =>
        where is { Choice: PlaceChoice.Next, Count: null, Within: null, Kind.Noun: PlaceNoun.Corner or PlaceNoun.ChainSpace or PlaceNoun.Space } && course is not null && ambient is null && at.InSpace && at.Last >= 0 && (at.Last == movedTo || attached)
        && builder.Last is { Kind: CellKind.TurningChain } && !context.Says(where.Span, "next") && !context.Says(where.Span, "first") && !builder.Has(cell => cell.Kind is not (CellKind.Join or CellKind.TurningChain))
        && places!.Offers(course.At(at.Last), at.Last, where.Kind) > 0;

    private Mishap? AtNext(Placement where, Func<Target, Mishap?> work)
    {
        if (StandsIn(where)) return AtOne(where with { Choice = PlaceChoice.Same }, work);
        if (IsInGroup(where))
        {
            (Target? inside, Mishap? none) = Nth(where);
            return none ?? work(inside!.Value);
        }
        if (StandsUnderTurningChain(where)) return work(TargetAt(0, -1, false, where));
        (Target target, Mishap? mishap) = TakeNext(where.Kind, where.Span, where);
        return mishap ?? work(target);
    }

    /// <summary>'Ch 4 (counts as tr), 2 dc in tr, dc in next dc': the only treble here is the one that the chain stands on.</summary>
    private bool StandsUnderTurningChain(Placement where) =>
        !GoesAround && at is { Position: 1, Chain: 0 } && where is { Choice: PlaceChoice.Next, Count: null, Kind.Noun: PlaceNoun.Stitch } && course is { Length: > 1, Row.Kind: RowKind.Row }
        && builder.Last is { Kind: CellKind.TurningChain, Counts: true } && !context.Says(where.Span, "next")
        && places!.Offers(course.At(0), 0, where.Kind) > 0 && places.Offers(course.At(1), 1, where.Kind) == 0;

    private Mishap? AtOne(Placement where, Func<Target, Mishap?> work)
    {
        (Target? target, Mishap? mishap) = where.Choice switch
        {
            PlaceChoice.InRing => (RingTarget(), null),
            PlaceChoice.JustMade => (JustMade(), null),
            PlaceChoice.Same => Same(where),
            PlaceChoice.First => First(where),
            PlaceChoice.Last => Last(where),
            PlaceChoice.FromHook => FromHook(where),
            PlaceChoice.TurningChainTop or PlaceChoice.TurningChainSpace => TurningChain(where),
            PlaceChoice.Between => Between(where),
            PlaceChoice.Centre => Centre(where),
            PlaceChoice.Nth => Nth(where),
            PlaceChoice.Skipped => SkippedPlace(where),
            PlaceChoice.OtherSide => OtherSideNext(where),
            _ => (null, (Mishap?)new Mishap(MishapKind.CannotWork, where.Span)),
        };
        if (mishap is not null) return mishap;
        return target is { } found ? work(found) : new Mishap(MishapKind.NoFoundation, where.Span);
    }

    /// <summary>How many rows down the row below is.</summary>
    private int Down => rows.Count - course!.RowIndex;

    /// <summary>Takes the next place of a kind and moves past it.</summary>
    private (Target Target, Mishap? Mishap) TakeNext(PlaceKind kind, TextSpan span, Placement? where = null)
    {
        if (at.OwnChains > 0 && kind.Noun is PlaceNoun.Chain or PlaceNoun.AnyStitch or PlaceNoun.StitchOrChain) return (OwnChain(), null);
        if (course is null) return (default, new Mishap(MishapKind.NoFoundation, span));
        if (at.Chain > 0) return TakeNextChain(kind, span, where);
        long index = course.Find(at.Position, new PlacesOfKind(places!, kind));
        if (kind.Noun == PlaceNoun.Space && (GapBeforeNextCell(index) ?? GapBetweenGroups(index, span)) is { } gap) return (gap, null);
        if (index < 0 && (StitchBegunOn(kind) ?? LoopBegunIn(kind) ?? OwnLoop(kind) ?? LoopOnSide(kind)) is { } own) return (own, null);
        if (index < 0) return (default, Missing(kind, span));
        if (at.Passed is null && PassedOver(kind, index, span) is { } passed) at = at with { Passed = passed };
        return (Arrive(index, kind, where), null);
    }

    /// <summary>
    /// A spiral goes on over its own beginning: behind the last loop of the round below comes the first one of this round. A turn of a repeat 'around' that takes nothing else of the round below is one too many: 'around' is once around.
    /// </summary>
    private Target? OwnLoop(PlaceKind kind)
    {
        if (at.Position == turnBegan || kind.Noun is not (PlaceNoun.Space or PlaceNoun.ChainSpace) || !GoesAround || joins || ownLoops > 0 || middleOfLoop is not null || !course!.Row.Spiral) return null;
        if (!places!.HasSpaces || builder.FirstChains is not { } first || kind.Chains is { } length && first.Cell.Chains != length) return null;
        ownLoops++;
        at = at with { Position = course.Length, Chain = 0, InSpace = true };
        return new Target(new Foot(0, first.Place, -1, FootKind.Space), -1);
    }

    private int ownLoops;

    /// <summary>Where the turn in hand of a repeat 'around' began; -1 outside such repeats.</summary>
    private long turnBegan = -1;

    /// <summary>The hook is inside a run of chains: the next place is the next single chain, or what follows the run.</summary>
    private (Target Target, Mishap? Mishap) TakeNextChain(PlaceKind kind, TextSpan span, Placement? where)
    {
        Cell cell = course!.At(at.Position);
        if (places!.Offers(cell, at.Position, kind) > 1 && at.Chain < cell.Chains) return (Arrive(at.Position, kind, where), null);
        if (IsSpace(kind) && StandsInLoop(span)) return (Arrive(at.Position, kind, where), null);
        at = at with { Position = at.Position + 1, Chain = 0 };
        return TakeNext(kind, span, where);
    }

    /// <summary>'3 slip stitches up the chain, 5 tr into the loop': the hook has only climbed, and the loop is the one it stands in, unless the words say 'next'.</summary>
    private bool StandsInLoop(TextSpan words) => !builder.Has(cell => cell.Kind != CellKind.Join) && !context.Says(words, "next");

    private Target Arrive(long index, PlaceKind kind, Placement? where)
    {
        Cell cell = course!.At(index);
        bool single = cell.Kind == CellKind.Chains && kind.Noun is PlaceNoun.Chain or PlaceNoun.AnyStitch or PlaceNoun.StitchOrChain or PlaceNoun.Stitch && kind.Stitch != PicotLoop;
        int chain = cell.Kind == CellKind.Chains && single ? at.Chain : -1;
        bool space = cell.Kind == CellKind.Picot || cell.Kind == CellKind.Chains && !single || cell.Kind == CellKind.TurningChain && kind.Noun == PlaceNoun.ChainSpace;
        if (kind.Noun == PlaceNoun.Group && kind.Stitch != PicotLoop && cell.GroupSize > 1) return IntoGroup(index, cell, where);
        at = chain >= 0 && chain + 1 < cell.Chains
            ? at with { Position = index, Chain = chain + 1, Last = index, LastChain = chain, InSpace = false }
            : at with { Position = index + 1, Chain = 0, Last = index, LastChain = chain, InSpace = space };
        Target target = TargetAt(index, chain, space, where);
        return kind.Noun is PlaceNoun.Gap or PlaceNoun.Space && cell.Kind != CellKind.Chains ? target with { Foot = target.Foot with { Kind = FootKind.Between } } : target;
    }

    private Target TargetAt(long index, int chain, bool space, Placement? where)
    {
        FootKind kind = (where?.Post, where?.Loop) switch
        {
            (PostChoice.Front, _) => FootKind.FrontPost,
            (PostChoice.Back, _) => FootKind.BackPost,
            (_, LoopChoice.Front) => FootKind.FrontLoop,
            (_, LoopChoice.Back) => FootKind.BackLoop,
            (_, LoopChoice.Third) => FootKind.ThirdLoop,
            _ => space ? FootKind.Space : chain >= 0 || course!.At(index).Kind == CellKind.FoundationChain ? FootKind.Chain : FootKind.BothLoops,
        };
        var foot = new Foot(Down, course!.PlaceOf(index), chain, kind);
        return new Target(where is { RowsBelow: > 0 } ? Lower(foot, where.RowsBelow) : foot, index);
    }

    /// <summary>The place some rows below another, following the feet.</summary>
    private Foot Lower(Foot foot, int rowsBelow)
    {
        for (; rowsBelow > 0 && foot.Row > 0 && foot.Row <= rows.Count; rowsBelow--)
        {
            // The row below is the one that the hook meets: after a slip not the row as told, but as it was likely meant.
            Cell? cell = CellOf(foot.Row == Down ? course!.Row : rows[rows.Count - foot.Row], foot.Place);
            if (cell is null || cell.Feet.IsEmpty) break;
            foot = cell.Feet[0] with { Row = foot.Row + cell.Feet[0].Row, Kind = foot.Kind };
        }
        return foot;
    }

    private static Cell? CellOf(WorkedRow row, long place)
    {
        foreach (Run run in row.Runs)
        {
            if (place < run.Length) return run.At(place);
            place -= run.Length;
        }
        return null;
    }

    /// <summary>'scallop', 'petal', 'leaf': what stitches look like together; no definition says which stitches they are.</summary>
    private bool IsShapeOnly(PlaceKind kind) =>
        kind is { Noun: PlaceNoun.Group, Stitch: { } name } && Synonyms.Group(name.Value) == name.Value && context.Traits(name).Definition is null && !HasGroup(name);

    private Mishap Missing(PlaceKind kind, TextSpan span)
    {
        // Corners are seen in the fabric, not in the words: a row without spaces or groups may well have them.
        if (IsShapeOnly(kind) || kind is { Noun: PlaceNoun.Group, Stitch: { } name } && places!.Untold.IsUntold(name) && !HasGroup(name)) return new Mishap(MishapKind.CannotWork, span);
        long all = course!.Sum(0, course.Length, (cell, i) => places!.Offers(cell, i, kind));
        if (all == 0 && (kind.Noun == PlaceNoun.Corner || kind.Stitch == PicotLoop)) return new Mishap(MishapKind.CannotWork, span);
        // What a shell is made of is not told: it may well have what is asked for.
        if (all == 0 && kind.Noun is not PlaceNoun.Group && course.Find(0, (cell, _) => IsUntoldGroup(cell)) >= 0) return new Mishap(MishapKind.CannotWork, span);
        return new Mishap(all == 0 ? MishapKind.NoSuchPlace : MishapKind.PastTheEnd, span)
        {
            Named = context.Name(kind),
            Found = all,
            Met = course.Row.Label,
        };
    }

    private bool IsUntoldGroup(Cell cell) =>
        cell.GroupSize == 0 && context.Traits(cell.Stitch).Definition is null && Terms.Vocabulary.Standard.Find(cell.Stitch) is { IsGroup: true };

    /// <summary>'in next dc' with an sc before it, 'in next ch-3 sp' with a ch-1 sp before it: not what the words say, unless they skip.</summary>
    private Mishap? PassedOver(PlaceKind kind, long index, TextSpan span)
    {
        long passed = kind.Noun switch
        {
            PlaceNoun.Stitch when kind.Stitch?.Value == "picot" => -1,
            PlaceNoun.Stitch or PlaceNoun.Chain when !at.InSpace || kind.Noun == PlaceNoun.Stitch
                => course!.Find(at.Position, new StitchesOf(places!), to: index),
            PlaceNoun.ChainSpace when kind.Chains is not null
                => course!.Find(at.Position, new IsSpaces(), to: index),
            _ => -1,
        };
        if (passed < 0 || passed >= index) return null;
        return new Mishap(MishapKind.OtherKind, span) { Named = context.Name(kind), Met = context.Name(course!.At(passed)) };
    }

    /// <summary>'in next sp' where no chain is: the gap between two groups of stitches, right after the ones skipped.</summary>
    private Target? GapBeforeNextCell(long spaceAhead)
    {
        if (at.Position >= course!.Length || course.At(at.Position).Kind == CellKind.Chains) return null;
        if (previous is SkipStep { Kind.Noun: not (PlaceNoun.Space or PlaceNoun.ChainSpace) } && at.Position > 0 && (spaceAhead < 0 || spaceAhead > at.Position)) return Gap(at.Position);
        if (spaceAhead >= 0) return null;
        long end = course.Find(at.Position, (cell, _) => EndsGroup(cell));
        return end < 0 || end + 1 >= course.Length ? null : Gap(end + 1);
    }

    private bool EndsGroup(Cell cell) => cell.GroupSize > 1 && cell.GroupIndex == (course!.Turned ? 0 : cell.GroupSize - 1);

    private Target Gap(long index)
    {
        at = at with { Position = index, Chain = 0, Last = index - 1, LastChain = -1, InSpace = true };
        return new Target(new Foot(Down, course!.PlaceOf(index), -1, FootKind.Between), index - 1);
    }

    private Target? RingTarget()
    {
        int ring = course?.RowIndex ?? rows.Count - 1;
        at = at with { Position = course?.Length ?? 0, InSpace = true };
        return new Target(new Foot(rows.Count - Math.Max(0, ring), 0, -1, FootKind.Ring), -1);
    }

    private (Target?, Mishap?) First(Placement where)
    {
        if (course is null) return (null, null);
        // 'Sl st in 1st ch' over a row that has none: the top of its first stitch.
        if (where.Kind.Noun == PlaceNoun.Chain && builder.IsEmpty && context.Says(where.Span, "1st ch") && course.Find(0, (cell, i) => places!.Offers(cell, i, where.Kind) > 0) < 0)
            where = where with { Kind = PlaceKind.AnyStitch };
        if (OwnFirst(where) is { } own) return (own, null);
        long index = course.Find(0, (cell, i) => places!.Offers(cell, i, where.Kind) > 0);
        if (index < 0) return (null, Missing(where.Kind, where.Span));
        bool back = index < at.Position;
        // '* 1 treble in the 1st stitch, …; repeat from *': the first of each turn.
        if (back && !AtTop && ambient is null && where is { Count: null, Kind.Noun: PlaceNoun.AnyStitch } && OnSample && at.Position < course.Length) return Arrived(TakeNext(where.Kind, where.Span, where));
        State before = at;
        at = at with { Chain = 0 };
        Target target = Arrive(index, where.Kind, where);
        if (back) at = at with { Position = before.Position, Chain = before.Chain };
        return (target, null);
    }

    private static (Target?, Mishap?) Arrived((Target Target, Mishap? Mishap) next) => next.Mishap is null ? (next.Target, null) : (null, next.Mishap);

    private (Target?, Mishap?) Last(Placement where)
    {
        if (course is null) return (null, null);
        long index = course.FindLast((cell, i) => places!.Offers(cell, i, where.Kind) > 0);
        if (index < 0) return (null, Missing(where.Kind, where.Span));
        if (index < at.Position && MissedChain(where) is { } missed) return (missed, null);
        if (index < at.Position) return (null, new Mishap(MishapKind.PastTheEnd, where.Span) { Named = context.Name(where.Kind), Found = 0, Met = course.Row.Label });
        long between = at.InSpace || leavesUnworked ? 0 : course.Sum(at.Position, index, (cell, _) => places!.Stitches(cell));
        // 'ch 5, dc in last st': chains pass over as many stitches as they are.
        if (previous is ChainStep && builder.Last is { Kind: CellKind.Chains } chains && chains.Chains >= between && chains.Chains > 2) between = 0;
        if (between > 0 && where.Kind.Noun is PlaceNoun.AnyStitch or PlaceNoun.Stitch or PlaceNoun.Chain) LeaveBehind(between, where);
        at = at with { Chain = course.At(index).Kind == CellKind.Chains ? course.At(index).Chains - 1 : 0 };
        Target last = Arrive(index, where.Kind, where);
        // 'sl st in last sc': slip stitches of the row below that lie beyond it are left behind on purpose.
        if (where.Kind is { Noun: PlaceNoun.Stitch, Stitch: { } named } && named != StitchId.SlipStitch && course.Find(at.Position, (cell, _) => cell.Stitch != StitchId.SlipStitch) < 0) at = at with { Position = course.Length };
        return (last, null);
    }

    /// <summary>'Miss 1st stitch, …, 1 in each of 31 stitches down other side and 3 in last': the last of an oval is the chain that was missed at its beginning.</summary>
    private Target? MissedChain(Placement where) =>
        onOtherSide && firstChainWorked == 1 && at.Position >= course!.Length && course.Row.Kind == RowKind.Foundation && where.Kind.Noun is PlaceNoun.AnyStitch or PlaceNoun.Chain
            ? new Target(new Foot(Down, course.Length, -1, FootKind.Chain), -1) : null;

    /// <summary>'in last st' and 'in top of tch' go to the end, whatever lies before it: where the count does not come out, that is the cause.</summary>
    private void LeaveBehind(long stitches, Placement where) =>
        at = at with { Passed = at.Passed ?? stopped ?? new Mishap(MishapKind.LeftOver, where.Span) { Found = stitches, Named = context.Name(where.Kind), Met = course!.Row.Label } };

    /// <summary>A place skipped before and worked later, as in crossed stitches. The hook goes on from where it was.</summary>
    private (Target?, Mishap?) SkippedPlace(Placement where)
    {
        if (course is null || at.Skipped < 0 || at.Skipped >= course.Length)
            return (null, new Mishap(MishapKind.NoSuchPlace, where.Span) { Named = "skipped st", Met = course?.Row.Label ?? "" });
        Target target = TargetAt(at.Skipped, -1, course.At(at.Skipped).Kind == CellKind.Chains, where);
        at = at with { Skipped = at.Skipped + 1 };
        return (target, null);
    }

    private (Target?, Mishap?) OtherSideNext(Placement where)
    {
        if (!onOtherSide && GoToOtherSide(where.Span) is { } mishap) return (null, mishap);
        (Target target, Mishap? missing) = TakeNext(PlaceKind.AnyStitch, where.Span, where);
        return missing is null ? (target, null) : (null, missing);
    }
}
