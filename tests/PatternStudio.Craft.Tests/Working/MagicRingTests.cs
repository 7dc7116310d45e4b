using PatternStudio.Craft.Checking;

namespace PatternStudio.Craft.Tests.Working;

/// <summary>Rounds begun in a magic ring; counts by hand, common practice, no source.</summary>
public sealed class MagicRingTests
{
    [Theory]
    [InlineData("Rnd 1: Ch 3 (counts as dc), 2 dc in magic ring, ch 2, [3 dc in ring, ch 2] 3 times, join with sl st to top of beg ch-3. (12 dc, 4 ch-2 sps)", 12)]
    [InlineData("Rnd 1: In a magic ring, ch 3 (counts as dc), 11 dc in ring, join with sl st to top of beg ch-3. (12 dc)", 12)]
    [InlineData("Rnd 1: Ch 1, 6 sc in magic ring, join with sl st to first sc. (6 sc)", 6)]
    [InlineData("Ch 4, join with sl st to form a ring.\nRnd 1: Ch 3 (counts as dc), 11 dc in ring, join with sl st to top of beg ch-3. (12 dc)", 12)]
    public void A_chain_before_the_ring_is_the_round_s_own(string text, int stitches)
    {
        CheckedPattern result = PatternCheck.Check(text);
        Assert.DoesNotContain(result.Findings, finding => finding.Severity == Severity.Error);
        Assert.Equal(stitches, Assert.Single(result.Sizes[0].Rows).Stitches);
    }
}
