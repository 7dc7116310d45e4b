using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>
/// A row's steps with its ends put straight: what stands after 'turn' or after the join ('ch 3, turn', 'join, sl st to corner sp') belongs to
/// the row that follows, whichever row it is printed in.
/// </summary>
/// <param name="Own">The steps worked in this row.</param>
/// <param name="ForNext">The steps that the next row starts with.</param>
/// <param name="TurnsAfter">'turn' stands at its end.</param>
/// <param name="StaysAfter">'do not turn' stands at its end.</param>
internal sealed record RowSteps(EquatableArray<Step> Own, EquatableArray<Step> ForNext, bool TurnsAfter, bool StaysAfter)
{
    public static RowSteps Split(EquatableArray<Step> steps)
    {
        int end = steps.Count;
        while (end > 0 && IsEndMatter(steps[end - 1])) end--;
        int cut = FirstForNext(steps, end);
        IEnumerable<Step> tail = steps.Skip(cut);
        return new RowSteps(
            steps.Take(cut).ToEquatableArray(),
            tail.Where(step => step is ChainStep or StitchStep or ColourStep or AttachStep).ToEquatableArray(),
            tail.Any(step => step is TurnStep),
            steps.Any(step => step is DoNotTurnStep));
    }

    /// <summary>True where 'turn' stands before any stitch is worked.</summary>
    public static bool TurnsAtStart(EquatableArray<Step> steps) =>
        steps.TakeWhile(step => step is ChainStep or ColourStep or RemarkStep or TurnStep or AttachStep or MarkerStep or FastenOffStep)
            .Any(step => step is TurnStep);

    private static bool IsEndMatter(Step step) => step switch
    {
        TurnStep or DoNotTurnStep or ChainStep or RemarkStep or ColourStep or FastenOffStep or MarkerStep or AttachStep => true,
        StitchStep stitch => stitch.Stitch == StitchId.SlipStitch,
        _ => false,
    };

    /// <summary>Where the next row's matter begins: at the first of the closing steps if they hold a turn, or stand behind a join.</summary>
    private static int FirstForNext(EquatableArray<Step> steps, int end)
    {
        bool afterJoin = end > 0 && steps[end - 1] is JoinStep { FormsRing: false };
        if (end == 0) return steps.Count;
        if (afterJoin) return end;
        for (int i = end; i < steps.Count; i++)
            if (steps[i] is TurnStep) return ChainsBefore(steps, end, i);
        return steps.Count;
    }

    /// <summary>'ch 3, turn': the chain just before the turn goes along with it; slip stitches before it do not.</summary>
    private static int ChainsBefore(EquatableArray<Step> steps, int end, int turn)
    {
        int first = turn;
        while (first > end && steps[first - 1] is ChainStep or RemarkStep or ColourStep or FastenOffStep or AttachStep) first--;
        return first;
    }
}
