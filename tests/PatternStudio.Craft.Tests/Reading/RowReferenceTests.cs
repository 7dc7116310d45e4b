namespace PatternStudio.Craft.Tests.Reading;

public sealed class RowReferenceTests
{
    [Theory]
    [InlineData("Rows 3–10: Rep Row 2.", "Row 3-10: as 2")]
    [InlineData("Rows 4-20: Rep Rows 2 and 3.", "Row 4-20: as 2,3")]
    [InlineData("Rows 6–13: Rep Rows 2–5 twice.", "Row 6-13: as 2,3,4,5 x2")]
    [InlineData("Rows 3 to 9: As Row 2.", "Row 3-9: as 2")]
    [InlineData("Rows 8–10: Rep Row 6, then Row 7, then Row 6.", "Row 8-10: as 6,7,6")]
    [InlineData("12th row. Same as 11th row.", "Row 12: as 11")]
    [InlineData("6th round: The same as the 5th.", "Round 6: as 5")]
    [InlineData("13th Round. Repeat last round.", "Round 13: as last")]
    [InlineData("5th Row. Same as last row but working a shell in each corner.", "Row 5: as last changed")]
    [InlineData("6th Row. Same as last row ending row with ch 3, tr c in tr c.", "Row 6: as last ending {ch 3; tr next tr}")]
    [InlineData("Row 6: As Row 4, ending with dc in last dc.", "Row 6: as 4 ending {dc last dc}")]
    [InlineData("7th Row. Same as last row but having 8 chs in each loop and ending row with ch 4, tr c in tr c.", "Row 7: as last ch8 loops ending {ch 4; tr next tr}")]
    [InlineData("8th Row. Same as 5th row working a shell in each 8 ch loop.", "Row 8: as 5 into ch-8sp")]
    [InlineData("9th Row. * Ch 10, s c in next loop, repeat from * all around ending row same as last row.", "Row 9: *{ch 10; sc next sp} around ending {as last}")]
    public void A_row_told_by_others_is_read(string line, string item) => Assert.Equal(item, Reader.Pattern(line));

    [Theory]
    [InlineData("Rep Rows 2 and 3 for 12 more rows.", "REP 2,3 MoreRows 12")]
    [InlineData("Rep Row 2 for a further 22 rows.", "REP 2 MoreRows 22")]
    [InlineData("Repeat 2nd row 106 times.", "REP 2 MoreTimes 106")]
    [InlineData("Rep Rows 2 and 3 until piece measures 40 cm, ending with a Row 3.", "REP 2,3 Measures 400mm ending 3")]
    [InlineData("Rep Row 2 until piece measures 25 cm (10 in) from beginning, ending with a WS row.", "REP 2 Measures 250mm ending Wrong")]
    [InlineData("Repeat 2nd row until work measures 11½ inches.", "REP 2 Measures 292mm")]
    [InlineData("Rep Row 2 until 3 sts remain.", "REP 2 StitchesRemain 3")]
    [InlineData("Rep Row 2 until there are 20 rows in all.", "REP 2 RowNumber 20")]
    [InlineData("Repeat the last 2 rows 3 times.", "REP  MoreTimes 3 last2")]
    [InlineData("Rep Rows 3 and 4 four more times. [12 rows]", "REP 3,4 MoreTimes 4 (12 other)")]
    [InlineData("Work even until piece measures 10 cm.", "REP  Measures 100mm")]
    public void Rows_repeated_on_a_line_of_their_own_are_read(string line, string item) => Assert.Equal(item, Reader.Pattern(line));

    [Fact]
    public void Words_after_a_row_that_repeat_rows_are_an_entry_of_their_own() =>
        Assert.Equal("Row 4: dc next dc; turn\nREP 3,4 MoreTimes 1", Reader.Pattern("4th Row. D c in next d c, turn. Repeat the 3rd and 4th rows once."));

    [Fact]
    public void A_piece_worked_like_another_says_so() =>
        Assert.Equal("== Front\nAS Back through 24", Reader.Pattern("Vest\n\nFront\nWork as for Back to end of Row 24."));
}
