using PatternStudio.Craft.Checking;
using PatternStudio.Web.Features.Help;

namespace PatternStudio.Web.Tests;

public sealed class HelpPagesTests
{
    [Fact]
    public void Every_finding_has_its_page_with_an_example_and_what_to_do()
    {
        string list = HelpPages.Find("findings")!.Html;
        Assert.NotEmpty(FindingCodes.All);
        Assert.All(FindingCodes.All, code =>
        {
            HelpText page = HelpPages.Find($"findings/{code}")!;
            Assert.Equal(code, page.Title.ToLowerInvariant().Replace(' ', '-'));
            Assert.Contains("How to mend it", page.Html, StringComparison.Ordinal);
            Assert.Contains("<pre>", page.Html, StringComparison.Ordinal);
            Assert.Contains($"href=\"help/findings/{code}\"", list, StringComparison.Ordinal);
        });
    }

    /// <summary>On a phone the head of a table is not seen.</summary>
    [Fact]
    public void Each_cell_of_a_table_says_what_its_column_is() =>
        Assert.Contains("<td data-says=\"How grave\">Error</td>", HelpPages.Find("findings")!.Html, StringComparison.Ordinal);

    [Fact]
    public void An_address_that_is_no_page_finds_nothing() => Assert.Null(HelpPages.Find("../appsettings"));
}
