using PatternStudio.Craft.Reading.Counts;
using PatternStudio.Craft.Reading.Steps;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Lines;

/// <summary>Finishes a row: takes out the count it states, and sees that a round's last slip stitch joins it.</summary>
internal static class RowEnds
{
    public static RowInstruction Finish(ReadingContext context, RowHeading heading, StepList read, TextSpan span)
    {
        var steps = read.Steps.ToList();
        StatedCount? stated = RowCounts.InTurn(TakeStated(context, steps), heading);
        JoinRound(heading, steps);
        SweepLoneStitch(heading, steps);
        ReportLooseStars(context, read);
        return new RowInstruction(KindOf(heading, steps), steps.ToEquatableArray(), stated, span);
    }

    /// <summary>A count is the row's own where nothing but its end follows; counts on the way are remarks.</summary>
    private static StatedCount? TakeStated(ReadingContext context, List<Step> steps)
    {
        int last = steps.FindLastIndex(step => step is CountedSoFar);
        StatedCount? stated = null;
        if (last >= 0 && EndsRow(steps, last + 1))
        {
            stated = ((CountedSoFar)steps[last]).Count;
            steps.RemoveAt(last);
        }
        for (int i = 0; i < steps.Count; i++)
            if (steps[i] is CountedSoFar count) steps[i] = new RemarkStep(context.Source.Slice(count.Span), count.Span);
        return stated;
    }

    private static bool EndsRow(List<Step> steps, int from)
    {
        for (int i = from; i < steps.Count; i++)
            if (steps[i] is not (TurnStep or DoNotTurnStep or JoinStep or DoNotJoinStep or FastenOffStep or ColourStep or MarkerStep or RemarkStep or CountedSoFar)
                && !(steps[i] is ChainStep && i + 1 < steps.Count && steps[i + 1] is TurnStep))
                return false;
        return true;
    }

    /// <summary>'…, sl st in first sc.' at the end of a round joins it, said or not.</summary>
    private static void JoinRound(RowHeading heading, List<Step> steps)
    {
        int last = steps.FindLastIndex(step => step is not (TurnStep or DoNotTurnStep or FastenOffStep or ColourStep or MarkerStep or RemarkStep or ChainStep));
        if (heading.Kind == RowKind.Round && last > 0 && steps[last] is StitchStep { Where: { Choice: PlaceChoice.First or PlaceChoice.TurningChainTop } where } step && step.Stitch == StitchId.SlipStitch)
            steps[last] = new JoinStep(StitchId.SlipStitch, where, false, step.Span);
        else if (last > 0 && steps[last] is StitchStep { Where: null, Count: null, Completes: null } bare && bare.Stitch == StitchId.SlipStitch && FillsRound(steps.Take(last), heading.Kind == RowKind.Round))
            steps[last] = new JoinStep(StitchId.SlipStitch, null, false, bare.Span);
    }

    /// <summary>'1 hdc in each st, sl st', '(dc2tog) x 6, dc in last 3 sts, ss': what goes before comes round to its beginning.</summary>
    private static bool FillsRound(IEnumerable<Step> before, bool round) => before.LastOrDefault(IsWorking) switch
    {
        RepeatStep => round,
        StitchStep { Where: { } where } => where.Choice is PlaceChoice.Last or PlaceChoice.InRing || where is { Choice: PlaceChoice.Each, Extent.Kind: ExtentKind.ToEnd or ExtentKind.Unstated } || where is { Choice: PlaceChoice.Each, Count: null, Extent: null },
        _ => false,
    };

    /// <summary>'Rnd 4: sc. (18)': a row whose one word is a stitch has it in every place.</summary>
    private static void SweepLoneStitch(RowHeading heading, List<Step> steps)
    {
        int only = steps.FindIndex(IsWorking);
        if (heading.Numbering == RowNumbering.None || only < 0 || steps.FindLastIndex(IsWorking) != only || steps[only] is not StitchStep { Where: null, Count: null, ChainsBetween: null } step) return;
        if (step.Stitch == StitchId.SlipStitch || Vocabulary.Standard.Find(step.Stitch) is not { Takes: 1 }) return;
        TextSpan understood = new(step.Span.End, 0);
        steps[only] = step with { Where = Placement.EachToEnd(PlaceKind.AnyStitch, understood) };
    }

    private static bool IsWorking(Step step) => step is not (ChainStep or TurnStep or DoNotTurnStep or JoinStep or DoNotJoinStep or FastenOffStep or ColourStep or MarkerStep or RemarkStep);

    private static void ReportLooseStars(ReadingContext context, StepList read)
    {
        foreach (RepeatStar star in read.Stars)
            if (!star.Used && star.Mark == "*") context.Report(ReadingTroubleKind.StarWithoutRepeat, star.Mark, star.Span);
    }

    /// <summary>What an unlabelled line is: a foundation where it makes only chains or a ring, a round where it works into one, else a row.</summary>
    private static RowHeading KindOf(RowHeading heading, List<Step> steps)
    {
        if (heading.Numbering != RowNumbering.None || heading.Text.Length > 0) return heading;
        bool works = steps.Any(step => step is StitchStep or GroupStep or RepeatStep);
        bool ring = steps.Any(step => step is MagicRingStep or JoinStep { FormsRing: true });
        return heading with { Kind = !works ? RowKind.Foundation : ring ? RowKind.Round : RowKind.Row };
    }
}
