using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>Yarn attached: where the row then begins.</summary>
internal sealed partial class RowWorker
{
    private Mishap? Attach(AttachStep step, EquatableArray<Step> all, int index)
    {
        if (step.Colour is not null) at = at with { Colour = step.Colour };
        if (step.Where is null) return null;
        if (course is null) return new Mishap(MishapKind.CannotWork, step.Span);
        Placement place = step.Where;
        if (place.Further is { } words && IsUniformRound && IsAlongTheRound(words)) place = new Placement(PlaceChoice.First, PlaceKind.AnyStitch, place.Span);
        Mishap? mishap = AtEach(place with { Count = null }, default, target =>
        {
            attached = true;
            return null;
        });
        if (mishap is not null) return mishap;
        StartRoundHere();
        if (step.Stitch is not { } stitch || stitch == StitchId.SlipStitch)
        {
            FreeAttachedPlace(all, index);
            return null;
        }
        opened = true;
        return WorkInto(new StitchStep(stitch, null, null, null, step.Span), context.Traits(stitch), 1, TargetAt(at.Last, at.LastChain, at.InSpace, null));
    }

    /// <summary>
    /// Yarn attached without a stitch leaves its place free: 'attach B in any sp, 2 sc in each sp around' begins there; 'attach B in any sp, *ch 5, sc in next sp; rep from * around' comes
    /// back to it with its last stitch.
    /// </summary>
    private void FreeAttachedPlace(EquatableArray<Step> all, int index)
    {
        if (at.Last < 0 || index + 1 >= all.Count) return;
        Step behind = all[index + 1];
        bool begins = behind is StitchStep { Where: { Choice: PlaceChoice.Each, Count: null } } or GroupStep { Where: { Choice: PlaceChoice.Each, Count: null } };
        if (behind is RepeatStep { Extent.Kind: not ExtentKind.Times } repeat)
        {
            begins = repeat.Steps.FirstOrDefault(step => step is not (RemarkStep or ColourStep)) is StitchStep { Where: null or { Choice: PlaceChoice.Next or PlaceChoice.Each } } or GroupStep { Where.Choice: PlaceChoice.Next };
            bool closesAlone = repeat is { LastStopsAfter: null, Ending.IsEmpty: true, Steps: [ChainStep, .., StitchStep or GroupStep] } && !context.Says(repeat.Span, "correspond") && !(index + 2 < all.Count && all[index + 2] is ChainStep);
            if (closesAlone && GoesAround && course!.Length > 1)
            {
                Meet(course.StartingAt(at.Last + 1));
                at = at with { Position = 0, Chain = 0, Last = course.Length - 1 };
                comesBack = true;
            }
        }
        if (begins) at = at with { Position = at.Last };
    }

    /// <summary>True where the last stitch of the round may stand in the place that the yarn was attached to.</summary>
    private bool comesBack;

    /// <summary>'in any st on side', 'in 8th st to right of center': words of this round; 'in joining of the motifs' are not.</summary>
    private bool IsAlongTheRound(TextSpan words) =>
        Words(words).ToLowerInvariant() is var text && (text.Contains("side", StringComparison.Ordinal) || text.Contains("center", StringComparison.Ordinal) || text.Contains("right", StringComparison.Ordinal))
        && !text.Contains("motif", StringComparison.Ordinal) && !text.Contains("join", StringComparison.Ordinal) && !text.Contains("corner", StringComparison.Ordinal);

    /// <summary>A round of one kind of stitch is the same from wherever it is begun: 'attach Green in any st on side'.</summary>
    private bool IsUniformRound => GoesAround && course is { Row.Joined: true } && new Tally(course.Row.Runs, context.Conventions) is { OnlyKind: not null, SpaceCount: 0 };
}
