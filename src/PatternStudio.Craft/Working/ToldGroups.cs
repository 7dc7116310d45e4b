using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>
/// A row told by the number of its groups alone: 'Row 9—6 shells.', 'Work back 3 shells, turn', '5 shells, ending with 2 dc'. Each stands in one of the row below;
/// where they are one or two more or fewer, the row is shaped at its ends. (Common practice of the booklets; compare 'No. 6523 Blouse', Virginia Snow Studios.)
/// </summary>
/// <param name="Group">The step that names the group.</param>
/// <param name="Count">How many there are.</param>
/// <param name="Behind">Plain stitches behind them; null for none.</param>
internal sealed record ToldGroups(StitchStep Group, int Count, StitchStep? Behind)
{
    /// <summary>One more or one fewer at each end.</summary>
    public const int MostShaped = 2;

    /// <summary>Null where the row is told in any other way.</summary>
    public static ToldGroups? Of(EquatableArray<Step> steps, WorkContext context)
    {
        StitchStep? group = null, behind = null;
        foreach (Step step in steps)
        {
            if (step is RemarkStep or TurnStep or ColourStep or FastenOffStep or AttachStep { Where: null } or UncountedStep { Reason: UncountedReason.Shaping }) continue;
            if (group is not null && step is UncountedStep { Reason: UncountedReason.Rows } rows && (rows.Text.StartsWith("worked even", StringComparison.OrdinalIgnoreCase) || rows.Text.StartsWith("repeat for", StringComparison.OrdinalIgnoreCase))) continue;
            if (group is null && EachWorkedEvenly(step) is { } even && Cells(even.Stitch, context, even.Span) is not null)
            {
                group = even;
                continue;
            }
            if (step is not StitchStep { Where: null, PerPlace: null, Count: not null, ChainsBetween: null } told || behind is not null) return null;
            if (group is null && Cells(told.Stitch, context, told.Span) is not null) group = told;
            else if (group is not null && context.Traits(told.Stitch).Definition is null) behind = told;
            else return null;
        }
        return group is not null && context.Number(group.Count) is > 0 and < 1000 and var count ? new ToldGroups(group, count, behind) : null;
    }

    /// <summary>'20 shells each worked evenly': 'each' is the row, not a place.</summary>
    private static StitchStep? EachWorkedEvenly(Step step) =>
        step is StitchStep { PerPlace: { IsPlain: true } number, Where: { Choice: PlaceChoice.Each, Count: null, Extent: null, EveryNth: null, Further: null, Kind.Noun: PlaceNoun.AnyStitch } } told && number.Values[0] > 9
            ? told with { PerPlace = null, Count = number, Where = null }
            : null;

    /// <summary>The row as its words tell it, whatever it is worked into.</summary>
    public EquatableArray<Run> AsTold(WorkContext context)
    {
        var told = new RowBuilder();
        for (int i = 0; i < Count; i++)
            foreach (Cell cell in Cells(Group.Stitch, context, Group.Span)!) told.Add(cell);
        for (int i = 0; Behind is not null && i < context.Number(Behind.Count); i++) told.Add(new Cell(CellKind.Stitch, Behind.Stitch, 0, [], true, Behind.Span));
        return told.Build();
    }

    /// <summary>The cells of one such group; null where the pattern does not define it as stitches and chains in one place.</summary>
    public static IReadOnlyList<Cell>? Cells(StitchId name, WorkContext context, TextSpan source)
    {
        if (context.Traits(name).Definition is not { Steps.Count: > 1 } definition) return null;
        var cells = new List<Cell>();
        foreach (Step step in definition.Steps)
            switch (step)
            {
                case ChainStep chain when context.Number(chain.Count) is { } chains:
                    cells.Add(new Cell(CellKind.Chains, StitchId.Chain, chains, [], false, source));
                    break;
                case StitchStep { Where: null or { Choice: PlaceChoice.Same } or { Choice: PlaceChoice.Next, Count: null, And: null } } stitch when (context.Number(stitch.Count ?? stitch.PerPlace) ?? 1) is var number and > 0 and < 100:
                    for (int i = 0; i < number; i++) cells.Add(new Cell(CellKind.Stitch, stitch.Stitch, 0, [], true, source));
                    break;
                case RemarkStep:
                    break;
                default:
                    return null;
            }
        return [.. cells.Select((cell, i) => cell with { Group = name, GroupIndex = i, GroupSize = cells.Count })];
    }
}
