using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>
/// Rows back and forth told in one row's words: '10 sc, *ch 5, turn, sk 2 sc, 8 sc; rep from * 6 times' of a leaf. Each part up to a 'turn' is a row of its own, which may leave the end of the
/// row before it unworked.
/// </summary>
internal static class TurnedRows
{
    private const int MostParts = 400;

    /// <summary>The rows; null where the words turn nowhere in their middle.</summary>
    public static IReadOnlyList<EquatableArray<Step>>? Split(EquatableArray<Step> steps, WorkContext context)
    {
        if (!TurnsInside(steps)) return null;
        var all = new List<Step>();
        if (!Unfold(steps, all, context)) return null;
        var parts = new List<EquatableArray<Step>>();
        int start = 0;
        for (int i = 0; i < all.Count; i++)
        {
            if (all[i] is not TurnStep) continue;
            if (!all.Skip(start).Take(i - start).Any(IsWork))
            {
                if (start == 0) continue;
                // Turned twice with nothing between: which of the two is meant is not said.
                parts.Add([new UncountedStep("turn", UncountedReason.Likewise, all[i].Span), .. all.Skip(i)]);
                return parts;
            }
            parts.Add(Short(all.GetRange(start, i + 1 - start)));
            start = i + 1;
        }
        if (all.Skip(start).Any(IsWork)) parts.Add(Short(all.GetRange(start, all.Count - start)));
        else if (parts.Count > 0) parts[^1] = [.. parts[^1], .. all.Skip(start)];
        return parts.Count is > 1 and <= MostParts ? parts : null;
    }

    private static bool TurnsInside(EquatableArray<Step> steps)
    {
        if (steps.Any(step => step is RepeatStep { Extent.Kind: ExtentKind.Times } repeat && repeat.Steps.Any(inner => inner is TurnStep))) return true;
        int turn = steps.ToList().FindIndex(step => step is TurnStep), first = steps.ToList().FindIndex(IsWork);
        for (; turn >= 0 && turn < steps.Count; turn++)
            if (steps[turn] is TurnStep && first >= 0 && first < turn && steps.Skip(turn).Any(IsWork)) return true;
        return false;
    }

    /// <summary>Writes repeats that turn out, turn by turn; false where one can't be, or a round is joined on the way.</summary>
    private static bool Unfold(EquatableArray<Step> steps, List<Step> all, WorkContext context)
    {
        foreach (Step step in steps)
        {
            if (step is UnreadStep or JoinStep or AsRowStep || all.Count > MostParts * 8) return false;
            if (step is not RepeatStep repeat || !repeat.Steps.Any(inner => inner is TurnStep))
            {
                all.Add(step);
                continue;
            }
            if (repeat is not { Extent.Kind: ExtentKind.Times, LastStopsAfter: null, Ending.IsEmpty: true } || context.Number(repeat.Extent.Count) is not (> 0 and < 100 and var times)) return false;
            for (int i = 0; i < times; i++) all.AddRange(repeat.Steps);
        }
        return true;
    }

    /// <summary>The part as a row that may stop before the end; the chain of its turn stays at its end.</summary>
    private static EquatableArray<Step> Short(List<Step> part)
    {
        int end = part.FindLastIndex(IsWork) + 1;
        part.Insert(end, new LeaveUnworkedStep(null, PlaceKind.AnyStitch, part[end - 1].Span));
        return part.ToEquatableArray();
    }

    private static bool IsWork(Step step) => step is StitchStep or GroupStep or RepeatStep;
}
