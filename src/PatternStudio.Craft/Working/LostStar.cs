using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>
/// A row that repeats from a star that was lost in print. The row itself stays unread; but where one place only lets it come out, a crocheter goes on from there, and
/// so do the rows above.
/// </summary>
internal static class LostStar
{
    /// <summary>A star marks a passage: one stitch repeated is told as 'in each of next 4'.</summary>
    private const int ShortestPassage = 2;

    /// <summary>The row with the star in each place where it may have stood; none where anything else in it can't be read, or more than one star is lost.</summary>
    public static IEnumerable<EquatableArray<Step>> Readings(EquatableArray<Step> steps)
    {
        int lost = 0;
        foreach (Step step in steps)
            if (Unread(step) is var unread and > 0)
            {
                if (unread > 1 || !IsLost(step)) yield break;
                lost++;
            }
        if (lost != 1) yield break;
        for (int i = 0; i < steps.Count; i++)
        {
            if (steps[i] is UnreadStep { LostStar: { } extent } words)
                for (int from = i - ShortestPassage; from >= 0; from--)
                    yield return [.. steps.Take(from), new RepeatStep(steps.Skip(from).Take(i - from).ToEquatableArray(), extent, RepeatMark.Star, TextSpan.FromTo(steps[from].Span.Start, words.Span.End)), .. steps.Skip(i + 1)];
            if (steps[i] is RepeatStep repeat)
                foreach (EquatableArray<Step> inner in Readings(repeat.Steps))
                    yield return [.. steps.Take(i), repeat with { Steps = inner }, .. steps.Skip(i + 1)];
        }
    }

    private static bool IsLost(Step step) => step is UnreadStep { LostStar: { Kind: ExtentKind.Times } } || step is RepeatStep repeat && repeat.Steps.Any(IsLost);

    private static int Unread(Step step) => step switch
    {
        UnreadStep => 1,
        GroupStep group => group.Steps.Sum(Unread),
        RepeatStep repeat => repeat.Steps.Sum(Unread) + repeat.Ending.Sum(Unread),
        _ => 0,
    };
}
