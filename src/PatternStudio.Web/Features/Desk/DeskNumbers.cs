using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Web.Features.Desk;

/// <summary>What the numbers of the desk are computed from.</summary>
/// <param name="Text">The words as they are now, saved or not.</param>
public sealed record DeskInput(string Text, SwatchDetails? Swatch, YarnDetails? Yarn);

/// <summary>What the desk shows, and of which words.</summary>
public sealed record DeskAnswer(DeskInput Input, Results Results, TermsDecision Terms);

/// <summary>
/// Computes beside the typing. One computation at a time: what is asked meanwhile waits, and of several that wait only the last is done.
/// </summary>
/// <param name="compute">What is done; it must be safe to run on another thread.</param>
public sealed class DeskNumbers(Func<DeskInput, DeskAnswer> compute)
{
    private DeskInput? waiting;
    private bool busy;

    /// <summary>The engine's own computation.</summary>
    public static DeskAnswer Compute(DeskInput input) =>
        new(input, DesignResults.Compute(input.Text, input.Swatch, input.Yarn), PatternReader.Read(input.Text).Terms);

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
