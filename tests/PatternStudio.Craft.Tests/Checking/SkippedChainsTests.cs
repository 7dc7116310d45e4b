using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>
/// What the chains before a first stitch are said to count as. Wordings: common practice, no source. A dc stands for 3 chains (Craft Yarn Council, turning chain heights), so that of 5 skipped
/// chains one chain is left over and one lies unworked under it.
/// </summary>
public sealed class SkippedChainsTests
{
    /// <summary>Ch 24, dc in the 6th and in every other to the 24th: (24 − 6) ÷ 2 + 1 = 10, and the one that the skipped chains stand for; a space before each of the 10. Its foot is in the 4th chain: two before the 6th.</summary>
    [Theory]
    [InlineData(" (skipped chs count as dc, ch 1 and 1 skipped ch),")]
    [InlineData(" (5 skipped chs count as dc, ch 1, and 1 skipped ch),")]
    [InlineData(" (skipped 5 chs count as dc and ch 1),")]
    [InlineData(" (skipped chs count as dc and 1 skipped ch and ch 1),")]
    [InlineData(" (skipped chs count as 1 skipped ch, ch 1 and dc),")]
    [InlineData(" (skipped chs count as 1 skipped ch, 1 dc and ch 1),")]
    [InlineData(" (skipped 5 chs count as a base ch, dc and ch-1 sp),")]
    [InlineData(" (first 5 skipped chs count as one dc plus ch 1 and an unworked ch),")]
    [InlineData(" (5 missed chs count as first dc, 1 ch-1 sp and 1 missed ch),")]
    [InlineData(" (counts as dc, ch 1, dc),")]
    [InlineData(", skipped chs count as dc and ch 1,")]
    [InlineData(". Skipped 5 chs count as dc and ch 1.")]
    public void A_mesh_begins_with_a_stitch_and_a_space(string words)
    {
        WorkedRow row = FirstRow($"Ch 24.\nRow 1: Dc in 6th ch from hook{words} *ch 1, sk next ch, dc in next ch; rep from * across. (11 dc, 10 ch-1 sps)\nRow 2: Ch 1, turn, sc in each st and ch-1 sp across. (21 sc)");
        Assert.Equal(24 - 4, row.Cells().First().Feet[0].Place);
    }

    /// <summary>Ch 20: dc in the 5th to the 20th are 16, and one more for the chains before. With one chain skipped the stitch stands in the 3rd, with a chain beside it in the 4th.</summary>
    [Theory]
    [InlineData("skipped chs count as dc and 1 skipped ch", "17 dc", 3)]
    [InlineData("skipped 4 chs count as dc and ch 1", "17 dc, 1 ch-1 sp", 4)]
    public void The_stitch_stands_where_what_is_left_over_says(string words, string count, int foot)
    {
        WorkedRow row = FirstRow($"Ch 20.\nRow 1: Dc in 5th ch from hook ({words}), dc in each ch across. ({count})");
        Assert.Equal(20 - foot, row.Cells().First().Feet[0].Place);
    }

    /// <summary>'Counts as dc' without brackets, then the repeat's own chain: ch 3 and 20 dc with a chain before each.</summary>
    [Fact]
    public void A_star_behind_the_words_begins_a_repeat() => Assert.Equal([40, 21], Handbook.Totals(
        "Ch 41.\nRow 1: Sc in 2nd ch from hook and in each ch across. (40 sc)\nRow 2: Ch 3 counts as dc, turn, *ch 1, sk next sc, dc in next sc; rep from * 18 times more, dc in last sc. (21 dc)"));

    private static WorkedRow FirstRow(string text)
    {
        Handbook.Rows(text);
        return PatternCheck.Check(text).Sizes[0].Fabric.Pieces[0].Rows[1];
    }
}
