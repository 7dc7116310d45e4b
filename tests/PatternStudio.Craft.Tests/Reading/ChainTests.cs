namespace PatternStudio.Craft.Tests.Reading;

public sealed class ChainTests
{
    [Theory]
    [InlineData("Ch 3.", "ch 3")]
    [InlineData("Chain 3.", "ch 3")]
    [InlineData("5 ch.", "ch 5")]
    [InlineData("ch3, turn.", "ch 3; turn")]
    [InlineData("Make a chain of 20 stitches.", "ch 20")]
    [InlineData("Ch three.", "ch 3")]
    [InlineData("Ch 5 to turn.", "ch 5; turn")]
    [InlineData("Ch 2 and turn.", "ch 2; turn")]
    public void Chains_are_read(string row, string steps) => Assert.Equal(steps, Reader.Steps(row));

    [Theory]
    [InlineData("Ch 3 (counts as dc), turn.", "ch 3=dc; turn")]
    [InlineData("Ch 3 (counts as the first dc here and throughout).", "ch 3=dc")]
    [InlineData("Ch 4 (counts as dc and ch 1).", "ch 4=dc+ch1")]
    [InlineData("Ch 5 (counts as dc, ch 2).", "ch 5=dc+ch2")]
    [InlineData("Ch 2 (does not count as a st).", "ch 2=none")]
    [InlineData("Ch 1 (not counted), sc in next st.", "ch 1=none; sc next st")]
    [InlineData("Ch 3 for first dc.", "ch 3=dc")]
    [InlineData("Ch 3 (counts as st).", "ch 3=st")]
    public void What_a_chain_stands_for_is_read(string row, string steps) => Assert.Equal(steps, Reader.Steps(row));

    [Theory]
    [InlineData("Dc in 4th ch from hook (skipped 3 chs count as first dc), dc in each ch across.", "dc fromhook4 ch skipped=dc; dc each ch to-end")]
    [InlineData("Dc in 6th ch from hook (counts as dc, ch 1, dc).", "dc fromhook6 ch skipped=dc+ch1")]
    [InlineData("Dc in 4th ch from hook (counts as 2 dc) and in each ch across.", "dc fromhook4 ch skipped=dc; dc each ch to-end")]
    [InlineData("(2 dc, ch 2, 3 dc) in 4th ch from hook (3 skipped chs count as dc).", "(dc x2; ch 2; dc x3) fromhook4 ch skipped=dc")]
    [InlineData("Hdc in 3rd ch from hook (skipped chs do not count).", "hdc fromhook3 ch skipped=none")]
    public void What_skipped_chains_stand_for_is_read(string row, string steps) => Assert.Equal(steps, Reader.Steps(row));
}
