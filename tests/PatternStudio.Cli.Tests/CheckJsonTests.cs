using System.Text.Json;
using PatternStudio.Cli.Json;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Cli.Tests;

/// <summary>The shape of <c>check --json</c>: programs rely on it.</summary>
public sealed class CheckJsonTests
{
    private const string Text = "Ch 21.\nRow 1: Sc across. (21 sts)\n";

    [Fact]
    public void A_pattern_with_one_size_has_its_rows_at_the_top()
    {
        JsonElement json = Written(Size("", Row()));
        Assert.Equal(["terms", "rows", "findings", "read"], Names(json));
        Assert.Equal("uk", json.GetProperty("terms").GetString());
        JsonElement row = json.GetProperty("rows")[0];
        Assert.Equal(["number", "heading", "line", "status", "stitches", "stated", "countAgrees", "counts", "spaces"], Names(row));
        Assert.Equal("""{"number":1,"heading":"Row 1","line":2,"status":"checked","stitches":20,"stated":21,"countAgrees":false,"counts":{"sc":20},"spaces":{"ch-2":3}}""", Compact(row));
        Assert.Equal("""{"rows":3,"read":2,"checked":1}""", Compact(json.GetProperty("read")));
    }

    [Fact]
    public void A_pattern_with_several_sizes_has_rows_in_each()
    {
        JsonElement json = Written(Size("Small", Row()), Size("Large", Row()));
        Assert.Equal(["terms", "sizes", "findings"], Names(json));
        Assert.Equal(["name", "rows", "read"], Names(json.GetProperty("sizes")[1]));
        Assert.Equal("Large", json.GetProperty("sizes")[1].GetProperty("name").GetString());
    }

    [Theory]
    [InlineData("20 sts", "20")]
    [InlineData("20", "20")]
    [InlineData("(20 sc)", "20")]
    [InlineData("(10 puffs, 11 sc)", "\"10 puffs, 11 sc\"")]
    [InlineData("4 ch-2 sps", "\"4 ch-2 sps\"")]
    [InlineData("twenty sts", "\"twenty sts\"")]
    [InlineData(null, "null")]
    public void One_plain_number_is_a_number_and_more_are_words(string? stated, string json) =>
        Assert.Equal(json, Compact(Written(Size("", Row() with { Stated = stated })).GetProperty("rows")[0].GetProperty("stated")));

    [Fact]
    public void Each_size_has_its_own_number_of_a_list()
    {
        RowReport row = Row() with { Stated = "20 (30) sts" };
        JsonElement sizes = Written(Size("Small", row), Size("Large", row)).GetProperty("sizes");
        Assert.Equal(20, sizes[0].GetProperty("rows")[0].GetProperty("stated").GetInt32());
        Assert.Equal(30, sizes[1].GetProperty("rows")[0].GetProperty("stated").GetInt32());
    }

    [Fact]
    public void What_is_not_known_is_null()
    {
        RowReport row = Row() with { Status = RowStatus.NotRead, Stitches = null, CountAgrees = null };
        JsonElement json = Written(Size("", row)).GetProperty("rows")[0];
        Assert.Equal("not-read", json.GetProperty("status").GetString());
        Assert.Equal(JsonValueKind.Null, json.GetProperty("stitches").ValueKind);
        Assert.Equal(JsonValueKind.Null, json.GetProperty("countAgrees").ValueKind);
    }

    [Fact]
    public void A_row_names_its_piece_only_where_there_are_several()
    {
        JsonElement rows = Written(Size("", Row() with { Piece = "Square" }, Row() with { Piece = "Border" })).GetProperty("rows");
        Assert.Equal("Border", rows[1].GetProperty("piece").GetString());
    }

    [Fact]
    public void A_finding_tells_its_place_and_its_mending()
    {
        TextSpan spot = new(Text.IndexOf("21 sts", StringComparison.Ordinal), 2);
        var finding = new Finding("count-differs", Severity.Error, spot, "Row 1 states 21 stitches and makes 20.", new TextEdit(spot, "20"));
        JsonElement json = Written([finding], Size("", Row())).GetProperty("findings")[0];
        Assert.Equal(
            """{"code":"count-differs","severity":"error","line":2,"column":20,"length":2,"message":"Row 1 states 21 stitches and makes 20.","fix":{"line":2,"column":20,"length":2,"newText":"20"}}""",
            Compact(json));
    }

    private static JsonElement Written(params CheckedSize[] sizes) => Written([], sizes);

    private static JsonElement Written(Finding[] findings, params CheckedSize[] sizes)
    {
        var terms = new TermsDecision(Terminology.Uk, TermsOrigin.Told, 1, []);
        var pattern = new Pattern(new SourceText(Text), terms, sizes.Select(size => size.Name).ToEquatableArray(), [], [], [], []);
        string json = CheckJson.Write(new CheckedPattern(pattern, sizes.ToEquatableArray(), findings.ToEquatableArray()));
        return JsonDocument.Parse(json).RootElement;
    }

    private static CheckedSize Size(string name, params RowReport[] rows) => new(new Fabric(name, []), rows.ToEquatableArray(), new ReadSummary(3, 2, 1));

    private static RowReport Row() => new(
        "", 1, "Row 1", 2, RowStatus.Checked, "RS", 20, "21 sts", false, new Dictionary<string, long> { ["sc"] = 20 }, new Dictionary<string, long> { ["ch-2"] = 3 });

    private static string[] Names(JsonElement json) => [.. json.EnumerateObject().Select(property => property.Name)];

    private static string Compact(JsonElement json) => JsonSerializer.Serialize(json);
}
