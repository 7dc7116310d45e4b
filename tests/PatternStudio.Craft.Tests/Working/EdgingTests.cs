namespace PatternStudio.Craft.Tests.Working;

/// <summary>Edgings around rows worked back and forth. Common practice, no source; the counts are by hand.</summary>
public sealed class EdgingTests
{
    private const string Square = "Ch 21.\nRow 1: sc in 2nd ch from hook and in each ch across. 20 sc.\nRow 2: Ch 1, turn, sc in each sc across. 20 sc.\n";

    /// <summary>Down the side first, so that the last row's own edge comes last: 2 + 3 + 18 + 3 + 2 + 3 + 18 + 3 = 52.</summary>
    [Fact]
    public void An_edging_that_begins_down_the_side_ends_along_the_last_row() => Assert.Equal("20 20 52", Worked.Totals(
        Square + "Edging: Do not turn. Ch 1, work 2 sc evenly down the side, 3 sc in corner, 18 sc across the bottom, 3 sc in the next corner, 2 sc up other side, 3 sc in corner, sc in next 18 sts, 3 sc in last corner, join with a sl st. (52 sc)"));

    /// <summary>A number with 'along the row ends' is the number in all.</summary>
    [Theory]
    [InlineData("work 12 sc evenly around the row ends")]
    [InlineData("12 sc evenly along row ends")]
    [InlineData("work 12 sc across the row ends")]
    public void Stitches_along_the_row_ends_are_told_in_all(string words) => Assert.Equal("20 20 12", Worked.Totals(Square + $"Edge\nRnd 1: Ch 1, {words}, join with sl st to first sc. (12 sc)"));

    /// <summary>How many go around a scarf is not told: read, and not checked.</summary>
    [Theory]
    [InlineData("sc evenly around the scarf, working 3 sc in each corner; join with sl st.")]
    [InlineData("sc evenly around entire blanket, placing 3 sc in each corner st; join.")]
    public void What_is_left_to_the_maker_is_not_checked(string words) => Assert.Equal("20 20 ?", Worked.Totals(Square + $"Edging\nRnd 1: Ch 1, {words}"));
}
