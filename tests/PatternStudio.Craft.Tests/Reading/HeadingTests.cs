namespace PatternStudio.Craft.Tests.Reading;

public sealed class HeadingTests
{
    [Theory]
    [InlineData("Row 1 (RS): Sc in next st.", "Row 1 RS")]
    [InlineData("ROW 1: SC IN NEXT ST.", "Row 1")]
    [InlineData("**Row 1:** Sc in next st.", "Row 1")]
    [InlineData("Rnd 2 - Sc in next st.", "Round 2")]
    [InlineData("Round 2. Sc in next st.", "Round 2")]
    [InlineData("R3: sc in next st", "Round 3")]
    [InlineData("Rows 4 and 6: Sc in next st.", "Row 4,6")]
    [InlineData("Rows 3–10: Sc in next st.", "Row 3-10")]
    [InlineData("ROWS 3 - 8: SC IN NEXT ST.", "Row 3-8")]
    [InlineData("Row 1 — 1 sc in next st.", "Row 1")]
    [InlineData("2nd Round. Sc in next st.", "Round 2")]
    [InlineData("3d row: sc in next st.", "Row 3")]
    [InlineData("5th, 6th and 7th Rows. Sc in next st.", "Row 5,6,7")]
    [InlineData("13th to 16th Rows—Sc in next st.", "Row 13-16")]
    [InlineData("Next 4 rounds: Sc in next st.", "Round next 4")]
    [InlineData("Next row: Sc in next st.", "Row next 1")]
    [InlineData("Set-up row: Sc in next st.", "Row next 1")]
    [InlineData("Row 2 (WS) and all even rows: Sc in next st.", "Row every other 2 WS")]
    [InlineData("Row 2 and all even rows: Sc in next st.", "Row every other 2")]
    [InlineData("Row 3 sc in next st", "Row 3")]
    public void Row_headings_are_read(string line, string heading) => Assert.StartsWith(heading + ": sc next st", Reader.Pattern(line), StringComparison.Ordinal);

    [Theory]
    [InlineData("Ch 21.", "Foundation: ch 21")]
    [InlineData("Foundation: 59 ch.", "Foundation: ch 59")]
    [InlineData("With A, ch 16.", "Foundation: colour A; ch 16")]
    [InlineData("Make a magic ring.", "Foundation: magic ring")]
    [InlineData("Ch 4, join with sl st in first ch to form a ring.", "Foundation: ch 4; join slst ring first ch")]
    [InlineData("Ch 18, dc in 8th ch from hook.", "Row: ch 18; dc fromhook8 ch")]
    [InlineData("Row 1: Ch 20, sc in 2nd ch from hook.", "Row 1: ch 20; sc fromhook2 ch")]
    public void Foundations_and_unlabelled_rows_are_read(string line, string item) => Assert.Equal(item, Reader.Pattern(line));

    [Fact]
    public void Rows_may_wrap_and_may_follow_one_another_on_a_line() =>
        Assert.Equal(
            "Row 1: sc next st; ch 1; turn (2 sc)\nRow 2: sc next st\nRow 3: dc next st",
            Reader.Pattern("Row 1: Sc in\nnext st, ch 1,\nturn. (2 sc)\nRow 2: Sc in next st. Row 3: Dc in next st."));

    [Fact]
    public void Old_handbooks_head_rows_by_bare_numbers() =>
        Assert.Equal("Row 1: sk 1 st; sc next st\nRow 2: sc next st\nRow 3,4: sc next st", Reader.Pattern("1. Skip 1, sc in next st.\n2. Sc in next st.\n3, 4. Sc in next st."));

    [Fact]
    public void Pieces_have_names_and_how_many_are_made() =>
        Assert.Equal(
            "== HEAD\nRound 1: 6sc inring ring\n== EAR x2\nRound 1: 5sc inring ring",
            Reader.Pattern("Mouse\n\nHEAD\nR1: 6 sc in ring\n\nEAR (make 2)\nR1: 5 sc in ring"));
}
