using System.Globalization;
using System.Text.RegularExpressions;
using PatternStudio.Craft.Anatomy;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>Hook motions told in the row, without a name: the loops on the hook show where a stitch ends, and the words at each insertion where it stands.</summary>
internal sealed partial class RowWorker
{
    private readonly List<Foot> legs = [];
    private int loops = 1;
    private int yarnOvers;
    private int drawnByTwos;

    /// <summary>'Wool over, insert hook in 3rd stitch of 1st row, draw a loop through, (over, draw through 2) twice': one stitch for each time that one loop remains.</summary>
    private Mishap? WorkMotions(MotionsStep step)
    {
        if (IsDropLoopJoin(step)) return Fasten(step.Span);
        if (step.Motions is not { IsWhole: true } told) return new Mishap(MishapKind.CannotWork, step.Span);
        foreach (LocatedMotion located in told.Motions)
            if (WorkMotion(located, step.Span) is { } mishap) return mishap;
        return loops == 1 && legs.Count == 0 ? null : new Mishap(MishapKind.CannotWork, step.Span);
    }

    private Mishap? WorkMotion(LocatedMotion located, TextSpan words)
    {
        switch (located.Motion)
        {
            case YarnOver over:
                loops += over.Times;
                yarnOvers += over.Times;
                return null;
            case Insert:
                return FootAt(located.Span) is { } place ? AtEach(place, default, AddLeg) : LegFurtherDown(located.Span);
            case DrawUpLoop:
                loops++;
                return null;
            case LengthenLoop or StatedLoops:
                return null;
            case DrawThrough through when through.Loops is not { } some || some <= loops:
                if (through.Loops == 2) drawnByTwos++;
                loops = through.Loops is { } drawn ? loops - drawn + 1 : 1;
                return loops == 1 ? FinishStitch(words) : null;
            default:
                return new Mishap(MishapKind.CannotWork, located.Span);
        }
    }

    private Mishap? AddLeg(Target target)
    {
        legs.Add(target.Foot);
        return null;
    }

    /// <summary>Where the words put the hook; null for a place in a row further down.</summary>
    private Placement? FootAt(TextSpan span)
    {
        string words = Words(span).ToLowerInvariant();
        if (FurtherDown().IsMatch(words)) return null;
        if (FromHook().Match(words) is { Success: true } hook) return new Placement(PlaceChoice.FromHook, PlaceKind.Chain, span) { Ordinal = int.Parse(hook.Groups[1].Value, CultureInfo.InvariantCulture) };
        PlaceKind kind = words.Contains("space", StringComparison.Ordinal) || words.Contains("loop of", StringComparison.Ordinal) ? PlaceKind.Space : PlaceKind.AnyStitch;
        if (words.Contains("ring", StringComparison.Ordinal)) return InRing(span);
        PlaceChoice choice = words.Contains("same", StringComparison.Ordinal) ? PlaceChoice.Same
            : First().IsMatch(words) && builder.IsEmpty ? PlaceChoice.First : PlaceChoice.Next;
        return new Placement(choice, kind, span);
    }

    /// <summary>'In 3rd stitch of 1st row': straight down from the place that the stitch covers, which the words skip themselves.</summary>
    private Mishap? LegFurtherDown(TextSpan span)
    {
        if (course is null || at.Position >= course.Length || next is not SkipStep) return new Mishap(MishapKind.CannotWork, span);
        int row = int.Parse(FurtherDown().Match(Words(span).ToLowerInvariant()).Groups[1].Value, CultureInfo.InvariantCulture);
        int down = course.Row.Number - row;
        if (down < 1) return new Mishap(MishapKind.CannotWork, span);
        legs.Add(Lower(TargetAt(at.Position, -1, false, null).Foot, down));
        return null;
    }

    private Mishap? FinishStitch(TextSpan words)
    {
        if (legs.Count == 0) return new Mishap(MishapKind.CannotWork, words);
        Emit(new Cell(CellKind.Stitch, StitchMade(), 0, legs.ToEquatableArray(), true, words));
        legs.Clear();
        (yarnOvers, drawnByTwos) = (0, 0);
        return null;
    }

    /// <summary>One leg worked off by twos is a plain stitch of its height; what has several legs, or is drawn through at once, is a cluster.</summary>
    private StitchId StitchMade() => (legs.Count, yarnOvers, drawnByTwos) switch
    {
        (1, 0, 0 or 1) => StitchId.Single,
        (1, 1, 0) => StitchId.HalfDouble,
        (1, 1, 2) => StitchId.Double,
        (1, 2, 3) => StitchId.Treble,
        _ => new StitchId("cluster"),
    };

    [GeneratedRegex(@"\bof (?:the )?([0-9]{1,3})(?:st|nd|rd|d|th) (?:row|round)\b")]
    private static partial Regex FurtherDown();

    [GeneratedRegex(@"\b([0-9]{1,2})(?:st|nd|rd|d|th) .*from (?:the )?(?:hook|needle)\b")]
    private static partial Regex FromHook();

    [GeneratedRegex(@"\b(?:1st|first)\b")]
    private static partial Regex First();
}
