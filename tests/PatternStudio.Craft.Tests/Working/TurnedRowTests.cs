namespace PatternStudio.Craft.Tests.Working;

/// <summary>Rows back and forth told in one row's words, as of leaves and scallops. Common practice, no source; the counts are by hand.</summary>
public sealed class TurnedRowTests
{
    /// <summary>10 chains, 8 worked, 3 in the last, 8 back: 8 + 3 + 8 = 19. Then 8, 3 in the middle one, 7 each time: 18, and 1 left at the tip.</summary>
    [Fact]
    public void A_leaf_grows_by_rows_of_its_own() => Assert.Equal("19 18 18 18", Worked.Totals(
        "Ch 10, sc in 2nd ch from hook, sc in each of next 7 ch, 3 sc in last ch, working on other side of ch, sc in each of next 8 ch, "
        + "*ch 3, turn, working in back loop only, sc in each of next 9 sc, 3 sc in next sc, sc in each of next 6 sc, rep from * twice."));

    /// <summary>Turned twice with nothing between, which is meant is not said: what comes behind is not checked.</summary>
    [Fact]
    public void Two_turns_together_are_not_guessed_at() => Assert.Equal("5 4 ?", Worked.Totals(
        "Ch 6, sc in 2nd ch from hook, sc in each of next 4 ch, ch 1, turn, sc in each of next 4 sc, ch 1, turn, ch 1, turn, sc in each of next 3 sc."));

    /// <summary>What lies under a row after a short row is not known without more words.</summary>
    [Fact]
    public void What_comes_after_short_rows_is_not_checked() => Assert.Equal("10 6 4 ?", Worked.Totals(
        Checking.Texts.TenSc + "Row 2: Ch 1, turn, sc in each of next 6 sc, ch 1, turn, sc in each of next 4 sc.\nRow 3: Ch 1, turn, sc in each sc across."));
}
