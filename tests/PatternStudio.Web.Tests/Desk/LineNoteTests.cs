using PatternStudio.Craft.Working;
using PatternStudio.Web.Features.Desk;

namespace PatternStudio.Web.Tests.Desk;

public sealed class LineNoteTests
{
    [Fact]
    public void A_line_shows_its_count_and_whether_the_stated_one_agrees() =>
        Assert.Equal(
            [new LineNote(1, "20", ""), new LineNote(2, "21 ✓", "good"), new LineNote(3, "22 ✗", "error")],
            LineNote.Of([Rows.Row(1, 20), Rows.Row(2, 21, agrees: true), Rows.Row(3, 22, agrees: false)], "not checked"));

    [Fact]
    public void A_line_that_calls_for_many_rows_shows_the_first_and_the_last_count() =>
        Assert.Equal(
            [new LineNote(5, "10–14", "")],
            LineNote.Of([Rows.Row(4, 10, line: 5), Rows.Row(5, 12, line: 5), Rows.Row(6, 14, line: 5)], "not checked"));

    [Fact]
    public void A_line_with_a_row_that_was_not_checked_has_no_count() =>
        Assert.Equal(
            [new LineNote(2, "not checked", "")],
            LineNote.Of([Rows.Row(2, 10, line: 2), Rows.Row(3, null, line: 2, status: RowStatus.NotChecked)], "not checked"));
}
