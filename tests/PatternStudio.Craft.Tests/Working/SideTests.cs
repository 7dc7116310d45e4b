namespace PatternStudio.Craft.Tests.Working;

/// <summary>Edgings worked lengthwise with scallops at their side. Common practice, no source; the counts are by hand.</summary>
public sealed class SideTests
{
    private const string Strip = "Ch 4, dc in 4th ch from hook, ch 2, 2 dc in same space, ch 5, turn.\n2nd Row: 2 dc, ch 2, 2 dc (shell) in ch-2 loop, ch 5, turn.\n3rd & 4th Rows: Shell in center of shell, ch 5, turn.\n";

    /// <summary>Rows turn with ch 5: row 5 meets that of row 4 first and that of row 2 next. Shell 4 + 5 dc + 1 sc = 10.</summary>
    [Fact]
    public void Loops_at_the_side_are_those_of_every_other_row() => Assert.Equal("4 4 4 4 10", Worked.Totals(
        Strip + "5th Row: Shell in center of shell, ch 3, working along side of edging, work 5 dc with ch 3 between each dc in next ch-5 loop, ch 3, sc in next ch-5 loop on side, ch 3, turn."));

    /// <summary>A third loop at that side there is none: the row is not checked, and no error is claimed of it.</summary>
    [Fact]
    public void A_loop_that_is_not_there_is_not_made_up() => Assert.Contains("?", Worked.Totals(
        Strip + "5th Row: Shell in center of shell, working along side of edging, sc in next ch-5 loop, sc in next ch-5 loop, sc in next ch-5 loop, turn."), StringComparison.Ordinal);
}
