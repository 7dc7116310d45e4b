using AngleSharp.Dom;
using Bunit;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Text;
using PatternStudio.Studio.Designs;
using PatternStudio.Web.Features.Desk;

namespace PatternStudio.Web.Tests.Desk;

public sealed class FindingsListTests : PageTest
{
    private static readonly ReadSummary AllOfFour = new(4, 4, 4);

    [Fact]
    public void Says_how_grave_it_is_in_words_then_the_sentence_then_the_line()
    {
        IRenderedComponent<FindingsList> list = Show([Rows.Found(Severity.Error, "Row 3 makes 20 stitches, but says 21.")], AllOfFour);

        Assert.Equal("Error Row 3 makes 20 stitches, but says 21. line 4", list.Find("li").Reads());
        Assert.Contains("1 error", list.Find("[role=status]").Reads());
    }

    [Fact]
    public void A_click_on_the_sentence_goes_to_the_place()
    {
        Finding? gone = null;
        IRenderedComponent<FindingsList> list = Show([Rows.Found(Severity.Warning, "Look here.")], AllOfFour, go: finding => gone = finding);

        list.Button("Look here.").Click();

        Assert.Equal(new TextSpan(30, 8), gone!.Span);
    }

    [Fact]
    public void Only_a_finding_with_a_fix_can_be_mended()
    {
        Finding? mended = null;
        var fix = new TextEdit(new TextSpan(30, 2), "20");
        IRenderedComponent<FindingsList> list = Show(
            [Rows.Found(Severity.Error, "This can be mended.", line: 4, fix), Rows.Found(Severity.Error, "This can not.", line: 5)],
            AllOfFour,
            mend: finding => mended = finding);

        IElement button = Assert.Single(list.FindAll("button[aria-label^='Mend it']"));
        Assert.Equal("Mend it in line 4", button.GetAttribute("aria-label"));
        button.Click();
        Assert.Equal(fix, mended!.Fix);
    }

    [Fact]
    public void Nothing_found_is_praised_only_where_every_row_was_checked()
    {
        Assert.Equal("Every row was worked; nothing to mend", Show([], AllOfFour).Find("[role=status]").Reads());
    }

    [Fact]
    public void Before_anything_is_written_a_gentle_word_says_how_to_begin()
    {
        IRenderedComponent<FindingsList> list = Show([], new ReadSummary(0, 0, 0));

        Assert.Contains("Nothing is written yet. Begin with a chain or a ring", list.Find(".nothing-yet").TextContent, StringComparison.Ordinal);
        Assert.Empty(list.FindAll(".badge-error"));
    }

    [Fact]
    public void Rows_that_were_not_checked_are_counted_beside_the_findings()
    {
        Assert.Equal(
            "1 of 4 rows not checked Nothing found in the rows that were checked",
            Show([], new ReadSummary(4, 4, 3)).Find("[role=status]").Reads());
        Assert.Contains(
            "4 of 4 rows not checked",
            Show([Rows.Found(Severity.Error, "The foundation is missing.")], new ReadSummary(4, 4, 0)).Find("[role=status]").Reads());
    }

    [Fact]
    public void A_text_without_rows_is_not_said_to_be_right() =>
        Assert.Equal("No rows to check yet", Show([], new ReadSummary(0, 0, 0)).Find("[role=status]").Reads());

    private IRenderedComponent<FindingsList> Show(
        IReadOnlyList<LocatedFinding> findings, ReadSummary read, Action<Finding>? go = null, Action<Finding>? mend = null) =>
        Render<FindingsList>(with => with
            .Add(list => list.Findings, findings)
            .Add(list => list.Read, read)
            .Add(list => list.Go, finding => go?.Invoke(finding))
            .Add(list => list.Mend, finding => mend?.Invoke(finding)));
}
