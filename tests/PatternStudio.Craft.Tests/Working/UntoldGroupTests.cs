namespace PatternStudio.Craft.Tests.Working;

/// <summary>'Shell' and 'V-st' in patterns that tell nowhere what one is. Common practice, no source; the counts are by hand.</summary>
public sealed class UntoldGroupTests
{
    private const string Shells = "Ch 26.\nRow 1: Sc in 2nd ch from hook, *skip 2 ch, 5 dc in next ch, skip 2 ch, sc in next ch; repeat from * across.\n";

    /// <summary>Half a shell at each end: 3 + 1 + 3 (5 + 1) + 3 = 25. The one at the end, of three stitches, is not the next row's first shell.</summary>
    [Theory]
    [InlineData("center dc of next shell")]
    [InlineData("center st of next shell")]
    [InlineData("3rd dc of next shell")]
    [InlineData("3rd dc of next 5-dc shell")]
    [InlineData("3rd dc of next 5-dc group")]
    [InlineData("next shell")]
    public void A_shell_is_what_looks_like_one(string place) => Assert.Equal("25 25 25", Worked.Totals(Shells
        + $"Row 2: Ch 3, turn, 2 dc in first sc, *sc in {place}, 5 dc in next sc; repeat from * 2 more times, sc in {place}, 3 dc in last sc.\n"
        + $"Row 3: Ch 1, turn, sc in first dc, *5 dc in next sc, sc in {place}; repeat from * 2 more times, 5 dc in next sc, sc in top of ch 3."));

    [Fact]
    public void A_V_stitch_is_what_looks_like_one() => Assert.Equal("24 16 16", Worked.Totals(
        "Ch 26.\nRow 1: Dc in 4th ch from hook and in each ch across. (24 dc)\n"
        + "Row 2: Ch 3, turn, skip next st, *(dc, ch 1, dc) in next st, skip next 2 sts; repeat from * 5 more times, (dc, ch 1, dc) in next st, skip next 2 sts, dc in last st.\n"
        + "Row 3: Ch 3, turn, *(dc, ch 1, dc) in ch-1 sp of next V-st; repeat from * across, dc in top of ch 3."));

    [Fact]
    public void A_repeat_ends_with_the_last_shell() => Assert.Equal("25 25 25", Worked.Totals(Shells
        + "Row 2: Ch 3, turn, 2 dc in first sc, *sc in center dc of next shell, 5 dc in next sc; repeat from * to last shell, sc in center dc of last shell, 3 dc in last sc. (3 shells)\n"
        + "Row 3: Ch 1, turn, sc in first dc, *5 dc in next sc, sc in center dc of next shell; repeat from * across, ending with 5 dc in last sc, sc in top of ch 3. (4 shells)"));

    /// <summary>Two sizes of group in one row: which of them is the shell, nobody has said.</summary>
    [Fact]
    public void Where_groups_differ_none_is_taken_for_the_shell() => Assert.Equal("12 18 ?", Worked.Totals(
        "Ch 14.\nRow 1: Dc in 4th ch from hook and in each ch across. (12 dc)\nRow 2: Ch 3, turn, dc in next 2 sts, 3 dc in next st, dc in next 3 sts, 5 dc in next st, dc in next 4 sts.\n"
        + "Row 3: Ch 1, turn, sc in each of next 4 sts, sc in center dc of next shell, leave remaining sts unworked."));

    /// <summary>The pattern works shells, and this row has none: that is a slip.</summary>
    [Fact]
    public void A_shell_that_the_pattern_works_is_missed_where_there_is_none() => Assert.Equal(
        "25 25 ? Row 3 asks for a shell, but Row 2 has none. What it has: 25 sc.",
        Worked.Totals("Shell: 5 dc in same st.\n" + Shells.Replace("5 dc in", "shell in", StringComparison.Ordinal) + "Row 2: Ch 1, turn, sc in each st across. (25 sc)\nRow 3: Ch 1, turn, sc in first st, skip 2 sts, shell in next shell."));
}
