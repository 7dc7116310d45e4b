using PatternStudio.Craft.Anatomy;

namespace PatternStudio.Craft.Tests.Anatomy;

public sealed class LoopTroubleTests
{
    [Theory]
    [InlineData("[Yo, insert hook in st, yo and pull up a loop] 3 times, yo and draw through all 6 loops", "StatedDiffers 6 of 7: yo and draw through all 6 loops")]
    [InlineData("Yo, insert hook in st, yo and pull up a loop (4 loops on hook), yo and draw through all 3 loops", "StatedDiffers 4 of 3: 4 loops on hook")]
    [InlineData("Insert hook in st, yo and pull up a loop, yo and draw through 2 loops, yo and draw through 2 loops", "TooFewOnHook 2 of 1: yo and draw through 2 loops")]
    [InlineData("Yo, insert hook in st, yo and pull up a loop, yo and draw through 2 loops", "EndsOpen 1 of 2: yo and draw through 2 loops")]
    [InlineData("Yo, insert hook in st, yo and pull up a loop, yo and draw through both loops", "StatedDiffers 2 of 3: yo and draw through both loops")]
    public void What_does_not_add_up_is_told_where_it_stands(string words, string trouble)
    {
        LoopTrouble found = Assert.Single(LoopTroubles.Of(MotionReading.Whole(words)));
        Assert.Equal(trouble, $"{found.Kind} {found.Stated} of {found.OnHook}: {words.Substring(found.Span.Start, found.Span.Length)}");
    }

    [Theory]
    [InlineData("[Yo, insert hook in st, yo and pull up a loop (7 loops on hook)] 3 times, yo and draw through all 7 loops")]
    [InlineData("*Yo, insert hook in st, yo and pull up a loop (3 loops on hook); rep from * 2 more times (7 loops on hook), yo and draw through all 7 loops")]
    public void A_count_said_for_one_turn_of_a_repeat_is_right_when_that_turn_has_it(string words) =>
        Assert.Empty(LoopTroubles.Of(MotionReading.Whole(words)));

    [Fact]
    public void Nothing_is_concluded_from_words_that_were_not_all_read()
    {
        ReadMotions read = MotionReader.Read("Yo, insert hook in st, yo and pull up a loop, flourish the hook, yo and draw through all 9 loops");
        Assert.NotEmpty(read.Unread);
        Assert.Empty(LoopTroubles.Of(read));
        Assert.Null(StitchAnatomy.Of(read));
    }
}
