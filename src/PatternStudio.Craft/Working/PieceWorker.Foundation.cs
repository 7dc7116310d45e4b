using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>Laying the foundation: a chain, a chain ring, a magic ring.</summary>
internal sealed partial class PieceWorker
{
    /// <summary>True where steps begin with a foundation: 'Ch 21, sc in 2nd ch from hook', 'Ch 5, join to form a ring', '6 sc in magic ring'.</summary>
    private static bool BeginsWithFoundation(EquatableArray<Step> steps)
    {
        Step? first = steps.FirstOrDefault(IsWork);
        return first is ChainStep or OpenChainStep or MagicRingStep or StitchStep { Where.Choice: PlaceChoice.InRing } or GroupStep { Where.Choice: PlaceChoice.InRing };
    }

    /// <summary>A chain that is surely no turning chain: a ring, or longer than rows begin with. What a later row may begin a new part with.</summary>
    private static bool MakesFoundation(EquatableArray<Step> steps) =>
        steps.FirstOrDefault(IsWork) is not ChainStep { Count: { IsPlain: true } count } || count.Values[0] >= 10 || steps.Any(step => step is JoinStep { FormsRing: true });

    /// <summary>True while the rows stand on a foundation whose length the text leaves open.</summary>
    private bool onSample;

    private static bool IsWork(Step step) => step is not (RemarkStep or ColourStep or MarkerStep or AttachStep { Where: null });

    /// <summary>Lays the foundation that the steps begin with, and returns the steps behind it.</summary>
    private EquatableArray<Step> LayFoundation(RowInstruction row, EquatableArray<Step> steps)
    {
        foreach (Step step in steps)
            if (step is ColourStep { Colour: var named }) colour = named;
            else if (IsWork(step)) break;
        int first = 0;
        while (first < steps.Count && !IsWork(steps[first])) first++;
        if (first >= steps.Count || steps[first] is JoinStep) return [];
        int after = first + 1;
        bool ring = true;
        Run run;
        onSample = steps[first] is OpenChainStep;
        if (onSample)
        {
            if (context.SampleChains is not { } sample)
            {
                ground = null;
                return steps.Skip(after).ToEquatableArray();
            }
            ring = false;
            run = new Run([new Cell(CellKind.FoundationChain, StitchId.Chain, 0, [], false, steps[first].Span) { Colour = colour }], sample, 0);
        }
        else if (steps[first] is ChainStep chain && !GoesIntoMagicRing(steps, first))
        {
            if (context.Number(chain.Count) is not { } chains || chains < 1)
            {
                ground = null;
                return steps.Skip(after).ToEquatableArray();
            }
            ring = IsRing(steps, ref after);
            run = new Run([new Cell(CellKind.FoundationChain, StitchId.Chain, 0, [], false, chain.Span) { Colour = colour }], chains, 0);
        }
        else
        {
            if (steps[first] is not MagicRingStep) after = first;
            run = new Run([new Cell(CellKind.Ring, StitchId.Chain, 0, [], false, steps[first].Span) { Colour = colour }], 1, 0);
        }
        rows.Add(new WorkedRow(0, row, RowKind.Foundation, FabricSide.Right, RowStatus.Checked, [run]) { Label = "Foundation", Section = section, CalledBy = row.Span, Joined = ring, Index = rows.Count });
        ground = new Ground(rows[^1]);
        turnsNext = !ring;
        return steps.Skip(after).ToEquatableArray();
    }

    /// <summary>'Ch 3 (counts as dc), 2 dc in magic ring': the chain is no foundation, it stands in a ring that is made without a word.</summary>
    private static bool GoesIntoMagicRing(EquatableArray<Step> steps, int chain)
    {
        int after = chain + 1;
        return !IsRing(steps, ref after) && steps.Skip(after).FirstOrDefault(IsWork) is StitchStep { Where.Choice: PlaceChoice.InRing } or GroupStep { Where.Choice: PlaceChoice.InRing };
    }

    /// <summary>True where the chain is closed to a ring; <paramref name="after"/> moves past the join.</summary>
    private static bool IsRing(EquatableArray<Step> steps, ref int after)
    {
        for (int i = after; i < steps.Count; i++)
        {
            if (steps[i] is JoinStep)
            {
                after = i + 1;
                return true;
            }
            if (steps[i] is StitchStep { Stitch: var stitch, Where.Choice: PlaceChoice.First or PlaceChoice.FromHook or PlaceChoice.Nth or PlaceChoice.Last } && stitch == StitchId.SlipStitch && i == after)
            {
                after = i + 1;
                return true;
            }
            if (steps[i] is not RemarkStep) return false;
        }
        return false;
    }
}
