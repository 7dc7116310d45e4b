using PatternStudio.Craft.Checking;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>
/// Loops that do not add up. The right numbers are those of the stitch handbook at zanotowane.pl/719/2920 and of daisyfarmcrafts.com/puff-stitch
/// (n open legs of dc leave n + 1 loops, a puff of n pulls 2n + 1).
/// </summary>
public sealed class DefinitionFindingTests
{
    private const string UseIt = "\n\n" + Texts.TenSc + "Row 2: Ch 1, turn, sc in first sc, *puff in next sc, sc in next 2 sc; rep from * across.";

    [Theory]
    [InlineData("[Yo, insert hook in st, yo and draw up a loop] 3 times in same st, yo and draw through all 7 loops on hook.")]
    [InlineData("[Yo, insert hook in st, yo and draw up a loop] 4 times in same st, yo and draw through all 9 loops on hook.")]
    [InlineData("[Yo, insert hook in st, yo and draw up a loop] 3 times in same st (7 loops on hook), yo and draw through 6 loops, yo and draw through 2 loops.")]
    [InlineData("[Yo, insert hook in st, yo and draw up a loop, yo and draw through 2 loops] 3 times in same st, yo and draw through all 4 loops on hook.")]
    [InlineData("Wave the yarn about 3 times, yo and draw through all 9 loops on hook.")]
    public void Loops_that_add_up_or_words_that_are_not_read_give_none(string body) =>
        Assert.Equal([], Texts.Codes("Special stitches\nPuff stitch (puff): " + body + UseIt));

    [Theory]
    [InlineData("[Yo, insert hook in st, yo and draw up a loop] 4 times in same st, yo and draw through all 7 loops on hook.", "yo and draw through all 7 loops on hook", "all 9 loops")]
    [InlineData("[Yo, insert hook in st, yo and draw up a loop] 3 times in same st (6 loops on hook), yo and draw through all loops on hook.", "6 loops on hook", "(7 loops")]
    [InlineData("[Yo, insert hook in st, yo and draw up a loop, yo and draw through 2 loops] 3 times in same st, yo and draw through all five loops on hook.", "yo and draw through all five loops on hook", "all four loops")]
    public void A_stated_number_that_alone_is_wrong_is_found_at_its_words_and_corrected(string body, string at, string right)
    {
        string text = "Special stitches\nPuff stitch (puff): " + body + UseIt;
        Assert.Equal([FindingCodes.LoopCountDiffers], Texts.Codes(text));
        Assert.Contains(at, Texts.Words(text), StringComparison.Ordinal);
        Assert.Contains(right, Texts.Mended(text), StringComparison.Ordinal);
    }

    [Fact]
    public void A_draw_through_more_loops_than_there_are_is_found()
    {
        const string text = "Special stitches\nPuff stitch (puff): [Yo, insert hook in st, yo and draw up a loop] 3 times in same st, yo and draw through 8 loops." + UseIt;
        Assert.Equal("In 'puff' the hook is to draw through 8 loops here, but only 7 are on it. Correct the number, or the motions before it.", Texts.Only(text).Message);
    }

    [Fact]
    public void A_stitch_that_ends_with_loops_left_is_found()
    {
        const string text = "Special stitches\nPuff stitch (puff): Yo, insert hook in st, yo and draw up a loop, yo and draw through 2 loops." + UseIt;
        Assert.Equal([FindingCodes.LoopsLeft], Texts.Codes(text));
        Assert.Equal("'puff' ends with 2 loops on the hook, and a finished stitch leaves 1. Say how the others are worked off.", Texts.Only(text).Message);
    }

    [Theory]
    [InlineData("Yo, insert hook in st, yo and draw up a loop, yo and draw through 2 loops (2 loops remain on hook).")]
    [InlineData("Yo, insert hook in st, yo and draw up a loop, yo and draw through 2 loops, leaving last loop on hook.")]
    public void Loops_left_on_purpose_are_none(string body) =>
        Assert.DoesNotContain(FindingCodes.LoopsLeft, Texts.Codes("Special stitches\nPuff stitch (puff): " + body + UseIt));
}
