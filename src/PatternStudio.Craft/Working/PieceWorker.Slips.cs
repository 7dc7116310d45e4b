using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>Slips of the pen: what a row was likely meant to be, for the rows above to go on from. The slip itself is told, and the row is kept as it is told.</summary>
internal sealed partial class PieceWorker
{
    private EquatableArray<Run>? Mended(Mishap slip, EquatableArray<Step> own, bool around, bool turned, WorkedRow? below) => slip.Kind switch
    {
        MishapKind.LeftOver => WithTurnsEnough(own, around, turned, below),
        MishapKind.JoinToNothing => WithChainJoinedTo(slip, own, around, turned, below),
        _ => null,
    };

    /// <summary>'Ch 1, 2 tr in same space, …, join in 4th st of ch': a chain that has a 4th stitch was meant.</summary>
    private EquatableArray<Run>? WithChainJoinedTo(Mishap slip, EquatableArray<Step> own, bool around, bool turned, WorkedRow? below)
    {
        int first = own.ToList().FindIndex(step => step is ChainStep);
        if (below is null || slip is not { Wanted: > 1 and < 10 and var chains, Found: > 0 } || first < 0 || own.Take(first).Any(step => step is StitchStep or GroupStep or RepeatStep)) return null;
        ChainStep longer = ((ChainStep)own[first]) with { Count = SizedNumber.Of((int)chains) };
        WorkMemo.Made made = Make(own.Select((step, i) => i == first ? longer : step).ToEquatableArray(), around, turned, below);
        return ComesOut(made) ? made.Runs : null;
    }

    /// <summary>
    /// 'repeat from * 7 times' where only 15 times use up the row below: the likeliest row to go on from is the one with the turns that were meant. Null where no number of
    /// turns comes out.
    /// </summary>
    private EquatableArray<Run>? WithTurnsEnough(EquatableArray<Step> own, bool around, bool turned, WorkedRow? below)
    {
        int[] repeats = [.. Enumerable.Range(0, own.Count).Where(i => own[i] is RepeatStep { Extent.Kind: ExtentKind.Times })];
        if (below is null || repeats is not [var index] || own[index] is not RepeatStep repeat || context.Number(repeat.Extent.Count) is not { } told) return null;
        for (int times = told + 1; times <= told + MostTurnsMissing; times++)
        {
            EquatableArray<Step> steps = own.Select((step, i) => i == index ? repeat with { Extent = repeat.Extent with { Count = SizedNumber.Of(times) } } : step).ToEquatableArray();
            WorkMemo.Made made = Make(steps, around, turned, below);
            if (made.Mishap is null && made.Passed is null) return made.Runs;
            if (made.Mishap is { Kind: not MishapKind.LeftOver }) return null;
        }
        return null;
    }

    private static bool ComesOut(WorkMemo.Made made) => made is { Mishap: null, Passed: null or { Kind: not (MishapKind.LeftOver or MishapKind.RepeatUneven) } };

    /// <summary>A number of turns further off than this is no slip of the pen.</summary>
    private const int MostTurnsMissing = 50;

    /// <summary>What the row comes to with its lost star in the one place where it comes out; null where there is no such place, or several.</summary>
    private WorkMemo.Made? WithLostStar(EquatableArray<Step> own, bool around, bool turned)
    {
        if (ground is not { } below) return null;
        WorkMemo.Made[] right = [.. LostStar.Readings(own).Select(steps => Make(steps, around, turned, below.Row)).Where(ComesOut).DistinctBy(made => made.Runs).Take(2)];
        return right is [var only] ? only : null;
    }
}
