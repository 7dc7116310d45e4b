namespace PatternStudio.Craft.Tests.Working;

/// <summary>Loops of chains: with picots in them, closed by a join, passed between motifs. Common practice, no source; the counts are by hand.</summary>
public sealed class LoopTests
{
    private const string EightLoops = "Ch 6, join with sl st to form a ring.\nRnd 1: Ch 1, 16 sc in ring, join with sl st to first sc.\n";

    /// <summary>8 loops of ch 1, picot, ch 1, picot, ch 1 are 8 loops to work into: 8 sc, then 40.</summary>
    [Fact]
    public void Picots_do_not_part_a_loop() => Assert.Equal("16 8 8 40", Worked.Totals(
        EightLoops
        + "Rnd 2: *Ch 4, sl st in 3rd ch from hook for picot, ch 4, sl st in 3rd ch from hook for picot, ch 1, sk 1 sc, sc in next sc; rep from * around, join.\n"
        + "Rnd 3: *Ch 6, sc in next loop; rep from * around, join.\nRnd 4: 5 sc in each loop around, join."));

    /// <summary>An sc closes a picot as well as a slip stitch does: 23 chains are 3 for the picot and 5 times 4, so 5 sc beside the picots.</summary>
    [Fact]
    public void A_picot_closed_with_sc_is_a_picot() => Assert.Equal("5 5", Worked.Totals(
        "Ch 23, sc in 3rd ch from hook for picot, ch 4, sc in 3rd ch from hook for picot, ch 1, sk 3 ch, sc in next ch, *ch 4, sc in 3rd ch from hook for picot, ch 4, sc in 3rd ch from hook for picot, ch 1, sk 3 ch, sc in next ch; rep from * across, turn.\n"
        + "Row 2: Ch 8, sc in 3rd ch from hook for picot, ch 4, sc in 3rd ch from hook for picot, ch 1, sc between picots of next loop, *ch 4, sc in 3rd ch from hook for picot, ch 4, sc in 3rd ch from hook for picot, ch 1, sc between picots of next loop; rep from * across, turn."));

    /// <summary>24 dc: the chain stands over the first, a dc in every 3rd after it, and the loop that the join closes passes over the last 2.</summary>
    [Fact]
    public void The_loop_that_a_join_closes_passes_over_stitches_like_the_others() => Assert.Equal("24 8", Worked.Totals(
        "Ch 8, join with sl st to form a ring.\nRnd 1: Ch 3, 23 dc in ring, join with sl st to 3rd ch of beg ch-3.\nRnd 2: Ch 11, sk 2 dc, dc in next dc, *ch 8, sk 2 dc, dc in next dc; rep from * 5 times, ch 8, join with sl st to 3rd ch of beg ch-11."));

    /// <summary>6 petals have 6 gaps between them, the last one back at the beginning; each next petal is 9 stitches: 54.</summary>
    [Theory]
    [InlineData("sc in back of work between the sc of next 2 petals")]
    [InlineData("sc in back of work between next 2 petals")]
    [InlineData("sc between next 2 petals")]
    public void Between_petals_there_are_as_many_places_as_petals(string words) => Assert.Equal("6 42 6 54", Worked.Totals(
        "Ch 5, join to form a ring, ch 6, dc in ring, *ch 3, dc in ring, rep from * 3 times, ch 3, join in 3rd ch of ch 6.\n"
        + "Rnd 2: (Sc, hdc, 3 dc, hdc, sc) in each loop around, join.\n" + $"Rnd 3: *Ch 5, {words}, rep from * all around.\nRnd 4: (Sc, hdc, 5 dc, hdc, sc) in each loop around, join."));

    /// <summary>A chain joined at its 3rd chain is a dc and a loop: 8 sc with 7 dc and that one between them, 16 loops of 5.</summary>
    [Fact]
    public void A_chain_joined_at_its_third_chain_is_a_dc_and_a_loop()
    {
        const string Round = "Ch 6, join with sl st to form a ring.\nRnd 1: Ch 3, 31 dc in ring, join with sl st to 3rd ch of beg ch-3.\n"
            + "Rnd 2: Ch 8, sk 1 dc, sc in next dc, ch 5, sk 1 dc, *dc in next dc, ch 5, sk 1 dc, sc in next dc, ch 5, sk 1 dc; rep from * around, join in 3rd ch of ch 8.";
        Assert.Equal("32 16", Worked.Totals(Round));
        Assert.Equal("16 ch-5", Worked.LastSpaces(Round));
    }

    /// <summary>The same space is the one that slip stitches came across to: six stitches in each of the four corners, none beside one.</summary>
    [Fact]
    public void Slip_stitches_across_to_a_space_go_into_it_where_the_next_are_in_the_same_space() => Assert.Equal("1.3 x6, 1.7 x6, 1.11 x6, 1.15 x6", Worked.PlacesOfLast(
        "Ch 4, join with sl st to form a ring.\nRnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, [3 dc in ring, ch 2] 3 times, join with sl st to top of ch-3.\n"
        + "Rnd 2: Sl st across to corner ch-2 sp, ch 3 (counts as dc), (2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * twice more, join with sl st to top of ch-3."));

    /// <summary>At the start of a round 'sl st to loop' goes to its first loop; nothing is formed. The loops are cells 2, 4, 6 and 8 of the round below, behind its chain and its first sc.</summary>
    [Fact]
    public void A_slip_stitch_to_a_loop_goes_there() => Assert.Equal("2.2 x3, 2.4 x3, 2.6 x3, 2.8 x3", Worked.PlacesOfLast(
        "Ch 6, join with sl st to form a ring.\nRnd 1: Ch 1, 8 sc in ring, join with sl st to first sc.\nRnd 2: Ch 1, sc in first sc, *ch 5, sk 1 sc, sc in next sc; rep from * twice more, ch 5, join with sl st to first sc.\n"
        + "Rnd 3: Sl st to loop, ch 3 (counts as dc), 2 dc in same loop, *ch 4, 3 dc in next loop; rep from * twice more, ch 4, join with sl st to top of ch-3."));

    /// <summary>20 stitches in twos: 10 loops, the last of them closed by a tall stitch in the round's own first sc, passing over the last of the 20. Its top is the next round's start.</summary>
    [Theory]
    [InlineData("rep from * 8 times, ch 1, hdc in first sc")]
    [InlineData("rep from * 8 times more, ch 1, hdc in first sc to form last loop")]
    [InlineData("rep from * around, ch 1, dc in first sc")]
    [InlineData("rep from * around, ending with ch 1, dc in first sc")]
    public void A_tall_stitch_closes_the_last_loop(string words) => Assert.Equal("20 11 11 80 10", Worked.Totals(
        "Ch 5, sl st to form ring.\nRnd 1: Ch 4 (counts as tr), 19 tr in ring, sl st to top of ch-4. (20 tr)\n"
        + $"Rnd 2: Ch 1, sc in same st, *ch 3, sk next tr, sc in next tr; {words}. (10 loops)\n"
        + "Rnd 3: Ch 1, sc in loop just made, *ch 5, sc in next loop; rep from * 8 more times, ch 2, dc in first sc. (10 loops)\n"
        + "Rnd 4: Ch 1, sc in same loop, *7 dc in next sc, sc in next loop; rep from * around, ending 7 dc in last sc, sl st in first sc. (10 shells)\n"
        + "Rnd 5: Sl st in first 3 dc, ch 1, sc in next dc, *ch 7, sc in center dc of next shell; rep from * around, ch 7, sl st in first sc. (10 ch-7 loops)"));

    /// <summary>The space that the hook has slipped into is one of 'each': 20 x 2.</summary>
    [Theory]
    [InlineData("sl st into first ch-1 sp, ch 1, 2 sc in each ch-1 sp around", 40)]
    [InlineData("sl st into first ch-1 sp, ch 1, 2 sc in same sp, 2 sc in each ch-1 sp around", 40)]
    [InlineData("ch 1, 2 sc in each ch-1 sp around", 40)]
    public void The_space_slipped_into_is_one_of_each(string words, int stitches) => Assert.Equal($"40 20 {stitches}", Worked.Totals(
        $"Rnd 1: 40 sc in magic ring, join. (40)\nRnd 2: Ch 1, *sc in next st, ch 1, sk 1; rep from * around, sl st to first sc. (20 sc, 20 ch-1 sps)\nRnd 3: {words}, join. (40)"));

    /// <summary>A round that has begun with a cluster in one stitch goes on with such; many call them clusters.</summary>
    [Theory]
    [InlineData("*dc3tog in next st, ch 2; repeat from * around, join to first cluster")]
    [InlineData("*dc3tog in next st, ch 2; repeat from * around, join in top of first cl")]
    public void Stitches_closed_together_are_clusters(string words) => Assert.Equal("12 12", Worked.Totals(
        $"Rnd 1: Magic ring, ch 2 (not counted), 12 dc in ring, join to first dc. 12 dc\nRnd 2: Ch 3, dc2tog in same st, ch 2, {words}. (12 clusters)"));
}
