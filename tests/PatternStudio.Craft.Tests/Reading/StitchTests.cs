using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Tests.Reading;

public sealed class StitchTests
{
    [Theory]
    [InlineData("Sc in next st.", "sc next st")]
    [InlineData("SC IN NEXT ST", "sc next st")]
    [InlineData("sc. in next st.", "sc next st")]
    [InlineData("Single crochet in next stitch.", "sc next st")]
    [InlineData("2 dc in next ch-1 sp.", "2dc next ch-1sp")]
    [InlineData("Work 3 sc in last ch.", "3sc last ch")]
    [InlineData("Sc 3, inc.", "sc x3; inc")]
    [InlineData("3 sc, inc.", "sc x3; inc")]
    [InlineData("Inc x 6.", "inc x6")]
    [InlineData("inc × 6", "inc x6")]
    [InlineData("Sc2tog over next 2 sts.", "sc2tog over 2 st")]
    [InlineData("Dc2tog twice.", "dc2tog x2")]
    [InlineData("Sc next 2 sts tog.", "sc2tog over 2 st")]
    [InlineData("Sc2tog over 2nd and 3rd chs from hook.", "sc2tog fromhook2 2 ch")]
    [InlineData("3-dc cl in next sp.", "dc3cl next sp")]
    [InlineData("FPdc around next dc, BPdc around each of next 2 dc.", "fpdc next dc; bpdc each 2 dc")]
    [InlineData("Fsc 20.", "fsc x20")]
    [InlineData("Hdc around.", "hdc each st around")]
    [InlineData("2 dc with ch 1 between in next st.", "2dc ch1 between next st")]
    [InlineData("120 sc evenly down side.", "sc x120 rowends rowend")]
    [InlineData("Sc through both layers 6 times.", "sc x6")]
    [InlineData("Ch 3, sl st in 3rd ch from hook for picot.", "ch 3; slst fromhook3 ch for picot")]
    [InlineData("3 dc in next sp keeping last loop of each dc on hook, yo and draw through all loops on hook.", "dc3cl next sp")]
    [InlineData("[Insert hook in next st, yo and draw up a loop] 3 times, yo and draw through all 4 loops on hook (sc3tog made).", "sc3tog")]
    public void Stitches_are_read(string row, string steps) => Assert.Equal(steps, Reader.Steps(row));

    [Theory]
    [InlineData("Dc in next tr, htr in next dc.", "sc next dc; hdc next sc")]
    [InlineData("Tr2tog, 1 dtr in same st.", "dc2tog; tr same st")]
    [InlineData("Ss in next st, miss 1 tr, trtr in next st.", "slst next st; sk 1 dc; dtr next st")]
    [InlineData("Double in next stitch, half treble in next.", "sc next st; hdc next st")]
    public void UK_words_mean_UK_stitches(string row, string steps) => Assert.Equal(steps, Reader.Steps(row, Terminology.Uk));

    [Theory]
    [InlineData("1 s c in next st, 1 s d c in next st.", "sc next st; hdc next st")]
    [InlineData("1 d c in each of the next 3 d c, 1 tr c in next st.", "dc each 3 dc; tr next st")]
    [InlineData("L d c in next st.", "dc next st")]
    public void Old_abbreviations_with_blanks_are_read(string row, string steps) => Assert.Equal(steps, Reader.Steps(row));

    [Theory]
    [InlineData("Sc in BLO of next 3 sts.", "sc next 3 st BackLoop")]
    [InlineData("Hdc in third loop of each st across.", "hdc each st to-end ThirdLoop")]
    [InlineData("Working in back loops only, sc in each st across.", "“Working in back loops only”; sc each st to-end BackLoop")]
    [InlineData("In FLO, sc 3.", "“In FLO”; sc next 3 st FrontLoop")]
    [InlineData("Dc around front post of next st.", "dc next st FrontPost")]
    public void Loops_and_posts_are_read(string row, string steps) => Assert.Equal(steps, Reader.Steps(row));
}
