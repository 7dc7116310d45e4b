using PatternStudio.Craft.Reading.Tokens;
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
        if (steps.Count < 2 || PlaceOf(steps.Steps[^1]) is not { } second) return;
        TextSpan span = steps.Steps[^2].Span.Through(steps.Steps[^1].Span);
        if (BeforeAnother(steps.Steps[^2], second) is not { } before) return;
        var either = new EitherStep(before, AtNext(steps.Steps[^1], second), span);
        steps.Wrap(steps.Count - 2, new RepeatStep([either], second.Extent ?? new Extent(ExtentKind.ToEnd, new TextSpan(span.End, 0)), RepeatMark.Brackets, span));
    }

    /// <summary>The step before, or the two joined already, as one that is worked wherever its place comes next; null where it goes together with no other.</summary>
    private static Step? BeforeAnother(Step step, Placement second)
    {
        if (step is RepeatStep { Mark: RepeatMark.Brackets, Extent: { Kind: ExtentKind.ToEnd, Span.Length: 0 }, Steps: [EitherStep joined] }) return joined;
        if (PlaceOf(step) is not { Extent: null } first || first.Kind == second.Kind) return null;
        bool anyStitch = first.Kind.Noun == PlaceNoun.AnyStitch && second.Kind.Noun is not (PlaceNoun.ChainSpace or PlaceNoun.Space or PlaceNoun.Corner);
        return anyStitch ? null : AtNext(step, first);
    }

    /// <summary>'dc in each dc around, working (2 dc, ch 2, 2 dc) in each corner sp': what is worked in the corners is told behind.</summary>
    public static bool ReadExceptions(Cursor cursor, StepList steps)
    {
        if (cursor.Now.Word is not ("work" or "make" or "with") || steps.Last is not { } plain || PlaceOf(plain) is not { Extent.Kind: ExtentKind.ToEnd } each) return false;
        int from = cursor.At++;
        var read = new StepList();
        if (StepReader.ReadNext(cursor, read) && read.Steps is [var exception] && PlaceOf(exception) is { Extent: null } place && place.Kind != each.Kind && place.Kind.Noun != PlaceNoun.AnyStitch)
        {
            TextSpan span = plain.Span.Through(cursor.SpanFrom(from));
            steps.Wrap(steps.Count - 1, new RepeatStep([new EitherStep(AtNext(exception, place), AtNext(plain, each), span)], each.Extent, RepeatMark.Brackets, span));
            return true;
        }
        cursor.At = from;
        return false;
    }

    /// <summary>The place of a step that is worked into each of one kind; null for other steps. Chains 'between' join more than two steps: the whole row tells those.</summary>
    private static Placement? PlaceOf(Step step) => step is StitchStep { ChainsBetween: not null } ? null : (step as StitchStep)?.Where is { } where ? OfOneKind(where) : (step as GroupStep)?.Where is { } shared ? OfOneKind(shared) : null;

    private static Placement? OfOneKind(Placement where) =>
        where is { Choice: PlaceChoice.Each, Count: null, EveryNth: null, And: null, Further: null, Kind.Noun: PlaceNoun.AnyStitch or PlaceNoun.Stitch or PlaceNoun.ChainSpace or PlaceNoun.Space or PlaceNoun.Group or PlaceNoun.Corner } ? where : null;

    private static Step AtNext(Step step, Placement where)
    {
        Placement next = where with { Choice = PlaceChoice.Next, Extent = null };
        return step is StitchStep stitch ? stitch with { Where = next } : ((GroupStep)step) with { Where = next };
    }
}
