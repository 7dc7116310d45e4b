using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>'1 treble in each double, 1 double in the middle of each scallop, 2 chain between': stitches for several kinds of place, met in the order of the row below.</summary>
internal sealed partial class RowWorker
{
    /// <summary>The steps of such a row; empty where the row is told in another way.</summary>
    private static StitchStep[] EachOfSeveral(EquatableArray<Step> all)
    {
        Step[] told = [.. all.Where(step => step is not (RemarkStep or ColourStep or TurnStep or JoinStep))];
        if (told.Length < 2 || !told.All(step => step is StitchStep { Where: { Choice: PlaceChoice.Each, Count: null, Further: null, EveryNth: null, And: null } })) return [];
        StitchStep[] each = [.. told.Cast<StitchStep>()];
        return each[^1].ChainsBetween is not null && each.Take(each.Length - 1).All(step => step.ChainsBetween is null) ? each : [];
    }

    private Mishap? WorkEachOfSeveral(StitchStep[] each)
    {
        StitchStep last = each[^1];
        if (course is null || context.Number(last.ChainsBetween) is not ({ } chains and > 0)) return new Mishap(MishapKind.CannotWork, last.Span);
        Placement[] places = [.. each.Select(step => OneOf(step.Where!))];
        for (bool begun = false; Nearest(places) is var (which, index); begun = true)
        {
            if (++steps > MostSteps) return new Mishap(MishapKind.TooLarge, last.Span);
            if (begun) Emit(new Cell(CellKind.Chains, StitchId.Chain, chains, [], false, last.Span));
            StitchStep step = each[which];
            if (WorkInto(step with { ChainsBetween = null }, context.Traits(step.Stitch), Number(step, 1), Arrive(index, places[which].Kind, places[which])) is { } mishap) return mishap;
        }
        if (GoesAround && !builder.IsEmpty) Emit(new Cell(CellKind.Chains, StitchId.Chain, chains, [], false, last.Span));
        return each.All(step => builder.Has(cell => cell.Source == step.Span)) ? null : new Mishap(MishapKind.CannotWork, last.Span);
    }

    /// <summary>'The middle stitch of each scallop': over a row of loops a scallop is a loop.</summary>
    private Placement OneOf(Placement where)
    {
        PlaceKind kind = where.Within ?? where.Kind;
        if (kind is { Noun: PlaceNoun.Group, Stitch: { } name } && !HasGroup(name) && places is { HasSpaces: true }) kind = PlaceKind.Space;
        return where with { Choice = PlaceChoice.Next, Extent = null, Within = null, Kind = kind };
    }

    private (int Which, long Index)? Nearest(Placement[] where)
    {
        (int Which, long Index)? nearest = null;
        for (int i = 0; i < where.Length; i++)
            if (course!.Find(at.Position, (cell, index) => places!.Offers(cell, index, where[i].Kind) > 0) is var index and >= 0 && (nearest is null || index < nearest.Value.Index)) nearest = (i, index);
        return nearest;
    }

    /// <summary>
    /// '4 plain, * 1 picot, 4 plain; repeat 7 times' over eight loops: as many times the same number as there are loops, so one lot goes into each. Null where the numbers
    /// don't show it.
    /// </summary>
    public static EquatableArray<Step>? LotsIntoLoops(EquatableArray<Step> all)
    {
        StitchStep[] lots = [.. StitchesIn(all)];
        bool alike = lots.Length > 0 && lots.All(lot => lot is { Where: null, PerPlace: null, Count: { IsPlain: true } count } && count.Values == lots[0].Count!.Values && lot.Stitch == lots[0].Stitch && count.Values[0] > 1);
        return alike ? IntoLoops(all) : null;
    }

    private static IEnumerable<StitchStep> StitchesIn(EquatableArray<Step> steps) => steps.SelectMany(step => step switch
    {
        StitchStep { Stitch.Value: not "picot" } stitch => [stitch],
        RepeatStep repeat => StitchesIn(repeat.Steps),
        _ => Enumerable.Empty<StitchStep>(),
    });

    private static EquatableArray<Step> IntoLoops(EquatableArray<Step> steps) => steps.Select(step => step switch
    {
        StitchStep { Stitch.Value: not "picot" } lot => lot with { PerPlace = lot.Count, Count = null, Where = new Placement(PlaceChoice.Next, PlaceKind.Space, lot.Span) },
        RepeatStep repeat => repeat with { Steps = IntoLoops(repeat.Steps) },
        _ => step,
    }).ToEquatableArray();
}
