using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Tests.Reading;

public sealed class CountTests
{
    [Theory]
    [InlineData("(20 sts)", "20 st")]
    [InlineData("[20 tr]", "20 tr")]
    [InlineData("— 20 sc", "20 sc")]
    [InlineData(": 12 dc.", "12 dc")]
    [InlineData("(12)", "12 stitches")]
    [InlineData("(10 puffs, 11 sc, 1 ch-2 sp)", "10 puff, 11 sc, 1 ch-2sp")]
    [InlineData("— 23 sts (5 bo, 18 sc)", "23 st, 5 bobble, 18 sc")]
    [InlineData("(35 patterns)", "35 group:pattern")]
    [InlineData("(7 dc on each side — 28 dc in all)", "7 dc?, 28 dc")]
    [InlineData("(4 loops)", "4 sp")]
    [InlineData("(158 dc at the end of Row 20)", "158 dc")]
    [InlineData("You should have 18 sts.", "18 st")]
    public void Stated_counts_are_read(string words, string count) => Assert.Equal(count, TreeText.Of(Reader.Row($"Sc in each st across. {words}").Stated!));

    [Fact]
    public void A_count_on_the_way_is_a_remark() =>
        Assert.Equal("sc next 3 sc; “(3 sc)”; dc next 2 sc", Reader.Steps("Sc in next 3 sc (3 sc), dc in next 2 sc."));

    [Fact]
    public void A_turn_may_follow_the_count()
    {
        RowInstruction row = Reader.Row("1 d c in each d c (69 d c), turn.");
        Assert.Equal("dc each dc; turn", TreeText.Of(row.Steps));
        Assert.Equal("69 dc", TreeText.Of(row.Stated!));
    }

    [Fact]
    public void Numbers_for_several_rows_are_told_apart()
    {
        var row = (RowInstruction)Craft.Reading.PatternReader.Read("Rows 3–5: Sc in each st across. (7, 9, 11 sc)").Pieces[0].Items[0];
        Assert.True(row.Stated!.PerRow);
        Assert.All(row.Stated.Items, item => Assert.Equal(CountedThing.Other, item.Thing));
    }
}
