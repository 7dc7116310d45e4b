using CsCheck;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Tests.Properties;

/// <summary>Whatever is written, a check comes to its end and throws nothing.</summary>
public sealed class AnyTextTests
{
    private static readonly string[] Written =
        [.. new[] { "tests/PatternStudio.Craft.Tests/RightPatterns", "samples" }
            .SelectMany(folder => Directory.EnumerateFiles(Repository.Path(folder), "*.txt")).Order(StringComparer.Ordinal).Select(File.ReadAllText)];

    /// <summary>A number being typed: nothing is repeated, and nothing falls over.</summary>
    [Fact]
    public void The_last_0_rows_are_repeated_as_nothing() =>
        Assert.Equal(3, PatternCheck.Check("Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across. (10 sc)\nRow 2: Ch 1, turn, sc in each sc across. (10 sc)\nRepeat the last 0 rows 3 more times.\nRow 3: Ch 1, turn, sc in each sc across. (10 sc)").Sizes[0].Rows.Count);

    /// <summary>The same texts each time; for others run the benchmarks with 'fuzz --minutes 10'.</summary>
    [Fact]
    public void A_spoiled_text_is_checked_to_its_end()
    {
        var random = new Random(20_260);
        for (int i = 0; i < 600; i++)
        {
            var choices = new Choices([.. Enumerable.Range(0, 40).Select(_ => random.Next(1_000_000))]);
            string text = Mutation.Spoil(choices.Once(4) ? AnyPattern.Write(choices) : choices.Of(Written), choices);
            Exception? thrown = Record.Exception(() => PatternCheck.Check(text));
            Assert.True(thrown is null, $"{thrown}\n{text}");
        }
    }

    public static TheoryData<string> Found =>
    [
        // A round that only skips has no cells; the next one has nothing to work into.
        "Rnd 1: Ch 1, 240 sc in ring, join with sl st in first sc.\nRnd 2: *sk next 2 sts; rep from * to end.\nRnd 3: *sk next st; rep from * to end, dc in top of tch.\n",
        // Thirty times as many in each row.
        "Ch 31.\nRow 1: Hdc in 2nd ch from hook, hdc in each ch across.\nRow 2: Ch 1, 30 hdc in each hdc across.\nRows 3-24: Rep Row 2.\n",
        "Rnd 1: 6 sc in magic ring.\nRnd 2: 600 sc in each st around.\nRnds 3–20: Rep Rnd 2.\n",
        // No chain is the 0th.
        "Ch 26.\nRow 1: Hdc in 0rd ch from hook (skipped chs do not count) and in each ch across. (24 hdc)\n",
        "Ch 6.\nRow 1: Sc in 2nd ch from hook, ch 3, sk next ch, sc in last 3 chs.\nRow 2: Ch 1, turn, sc in 0th ch of next ch-3 sp.\n",
        // A repeat of nothing but a turn.
        "Ch 3.\nRow 1: Sc in 2nd ch from hook, sc in next ch.\nRow 2: Turn, [hdc in same st] -1 times.\n",
        // More rows than a piece has.
        "Ch 20.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRows 2–1000000: Rep Row 1 twice.\n",
        // Four times as many in each round, and no two stretches alike.
        "Rnd 1: 6 sc in magic ring.\nRnd 2: Sl st in next st, ch 1, *sc in same st, dc in same st, (dc, ch 1, dc) in next st; rep from * to end, sc in last st.\nRnds 3–15: Rep Rnd 2.\n",
    ];

    [Fact]
    public void A_row_that_repeats_one_which_could_not_be_worked_lays_no_foundation()
    {
        const string text = "Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: Ch 3 (counts as dc), turn, dc in next ch-4 sp, dc in each sc across.\nRows 3–6: Rep Row 2.\n";
        Assert.Single(PatternCheck.Check(text).Sizes[0].Fabric.Pieces.SelectMany(piece => piece.Rows), row => row.Kind == RowKind.Foundation);
    }

    [Theory]
    [MemberData(nameof(Found))]
    public void A_text_that_once_failed_is_checked_to_its_end(string text) => Assert.NotNull(PatternCheck.Check(text));
}
