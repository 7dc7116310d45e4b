using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>Words that leave open which stitches a place belongs to: '1 sc, 2 hdc in next st' is three stitches in one place, or the last two only.</summary>
internal static class PlaceReadings
{
    /// <summary>The steps with such places read the other way; null where nothing is open.</summary>
    public static EquatableArray<Step>? InTurn(EquatableArray<Step> steps) =>
        steps.Any(MayBeInTurn) ? steps.SelectMany(Read).ToEquatableArray() : null;

    private static bool MayBeInTurn(Step step) => step is GroupStep { MayBeInTurn: true } || step is RepeatStep repeat && repeat.Steps.Any(MayBeInTurn);

    private static IEnumerable<Step> Read(Step step) => step switch
    {
        GroupStep { MayBeInTurn: true } group => [.. group.Steps.Take(group.Steps.Count - 1), Placed((StitchStep)group.Steps[group.Steps.Count - 1], group.Where)],
        RepeatStep repeat => [repeat with { Steps = repeat.Steps.SelectMany(Read).ToEquatableArray() }],
        _ => [step],
    };

    private static StitchStep Placed(StitchStep last, Placement where) => last with { Where = where, PerPlace = last.Count ?? last.PerPlace, Count = null };
}
