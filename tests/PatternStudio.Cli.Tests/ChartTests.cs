using System.Text;

namespace PatternStudio.Cli.Tests;

public sealed class ChartTests
{
    /// <summary>What each kind of file begins with (SVG 2; PNG 3rd edition 5.2; ISO 32000-1, 7.5.2).</summary>
    [Theory]
    [InlineData("scarf.svg", "<svg")]
    [InlineData("scarf.png", "\u0089PNG")]
    [InlineData("scarf.PDF", "%PDF-")]
    public void A_chart_is_written_as_what_its_file_is_called(string name, string begins)
    {
        using var folder = new TemporaryFolder();
        string path = Path.Combine(folder.Path, name);
        Call call = Call.Reading(Samples.Scarf, "chart", "-", "-o", path);
        Assert.Equal((ExitCode.Fine, "", ""), (call.ExitCode, call.Output, call.Error));
        Assert.StartsWith(begins, Encoding.Latin1.GetString(File.ReadAllBytes(path)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_chart_needs_a_file_that_can_be_written()
    {
        Assert.Equal("Name the file to write: chart FILE -o OUT.svg, or OUT.png, or OUT.pdf.\n", Call.Reading(Samples.Scarf, "chart", "-").Error);
        Assert.Equal("Charts are written as .svg, .png or .pdf; 'scarf.bmp' ends in none of these.\n", Call.Reading(Samples.Scarf, "chart", "-", "-o", "scarf.bmp").Error);
        using var folder = new TemporaryFolder();
        Call call = Call.Reading(Samples.Scarf, "chart", "-", "-o", Path.Combine(folder.Path, "nowhere", "scarf.svg"));
        Assert.Equal(ExitCode.Unusable, call.ExitCode);
        Assert.Contains("can't be written", call.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--style", "jis")]
    [InlineData("--left-handed")]
    [InlineData("--repeat")]
    public void A_chart_may_be_drawn_otherwise(params string[] options)
    {
        string pattern = "Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sts)\nRow 2: Ch 3, turn, dc in next st, *sc in next st, dc in next st; rep from * across. (20 sts)\nRow 3: Ch 1, turn, *sc in next st, dc in next st; rep from * across. (20 sts)\n";
        string usual = Call.Reading(pattern, "chart", "-", "-o", "-").Output;
        Call call = Call.Reading(pattern, ["chart", "-", "-o", "-", .. options]);
        Assert.Equal((ExitCode.Fine, ""), (call.ExitCode, call.Error));
        Assert.StartsWith("<svg", call.Output, StringComparison.Ordinal);
        Assert.NotEqual(usual, call.Output);
    }

    [Fact]
    public void A_style_is_one_of_two() =>
        Assert.Equal("Styles are cyc or jis, not 'own'; 'chart --help' shows how.\n", Call.Reading(Samples.Scarf, "chart", "-", "-o", "-", "--style", "own").Error);

    /// <summary>20 stitches at 16 to 10 cm are 12.5 cm.</summary>
    [Fact]
    public void A_schematic_has_the_finished_measures()
    {
        string svg = Call.Reading(Samples.Scarf, "chart", "-", "-o", "-", "--schematic", "--swatch", "16 sc, 18 rows = 10 x 10 cm").Output;
        Assert.Contains(">12.5 cm (5 in)</text>", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void A_schematic_without_measures_says_why_there_is_none()
    {
        Call call = Call.Reading(Samples.Scarf, "chart", "-", "-o", "-", "--schematic");
        Assert.Equal((ExitCode.Unusable, ""), (call.ExitCode, call.Output));
        Assert.StartsWith("There is no schematic: ", call.Error, StringComparison.Ordinal);
    }
}
