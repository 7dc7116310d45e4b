using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>The steps read so far at one level, and the repeat marks among them.</summary>
internal sealed class StepList
{
    private readonly List<Step> steps = [];
    private readonly List<RepeatStar> stars = [];

    public int Count => steps.Count;

    public Step? Last => steps.Count > 0 ? steps[^1] : null;

    public IReadOnlyList<Step> Steps => steps;

    public EquatableArray<Step> ToArray() => From(0);

    public void Add(Step step) => steps.Add(step);

    public void ReplaceLast(Step step) => steps[^1] = step;

    public void Replace(int index, Step step) => steps[index] = step;

    /// <summary>Replaces the steps from an index on by one.</summary>
    public void Wrap(int from, Step step)
    {
        steps.RemoveRange(from, steps.Count - from);
        steps.Add(step);
        stars.RemoveAll(star => star.At > from);
    }

    /// <summary>Copies the steps from an index on; counts among them are remarks there.</summary>
    public EquatableArray<Step> From(int from) => steps.Skip(from).Select(AsRemark).ToEquatableArray();

    private static Step AsRemark(Step step) => step is CountedSoFar counted ? new RemarkStep(counted.Count.Text, counted.Span) : step;

    /// <summary>Marks a star here.</summary>
    public void Mark(string mark, TextSpan span) => stars.Add(new RepeatStar(mark, steps.Count, span));

    /// <summary>How often words without a star have repeated the whole so far.</summary>
    public int WholeRepeats { get; set; }

    /// <summary>The stars of this level in order, those used up included.</summary>
    public IReadOnlyList<RepeatStar> Stars => stars;

    /// <summary>True where a star stands before the step of that index.</summary>
    public bool HasStarAt(int index)
    {
        foreach (RepeatStar star in stars)
            if (star.At == index) return true;
        return false;
    }

    public void Use(RepeatStar star)
    {
        int index = stars.IndexOf(star);
        if (index >= 0) stars[index] = star with { Used = true, Uses = star.Uses + 1 };
    }

    /// <summary>Records where the last repeat stops: '**' inside '*…**…; rep from *, ending last rep at **'.</summary>
    public void MarkStop() => Stop = steps.Count;

    /// <summary>Where a stop mark stands; -1 for nowhere.</summary>
    public int Stop { get; private set; } = -1;
}

/// <summary>A star: its mark, the step it stands before, and whether a repeat has used it.</summary>
internal sealed record RepeatStar(string Mark, int At, TextSpan Span, bool Used = false, int Uses = 0);
