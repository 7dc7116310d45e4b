using System.Globalization;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>
/// Starting chains for N stitches: sc N + 1, hdc N + 1 where the ch 2 counts and N + 2 where it does not, dc N + 2, tr N + 3, dtr N + 4
/// (craftyarncouncil.com/mar06_dc.html; dummies.com, how to crochet a turning chain; cherryheartcrochet.co.uk/2014/05/starting-chains.html).
/// </summary>
public sealed class HandbookStartTests
{
    private static readonly string[] Ordinals = ["", "1st", "2nd", "3rd", "4th", "5th", "6th", "7th"];

    [Theory]
    [InlineData("sc", 1, 2, "")]
    [InlineData("hdc", 1, 3, " (skipped chs count as hdc)")]
    [InlineData("hdc", 2, 3, " (skipped chs do not count as st)")]
    [InlineData("dc", 2, 4, "")]
    [InlineData("dc", 2, 4, " (skipped 3 chs count as first dc)")]
    [InlineData("tr", 3, 5, "")]
    [InlineData("dtr", 4, 6, "")]
    public void N_stitches_need_N_and_so_many_chains(string stitch, int more, int first, string aside)
    {
        foreach (int n in new[] { 5, 12, 20, 97 })
            Assert.Equal([n], Handbook.Totals($"Ch {n + more}.\nRow 1: {Capital(stitch)} in {Ordinals[first]} ch from hook{aside} and in each ch across. ({n} {stitch})"));
    }

    /// <summary>CYC's own dc lesson: ch 3 turns and counts, the next dc goes in the second stitch, the last in the top of the turning chain.</summary>
    [Fact]
    public void A_counting_turning_chain_keeps_the_number() => Assert.Equal([12, 12, 12], Handbook.Totals(
        "Ch 14.\nRow 1: Dc in 4th ch from hook and in each ch across. (12 dc)\nRow 2: Ch 3, turn, dc in 2nd dc and in next 9 dc, dc in top of tch. (12 dc)\nRow 3: Ch 3, turn, sk first dc, dc in each dc across, dc in top of tch. (12 dc)"));

    /// <summary>'[x] 5 times' is five in all; '*x; rep from * 5 times' is five more, six in all (Star and Spool Cotton books state both).</summary>
    [Theory]
    [InlineData("[sc in next st] 5 times", 5)]
    [InlineData("(sc in next st) 5 times", 5)]
    [InlineData("*sc in next st; rep from * 5 times", 6)]
    [InlineData("*sc in next st; rep from * 4 more times", 5)]
    [InlineData("*sc in next st; rep from * once", 2)]
    [InlineData("[sc in next st] twice", 2)]
    public void Brackets_count_in_all_and_a_star_counts_more(string words, int stitches) =>
        Assert.Equal([20, stitches], Handbook.Totals($"Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRow 2: Ch 1, turn, {words}, leave remaining sts unworked. ({stitches} sc)"));

    /// <summary>Evenly spaced shaping: 100 + 11 round is ten gaps of 9 and one of 10 (knitabit.net/wisdom/increaseevenly.htm); 90 to 80 by [7 plain, 2 together] ten times; 60 + 6 is every 10th (lionbrand.com).</summary>
    [Theory]
    [InlineData(60, "[sc in next 9 sts, 2 sc in next st] 6 times", 66)]
    [InlineData(100, "[sc in next 8 sts, 2 sc in next st] 10 times, sc in next 9 sts, 2 sc in next st", 111)]
    [InlineData(99, "[sc in next 11 sts, 2 sc in next st] 5 times, [sc in next 12 sts, 2 sc in next st] 3 times", 107)]
    [InlineData(90, "[sc in next 7 sts, sc2tog over next 2 sts] 10 times", 80)]
    public void Shaping_spread_evenly_uses_every_stitch(int before, string words, int after) =>
        Assert.Equal([before, after], Handbook.Totals($"Ch {before + 1}.\nRow 1: Sc in 2nd ch from hook and in each ch across. ({before} sc)\nRow 2: Ch 1, turn, {words}. ({after} sts)"));

    /// <summary>120 + 10 flat is eleven sections, ten of 11 and one of 10 (the page at knitabit.net prints 9 × 10 + 1 × 11, which is 101).</summary>
    [Fact]
    public void A_flat_row_has_one_section_more_than_increases() => Assert.Equal([120, 130], Handbook.Totals(
        "Ch 121.\nRow 1: Sc in 2nd ch from hook and in each ch across. (120 sc)\nRow 2: Ch 1, turn, [sc in next 10 sts, 2 sc in next st] 10 times, sc in next 10 sts. (130 sc)"));

    private static string Capital(string stitch) => string.Create(CultureInfo.InvariantCulture, $"{char.ToUpperInvariant(stitch[0])}{stitch[1..]}");
}
