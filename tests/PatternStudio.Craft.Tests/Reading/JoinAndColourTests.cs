namespace PatternStudio.Craft.Tests.Reading;

public sealed class JoinAndColourTests
{
    [Theory]
    [InlineData("Join with sl st to first sc.", "join slst first sc")]
    [InlineData("Join.", "join slst")]
    [InlineData("Join with sl st in top of beg ch-3.", "join slst turningchaintop tch-3")]
    [InlineData("Sl st in first sc to join.", "join slst first sc")]
    [InlineData("Ch 5, join with sl st to form a ring.", "ch 5; join slst ring")]
    [InlineData("Ch 8, join to form a ring.", "ch 8; join slst ring")]
    [InlineData("Ch 4, sl st in first ch to form ring.", "ch 4; join slst ring first ch")]
    [InlineData("Ch 2, join with hdc in first sc (counts as last ch-4 sp).", "ch 2; join hdc first sc =ch-4sp")]
    [InlineData("Join in 3rd st of ch.", "join slst turningchaintop ch of tch")]
    [InlineData("Do not join.", "don't join")]
    [InlineData("Do not turn.", "don't turn")]
    public void Joins_are_read(string row, string steps) => Assert.Equal(steps, Reader.Steps(row));

    [Fact]
    public void A_rounds_last_slip_stitch_into_its_first_joins_it() =>
        Assert.Equal("Round 2: ch 1; sc each sc around; join slst first sc", Reader.Pattern("Rnd 2: Ch 1, sc in each sc around, sl st in first sc."));

    [Theory]
    [InlineData("With A, sc in next st.", "colour A; sc next st")]
    [InlineData("Using Moss Green, sc in next st.", "colour Moss Green; sc next st")]
    [InlineData("Sc in next st, change to B in last yo.", "sc next st; colour B")]
    [InlineData("Sc in next 4 sts changing to B in last st, with B sc in next 5 sts.", "sc next 4 st; colour B; colour B; sc next 5 st")]
    [InlineData("Join B with sl st in any ch-2 sp.", "attach B next ch-2sp")]
    [InlineData("Join C with sc in first st.", "attach C with sc first st")]
    [InlineData("Attach Lt. Yellow in any d c.", "attach Lt. Yellow next dc")]
    [InlineData("Join yarn in first dc.", "attach  first dc")]
    [InlineData("Fasten off A.", "fasten off")]
    [InlineData("Cut thread.", "fasten off")]
    [InlineData("Place marker in first sc.", "marker")]
    public void Yarns_and_markers_are_read(string row, string steps) => Assert.Equal(steps, Reader.Steps(row));
}
