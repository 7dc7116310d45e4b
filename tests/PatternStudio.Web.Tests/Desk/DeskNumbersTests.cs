using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Features.Desk;

namespace PatternStudio.Web.Tests.Desk;

public sealed class DeskNumbersTests
{
    private readonly List<string> found = [], answered = [];

    [Fact]
    public async Task Of_what_is_typed_while_a_check_runs_only_the_latest_is_checked()
    {
        using var go = new SemaphoreSlim(0);
        var begun = new TaskCompletionSource();
        var numbers = new DeskNumbers(input =>
        {
            begun.TrySetResult();
            go.Wait();
            return Found(input);
        }, Answer);

        Task first = numbers.AskAsync(Words("Row 1"), FindAsync, NoteAsync);
        await begun.Task;
        await numbers.AskAsync(Words("Row 1: S"), FindAsync, NoteAsync);
        await numbers.AskAsync(Words("Row 1: Sc"), FindAsync, NoteAsync);
        go.Release(3);
        await first;

        Assert.Equal(["Row 1", "Row 1: Sc"], found);
        Assert.Equal(["Row 1: Sc"], answered);
    }

    [Fact]
    public async Task What_is_found_is_told_before_the_numbers_are_computed()
    {
        int toldBefore = 0;
        var numbers = new DeskNumbers(Found, first =>
        {
            toldBefore = found.Count;
            return Answer(first);
        });

        await numbers.AskAsync(Words("Row 1: Sc"), FindAsync, NoteAsync);

        Assert.Equal(1, toldBefore);
        Assert.Equal(["Row 1: Sc"], answered);
    }

    [Fact]
    public void Fixes_are_offered_once_they_are_proven()
    {
        // Row 2 states 21 of 20 stitches, and Row 3 is worked into 20.
        DeskFindings first = DeskNumbers.Find(Words("Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRow 2: Ch 1, turn, sc in each sc across. (21 sc)\nRow 3: Ch 1, turn, sc in each sc across. (20 sc)"));
        DeskAnswer then = DeskNumbers.Compute(first);

        Assert.Null(Assert.Single(first.Findings).Finding.Fix);
        Assert.Equal("20", Assert.Single(then.Results.Findings).Finding.Fix?.NewText);
    }

    [Fact]
    public async Task After_a_check_that_failed_the_next_one_runs()
    {
        var numbers = new DeskNumbers(input => input.Text == "bad" ? throw new InvalidOperationException() : Found(input), Answer);

        await Assert.ThrowsAsync<InvalidOperationException>(() => numbers.AskAsync(Words("bad"), FindAsync, NoteAsync));
        await numbers.AskAsync(Words("good"), FindAsync, NoteAsync);

        Assert.Equal(["good"], answered);
    }

    private static DeskInput Words(string text) => new(text, DesignMaterials.None);

    private static DeskFindings Found(DeskInput input) => new(input, PatternCheck.Find(input.Text), [], []);

    private static DeskAnswer Answer(DeskFindings first) =>
        new(first.Input, new Results("1", "US", [], [Rows.Size([])]), new TermsDecision(Terminology.Us, TermsOrigin.Assumed, 0.5, []));

    private Task FindAsync(DeskFindings first)
    {
        found.Add(first.Input.Text);
        return Task.CompletedTask;
    }

    private Task NoteAsync(DeskAnswer answer)
    {
        answered.Add(answer.Input.Text);
        return Task.CompletedTask;
    }
}
