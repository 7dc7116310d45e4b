using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Working;

/// <summary>Places in chains: counted from the hook, the chains skipped at the start, the turning chain.</summary>
internal sealed partial class RowWorker
{
    private (Target?, Mishap?) FromHook(Placement where)
    {
        int n = where.Ordinal ?? 1;
        if (IsNextFromHook(where)) return (TakeNext(PlaceKind.AnyStitch, where.Span, where).Target, null);
        if (n < 1) return (null, new Mishap(MishapKind.NoSuchPlace, where.Span) { Named = context.Name(PlaceKind.Chain), Met = course?.Row.Label ?? "" });
        if (builder.Last is { Kind: CellKind.Chains } own && own.Chains >= n)
        {
            // The chains up to the hook stay a loop, as in a tile; the others are worked along.
            builder.RemoveLast();
            builder.Add(own with { Kind = n > 2 ? CellKind.Chains : CellKind.TurningChain, Chains = n - 1 });
            at = at with { OwnChains = own.Chains - n };
            return (new Target(new Foot(0, -1, own.Chains - n, FootKind.Chain), -1), null);
        }
        if (course is null) return (null, null);
        long chains = course.Sum(0, course.Length, (cell, i) => places!.Offers(cell, i, PlaceKind.Chain));
        if (n > chains) return (null, new Mishap(MishapKind.PastTheEnd, where.Span) { Named = "ch", Wanted = n, Found = chains, Met = course.Row.Label });
        at = at with { Position = n - 1 };
        firstChainWorked = n - 1;
        if (builder.IsEmpty) StandOnSkippedChains(n - 1, where);
        return (Arrive(n - 1, PlaceKind.Chain, where), null);
    }

    /// <summary>'dc in 4th ch from hook': the chains skipped are the first turning chain.</summary>
    private void StandOnSkippedChains(int passed, Placement where)
    {
        if (passed == 0) return;
        double height = openingStitch is { } stitch ? context.Traits(stitch).Height : 1;
        if (height <= 1)
        {
            if (skippedCount == true) StandFor(skipped?.CountsAs ?? StitchId.Single, Math.Max(0, skipped?.ThenChains ?? 0), passed, where);
            else if (passed > 2) Emit(new Cell(CellKind.Chains, StitchId.Chain, passed, [], false, where.Span));
            return;
        }
        int tall = (int)Math.Round(height), chains = Math.Min(passed, tall), over = skipped is { Role: not ChainRole.Unstated } told ? told.ThenChains : (passed - chains) / 2;
        bool counts = skippedCount ?? (passed == 1 ? context.Told(1) ?? false : context.TurningChainCounts(chains, usual: chains >= 3));
        if (counts)
        {
            StandFor(skipped?.CountsAs ?? StandsFor(chains, context.Traits(openingStitch!.Value)), over, passed, where);
            return;
        }
        Emit(new Cell(CellKind.TurningChain, StitchId.Chain, chains, [BaseOfSkipped(passed, over)], false, where.Span));
        if (over > 0) Emit(new Cell(CellKind.Chains, StitchId.Chain, over, [], false, where.Span));
    }

    private void StandFor(StitchId stitch, int over, int passed, Placement where)
    {
        int chains = Math.Max(1, Math.Min(passed, (int)Math.Round(context.Traits(stitch).Height)));
        Emit(new Cell(CellKind.TurningChain, stitch, chains, [BaseOfSkipped(passed, UnderSkipped(stitch, over, passed))], true, where.Span));
        if (over > 0) Emit(new Cell(CellKind.Chains, StitchId.Chain, over, [], false, where.Span));
    }

    /// <summary>
    /// Of the chains passed over, those left unworked between the one that the stitch stands on and the next stitch: as told, else what is left of them beside the stitch's height and
    /// the chains beside it ('dc in 6th ch from hook (skipped chs count as dc and ch 1)': 5 − 3 − 1 = 1), else as many as lie over them.
    /// </summary>
    private int UnderSkipped(StitchId stitch, int over, int passed) =>
        skipped is not { Role: not ChainRole.Unstated } told ? over : told.ThenSkips ?? Math.Max(0, passed - (int)Math.Round(context.Traits(told.CountsAs ?? stitch).Height) - over);

    private Foot BaseOfSkipped(int passed, int under) => new(Down, course!.PlaceOf(Math.Max(0, passed - 1 - under)), -1, FootKind.Chain);

    private Target OwnChain()
    {
        at = at with { OwnChains = at.OwnChains - 1 };
        return new Target(new Foot(0, -1, at.OwnChains, FootKind.Chain), -1);
    }

    private (Target?, Mishap?) TurningChain(Placement where)
    {
        if (course is null) return (null, null);
        if (OwnBeginning(where) is { } own) return own;
        long index = course.IndexOf(0);
        Cell start = course.At(index);
        if (start.Kind is not (CellKind.TurningChain or CellKind.Chains or CellKind.FoundationChain))
            return Last(where with { Choice = PlaceChoice.Last, Kind = PlaceKind.AnyStitch });
        bool asStitch = where.Choice == PlaceChoice.TurningChainTop;
        if (asStitch && start is { Kind: CellKind.TurningChain, Counts: false } && context.Conventions.Counts(start.Chains) is null)
            context.OpenTurningChains.Add(start.Chains);
        if (asStitch && start is { Kind: CellKind.TurningChain, Counts: false, Chains: > 1 })
            return (null, new Mishap(MishapKind.TurningChainDisagrees, where.Span) { Wanted = start.Chains, Met = course.Row.Label });
        if (BeginsHere(start)) return (EnterBeginningChain(where, start), null);
        if (asStitch && !course.Turned && index == 0 && at is { Position: 0, Last: < 0 } && builder.IsEmpty)
        {
            at = at with { Position = 1, Last = 0, LastChain = -1, InSpace = false };
            return (TargetAt(0, -1, false, where), null);
        }
        int chain = -1;
        if (asStitch && ChainsOnTheWay(where, start, index) is >= 0 and var nearer) (index, chain) = (nearer, where.Ordinal!.Value - 1);
        long between = at.InSpace || index < at.Position ? 0 : course.Sum(at.Position, index, (cell, _) => places!.Stitches(cell));
        if (between > 0) LeaveBehind(between, where);
        if (!asStitch && index + (course.Turned ? -1 : 1) is var beside && beside >= 0 && beside < course.Length && start.Kind == CellKind.TurningChain && course.At(beside).Kind == CellKind.Chains)
            index = beside;
        at = at with { Position = course.Length, Chain = 0, Last = index, LastChain = -1, InSpace = !asStitch };
        return (TargetAt(index, chain, !asStitch, where), null);
    }

    /// <summary>
    /// 'dc in 3rd st of ch' where the row below began with one chain, on a scallop beside the strip, and came to the strip with 'ch 5': a chain of one has no third, so the next that has one
    /// is meant. Below 0 for none.
    /// </summary>
    private long ChainsOnTheWay(Placement where, Cell start, long index) =>
        course!.Turned && where.Ordinal is { } nth && start.Kind == CellKind.TurningChain && start.Chains < nth
            ? course.Find(at.Position, (cell, _) => cell.Kind == CellKind.Chains && cell.Chains >= nth, index) : -1;

    /// <summary>A round that goes on without a turn meets the beginning chain of the round below first: 'sc in 2nd st of ch 5, 2 sc in next loop, …'.</summary>
    private bool BeginsHere(Cell start) =>
        GoesAround && !course!.Turned && at.Position == 0 && at.Last < 0 && builder.IsEmpty && start.Kind is CellKind.TurningChain or CellKind.Chains;

    private Target EnterBeginningChain(Placement where, Cell start)
    {
        at = at with { Position = start.Kind == CellKind.Chains ? 0 : 1, Last = 0, LastChain = -1, InSpace = false };
        return TargetAt(0, -1, false, where);
    }

    /// <summary>'ch 3, 1 dc in 1st st from hook' in a round: no stitch goes into the chain just made; the next one of the round below is meant.</summary>
    private bool IsNextFromHook(Placement where) => GoesAround && (where.Ordinal ?? 2) == 1 && course is not null && at.Position < course.Length;
}
