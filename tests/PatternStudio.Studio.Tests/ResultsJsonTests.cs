using System.IO.Compression;
using System.Text;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Tests;

public sealed class ResultsJsonTests
{
    [Fact]
    public void Results_come_back_from_the_store_as_they_went()
    {
        var finding = new Finding("count-differs", Severity.Error, new TextSpan(12, 4), "Row 2 makes 20 sc, not 21.", new TextEdit(new(12, 2), "20")) { Size = "Child" };
        var row = new RowReport(
            "Square", 2, "Row 2", 3, RowStatus.Checked, "WS", 20, "21 sc", false,
            new Dictionary<string, long> { ["sc"] = 20 }, new Dictionary<string, long> { ["ch-2"] = 4 });
        var unread = new RowReport(
            "", 3, "Row 3", 4, RowStatus.NotRead, "RS", null, null, null, new Dictionary<string, long>(), new Dictionary<string, long>());
        var size = new SizeResults(
            "Child", new ReadSummary(3, 2, 1), [row, unread],
            [new ScheduleLine("Square", "Row 2", 20, 1.5, 3, 4.5, 0.1, 20) { Section = "Border", Balls = "A 1", MinutesSoFar = 12, Marks = ["Half of the yarn is used."] }],
            new FinishedSize(20.32, 10.16, "the swatch"),
            new YarnNeed(20, 40, 1, "the swatch") { BuyMetres = 45, LowMetres = 35, HighMetres = 47, IsRough = true, Colours = [new ColourShare("Kelp", 20, 40, 1)] })
        {
            Pieces = [new PieceResults("Square", 2, "rows", null, "no swatch") { AroundCm = 40 }],
            Minutes = 30,
            Doubts = ["Is the width right?"],
            WhyNoYarn = "no swatch",
        };
        var results = new Results("0.1.0", "UK", [new LocatedFinding(finding, 3, 5), new LocatedFinding(finding with { Fix = null }, 4, 1)], [size]);

        Results? back = ResultsJson.Unpack(ResultsJson.Pack(results));

        Assert.Equivalent(results, back, strict: true);
        Assert.Equal((2, 0), (back!.Errors, back.Warnings));
        Assert.Equal(finding, back.Findings[0].Finding);
        Assert.Equal(["no swatch"], back.Sizes[0].Missing);
    }

    [Theory]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("{}")]
    [InlineData("""{ "EngineVersion": "0.1.0", "Terms": "US", "Findings": [], "Sizes": [] }""")]
    public void A_stored_form_of_another_make_is_null(string json) => Assert.Null(ResultsJson.Unpack(Packed(json)));

    [Fact]
    public void What_is_not_packed_is_null() => Assert.Null(ResultsJson.Unpack([1, 2, 3]));

    private static byte[] Packed(string json)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest)) gzip.Write(Encoding.UTF8.GetBytes(json));
        return packed.ToArray();
    }
}
