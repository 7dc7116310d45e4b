using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>What the next row is worked into, and how far it can be trusted.</summary>
/// <param name="Row">The row below as worked.</param>
/// <param name="Doubtful">True where something went wrong in it: what fails on top of it may only follow from that.</param>
/// <param name="AsStated">The row below as its stated count claims it, where that differs.</param>
internal sealed record Ground(WorkedRow Row, bool Doubtful = false, WorkedRow? AsStated = null)
{
    /// <summary>A plain row of the stated number of stitches; null where the count states no such number.</summary>
    public static WorkedRow? Claimed(WorkedRow row, WorkContext context, StitchId? usual)
    {
        if (row.Stated is not { Items: [var item] } || item.Number.For(context.Size) is not { } number || number <= 0) return null;
        if (item.Kind?.Stitch is { } group && item.Thing is CountedThing.Groups or CountedThing.Stitch && ToldGroups.Cells(group, context, row.Instruction.Span) is { } cells)
            return row with { Runs = [new Run(cells.ToEquatableArray(), number, 0)] };
        StitchId? stitch = item.Thing switch
        {
            CountedThing.Stitch => item.Kind?.Stitch,
            CountedThing.Stitches => usual,
            _ => null,
        };
        if (item is { Thing: CountedThing.ChainSpaces, Kind.Chains: { } chains })
            return row with { Runs = [new Run([new Cell(CellKind.Chains, StitchId.Chain, chains, [], false, row.Instruction.Span)], number, 0)] };
        if (stitch is not { } kind) return null;
        var cell = new Cell(CellKind.Stitch, kind, 0, [], true, row.Instruction.Span);
        return row with { Runs = [new Run([cell], number, 0)] };
    }
}
