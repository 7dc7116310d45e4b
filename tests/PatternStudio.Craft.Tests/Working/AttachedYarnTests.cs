namespace PatternStudio.Craft.Tests.Working;

/// <summary>Yarn attached in a place without a stitch leaves that place to be worked into. Common practice, no source; the counts are by hand.</summary>
public sealed class AttachedYarnTests
{
    /// <summary>Twenty dc with a ch-1 space after each.</summary>
    private const string TwentySpaces = "Ch 20, join with sl st to form a ring.\nRnd 1: Ch 4 (counts as dc and ch 1), *dc in next ch, ch 1; rep from * around, join with sl st to 3rd ch of beg ch-4.\n";

    /// <summary>20 spaces with 2 in each are 40; with 3 in each of a repeat, 60.</summary>
    [Theory]
    [InlineData("Rnd 2: Attach B in any ch-1 sp, 2 sc in each ch-1 sp around, join with sl st to first sc.", "20 40")]
    [InlineData("Rnd 2: Attach B in any ch-1 sp, *3 sc in next ch-1 sp; rep from * around, join with sl st to first sc.", "20 60")]
    [InlineData("Rnd 2: Attach B in any ch-1 sp, (sc, ch 2, sc) in each ch-1 sp around, join with sl st to first sc.", "20 40")]
    [InlineData("Rnd 2: Attach B in any dc, sc in each dc around, join with sl st to first sc.", "20 20")]
    [InlineData("Rnd 2: Attach B in any ch-1 sp, ch 1, 2 sc in same sp, 2 sc in each ch-1 sp around, join with sl st to first sc.", "20 40")]
    public void The_place_of_the_yarn_is_worked_into_too(string round, string totals) => Assert.Equal(totals, Worked.Totals(TwentySpaces + round));

    /// <summary>40 sc, every 4th: ten loops, the last sc in the place where the yarn was attached.</summary>
    [Fact]
    public void A_round_of_loops_comes_back_to_the_place_of_the_yarn()
    {
        const string Loops = TwentySpaces + "Rnd 2: Attach B in any ch-1 sp, 2 sc in each ch-1 sp around, join with sl st to first sc.\nRnd 3: Attach C in any sc, *ch 5, sk 3 sc, sc in next sc; rep from * around, join with sl st to first ch.";
        Assert.Equal("20 40 10", Worked.Totals(Loops));
        Assert.Equal("10 ch-5", Worked.LastSpaces(Loops));
    }
}
