using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Features.Desk;

namespace PatternStudio.Web.Tests.Desk;

public sealed class DeskNumbersTests
{
    private readonly List<string> answered = [];

    [Fact]
    public async Task Of_what_is_typed_while_a_check_runs_only_the_latest_is_checked()
    {
        using var go = new SemaphoreSlim(0);
        var begun = new TaskCompletionSource();
        var numbers = new DeskNumbers(input =>
        {
            begun.TrySetResult();
            go.Wait();
            return Answer(input);
        });

        Task first = numbers.AskAsync(Words("Row 1"), NoteAsync);
        await begun.Task;
        await numbers.AskAsync(Words("Row 1: S"), NoteAsync);
        await numbers.AskAsync(Words("Row 1: Sc"), NoteAsync);
        go.Release(3);
        await first;

        Assert.Equal(["Row 1", "Row 1: Sc"], answered);
    }

    [Fact]
    public async Task After_a_check_that_failed_the_next_one_runs()
    {
        var numbers = new DeskNumbers(input => input.Text == "bad" ? throw new InvalidOperationException() : Answer(input));

        await Assert.ThrowsAsync<InvalidOperationException>(() => numbers.AskAsync(Words("bad"), NoteAsync));
        await numbers.AskAsync(Words("good"), NoteAsync);

        Assert.Equal(["good"], answered);
    }

    private static DeskInput Words(string text) => new(text, DesignMaterials.None);

    private static DeskAnswer Answer(DeskInput input) =>
        new(input, new Results("1", "US", [], [Rows.Size([])]), new TermsDecision(Terminology.Us, TermsOrigin.Assumed, 0.5, []));

    private Task NoteAsync(DeskAnswer answer)
    {
        answered.Add(answer.Input.Text);
        return Task.CompletedTask;
    }
}
