using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>Places that need no search along the row below: where the hook is, where this row began, where the round below was joined.</summary>
internal sealed partial class RowWorker
{
    private (Target?, Mishap?) Same(Placement where)
    {
        if (ambient is { } inGroup) return (inGroup, null);
        if (course is null) return (null, null);
        if (at.Last < 0 && loopJustMade is { } loop) return (loop, null);
        if (at.Last < 0) return WhereTheHookIs(where);
        bool space = course.At(at.Last).Kind == CellKind.Chains && at.LastChain < 0;
        if (at.Chain == 0 && at.Position <= at.Last) at = at with { Position = at.Last + 1, InSpace = space };
        return (TargetAt(at.Last, at.LastChain, space, where), null);
    }

    /// <summary>'Attach Green in same space', 'ch 3, dc in same space' at the start of a row: where the row before ended, whatever the words call it.</summary>
    private (Target?, Mishap?) WhereTheHookIs(Placement where)
    {
        bool space = course!.Length > 0 && course.At(0).Kind == CellKind.Chains;
        PlaceKind kind = where.Kind.Noun is PlaceNoun.Space or PlaceNoun.ChainSpace && !space ? PlaceKind.AnyStitch : where.Kind;
        return First(where with { Choice = PlaceChoice.First, Kind = kind });
    }

    /// <summary>'in same space with 1st 2 dc', 'in same sc as beginning': the place that this row's own first stitch stands in. The hook stays where it is.</summary>
    private Mishap? InFirstPlace(Placement where, Func<Target, Mishap?> work) =>
        StartFoot() is { } foot ? Close(where) ?? work(new Target(foot, -1)) : new Mishap(MishapKind.CannotWork, where.Span);

    /// <summary>Where this row began: its first stitch's place, the last slip stitch's that moved the hook there, or where the row below ended.</summary>
    private Foot? StartFoot() => builder.FirstFoot
        ?? (GoesAround && course is { Length: > 0, Turned: false } ? TargetAt(course.Row.Spiral ? course.Length - 1 : joined, -1, false, null).Foot : null);

    /// <summary>The last loop of a round passes over what is left before the place where the round began, if that is no more than a loop's width.</summary>
    private Mishap? Close(Placement where)
    {
        if (!GoesAround || course is null || previous is not ChainStep) return null;
        if (Left().Stitches > WidestLoop) return new Mishap(MishapKind.CannotWork, where.Span);
        closedRound = true;
        at = at with { Position = course.Length, Chain = 0, InSpace = true };
        return null;
    }

    private bool closedRound;

    /// <summary>'tr tr in joining': where the round below was joined, which is where this round began.</summary>
    private bool IsJoiningOfRoundBelow(TextSpan words) =>
        GoesAround && course is { Length: > 0, Turned: false } && builder.Mark > 1 && IsInJoining(words);

    private bool IsInJoining(TextSpan words) => Words(words).Trim().ToLowerInvariant() is "in joining" or "in the joining";

    private Mishap? AtStartOfRoundBelow(Func<Target, Mishap?> work)
    {
        closedRound |= previous is ChainStep;
        at = at with { Position = course!.Length, Chain = 0, InSpace = true };
        return work(TargetAt(joined, -1, course.At(joined).Kind == CellKind.Chains, null));
    }

    /// <summary>'sl st into loop, …, ch 4, tr in sl st': the slip stitch that this round began with.</summary>
    private Target? OwnSlipStitch()
    {
        if (!GoesAround || course is null || course.Find(0, (cell, _) => cell.Kind == CellKind.Stitch && cell.Stitch == StitchId.SlipStitch) >= 0) return null;
        return builder.FirstFoot is { } foot && builder.Has(cell => cell.Kind == CellKind.Join) ? new Target(foot, -1) : null;
    }

    private Mishap? CloseOn(Target made, Func<Target, Mishap?> work)
    {
        closedRound |= previous is ChainStep;
        return work(made);
    }
}
