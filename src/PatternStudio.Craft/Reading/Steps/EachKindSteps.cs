using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>
/// 'FPdc around each FPdc and BPdc around each BPdc', 'dc in each dc and 2 dc in each ch-1 sp around': not all of one kind and then all of the other, but each as it comes.
/// </summary>
internal static class EachKindSteps
{
    /// <summary>Makes one of the last two steps, where each is worked into every place of another kind.</summary>
    public static void Join(StepList steps)
    {
        if (steps.Count < 2 || PlaceOf(steps.Steps[^2]) is not { Extent: null } first || PlaceOf(steps.Steps[^1]) is not { } second || first.Kind == second.Kind) return;
        TextSpan span = steps.Steps[^2].Span.Through(steps.Steps[^1].Span);
        var either = new EitherStep(AtNext(steps.Steps[^2], first), AtNext(steps.Steps[^1], second), span);
        Extent extent = second.Extent ?? new Extent(ExtentKind.ToEnd, new TextSpan(span.End, 0));
        steps.Wrap(steps.Count - 2, new RepeatStep([either], extent, RepeatMark.Brackets, span));
    }

    /// <summary>The place of a step that is worked into each of one kind; null for other steps.</summary>
    private static Placement? PlaceOf(Step step) => (step as StitchStep)?.Where is { } where ? OfOneKind(where) : (step as GroupStep)?.Where is { } shared ? OfOneKind(shared) : null;

    private static Placement? OfOneKind(Placement where) =>
        where is { Choice: PlaceChoice.Each, Count: null, EveryNth: null, And: null, Further: null, Kind.Noun: PlaceNoun.Stitch or PlaceNoun.ChainSpace or PlaceNoun.Space or PlaceNoun.Group or PlaceNoun.Corner } ? where : null;

    private static Step AtNext(Step step, Placement where)
    {
        Placement next = where with { Choice = PlaceChoice.Next, Extent = null };
        return step is StitchStep stitch ? stitch with { Where = next } : ((GroupStep)step) with { Where = next };
    }
}
