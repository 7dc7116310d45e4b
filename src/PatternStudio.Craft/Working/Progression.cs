using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>
/// Two rows told alike but for one number: 'a double in each of 2 doubles, 2 in next' and 'a double in each of 3 doubles, 2 in next'. Rows that go on in the same
/// way have the next numbers there.
/// </summary>
/// <param name="Steps">The later row's words.</param>
/// <param name="Number">Its number there.</param>
/// <param name="Growth">How much more that is than in the row before it.</param>
internal sealed record Progression(EquatableArray<Step> Steps, int Number, int Growth)
{
    /// <summary>How two rows go on; null where they differ in more than one number, or in none.</summary>
    public static Progression? Of(EquatableArray<Step> before, EquatableArray<Step> after, Func<SizedNumber?, int?> value)
    {
        var numbers = new List<(int Before, int After)>();
        if (!AreAlike(before, after, value, numbers)) return null;
        var grown = numbers.Where(pair => pair.Before != pair.After).ToList();
        return grown is [var one] && one.After > one.Before ? new Progression(after, one.After, one.After - one.Before) { Index = numbers.IndexOf(one) } : null;
    }

    /// <summary>Which of the row's numbers grows, in the order of its words.</summary>
    private int Index { get; init; }

    /// <summary>The row's words with another number in that place.</summary>
    public EquatableArray<Step> With(int number)
    {
        int met = 0;
        return With(Steps, number, ref met);
    }

    private EquatableArray<Step> With(EquatableArray<Step> steps, int number, ref int met)
    {
        var changed = new List<Step>(steps.Count);
        foreach (Step step in steps)
            changed.Add(step switch
            {
                StitchStep stitch => stitch with
                {
                    PerPlace = Next(stitch.PerPlace, number, ref met),
                    Count = Next(stitch.Count, number, ref met),
                    Where = stitch.Where is { } where ? where with { Count = Next(where.Count, number, ref met) } : null,
                },
                ChainStep chain => chain with { Count = Next(chain.Count, number, ref met)! },
                SkipStep skip => skip with { Count = Next(skip.Count, number, ref met)! },
                RepeatStep repeat => repeat with { Steps = With(repeat.Steps, number, ref met) },
                _ => step,
            });
        return changed.ToEquatableArray();
    }

    private SizedNumber? Next(SizedNumber? told, int number, ref int met) =>
        told is null ? null : met++ == Index ? SizedNumber.Of(number, told.Span) : told;

    private static bool AreAlike(EquatableArray<Step> before, EquatableArray<Step> after, Func<SizedNumber?, int?> value, List<(int, int)> numbers)
    {
        if (before.Count != after.Count) return false;
        for (int i = 0; i < before.Count; i++)
            if (!IsAlike(before[i], after[i], value, numbers)) return false;
        return true;
    }

    private static bool IsAlike(Step before, Step after, Func<SizedNumber?, int?> value, List<(int, int)> numbers)
    {
        bool Pair(SizedNumber? one, SizedNumber? other)
        {
            if (one is null || other is null) return one is null && other is null;
            if (value(one) is not { } a || value(other) is not { } b) return false;
            numbers.Add((a, b));
            return true;
        }
        return (before, after) switch
        {
            (StitchStep one, StitchStep other) => one.Stitch == other.Stitch && AreSamePlaces(one.Where, other.Where)
                && Pair(one.PerPlace, other.PerPlace) && Pair(one.Count, other.Count) && (one.Where is null || Pair(IsOne(one.Where, other.Where!) ? SizedNumber.Of(1) : one.Where.Count, other.Where!.Count)),
            (ChainStep one, ChainStep other) => Pair(one.Count, other.Count),
            (SkipStep one, SkipStep other) => one.Kind == other.Kind && Pair(one.Count, other.Count),
            (RepeatStep one, RepeatStep other) => one.Extent.Kind == other.Extent.Kind && value(one.Extent.Count) == value(other.Extent.Count)
                && one.Ending.IsEmpty && other.Ending.IsEmpty && AreAlike(one.Steps, other.Steps, value, numbers),
            (TurnStep, TurnStep) or (JoinStep, JoinStep) or (RemarkStep, RemarkStep) => true,
            _ => false,
        };
    }

    /// <summary>'A double in double, …' before 'a double in each of 2 doubles, …'.</summary>
    private static bool IsOne(Placement one, Placement other) => one is { Choice: PlaceChoice.Next, Count: null } && other is { Choice: PlaceChoice.Each, Count: not null };

    private static bool AreSamePlaces(Placement? one, Placement? other) =>
        one is null || other is null ? one is null && other is null : (one.Choice == other.Choice || IsOne(one, other)) && one.Kind == other.Kind && one.Ordinal == other.Ordinal && one.Further is null && other.Further is null && one.And is null && other.And is null;
}
