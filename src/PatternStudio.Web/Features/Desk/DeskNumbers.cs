using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Web.Features.Desk;

/// <summary>What the numbers of the desk are computed from.</summary>
/// <param name="Text">The words as they are now, saved or not.</param>
public sealed record DeskInput(string Text, DesignMaterials Materials);

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
/// Computes beside the typing. One computation at a time: what is asked meanwhile waits, and of several that wait only the last is done.
/// </summary>
/// <param name="compute">What is done; it must be safe to run on another thread.</param>
public sealed class DeskNumbers(Func<DeskInput, DeskAnswer> compute)
{
    private DeskInput? waiting;
    private bool busy;

    /// <summary>The engine's own computation.</summary>
    public static DeskAnswer Compute(DeskInput input)
    {
        Reckoned reckoned = DesignResults.Reckon(input.Text, input.Materials);
        Pattern read = reckoned.Pattern.Pattern;
        return new(input, reckoned.Results, read.Terms) { Schedules = reckoned.Schedules, Pattern = reckoned.Pattern, Folds = LineFold.Of(read) };
    }

    /// <summary>Asks for the numbers of an input.</summary>
    /// <param name="answered">Called with each answer, in the order asked. To be called from one thread only (the page's).</param>
    public async Task AskAsync(DeskInput input, Func<DeskAnswer, Task> answered)
    {
        waiting = input;
        if (busy) return;
        busy = true;
        try
        {
            while (waiting is { } next)
            {
                waiting = null;
                await answered(await Task.Run(() => compute(next)));
            }
        }
        finally
        {
            busy = false;
        }
    }
}
