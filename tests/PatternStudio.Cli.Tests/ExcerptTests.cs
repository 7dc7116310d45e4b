using PatternStudio.Cli.Printing;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Text;

namespace PatternStudio.Cli.Tests;

public sealed class ExcerptTests
{
    [Fact]
    public void The_spot_is_underlined()
    {
        var source = new SourceText("Ch 21.\nRow 1: Sc across. (21 sts)\n");
        Assert.Equal(["2 | Row 1: Sc across. (21 sts)", "  |                    ^^"], Excerpt.Of(source, new TextSpan(26, 2)));
    }

    [Fact]
    public void Of_a_long_line_the_stretch_around_the_spot_is_shown()
    {
        string line = string.Concat(Enumerable.Repeat("sc in next st, ", 40));
        string[] excerpt = [.. Excerpt.Of(new SourceText(line), new TextSpan(300, 2))];
        Assert.StartsWith("1 | … ", excerpt[0], StringComparison.Ordinal);
        Assert.EndsWith(" …", excerpt[0], StringComparison.Ordinal);
        Assert.Equal("sc", excerpt[0].Substring(excerpt[1].IndexOf('^', StringComparison.Ordinal), 2));
    }

    [Theory]
    [InlineData(6, 0)]
    [InlineData(0, 500)]
    [InlineData(33, 5)]
    public void Any_spot_can_be_shown(int start, int length)
    {
        string[] excerpt = [.. Excerpt.Of(new SourceText("Ch 21.\nRow 1: Sc across. (21 sts)\n"), new TextSpan(start, length))];
        Assert.Contains('^', excerpt[1]);
    }

    [Fact]
    public void A_finding_is_told_in_full()
    {
        var source = new SourceText("Row 1: Sc across. (21 sts)");
        var output = new StringWriter { NewLine = "\n" };
        var spot = new TextSpan(19, 2);
        FindingPrinter.Print(
            new Finding("count-differs", Severity.Error, spot, "Row 1 states 21 stitches and makes 20.", new TextEdit(spot, "20")) { Size = "Large" },
            source, "scarf.txt", output);
        Assert.Equal(
            """
            scarf.txt:1:20: error, size Large (count-differs)
              Row 1 states 21 stitches and makes 20.
                1 | Row 1: Sc across. (21 sts)
                  |                    ^^
              To mend it, change '21' to '20'.

            """,
            output.ToString());
    }
}
