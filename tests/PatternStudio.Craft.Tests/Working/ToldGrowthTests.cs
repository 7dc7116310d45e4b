namespace PatternStudio.Craft.Tests.Working;

/// <summary>'Repeat Row 2, increasing 8 dc each row': words that say again what the row does, or something else. Counts by hand.</summary>
public sealed class ToldGrowthTests
{
    private const string Begun = "Ch 20\nRow 1: Dc in 4th ch from hook and in each ch across. (18)\nRow 2: Ch 3, turn, dc in same st, dc in each st across. (19)\n";

    /// <summary>Row 2 adds one.</summary>
    [Theory]
    [InlineData("Rows 3-5: Repeat Row 2, increasing 1 dc each row. (22 dc)")]
    [InlineData("Rows 3-5: Rep Row 2, increasing by one st every row. (22 dc)")]
    [InlineData("Repeat Row 2 three more times, increasing 1 st in each row. (22 dc)")]
    public void Rows_that_grow_as_told_are_worked(string words) => Assert.Equal("18 19 20 21 22", Worked.Totals(Begun + words));

    /// <summary>Row 2 as it stands does not add two: how the maker gets there is not told.</summary>
    [Theory]
    [InlineData("Rows 3-5: Repeat Row 2, increasing 2 dc each row. (25 dc)")]
    [InlineData("Rows 3-5: Repeat Row 2, increasing 1 dc at each end of each row. (25 dc)")]
    public void Rows_that_grow_otherwise_are_not_checked(string words) => Assert.Equal("18 19 ? ? ?", Worked.Totals(Begun + words));

    /// <summary>A wrong total of such rows is found at them.</summary>
    [Fact]
    public void A_wrong_total_is_found() => Assert.StartsWith("18 19 20 21 22 Row 5 ", Worked.Totals(Begun + "Rows 3-5: Repeat Row 2, increasing 1 dc each row. (23 dc)"), StringComparison.Ordinal);
}
