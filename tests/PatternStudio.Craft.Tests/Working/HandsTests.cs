namespace PatternStudio.Craft.Tests.Working;

/// <summary>Wordings of many hands that were once misread. Common practice, no source; the counts are by hand.</summary>
public sealed class HandsTests
{
    /// <summary>Of the lengths that an open foundation may have, the stated count tells which: 50 = 16 x 3 + 2.</summary>
    [Fact]
    public void The_count_stated_over_an_open_foundation_tells_its_length() => Assert.Equal("49 49", Worked.Totals(
        "Ch a multiple of 3 plus 2.\nFoundation row: sc in second ch from hook and in each ch. Turn. 49 sts.\nRow 1: Ch 3 (counts as first dc), dc in same st, *sk 2, 3 dc in next st; rep from * to last 3 sts, sk 2, 2 dc in last st. Turn. (49 dc)"));

    /// <summary>The groups of a granny are called clusters by many: 2 + 5 x 3 + 2 = 19 in Row 2; then 6 spaces between them: 1 + 6 x 3 + 1 = 20.</summary>
    [Fact]
    public void Clusters_of_a_granny_are_groups() => Assert.Equal("19 19 20", Worked.Totals(
        "Ch 20.\nRow 1: Sc in 2nd ch from hook and in each ch across. (19 sc)\nRow 2: Ch 3 (counts as first dc), turn, dc in same st, *sk 2, 3 dc in next st; rep from * to last 3 sts, sk 2, 2 dc in last st. (19 dc)\nRow 3: Ch 3, turn, 3 dc in each sp between clusters, dc in top of ch-3. (20 dc)"));

    /// <summary>Attached with a sc, which is the row's first: 1 + 5 x 1 over 11.</summary>
    [Theory]
    [InlineData("Join next colour with sc in first st")]
    [InlineData("With B, join with a standing sc in first st")]
    [InlineData("Join B with sc in first st")]
    public void A_yarn_attached_with_a_stitch_begins_the_row(string words) => Assert.Equal("11 6", Worked.Totals(
        $"Ch 12.\nRow 1: Sc in 2nd ch from hook and in each ch across. Cut yarn. (11)\nRow 2: {words}, *ch 1, sk 1, sc in next st; rep from * across. (6 sc, 5 ch-1 sps)"));

    /// <summary>Another yarn, the same stitches.</summary>
    [Theory]
    [InlineData("Rep Row 2 with B.")]
    [InlineData("Repeat Row 2 with colour B. (19)")]
    [InlineData("Work as Row 2, but change to colour B in the last st. (19)")]
    public void A_row_repeated_in_another_colour_is_that_row(string words) => Assert.Equal("19 19 19", Worked.Totals(
        $"Ch 20.\nRow 1: Sc in 2nd ch from hook and in each ch across. (19)\nRow 2: Ch 1, turn, sc in each st across. (19)\nRow 3: {words}"));

    /// <summary>The skipped chain is 'ch. 1' with a full stop; that of 'in each ch. 25 sc.' ends its sentence.</summary>
    [Fact]
    public void A_full_stop_behind_ch_ends_a_sentence_only_at_its_end() => Assert.Equal("25 25", Worked.Totals(
        "Ch. 26.\nRow 1: Sc. in 2nd ch. from hook and in each ch. 25 sc.\nRow 2: Ch. 1, turn. Sc. in each sc. 25 sc."));
}
