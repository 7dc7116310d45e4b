using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>How many places of the row below steps need at least: what a repeat 'across' must leave for the steps behind it.</summary>
internal sealed partial class RowWorker
{
    /// <summary>What the steps behind <paramref name="index"/> need.</summary>
    private Need Reserve(EquatableArray<Step> all, int index) => NeedOf(all, index + 1);

    private Need NeedOf(EquatableArray<Step> all, int from)
    {
        Need need = default;
        for (int i = from; i < all.Count; i++) need += NeedOf(all[i], IsClosing(all, i) || ClosesSpiral(all, i));
        return need;
    }

    /// <summary>'*sc in next 3 sts, inc; rep from * around, sl st in next st': where all is worked, the next stitch is the first of this round.</summary>
    private bool ClosesSpiral(EquatableArray<Step> all, int index) =>
        GoesAround && !joins && AtTop && all[index] is StitchStep { Where: { Choice: PlaceChoice.Next, Count: null, And: null, Further: null, Kind.Noun: PlaceNoun.AnyStitch or PlaceNoun.Stitch } } slip && slip.Stitch == StitchId.SlipStitch
        && all.Skip(index + 1).All(step => step is RemarkStep or FastenOffStep or MarkerStep or ColourStep or TurnStep or DoNotTurnStep);

    private Need NeedOf(Step step, bool closing) => step switch
    {
        _ when closing => default,
        StitchStep { Where: null } stitch => new Need((Number(stitch, 1) ?? 0) * context.Traits(stitch.Stitch).Takes, 0),
        StitchStep stitch => NeedOf(stitch.Where!) * (stitch.Where is { Choice: PlaceChoice.Next, Count: null } ? context.Traits(stitch.Stitch).Takes : 1),
        GroupStep group => NeedOf(group.Where),
        // Chains passed over in a row of stitches are one space.
        SkipStep { Kind.Noun: PlaceNoun.Chain } skip when course is { Row.Kind: not RowKind.Foundation } && !context.Conventions.ChainsAreStitches => new Need(0, context.Number(skip.Count) > 0 ? 1 : 0),
        SkipStep skip when context.Says(skip.Span, "of same") => default,
        SkipStep skip => NeedOf(skip.Kind, context.Number(skip.Count) ?? 0),
        RepeatStep { Extent.Kind: ExtentKind.Times } repeat => NeedOf(repeat.Steps, 0) * (context.Number(repeat.Extent.Count) ?? 0),
        _ => default,
    };

    private Need NeedOf(Placement where)
    {
        Need here = where.Choice switch
        {
            PlaceChoice.Next when where.Count is null && IsTurningSpace(where.Kind) => default,
            PlaceChoice.Next or PlaceChoice.Over => NeedOf(where.Kind, where.Count is null ? 1 : context.Number(where.Count) ?? 0),
            PlaceChoice.Each when where.Count is not null => NeedOf(where.Kind, context.Number(where.Count) ?? 0),
            PlaceChoice.Last => NeedOf(where.Kind, context.Number(where.Count) ?? 1),
            // '6th and 5th chs of tch': the first of them is the space beside the chain.
            PlaceChoice.TurningChainTop when where.And is { Choice: PlaceChoice.TurningChainTop } => new Need(0, 1),
            PlaceChoice.TurningChainTop when course is not null => new Need(places!.Stitches(course.At(course.IndexOf(0))) > 0 ? 1 : 0, 0),
            PlaceChoice.Nth when course is not null && IsTopOfBeginning(where) => new Need(1, 0),
            PlaceChoice.TurningChainSpace when course is not null => new Need(0, BeginsWithSpace ? 1 : 0),
            _ => default,
        };
        return where.And is null ? here : here + NeedOf(where.And);
    }

    /// <summary>'sc in ch-2 sp', where the only chain of that length is the turning chain: none of the spaces need be left for it.</summary>
    private bool IsTurningSpace(PlaceKind kind) =>
        kind is { Noun: PlaceNoun.ChainSpace, Chains: > 1 and { } length } && course is { Length: > 1 }
        && course.At(course.IndexOf(0)) is { Kind: CellKind.TurningChain } turning && turning.Chains == length && course.Find(0, (cell, _) => cell.Kind == CellKind.Chains && cell.Chains == length) < 0;

    /// <summary>'in turning ch-2 sp': the chain that the row below began with is a space, or has one beside it.</summary>
    private bool BeginsWithSpace =>
        course!.At(course.IndexOf(0)).Kind == CellKind.Chains || course.Length > 1 && course.At(course.IndexOf(0)).Kind == CellKind.TurningChain && course.At(course.IndexOf(1)).Kind == CellKind.Chains;

    private static Need NeedOf(PlaceKind kind, long count) => kind.Noun switch
    {
        PlaceNoun.ChainSpace or PlaceNoun.Space or PlaceNoun.Corner => new Need(0, count),
        PlaceNoun.AnyStitch or PlaceNoun.Stitch or PlaceNoun.Chain => new Need(count, 0),
        _ => default,
    };
}
