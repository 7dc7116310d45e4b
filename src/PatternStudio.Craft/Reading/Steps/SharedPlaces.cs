using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>
/// A list that shares the place named at its end: '1 s c, 5 d c, 1 s c in next loop', '2 dc, ch 2, 2 dc in corner sp' is one group in one
/// place. 'sc in next st, ch 1, sc in next st' is not: there each stitch has a place.
/// </summary>
internal static class SharedPlaces
{
    /// <summary>Groups the end of the list where its last step, just read, names the place of those before it.</summary>
    public static void Group(ReadingContext context, StepList steps)
    {
        if (steps.Last is not StitchStep { Where: { } where } last || !IsOnePlace(where) || last.Stitch == StitchId.SlipStitch) return;
        int first = FirstOfList(context, steps);
        if (first < 0 || !ReadsAsGroup(context, steps, first, last) || IsIncrease(steps, first, last)) return;
        List<Step> members = [.. steps.From(first).Select(step => step is StitchStep stitch ? LoopChoices.WithoutUnderstood(stitch) : step)];
        members[^1] = WithoutPlace(last);
        bool inTurn = where is { Choice: PlaceChoice.Next, Kind.Noun: PlaceNoun.AnyStitch or PlaceNoun.Stitch } && members.All(step => step is StitchStep);
        steps.Wrap(first, new GroupStep(members.ToEquatableArray(), where, TextSpan.FromTo(members[0].Span.Start, last.Span.End)) { MayBeInTurn = inTurn });
    }

    /// <summary>'3 dc, ch 1, 3 dc (shell) in next loop': the list before the bracket is what the name stands for. False where no such list stands before it.</summary>
    public static bool GroupNamed(ReadingContext context, StepList steps, StitchId name, Placement where)
    {
        if (steps.Last is not StitchStep { Where: null, Count: { } count } last || last.Stitch == name) return false;
        steps.ReplaceLast(last with { Where = where, PerPlace = count, Count = null, Span = TextSpan.FromTo(last.Span.Start, where.Span.End) });
        Group(context, steps);
        GroupStep group = steps.Last as GroupStep ?? new GroupStep([last], where, steps.Last!.Span);
        steps.ReplaceLast(group with { Named = name });
        return true;
    }

    private static bool IsOnePlace(Placement where) =>
        where.And is null && where.Choice is PlaceChoice.Next or PlaceChoice.Same or PlaceChoice.First or PlaceChoice.Last or PlaceChoice.Nth or PlaceChoice.FromHook
            or PlaceChoice.InRing or PlaceChoice.Centre or PlaceChoice.Between or PlaceChoice.Each or PlaceChoice.TurningChainTop or PlaceChoice.TurningChainSpace
        && (where.Count is null || where.Choice is PlaceChoice.Each or PlaceChoice.Between);

    /// <summary>The first step of the list that ends at the last step; -1 where there is no list.</summary>
    private static int FirstOfList(ReadingContext context, StepList steps)
    {
        int first = -1;
        for (int i = steps.Count - 2; i >= 0; i--)
        {
            if (!BelongsToList(steps.Steps[i]) || IsParted(context, steps.Steps[i], steps.Steps[i + 1]) || steps.HasStarAt(i + 1)) break;
            if (steps.Steps[i] is StitchStep { Stitch.Value: not "picot" }) first = i;
        }
        return first;
    }

    private static bool BelongsToList(Step step) => (step is StitchStep given ? LoopChoices.WithoutUnderstood(given) : step) switch
    {
        StitchStep { Where: null } stitch => !ReadingContext.IsIncreaseOrDecrease(stitch.Stitch) && (stitch.Count is null || NumberFirst(stitch)),
        ChainStep { Role: ChainRole.Unstated } => true,
        _ => false,
    };

    private static bool NumberFirst(StitchStep step) => step.Count is { } count && count.Span.End < step.Span.End;

    private static bool IsParted(ReadingContext context, Step before, Step after)
    {
        string between = context.Source.Content[before.Span.End..Math.Max(before.Span.End, after.Span.Start)];
        return between.AsSpan().ContainsAny([';', '.', ':']);
    }

    /// <summary>A list of bare stitches may be stitches in their turn; a number before a stitch, chains between, or 'same st' make a group of it.</summary>
    private static bool ReadsAsGroup(ReadingContext context, StepList steps, int first, StitchStep last)
    {
        for (int i = first; i < steps.Count - 1; i++)
            if (steps.Steps[i] is ChainStep || HasNumber(steps.Steps[i]))
                return last.Where!.Count is null || HasNumber(steps.Steps[first]);
        return last.Where!.Choice == PlaceChoice.Same || JoinedByAnd(context, steps, first);
    }

    /// <summary>'1 hdc, 2 hdc in next st': nobody says three of a kind in one place so; the place is the last one's alone.</summary>
    private static bool IsIncrease(StepList steps, int first, StitchStep last) =>
        last.Where is { Choice: PlaceChoice.Next, Kind.Noun: PlaceNoun.AnyStitch or PlaceNoun.Stitch }
        && steps.Steps.Skip(first).All(step => step is StitchStep stitch && stitch.Stitch == last.Stitch);

    private static bool HasNumber(Step step) => step is StitchStep stitch && LoopChoices.WithoutUnderstood(stitch).Count is not null;

    private static bool JoinedByAnd(ReadingContext context, StepList steps, int first)
    {
        for (int i = first; i < steps.Count - 1; i++)
        {
            string between = context.Source.Content[steps.Steps[i].Span.End..Math.Max(steps.Steps[i].Span.End, steps.Steps[i + 1].Span.Start)];
            if (between.Contains("and", StringComparison.OrdinalIgnoreCase)) return true;
        }
        return false;
    }

    /// <summary>The last stitch as a member: its number is how many go into the group's place.</summary>
    private static StitchStep WithoutPlace(StitchStep last)
    {
        var span = TextSpan.FromTo(last.Span.Start, last.Where!.Span.Start);
        return last.PerPlace is { Span.Length: > 0 } number
            ? last with { Where = null, Count = number, PerPlace = null, Span = span }
            : last with { Where = null, Span = span };
    }
}
