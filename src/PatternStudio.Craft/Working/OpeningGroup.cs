using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>
/// '(Ch 3, dc) in first st, …', 'join B in any corner sp, (ch 3, 2 dc, ch 2, 3 dc) in same sp, …': the chain that a row's first group begins with lifts the hook like one
/// written before the brackets. The row is worked as if it stood there.
/// </summary>
internal static class OpeningGroup
{
    /// <summary>The same steps, with such a chain taken out of its group and put before it.</summary>
    public static EquatableArray<Step> TakeOutChain(EquatableArray<Step> all)
    {
        int index = 0;
        while (index < all.Count && MovesOrPrepares(all[index])) index++;
        if (index >= all.Count || all[index] is not GroupStep { Steps: [ChainStep chain, _, ..] } group || !LiftsTheHook(chain, group)) return all;
        var steps = all.ToList();
        steps[index] = group with { Steps = group.Steps.Skip(1).ToEquatableArray() };
        steps.Insert(index, chain);
        return steps.ToEquatableArray();
    }

    /// <summary>Only where the group stands in one place, and its chain is no loop of its own nor, as in '(ch 3, 2 dc, ch 3, sl st)', the side of a petal.</summary>
    private static bool LiftsTheHook(ChainStep chain, GroupStep group) =>
        chain.Count.Values is [not null and >= 2, ..] && group is { Skipped: null, MayBeInTurn: false, Steps: [_, StitchStep { Where: null } first, ..] }
        && first.Stitch != Terms.StitchId.SlipStitch && !(group.Steps[^1] is StitchStep last && last.Stitch == Terms.StitchId.SlipStitch)
        && group.Where is { Choice: PlaceChoice.Same or PlaceChoice.First or PlaceChoice.Next, Count: null, And: null };

    private static bool MovesOrPrepares(Step step) => step switch
    {
        RemarkStep or ColourStep or AttachStep or MarkerStep or TurnStep or DoNotTurnStep or FastenOffStep => true,
        StitchStep move => move.Stitch == Terms.StitchId.SlipStitch && move.Where?.Choice != PlaceChoice.FromHook,
        _ => false,
    };
}
