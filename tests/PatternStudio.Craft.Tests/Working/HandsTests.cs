using PatternStudio.Craft.Checking;

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

    /// <summary>The sentence behind the terms is read for itself.</summary>
    [Theory]
    [InlineData("US terms. Ch 30, being careful not to twist, join with sl st to form ring.")]
    [InlineData("US terms. Light yarn. Ch 30, join with sl st to form ring.")]
    [InlineData("Written in US terms.\nCh 30, join with sl st to form ring.")]
    [InlineData("Cowl\n\nThis pattern uses US terms.\n\nCh 30, join with sl st to form ring.")]
    public void What_states_the_terms_takes_no_row_with_it(string words) => Assert.Equal("30", Worked.Totals(
        words + "\nRnd 1: Ch 3 (counts as dc), dc in next ch and in each ch around; join with sl st in top of ch-3. 30 dc."));

    [Fact]
    public void A_line_that_states_the_terms_heads_no_piece() => Assert.Equal([""], PatternCheck.Check(
        "Cowl\nMaterials: 200 m yarn\nThis pattern uses US terms.\n\nCh 11.\nRow 1: Sc in 2nd ch from hook and in each ch across. (10 sc)").Pattern.Pieces.Select(piece => piece.Name));

    /// <summary>Rows headed by bare numbers, under a title that begins with 'Round': 12, then 24.</summary>
    [Fact]
    public void A_title_may_begin_with_round() => Assert.Equal("12 24", Worked.Totals(
        "Round coaster (UK terms)\nDK cotton, 3.5mm hook\n\nMagic ring.\n1. 3ch (counts as tr throughout), 11tr in ring, ss to top of 3ch. (12 tr)\n2. 3ch, tr in same st, 2tr in each st around, ss to top of 3ch. (24 tr)"));

    /// <summary>British for 'around': 2 + 5 x (4 + 2) = 32.</summary>
    [Theory]
    [InlineData("rtrf round next 4 sts")]
    [InlineData("rtrf round each of next 4 sts")]
    [InlineData("1 rtrf round the stem of next st")]
    public void A_post_is_gone_round(string words) => Assert.Equal("32 32", Worked.Totals(
        $"UK terms. Chain 34.\nRow 1: tr in 3rd ch from hook and in each ch across. (32 tr)\nRow 2: 2ch (does not count as st), tr in first 2 sts, *{words}{(words.Contains('4') ? "" : ", rtrf round next 3 sts")}, tr in next 2 sts; rep from * to end. (32 sts)"));

    [Theory]
    [InlineData("Rep Rnds 2 and 3 once, then rep Rnd 2 once more.", "12 12 12 12 12 12")]
    [InlineData("Rep Rnd 2, then Rnd 3 twice.", "12 12 12 12 12 12")]
    public void Rows_are_told_by_rows_and_times(string words, string totals) => Assert.Equal(totals, Worked.Totals(
        $"Rnd 1: 12 sc in magic ring; join. (12)\nRnd 2: Ch 1, sc in each st around; join. (12)\nRnd 3: Ch 3, dc in each st around; join. (12)\nRnds 4-6: {words}"));

    /// <summary>A mesh: the turning chain's last stitch is its third chain, one chain passed over.</summary>
    [Theory]
    [InlineData("sk 1 ch of turning ch, dc in next ch")]
    [InlineData("sk next ch of turning ch, dc in next ch")]
    public void Chains_of_the_turning_chain_are_passed_over(string words) => Assert.Equal("20 20 20", Worked.Totals(
        "Ch 42.\nRow 1: Dc in 6th ch from hook, *ch 1, sk next ch, dc in next ch; rep from * to end. (20 dc, 19 ch-1 sps)\n"
        + $"Row 2: Ch 4 (counts as dc, ch 1), turn, sk first ch-1 sp, dc in next dc, *ch 1, dc in next dc; rep from * ending ch 1, {words}.\n"
        + $"Row 3: Ch 4, turn, sk first ch-1 sp, dc in next dc, *ch 1, dc in next dc; rep from * ending ch 1, {words}."));

    /// <summary>8 chains up, 7 down, and 3 at the tip: 7 + 3 + 7 = 17.</summary>
    [Fact]
    public void The_foundation_has_an_opposite_side() => Assert.Equal("17", Worked.Totals(
        "Ch 9.\nRnd 1: Sc in 2nd ch from hook, sc in next 6 ch, 3 sc in last ch; working in opposite side of foundation, sc in next 7 ch, sl st to first sc."));

    [Theory]
    [InlineData("*2 dc in next st, ch 1*; repeat ** around")]
    [InlineData("*2 dc in next st, ch 1*, rep ** around")]
    public void Two_stars_are_what_stands_between_them(string words) => Assert.Equal("12 24", Worked.Totals(
        $"Rnd 1: Magic ring, ch 2 (not counted), 12 dc in ring, join to first dc. (12 dc)\nRnd 2: Ch 2 (not counted), {words}, join. (24 dc, 12 ch-1 sps)"));

    /// <summary>A size that does not work the round has '-' in its count; the line below is no part of the row. S: 12 12; M: 12 24 24.</summary>
    [Fact]
    public void A_count_may_begin_with_a_size_that_has_none()
    {
        CheckedPattern result = PatternCheck.Check("Sizes: S (M)\nRnd 1: 12 dc in magic ring; join. 12 dc\nSize M only:\n"
            + "Rnd 2: Ch 3 (counts as dc here and throughout), dc in same st as joining, then work 2 dc in each st around; join. - (24) dc\nAll sizes:\nRnd 3: Ch 1, sc in each st around; join. 12 (24) sc");
        Assert.Empty(result.Findings);
        Assert.Equal(["12 12", "12 24 24"], result.Sizes.Select(size => string.Join(' ', size.Rows.Select(row => row.Stitches))));
    }
}
