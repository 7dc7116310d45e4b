using Bunit;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Working;
using PatternStudio.Studio.Designs;
using PatternStudio.Web.Features.Desk;

namespace PatternStudio.Web.Tests.Desk;

public sealed class RowTableTests : PageTest
{
    [Fact]
    public void Shows_side_stitches_change_and_agreement_of_each_row()
    {
        IRenderedComponent<RowTable> table = Show(Rows.Size(
            [Rows.Row(1, 20, stated: "(20 sts)", agrees: true), Rows.Row(2, 22, stated: "(21 sts)", agrees: false), Rows.Row(3, 22)]));

        Assert.Equal(
            [
                "Row 1 20 sc RS 20 agrees not known not known",
                "Row 2 22 sc WS 22 +2 says (21 sts) not known not known",
                "Row 3 22 sc RS 22 ±0 none stated not known not known",
            ],
            table.FindAll("tbody tr").Select(row => row.Reads()));
    }

    [Fact]
    public void A_row_that_was_not_checked_says_so_instead_of_a_number()
    {
        IRenderedComponent<RowTable> table = Show(Rows.Size(
            [Rows.Row(1, null, status: RowStatus.NotRead), Rows.Row(2, null, status: RowStatus.NotChecked)]));

        Assert.Contains("not read", table.FindAll("tbody tr")[0].Reads());
        Assert.Contains("not checked", table.FindAll("tbody tr")[1].Reads());
    }

    [Fact]
    public void Shows_the_yarn_used_so_far_the_ball_in_use_and_what_happens_in_a_row()
    {
        IRenderedComponent<RowTable> table = Show(Rows.Size(
            [Rows.Row(1, 20), Rows.Row(2, 20)], Rows.Takes(1, 6.25, 0.5), Rows.Takes(2, 50.4, 1, "2", "Ball 1 ends in this row.")));

        Assert.Contains("6.3 g 50\u202f%", table.FindAll("tbody tr")[0].Reads());
        Assert.Contains("50 g 100\u202f% ball 2", table.FindAll("tbody tr")[1].Reads());
    }

    [Fact]
    public void Marks_stand_at_their_row() => Assert.Equal(
        ["Half of the yarn is used."],
        Show(Rows.Size([Rows.Row(1, 20)], Rows.Takes(1, 6, 0.5, "1", "Half of the yarn is used."))).FindAll("tr.row-mark").Select(mark => mark.Reads()));

    [Fact]
    public void Times_are_a_column_only_where_they_are_known()
    {
        Assert.DoesNotContain("Time", Show(Rows.Size([Rows.Row(1, 20)])).Find("thead").Reads(), StringComparison.Ordinal);
        IRenderedComponent<RowTable> timed = Render<RowTable>(with => with
            .Add(rows => rows.Lines, RowLine.Of(Rows.Size([Rows.Row(1, 20)], Rows.Takes(1, 6, 1) with { MinutesSoFar = 75 }), Terminology.Us))
            .Add(rows => rows.Minutes, 75));
        Assert.EndsWith("1\u202fh 15\u202fmin", timed.Find("tbody tr").Reads(), StringComparison.Ordinal);
    }

    [Fact]
    public void Pieces_have_headings_of_their_own()
    {
        IRenderedComponent<RowTable> table = Show(Rows.Size(
            [Rows.Row(1, 8, piece: "Square"), Rows.Row(2, 8, piece: "Square"), Rows.Row(1, 40, piece: "Border")]));

        Assert.Equal(["Square", "Border"], table.FindAll("th[scope=rowgroup]").Select(heading => heading.TextContent));
        Assert.Contains("Row 1 40 sc RS 40 none stated", table.FindAll("tbody tr")[^1].Reads());
    }

    /// <summary>US single crochet is UK double crochet (Craft Yarn Council, stitch terms).</summary>
    [Fact]
    public void Stitches_are_called_as_the_pattern_calls_them() =>
        Assert.Contains("20 dc", Show(Rows.Size([Rows.Row(1, 20)]), Terminology.Uk).Find("tbody tr").Reads(), StringComparison.Ordinal);

    [Fact]
    public void A_blanket_shows_its_first_rows_and_all_when_asked()
    {
        IRenderedComponent<RowTable> table = Show(Rows.Size([.. Enumerable.Range(1, 1_200).Select(number => Rows.Row(number, 200))]));

        Assert.Equal(RowTable.ShownAtFirst, table.FindAll("tbody tr").Count);
        table.Button("Show all 1\u202f200 rows").Click();
        Assert.Equal(1_200, table.FindAll("tbody tr").Count);
    }

    [Fact]
    public void A_click_on_a_row_goes_to_its_words()
    {
        int gone = 0;
        IRenderedComponent<RowTable> table = Render<RowTable>(with => with
            .Add(rows => rows.Lines, RowLine.Of(Rows.Size([Rows.Row(7, 20, line: 12)]), Terminology.Us))
            .Add(rows => rows.Go, line => gone = line));

        table.Button("Row 7").Click();

        Assert.Equal(12, gone);
    }

    private IRenderedComponent<RowTable> Show(SizeResults size, Terminology terms = Terminology.Us) =>
        Render<RowTable>(with => with.Add(rows => rows.Lines, RowLine.Of(size, terms)));
}
