using PatternStudio.Craft.Checking;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>How counts go on over repeated rows; the arithmetic is common practice, no source.</summary>
public sealed class GrowthLawTests
{
    /// <summary>Rows 3 and 4 have too few stitches in the middle to be kept as a run, so the proof begins with row 5.</summary>
    [Fact]
    public void A_triangle_that_grows_at_both_ends_says_so_with_its_formula() => Assert.Equal(
        ["Rows 5 to 12: each row adds 2 stitches; row n has 2n − 1 stitches."],
        Laws("""
        Ch 2.
        Row 1: Sc in 2nd ch from hook. (1 sc)
        Row 2: Ch 1, turn, 3 sc in first sc. (3 sc)
        Row 3: Ch 1, turn, 2 sc in first sc, sc in each sc to last sc, 2 sc in last sc. (5 sc)
        Rows 4–12: Rep Row 3.
        """));

    [Fact]
    public void Straight_rows_keep_their_count() => Assert.Contains(
        "each row keeps the count",
        Assert.Single(Laws("Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRow 2: Ch 1, turn, sc in each sc across. (20 sc)\nRows 3–10: Rep Row 2.")));

    [Fact]
    public void Two_rows_that_alternate_have_a_law_of_two_rows()
    {
        string law = Assert.Single(Laws("""
            Ch 22.
            Row 1: Sc in 2nd ch from hook and in each ch across. (21 sc)
            Row 2: Ch 1, turn, sc in first sc, *ch 1, sk next sc, sc in next sc; rep from * across. (11 sc, 10 ch-1 sps)
            Row 3: Ch 1, turn, sc in each sc and in each ch-1 sp across. (21 sc)
            Rows 4–21: Rep Rows 2 and 3.
            """));
        Assert.Contains("each repeat of 2 rows keeps the count", law);
    }

    [Fact]
    public void A_decrease_takes_away()
    {
        string law = Assert.Single(Laws("Ch 26.\nRow 1: Sc in 2nd ch from hook and in each ch across. (25 sc)\nRow 2: Ch 1, turn, sc2tog, sc in each st to last 2 sts, sc2tog. (23 sts)\nRep Row 2 until 3 sts remain."));
        Assert.Contains("each row takes away 2 stitches; row n has 27 − 2n stitches.", law);
    }

    [Fact]
    public void Rows_that_each_do_something_else_have_no_law() => Assert.Empty(
        Laws("Ch 7.\nRow 1: Sc in 2nd ch from hook and in each ch across. (6 sc)\nRow 2: Ch 1, turn, 2 sc in each sc across. (12 sc)\nRow 3: Ch 1, turn, sc in next 6 sc, leave rem sts unworked. (6 sc)"));

    private static IEnumerable<string> Laws(string text) => PatternCheck.Check(text).Sizes[0].Laws.Select(law => law.Sentence);
}
