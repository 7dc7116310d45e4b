using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Designs.Comparing;

namespace PatternStudio.Studio.Tests;

/// <summary>Versions: named, and compared in words and numbers.</summary>
public sealed class ComparingTests
{
    /// <summary>11 chains leave 10 sc; 12 chains leave 11.</summary>
    private const string Narrow = "Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across. (10 sc)\nRow 2: Ch 1, turn, sc in each sc across. (10 sc)\nFasten off.";

    private const string Wide = "Ch 12.\nRow 1: Sc in 2nd ch from hook and in each ch across. (11 sc)\nRow 2: Ch 1, turn, sc in each sc across. (11 sc)\nRow 3: Ch 1, turn, sc in each sc across. (11 sc)\nFasten off.";

    [Fact]
    public void Words_are_compared_row_by_row_and_word_by_word()
    {
        IReadOnlyList<ComparedLine> lines = WordsComparison.Between(Narrow, Wide);

        Assert.Equal([LineFate.Changed, LineFate.Changed, LineFate.Changed, LineFate.Added, LineFate.Same], lines.Select(line => line.Fate));
        Assert.Equal("11", string.Concat(lines[0].Before.Where(words => words.Differs).Select(words => words.Words)).Trim('.', ' '));
        Assert.Equal("12", string.Concat(lines[0].After.Where(words => words.Differs).Select(words => words.Words)).Trim('.', ' '));
        Assert.Equal("Ch 12.", string.Concat(lines[0].After.Select(words => words.Words)));
        Assert.Contains(lines[1].After, words => !words.Differs && words.Words.Contains("in each ch across", StringComparison.Ordinal));
    }

    [Fact]
    public void Line_ends_are_no_difference() =>
        Assert.All(WordsComparison.Between(Narrow, Narrow.Replace("\n", "\r\n", StringComparison.Ordinal)), line => Assert.Equal(LineFate.Same, line.Fate));

    [Fact]
    public void Numbers_are_compared_row_by_row_and_in_all()
    {
        NumbersComparison numbers = NumbersComparison.Between(DesignResults.Compute(Narrow), DesignResults.Compute(Wide));

        Assert.Equal([new("", "Row 1", 10, 11), new("", "Row 2", 10, 11), new("", "Row 3", null, 11)], numbers.Rows);
        // 2 × 10 before, 3 × 11 after.
        Assert.Equal((20, 33), (numbers.Before.Stitches, numbers.After.Stitches));
        Assert.Equal((2, 3), (numbers.Before.Rows, numbers.After.Rows));
    }

    [Fact]
    public async Task A_version_can_be_named_and_its_words_stay_as_they_are()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller, text: Narrow);
        await studio.Desk.SaveAsync(caller, design, Wide, 1);

        Assert.True((await studio.Versions.NameAsync(caller, design, 1, " sent to the testers ")).Succeeded);

        Assert.Equal(["", "sent to the testers"], (await studio.Versions.ListAsync(caller, design)).Select(version => version.Name));
        Assert.Equal(Narrow, (await studio.Versions.FindAsync(caller, design, 1))!.Text);
        Assert.False((await studio.Versions.NameAsync(caller, design, 9, "none such")).Succeeded);
        Assert.False((await studio.Versions.NameAsync(caller, design, 1, new string('n', DesignVersion.NameLength + 1))).Succeeded);
        Assert.True((await studio.Versions.NameAsync(caller, design, 1, "")).Succeeded);
        Assert.All(await studio.Versions.ListAsync(caller, design), version => Assert.Equal("", version.Name));
        Assert.False((await studio.Versions.NameAsync(await studio.NewCallerAsync("Other"), design, 1, "mine")).Succeeded);
    }
}
