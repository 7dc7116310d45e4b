using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Tests.Reading;

public sealed class DefinitionTests
{
    [Theory]
    [InlineData("Special Stitch\nShell: 5 dc in same st.", "shell", "5dc same st")]
    [InlineData("V-stitch (V-st): (dc, ch 1, dc) in same st or sp.", "vst", "(dc; ch 1; dc) same stitchorspace")]
    [InlineData("Picot: Ch 3, sl st in 3rd ch from hook.", "picot", "ch 3; slst fromhook3 ch")]
    [InlineData("Cable over 4 sts (C4): Sk next 2 sts, FPtr around each of next 2 sts, FPtr around first skipped st, FPtr around second skipped st.", "c4", "sk 2 st; fptr each 2 st; fptr skipped st; fptr skipped st")]
    public void A_stitch_told_in_stitches_has_steps(string text, string id, string steps)
    {
        StitchDefinition definition = Assert.Single(PatternReader.Read($"{text}\n\nCh 21.\nRow 1: Sc in next ch.").Definitions);
        Assert.Equal(id, definition.Id.Value);
        Assert.Equal(steps, TreeText.Of(definition.Steps));
    }

    [Fact]
    public void A_stitch_told_in_motions_has_them_loop_by_loop()
    {
        StitchDefinition definition = Assert.Single(PatternReader.Read(
            "Puff stitch (puff): [Yo, insert hook in st, yo and draw up a loop] 3 times in same st, yo and draw through all 7 loops on hook.\n\nCh 22.\nRow 1: *Puff in next ch, sc in next ch; rep from * across.").Definitions);
        Assert.Equal("puff", definition.Id.Value);
        Assert.Equal(["puff", "Puff stitch"], definition.Names);
        Assert.Empty(definition.Motions!.Unread);
        Assert.Equal(10, definition.Motions.Motions.Count);
    }

    [Fact]
    public void A_designers_own_name_is_read_in_rows() =>
        Assert.Contains("limpet next ch; sc next group:limpet", Reader.Pattern("Special Stitches\nLimpet: (2 dc, ch 1, 2 dc) in st indicated.\n\nCh 22.\nRow 1: Limpet in next ch, sc in next limpet."), StringComparison.Ordinal);

    [Fact]
    public void A_definition_inside_a_row_is_kept()
    {
        Pattern pattern = PatternReader.Read("Row 1: 1 wheel st in next st (wheel st: thread over hook, insert in st, pull through, thread over and pull through all loops), s c in next wheel st.");
        Assert.Equal("wheel st", Assert.Single(Assert.Single(pattern.Definitions).Names));
        Assert.DoesNotContain("UNREAD", TreeText.Of(pattern), StringComparison.Ordinal);
    }
}
