using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Tests.Checking;

namespace PatternStudio.Craft.Tests.Working;

/// <summary>Rounds as toys, mats and grannies tell them. Common practice, no source; the counts are by hand.</summary>
public sealed class RoundTests
{
    private const string FifteenSc = "R1: 5 sc in MR (5)\nR2: inc x 5 (10)\nR3: (sc 1, inc) x 5 (15)\n";

    private const string PlainGranny = "Rnd 1: Ch 3 (counts as dc), 2 dc in magic ring, (ch 2, 3 dc in ring) 3 times, ch 2, join. (12 dc)\n";

    /// <summary>A point is sl st, sc and hdc down its chain, then a sl st over 3: five of them use up 15 sc.</summary>
    [Fact]
    public void Stitches_back_down_a_chain_are_no_picot() => Assert.Equal("5 10 15 20", Worked.Totals(
        FifteenSc + "R4: *ch 4, sl st in 2nd ch from hook, sc in next ch, hdc in next ch, skip 2 sts, sl st in next st* x 5 (5 points)"));

    /// <summary>A part of its own, with no word of a ring: the 12 sc of the head are left alone.</summary>
    [Fact]
    public void A_part_that_begins_with_a_closed_chain_is_not_worked_onto_the_part_before() => Assert.Equal("6 12 12 12", Worked.Totals(
        "Head\nR1: 6 sc in MR (6)\nR2: inc x6 (12)\nR3: sc around (12)\nFO.\n\nCheek\nCh 6, sl st in the first ch.\nR1: 12 sc in ring (12)\nFO."));

    /// <summary>The chain in the first brackets counts like one before them; the first corner is not met again at the end.</summary>
    [Theory]
    [InlineData("Sl st to next ch-2 sp, (ch 3, 2 dc, ch 2, 3 dc) in same sp, (3 dc, ch 2, 3 dc) in each ch-2 sp around, join.")]
    [InlineData("With B, join in any ch-2 sp, (ch 3, 2 dc, ch 2, 3 dc) in same sp, (3 dc, ch 2, 3 dc) in each ch-2 sp around, join.")]
    [InlineData("Sl st to corner, ch 3, (2 dc, ch 2, 3 dc) in corner, *(3 dc, ch 2, 3 dc) in corner; rep from * twice, join.")]
    [InlineData("Sl st to ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in ch-2 sp, *(3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * twice, join.")]
    public void Four_corners_are_met_once_each(string round) => Assert.Equal("12 24", Worked.Totals(PlainGranny + "Rnd 2: " + round));

    /// <summary>Between two corners lie two groups with no chain between them: one gap at each side.</summary>
    [Fact]
    public void The_space_between_groups_comes_before_the_next_corner() => Assert.Equal("12 24 36 48", Worked.Totals(
        PlainGranny
        + "Rnd 2: Sl st to next ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, *(3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * twice, join.\n"
        + "Rnd 3: Sl st to next ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, *3 dc in next sp between groups, (3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * twice, 3 dc in next sp between groups, join.\n"
        + "Rnd 4: Sl st to next ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, *3 dc in each sp between groups to next corner, (3 dc, ch 2, 3 dc) in corner; rep from * twice, 3 dc in each sp between groups to end, join."));

    /// <summary>The pair that begins with the chain is a group like the 15 behind it: 16 gaps, 3 dc in each.</summary>
    [Fact]
    public void The_group_begun_with_a_chain_is_parted_from_the_next_like_the_others() => Assert.Equal("16 32 48", Worked.Totals(
        "Rnd 1: Magic ring, ch 3 (counts as dc), 15 dc in ring, sl st in top of ch-3. Fasten off. (16 dc)\n"
        + "Rnd 2: Join new colour in sp between any 2 dc, ch 3, dc in same sp (counts as 2-dc group), 2 dc in each sp between dc around, join. Fasten off. (32 dc)\n"
        + "Rnd 3: Join new colour in any sp between groups, ch 3, 2 dc in same sp, 3 dc in each sp between groups around, join. (48 dc)"));

    /// <summary>With a stitch of the pattern's own, the one begun with a chain is counted with the others.</summary>
    [Fact]
    public void What_counts_as_a_cluster_is_counted_as_one() => Assert.Equal("16 8 8", Worked.Totals(
        "Cluster (CL): Yo, insert hook in indicated space, yo and pull up a loop, yo and pull through 2 loops, (yo, insert hook in same space, yo and pull up a loop, yo and pull through 2 loops) twice, yo and pull through all 4 loops on hook.\n"
        + "Ch 5, join to form a ring.\nRnd 1: Ch 1, 16 sc in ring, join.\nRnd 2: Ch 5 (counts as dc and ch 2), skip next sc, (dc in next sc, ch 2, skip next sc) around, join to 3rd ch of beg ch-5.\n"
        + "Rnd 3: Sl st in first ch-2 sp, ch 3, dc2tog in same sp (counts as first CL), ch 3, (CL in next ch-2 sp, ch 3) around, join to top of first CL. (8 CL, 8 ch-3 sps)"));

    /// <summary>A granny's clusters are groups of three dc: where no cluster is worked, nothing can be said of their number.</summary>
    [Fact]
    public void Clusters_that_are_groups_are_not_compared() => Assert.Empty(Texts.Codes(PlainGranny.Replace("12 dc", "4 clusters", StringComparison.Ordinal)));

    /// <summary>Stitches of a round that is not the row below can't be followed; that is said, and no more.</summary>
    [Fact]
    public void Stitches_skipped_on_a_round_further_down_are_not_looked_for_in_the_row_below() => Assert.Equal([FindingCodes.NotWorked], Texts.Codes(
        "Rnd 1: 8 hdc in magic ring, join. (8)\nRnd 2: Ch 1, 2 hdc in each st around, join. (16)\nFirst Flap\nRow 1: Ch 1, hdc in next 4 sts, turn, leaving remaining sts unworked. (4)\nRow 2: Ch 1, hdc2tog twice. (2)\nFasten off.\n"
        + "Second Flap\nRow 1: Skip next 4 sts of Rnd 2, join yarn in next st, ch 1, hdc in same st and in next 3 sts, turn. (4)"));

    /// <summary>Words that can't be read do not take the count behind them along: the next round is judged by it.</summary>
    [Fact]
    public void The_count_behind_unread_words_is_kept() => Assert.Equal([FindingCodes.NotRead], Texts.Codes(
        "R1: 6 sc in MR (6)\nR2: wibble the yarn (12)\nR3: (sc 1, inc) x 6 (18)"));
}
