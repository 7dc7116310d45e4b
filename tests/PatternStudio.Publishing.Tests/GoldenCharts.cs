using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Tests.Charting;

namespace PatternStudio.Publishing.Tests;

/// <summary>
/// Charts that were looked at and found right. Each comes with a sentence that says what must be seen. Set REGENERATE_CHARTS=1 to write them anew, then look at
/// every one again before keeping it.
/// </summary>
public sealed class GoldenCharts
{
    public static TheoryData<string, string> All => new()
    {
        { "straight-rows", "Six rows of eight crosses in a grid, each above the one below; row numbers at alternate sides, Row 1 on the right." },
        { "double-rows", "Rows of T shapes with one bar each; upright chains of three at alternate sides." },
        { "circle", "Four rings of T shapes pointing outward; each round has twelve more than the last." },
        { "granny", "A square: groups of three fanned out of the spaces, two chains at each corner, one between groups." },
        { "diagonal", "A square standing on its corner, rows of crosses across." },
        { "shells", "Fans of five that lock between each other, a cross between fans." },
        { "mesh", "Square windows: T shapes with an oval between their heads." },
        { "sampler", "Hooked feet to the right and to the left, a puff without bars, clusters with bars, a popcorn with an oval head, two and three stems joined, a picot." },
    };

    [Theory]
    [MemberData(nameof(All))]
    public void The_chart_is_the_one_that_was_looked_at(string name, string mustBeSeen)
    {
        string svg = SvgPainter.Paint(Chart.Draw(Fabric(name).Pattern(), style: new ChartStyle { Title = name }));
        string path = Path.Combine(AppContext.BaseDirectory, "Golden", name + ".svg");
        if (Environment.GetEnvironmentVariable("REGENERATE_CHARTS") is { Length: > 0 } folder) File.WriteAllText(Path.Combine(folder, name + ".svg"), svg);
        else Assert.True(svg == File.ReadAllText(path).ReplaceLineEndings("\n"), $"The chart '{name}' has changed. It must show: {mustBeSeen}");
    }

    private static FabricBuilder Fabric(string name) => name switch
    {
        "straight-rows" => Fabrics.Straight("sc", 8, 6),
        "double-rows" => Fabrics.DoubleRows(10, 5),
        "circle" => Fabrics.DoubleCircle(4),
        "granny" => Fabrics.Granny(4),
        "diagonal" => Fabrics.Diagonal(8),
        "shells" => Fabrics.Shells(3, 5),
        "mesh" => Fabrics.Mesh(7, 5),
        _ => Fabrics.Sampler(),
    };
}
