using PatternStudio.Craft.Anatomy;

namespace PatternStudio.Craft.Tests.Anatomy;

/// <summary>
/// Loops on the hook after each motion. Sources: learntocrochetcalgary.ca CYCA-14 (general rule); a published stitch glossary (sc, esc, sc2tog, fsc);
/// craftyarncouncil.com mar06_dc (dc); coffeeteaknits.com (hdc); alwayscrafts.com (tr); Dillmont, Das Häkeln (yarn overs of the taller ones);
/// zanotowane.pl/719/2920, scan of a stitch handbook (open legs and decreases); doradoes.co.uk (decreases).
/// </summary>
public sealed class BasicStitchTests
{
    [Theory]
    [InlineData("sc", "Insert hook in st, yo and pull up a loop, yo and draw through both loops on hook", "1 2 1")]
    [InlineData("hdc", "Yo, insert hook in next st, yo and pull up a loop, yo and draw through all 3 loops on hook", "2 2 3 1")]
    [InlineData("dc", "Yo, insert hook in st, yo and draw up a loop, [yo and draw through 2 loops] twice", "2 2 3 2 1")]
    [InlineData("tr", "Yo twice, insert hook in st, yo and draw up a loop, [yo and draw through 2 loops] 3 times", "3 3 4 3 2 1")]
    [InlineData("dtr", "yo 3 times, insert hook in st, yo, draw up a loop, (yo, draw through 2 loops on hook) 4 times", "4 4 5 4 3 2 1")]
    [InlineData("trtr", "Yo 4 times, insert hook in st, yo and pull up a loop, *yo and draw through 2 loops; rep from * 4 more times", "5 5 6 5 4 3 2 1")]
    [InlineData("esc", "Insert hook in st, yo and pull up a loop, yo and draw through 1 loop, yo and draw through 2 loops", "1 2 2 1")]
    [InlineData("sl st", "Insert hook in st, yo and draw through st and loop on hook", "1 1")]
    [InlineData("ch", "Yo and draw through loop on hook", "1")]
    [InlineData("fsc", "Insert hook in 2nd ch, yo and draw up a loop, yo and draw through 1 loop (ch made), yo and draw through 2 loops", "1 2 2 1")]
    [InlineData("fhdc", "Yo, insert hook in first ch, yo and pull up a loop, yo and draw through 1 loop, yo and draw through all 3 loops", "2 2 3 3 1")]
    [InlineData("fdc", "Yo, insert hook in first ch, yo and pull up a loop, yo and draw through 1 loop, (yo and draw through 2 loops) twice", "2 2 3 3 2 1")]
    [InlineData("reverse sc", "Insert hook in next st to right, yo and draw up a loop, yo and draw through 2 loops", "1 2 1")]
    [InlineData("FPdc", "Yo, insert hook from front to back to front around post of next dc, yo and pull up a loop, [yo, draw through 2 loops] 2 times", "2 2 3 2 1")]
    [InlineData("sc2tog", "[Insert hook in next st, yo and pull up a loop] twice, yo and draw through all 3 loops on hook", "1 2 2 3 1")]
    [InlineData("sc3tog", "(Insert hook in next st, pull up a loop) 3 times, yo, draw through all 4 loops", "1 2 2 3 3 4 1")]
    [InlineData("hdc2tog", "[Yo, insert hook in next st, yo and pull up a loop] 2 times, yo and draw through all 5 loops", "2 2 3 4 4 5 1")]
    [InlineData("dc2tog", "[Yo, insert hook in next st, yo and pull up a loop, yo and draw through 2 loops] twice, yo and draw through all 3 loops on hook", "2 2 3 2 3 3 4 3 1")]
    [InlineData("dc3tog", "[Yo, insert hook in next st, yo and pull up a loop, yo, draw through 2 loops on hook] 3 times, yo and draw through all 4 loops on hook", "2 2 3 2 3 3 4 3 4 4 5 4 1")]
    [InlineData("tr2tog", "[Yo twice, insert hook in next st, yo and pull up a loop, (yo and draw through 2 loops) twice] 2 times, yo and draw through all 3 loops", "3 3 4 3 2 4 4 5 4 3 1")]
    public void The_loops_on_the_hook_are_those_of_the_handbooks(string stitch, string words, string loops)
    {
        Assert.NotEmpty(stitch);
        Assert.Equal(loops, MotionReading.Loops(words));
        Assert.Empty(LoopTroubles.Of(MotionReading.Whole(words)));
    }

    /// <summary>Height of turning chains: dummies.com and crochetforall.com tables; esc about 1.5 to 2, a published stitch glossary.</summary>
    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 3)]
    [InlineData(2, 4)]
    [InlineData(3, 5)]
    [InlineData(4, 6)]
    public void A_plain_stitch_is_as_tall_as_its_turning_chain(int yarnOvers, double chains) =>
        Assert.Equal(chains, StitchAnatomy.Of(StitchFamily.Plain(yarnOvers)).HeightInChains);

    [Theory]
    [InlineData("Insert hook in st, yo and draw through st and loop on hook", 0)]
    [InlineData("Yo, insert hook in st, yo and draw up a loop, yo and draw through all 3 loops", 2)]
    [InlineData("Insert hook in st, yo and draw up a loop, yo and draw through 1 loop, yo and draw through 2 loops", 2)]
    [InlineData("[Yo, insert hook in same st, yo and draw up a loop, yo and draw through 2 loops] 5 times, yo and draw through all 6 loops", 3)]
    [InlineData("[Insert hook in next st, yo and draw up a loop] twice, yo and draw through all 3 loops", 1)]
    public void Height_follows_from_the_motions(string words, double chains) =>
        Assert.Equal(chains, StitchAnatomy.Of(MotionReading.Whole(words))!.HeightInChains);

    [Fact]
    public void Taller_stitches_take_more_yarn()
    {
        double[] lengths = [.. Enumerable.Range(0, 5).Select(yarnOvers => StitchAnatomy.Of(StitchFamily.Plain(yarnOvers)).YarnLength)];
        Assert.Equal(lengths.Order(), lengths);
        Assert.InRange(StitchAnatomy.Of(StitchFamily.HalfDouble()).YarnLength, lengths[0], lengths[1]);
    }
}
