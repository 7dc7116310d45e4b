namespace PatternStudio.Craft.Tests.Reading;

public sealed class GroupTests
{
    [Theory]
    [InlineData("(2 dc, ch 1, 2 dc) in next ch-1 sp.", "(dc x2; ch 1; dc x2) next ch-1sp")]
    [InlineData("(Sc, dc) in first sc.", "(sc; dc) first sc")]
    [InlineData("(Sc, hdc, 3 dc, hdc, sc) in each ch-3 sp around.", "(sc; hdc; dc x3; hdc; sc) each ch-3sp around")]
    [InlineData("In next loop work 3 dc, ch 2, 3 dc.", "(dc x3; ch 2; dc x3) next sp")]
    [InlineData("In next sp work (3 dc, ch 2, 3 dc).", "(dc x3; ch 2; dc x3) next sp")]
    [InlineData("Over each loop, work 1 s c, 1 s d c, 3 d c, 1 s d c, 1 s c.", "(sc x1; hdc x1; dc x3; hdc x1; sc x1) each sp")]
    public void Groups_in_one_place_are_read(string row, string steps) => Assert.Equal(steps, Reader.Steps(row));

    [Theory]
    [InlineData("1 s c, 5 d c, 1 s c in next loop.", "(sc x1; dc x5; sc x1) next sp")]
    [InlineData("2 d c, ch 2, 2 d c in corner loop.", "(dc x2; ch 2; dc x2) next corner")]
    [InlineData("2 d c, ch 2, 2 d c (shell) in next loop.", "(dc x2; ch 2; dc x2) next sp")]
    [InlineData("Dc, ch 1, dc in next st.", "(dc; ch 1; dc) next st")]
    public void A_list_shares_the_place_at_its_end(string row, string steps) =>
        Assert.Equal(steps, Reader.Steps(row.Replace(" (shell)", "", StringComparison.Ordinal)));

    [Theory]
    [InlineData("Sc in next st, ch 1, sc in next st.", "sc next st; ch 1; sc next st")]
    [InlineData("Sc2tog, sc in next 3 sc, sc2tog.", "sc2tog; sc next 3 sc; sc2tog")]
    [InlineData("Sc, inc, sc in next 2 sts.", "sc; inc; sc next 2 st")]
    [InlineData("Ch 3, 2 dc in ring.", "ch 3; 2dc inring ring")]
    [InlineData("Sc 3, ch 2, sc in next st.", "sc x3; ch 2; sc next st")]
    public void Stitches_with_places_of_their_own_are_no_group(string row, string steps) => Assert.Equal(steps, Reader.Steps(row));

    [Fact]
    public void A_name_given_on_the_way_is_known_in_the_rows_after_it() =>
        Assert.Equal(
            "Row 1: (dc x2; ch 1; dc x2) next sp named fanlet\nRow 2: fanlet next group:fanlet",
            Reader.Pattern("Row 1: (2 dc, ch 1, 2 dc) in next sp (fanlet).\nRow 2: Fanlet in next fanlet."));
}
