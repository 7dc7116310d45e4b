using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Measuring;

/// <summary>What a foundation holds.</summary>
internal static class Foundations
{
    /// <summary>Chains of a foundation row, whether laid flat or joined to a ring; 0 for a magic ring.</summary>
    public static long Chains(this WorkedRow foundation) => foundation.Runs.Sum(run => run.Times * run.Unit.Sum(ChainsOf));

    private static int ChainsOf(Cell cell) => cell.Kind switch
    {
        CellKind.FoundationChain => Math.Max(1, cell.Chains),
        CellKind.Ring => cell.Chains,
        _ => 0,
    };
}
