using PatternStudio.Craft.Anatomy;

namespace PatternStudio.Craft.Tests.Anatomy;

/// <summary>
/// Groups in one place. Sources: vcrochetpatterns.com (2-dc cluster), zanotowane.pl/719/2920 (open legs leave n + 1, half doubles 2n + 1),
/// squishyandco.com (5-dc bobble, 6 loops), daisyfarmcrafts.com (puff, 2n + 1), blog.annettepetavy.com 2012/01 (puff closed in two steps),
/// wendyteaches 2018/03 and pollyplum.com (popcorn). Old wordings: 'keeping last loop', 'work off all loops at one time', common in booklets of about 1950.
/// </summary>
public sealed class GroupTests
{
    [Theory]
    [InlineData("[Yo, insert hook in st, yo and draw up a loop] 3 times in same st, yo and draw through all 7 loops on hook", "2 2 3 4 4 5 6 6 7 1")]
    [InlineData("[Yo, insert hook in st, yo and pull up a long loop] 3 times in same st, yo, draw through 6 loops, yo, draw through remaining 2 loops", "2 2 3 4 4 5 6 6 7 2 1")]
    [InlineData("Holding back last loop of each st on hook, 3 dc in same st, yo and draw through all 4 loops on hook", "2 2 3 2 3 3 4 3 4 4 5 4 1")]
    [InlineData("3 dc in same space, keeping last loop of each dc on hook, thread over and work off all loops at one time", "2 2 3 2 3 3 4 3 4 4 5 4 1")]
    [InlineData("2 d c in same st keeping last loop of each d c on hook, thread over and pull through all loops at one time", "2 2 3 2 3 3 4 3 1")]
    [InlineData("* thread over twice, insert in loop, pull through and work off 2 loops twice, repeat from * once, thread over and work off all loops at one time", "3 3 4 3 2 4 4 5 4 3 1")]
    [InlineData("Thread over needle, insert in loop, pull through and work off 2 loops, thread over and work off all loops 2 at a time", "2 2 3 2 1")]
    [InlineData("Dc in next st until 2 loops remain on hook, dc in next st until 3 loops remain on hook, yo and draw through all 3 loops", "2 2 3 2 3 3 4 3 1")]
    [InlineData("Work 5 dc in same st, drop loop from hook, insert hook in top of first dc, pull dropped loop through", "1 1")]
    [InlineData("5 d c in same st, drop loop from hook, insert in 1st d c, pick up loop and pull through", "1 1")]
    [InlineData("4 dc in st, remove hook from loop, insert hook from front to back in first dc, place dropped loop on hook and draw through st, ch 1 to close", "1 1 1")]
    [InlineData("Wool over, draw up a loop in st, wool over, draw up a loop in same st, over, draw through all the loops on needle", "2 2 3 4 4 5 1")]
    [InlineData("Insert hook in each of the next 4 sts of ch pulling a loop through each st, thread over and pull through all 5 loops at one time", "1 2 2 3 3 4 4 5 1")]
    [InlineData("*Yo, insert hook in st, yo and pull up a loop (3 loops on hook); rep from * until there are 9 loops on hook, yo and draw through all 9 loops", "2 2 3 3 4 4 5 5 6 6 7 7 8 8 9 9 1")]
    [InlineData("[Yrh, insert hook in st, yrh and pull up a loop even with ch-3] 4 times, yrh and pull through all loops, ch 1 to secure", "2 2 3 4 4 5 6 6 7 8 8 9 1 1")]
    [InlineData("{[Yo, insert hook in st, yo, pull up a loop] twice, yo, draw through 4 loops} twice, yo, draw through all 3 loops", "2 2 3 4 4 5 2 3 3 4 5 5 6 3 1")]
    public void The_loops_on_the_hook_are_those_of_the_books(string words, string loops)
    {
        Assert.Equal(loops, MotionReading.Loops(words));
        Assert.Empty(LoopTroubles.Of(MotionReading.Whole(words)));
    }

    [Theory]
    [InlineData("[Insert hook in next st, yo and pull up a loop] twice, yo and draw through all 3 loops", 2, 2)]
    [InlineData("Insert hook in st, yo and pull up a loop, insert hook in next st, yo and pull up a loop, yo and draw through all 3 loops", 2, 2)]
    [InlineData("[Yo, insert hook in st, yo and draw up a loop] 3 times in same st, yo and draw through all 7 loops on hook", 3, 1)]
    [InlineData("[Yo, insert hook in next st, yo and draw up a loop] 3 times in same st, yo and draw through all 7 loops on hook", 3, 1)]
    [InlineData("1 tr c in each of the next 3 sts keeping last loop of each tr c on hook, thread over and work off all loops at one time", 3, 3)]
    [InlineData("Draw up a loop in each of next 2 sts, yo and draw through all 3 loops on hook", 2, 2)]
    [InlineData("[Yo, insert hook in st, yo and pull up a loop, yo, draw through 2 loops] over next 2 sts, yo, draw through all 3 loops", 2, 2)]
    [InlineData("Work 5 dc in same st, drop loop from hook, insert hook in top of first dc, pull dropped loop through", 5, 1)]
    public void Legs_and_feet_are_told_apart(string words, int legs, int feet)
    {
        StitchAnatomy anatomy = StitchAnatomy.Of(MotionReading.Whole(words))!;
        Assert.Equal((legs, feet), (anatomy.Legs, anatomy.Feet));
    }

    [Theory]
    [InlineData("Insert hook in st, yo and draw through st and loop on hook", TopKind.Slip)]
    [InlineData("Insert hook in st, yo and pull up a loop, yo and draw through both loops", TopKind.Plain)]
    [InlineData("[Insert hook in next st, yo and pull up a loop] twice, yo and draw through all 3 loops", TopKind.Gathered)]
    [InlineData("[Yo, insert hook in st, yo and pull up a loop] 3 times, yo and draw through all 7 loops, ch 1", TopKind.Locked)]
    [InlineData("5 dc in same st, drop loop, insert hook in first dc, draw dropped loop through", TopKind.Popcorn)]
    [InlineData("5 dc in same st", TopKind.Several)]
    public void The_top_tells_how_it_was_closed(string words, TopKind top) =>
        Assert.Equal(top, StitchAnatomy.Of(MotionReading.Whole(words))!.Top);

    /// <summary>n open legs leave n + 1 loops, n open half doubles 2n + 1: zanotowane.pl/719/2920.</summary>
    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(9)]
    public void Open_legs_leave_as_many_loops_as_the_handbook_says(int legs)
    {
        Assert.Equal(legs + 1, StitchAnatomy.Of(StitchFamily.Cluster(1, legs)).Loops[^2]);
        Assert.Equal(legs + 1, StitchAnatomy.Of(StitchFamily.Together(2, legs)).Loops[^2]);
        Assert.Equal(2 * legs + 1, StitchAnatomy.Of(StitchFamily.Puff(legs)).Loops[^2]);
        Assert.Equal(1, StitchAnatomy.Of(StitchFamily.HalfDoublesTogether(legs)).LoopsLeft);
        Assert.Equal(legs, StitchAnatomy.Of(StitchFamily.Together(0, legs)).Feet);
        Assert.Equal(1, StitchAnatomy.Of(StitchFamily.Cluster(1, legs)).Feet);
    }
}
