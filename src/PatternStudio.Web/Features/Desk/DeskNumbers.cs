using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Web.Features.Desk;

/// <summary>What the numbers of the desk are computed from.</summary>
/// <param name="Text">The words as they are now, saved or not.</param>
public sealed record DeskInput(string Text, DesignMaterials Materials);

/// <summary>What was found in the words: ready before the numbers are. Its findings offer no fixes yet.</summary>
/// <param name="Pattern">The words as read and worked.</param>
/// <param name="Folds">What can be folded away in the words.</param>
public sealed record DeskFindings(DeskInput Input, CheckedPattern Pattern, IReadOnlyList<LocatedFinding> Findings, IReadOnlyList<LineFold> Folds);

/// <summary>What the desk shows, and of which words.</summary>
public sealed record DeskAnswer(DeskInput Input, Results Results, TermsDecision Terms)
{
    /// <summary>The schedule of each size as the engine gives it, to be taken along.</summary>
    public IReadOnlyList<Measured<RowSchedule>> Schedules { get; init; } = [];

    /// <summary>The words as read and worked, to be drawn from; null in tests of the numbers alone.</summary>
    public CheckedPattern? Pattern { get; init; }

    /// <summary>What can be folded away in the words.</summary>
    public IReadOnlyList<LineFold> Folds { get; init; } = [];
}

/// <summary>
/// Computes beside the typing, in two steps: what is found is told first, the numbers and the proofs of fixes follow. One computation at a time: what is asked meanwhile waits, of several
/// that wait only the last is done, and numbers of words that are no longer the latest are left out.
/// </summary>
/// <param name="find">The first step; it must be safe to run on another thread.</param>
/// <param name="compute">The second; the same holds.</param>
public sealed class DeskNumbers(Func<DeskInput, DeskFindings> find, Func<DeskFindings, DeskAnswer> compute)
{
    private DeskInput? waiting;
    private bool busy;

    /// <summary>The engine's own check.</summary>
    public static DeskFindings Find(DeskInput input)
    {
        CheckedPattern pattern = PatternCheck.Find(input.Text);
        return new(input, pattern, DesignResults.FindingsOf(pattern), LineFold.Of(pattern.Pattern));
    }

    /// <summary>The engine's own computation.</summary>
    public static DeskAnswer Compute(DeskFindings found)
    {
        Reckoned reckoned = DesignResults.Reckon(PatternCheck.Prove(found.Pattern), found.Input.Materials);
        return new(found.Input, reckoned.Results, reckoned.Pattern.Pattern.Terms) { Schedules = reckoned.Schedules, Pattern = reckoned.Pattern, Folds = found.Folds };
    }

    /// <summary>Asks for what is found in an input, and its numbers.</summary>
    /// <param name="foundFirst">Called with what was found, before the numbers are computed.</param>
    /// <param name="answered">Called with each answer, in the order asked. Both are to be called from one thread only (the page's).</param>
    public async Task AskAsync(DeskInput input, Func<DeskFindings, Task> foundFirst, Func<DeskAnswer, Task> answered)
    {
        waiting = input;
        if (busy) return;
        busy = true;
        try
        {
            while (waiting is { } next)
            {
                waiting = null;
                DeskFindings found = await Task.Run(() => find(next));
                await foundFirst(found);
                if (waiting is null) await answered(await Task.Run(() => compute(found)));
            }
        }
        finally
        {
            busy = false;
        }
    }
}
