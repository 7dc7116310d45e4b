using CsCheck;
using PatternStudio.Craft.Anatomy;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Tests.Anatomy;

/// <summary>The many ways in which definitions say the same thing: common practice, no source, wordings of our own.</summary>
public sealed class WordingTests
{
    [Theory]
    [InlineData("Yarn over (yo). Insert your hook into the stitch. Yarn over and draw up a loop. You will now have 3 loops on your hook. Yarn over and pull through all three loops.", "2 2 3 3 1")]
    [InlineData("Insert the hook in the next stitch, wrap the yarn around the hook and pull up a loop. Yarn over and pull through both loops.", "1 2 1")]
    [InlineData("Wool round hook, insert hook under two top threads of next stitch, wool round hook, draw through stitch, wool round hook and draw through all 3 loops", "2 2 3 1")]
    [InlineData("Thread over hook, insert hook in next stitch, thread over and draw through (3 loops on hook), thread over and draw through 2 loops, thread over and draw through remaining 2 loops", "2 2 3 3 2 1")]
    [InlineData("Wool over, insert hook in 3d stitch of 1st row, take up wool and draw through, (over, draw through 2 stitches) twice", "2 2 3 2 1")]
    [InlineData("Yo, insert hook, yo and pull through, yo and pull through 2, yo and pull through 2", "2 2 3 2 1")]
    [InlineData("Yarn over hook 7 times, insert hook in st, yarn over, draw up a loop, yarn over, draw through all 9 loops on hook, ch 1", "8 8 9 1 1")]
    [InlineData("Yo, insert hook in same st, yo, pull up a loop; rep 2 more times, yo and draw through all 7 loops", "2 2 3 4 4 5 6 6 7 1")]
    [InlineData("Insert hook under front loops only of next 2 sts, yo and draw through both sts, yo and draw through 2 loops", "1 1 2 1")]
    [InlineData("Insert hook in front loop of next st, insert hook in front loop of following st, yo and pull through both loops, yo and pull through both loops on hook", "1 1 2 1")]
    [InlineData("Draw up a loop in each of next 3 sts, yo and draw through all 4 loops on hook", "1 2 2 3 3 4 1")]
    [InlineData("Yo, draw up a loop in next st, yo, draw through 2 loops, yo, draw through 2 loops", "2 2 3 2 1")]
    [InlineData("Draw up loop to ½ inch, yo and draw through loop, insert hook under back strand of long loop, yo and draw up a loop, yo and draw through 2 loops", "1 1 1 2 1")]
    [InlineData("*Yo, insert hook in st, yo, pull up a loop to approx. 1/2\" (1.3 cm), yo, pull through 2 loops* 2 times, yo, pull through all 3 loops on hook", "2 2 3 2 3 3 4 3 1")]
    [InlineData("Yarn over, insert hook from front to back and to front again around next dc, pull loop through, yarn over and complete the dc", "2 2 3 2 1")]
    [InlineData("Dc in next st up to last yo, dc in next st up to last yo, yo and draw through all 3 loops on hook", "2 2 3 2 3 3 4 3 1")]
    [InlineData("Yo, insert hook in horizontal bar of last st, yo, pull up a loop, insert hook in next st, yo, pull up a loop, [yo, draw through 2 loops] 3 times", "2 2 3 3 4 3 2 1")]
    public void Every_wording_gives_its_loops(string words, string loops) => Assert.Equal(loops, MotionReading.Loops(words));

    [Fact]
    public void Stitches_named_in_UK_terms_are_those_of_the_United_Kingdom()
    {
        ReadMotions uk = MotionReading.Whole("Holding back last loop of each st on hook, 3 tr in same st, yrh and draw through all 4 loops on hook", Terminology.Uk);
        Assert.Equal(StitchFamily.Cluster(1, 3).Count, uk.Motions.Count);
        Assert.Equal(1, StitchAnatomy.Of(uk)!.YarnOvers);
    }

    [Fact]
    public void A_span_tells_the_words_of_its_motion()
    {
        const string Words = "Yo, insert hook in st, yo and draw up a loop, yo and draw through all 3 loops on hook";
        string[] told = [.. MotionReading.Whole(Words).Motions.Select(located => Words.Substring(located.Span.Start, located.Span.Length))];
        Assert.Equal(["Yo", "insert hook in st", "yo and draw up a loop", "yo and draw through all 3 loops on hook"], told);
    }

    [Fact]
    public void Only_the_words_under_the_span_are_read()
    {
        const string Text = "Puff (puff): Yo, insert hook in st, yo and pull up a loop, yo and draw through all 3 loops. Row 1: Sc across.";
        int start = Text.IndexOf("Yo", StringComparison.Ordinal);
        ReadMotions read = MotionReader.Read(Text, TextSpan.FromTo(start, Text.IndexOf(" Row", StringComparison.Ordinal)));
        Assert.True(read.IsWhole);
        Assert.Equal(start, read.Motions[0].Span.Start);
    }

    [Theory]
    [InlineData("(2 dc, ch 1, 2 dc) in same st", false)]
    [InlineData("Insert hook in st, yo and pull up a loop, yo and draw through 2 loops", true)]
    public void Stitches_named_only_tell_no_motions(string words, bool tells) => Assert.Equal(tells, MotionReading.Whole(words).TellsMotions);

    [Fact]
    public void A_repeat_larger_than_any_stitch_is_left_unread()
    {
        string words = string.Concat(Enumerable.Repeat("[", 30)) + "yo" + string.Concat(Enumerable.Repeat("] 900 times", 30));
        ReadMotions read = MotionReader.Read(words);
        Assert.False(read.IsWhole);
        Assert.InRange(read.Motions.Count, 0, 5_000);
    }

    [Fact]
    public void Any_text_is_read_without_harm()
    {
        string[] pieces =
        [
            "yo", "insert hook", "in next st", "draw", "pull up", "a loop", "through", "all", "7", "loops", "on hook", "rep from *", "*", "[", "]", "(", ")", "3 times",
            "twice", "dc", "keeping last loop", "of each", "drop loop", "ch 1", "½", "\"", "until", ",", ".", "work off", "2 at a time", "ß☃", "99999999999", "-", "both",
        ];
        Gen.Int[0, pieces.Length - 1].Select(i => pieces[i]).List[0, 40].Sample(soup =>
        {
            string text = string.Join(' ', soup);
            ReadMotions read = MotionReader.Read(text);
            _ = LoopTroubles.Of(read);
            _ = StitchAnatomy.Of(read);
            return read.Unread.Concat(read.Motions.Select(located => located.Span)).All(span => span.Start >= 0 && span.Length > 0 && span.End <= text.Length);
        });
    }

    /// <summary>Work grows with the words and no faster: were it with their square, these would take minutes.</summary>
    [Theory]
    [InlineData("yo, insert hook in st, yo and pull up a loop, yo and draw through all loops; flourish ( ")]
    [InlineData("draw ")]
    [InlineData("3, ")]
    [InlineData("you should have ")]
    [InlineData("* [yo] 1000 times rep from * for each ")]
    public void A_text_of_any_length_is_read(string words) =>
        Assert.NotNull(MotionReader.Read(string.Concat(Enumerable.Repeat(words, 5_000))));
}
