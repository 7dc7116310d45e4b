using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Tests;
using PatternStudio.Craft.Tests.Charting;
using SkiaSharp;

namespace PatternStudio.Publishing.Tests;

/// <summary>
/// Charts that were looked at and found right. Each comes with a sentence that says what must be seen. Set REGENERATE_CHARTS to this project's Golden folder to write them anew, then look at
/// every one again before keeping it.
/// </summary>
public sealed class GoldenCharts
{
    /// <summary>Width of a stitch in the small pictures, in pixels.</summary>
    private const double Pixels = 8;

    /// <summary>Colours may differ by so much (of 255), and so large a share of the picture by more: fonts and curves are not painted alike everywhere.</summary>
    private const int MostOfColour = 48;
    private const double MostOfPicture = 0.01;

    public static TheoryData<string, string> All => new()
    {
        { "straight-rows", "Six rows of eight crosses in a grid, each above the one below; row numbers at alternate sides, Row 1 on the right." },
        { "double-rows", "Rows of T shapes with one bar each; upright chains of three at alternate sides." },
        { "circle", "Four rings of T shapes pointing outward; each round has twelve more than the last." },
        { "granny", "A square: groups of three fanned out of the spaces, two chains at each corner, one between groups." },
        { "diagonal", "A square standing on its corner, rows of crosses across." },
        { "shells", "Fans of five that lock between each other, a cross between fans." },
        { "mesh", "Square windows: T shapes with an oval between their heads." },
        { "sampler", "Hooked feet to the right and to the left, a puff without bars, clusters with bars, a popcorn with an oval head, none of them touching, two and three stems joined, a picot on the edge." },
        { "020-tideline-ripple", "Rows that wave: up where stitches are added, down where two are worked together; straight sides." },
        { "081-mitred-square", "A square on its corner: rows bent at a right angle where three are worked together." },
        { "066-pineapple-motif", "A fan of T shapes that becomes loops of chains, fewer each row, with shells on both sides." },
        { "037-tile-square", "Square tiles, standing and lying by turns like a basket, each number outside beside the tile that its row begins with." },
        { "045-oval-placemat", "Rounds about both sides of a chain: straight sides, round ends." },
        { "055-bordered-panel", "A rectangle of crosses with a border of two rounds about it, three crosses in each corner." },
        { "026-hexagon", "Six straight sides with chains at the corners." },
        { "084-half-circle", "Half a circle above its straight edge, rows back and forth." },
        { "067-daisy-doily", "Rounds of loops with petals in them." },
        { "041-toy-ball", "Five rounds of a disc; what closes over it in six gores, five stitches wide and tapering to one, each decrease as wide as two stitches; the note says where it becomes a bowl." },
        { "013-little-shells, the repeat", "One fan and its edges, five rows, 'rep 6 sts' below." },
        { "008-harbour-stripes, in colour", "Stripes with a letter in each stitch, two colours in the key." },
        { "048-granny-square, left-handed", "The granny square with its numbers to the other side of each start." },
        { "029-two-colour-disc, by JIS", "A disc whose crosses are slanted." },
    };

    [Theory]
    [MemberData(nameof(All))]
    public void The_chart_is_the_one_that_was_looked_at(string name, string mustBeSeen)
    {
        Drawing drawing = DrawingOf(name);
        string svg = SvgPainter.Paint(drawing);
        byte[] png = PngPainter.Paint(drawing, Pixels);
        if (Environment.GetEnvironmentVariable("REGENERATE_CHARTS") is { Length: > 0 } folder)
        {
            File.WriteAllText(Path.Combine(folder, name + ".svg"), svg);
            File.WriteAllBytes(Path.Combine(folder, name + ".png"), png);
            return;
        }
        string path = Path.Combine(AppContext.BaseDirectory, "Golden", name);
        Assert.True(svg == File.ReadAllText(path + ".svg").ReplaceLineEndings("\n"), $"The chart '{name}' has changed. It must show: {mustBeSeen}");
        Assert.InRange(Difference(File.ReadAllBytes(path + ".png"), png), 0, MostOfPicture);
    }

    /// <summary>Share of pixels that differ.</summary>
    private static double Difference(byte[] kept, byte[] painted)
    {
        using SKBitmap one = SKBitmap.Decode(kept);
        using SKBitmap other = SKBitmap.Decode(painted);
        if (one.Info.Size != other.Info.Size) return 1;
        int differing = one.Pixels.Zip(other.Pixels).Count(pair => Math.Abs(pair.First.Red - pair.Second.Red) > MostOfColour || Math.Abs(pair.First.Green - pair.Second.Green) > MostOfColour || Math.Abs(pair.First.Blue - pair.Second.Blue) > MostOfColour);
        return (double)differing / one.Pixels.Length;
    }

    private static Drawing DrawingOf(string name)
    {
        if (Fabric(name) is { } fabric) return Chart.Draw(fabric.Pattern(), style: new ChartStyle { Title = name });
        string[] parts = name.Split(", ");
        CheckedPattern pattern = PatternCheck.Check(File.ReadAllText(Repository.Path($"tests/PatternStudio.Craft.Tests/RightPatterns/{parts[0]}.txt")));
        return Chart.Draw(pattern, 0, parts.Length < 2 ? new ChartStyle() : parts[1] switch
        {
            "the repeat" => new ChartStyle { RepeatOnly = true },
            "in colour" => new ChartStyle { InColour = true },
            "left-handed" => new ChartStyle { LeftHanded = true },
            _ => new ChartStyle { Symbols = SymbolStyle.Jis },
        });
    }

    private static FabricBuilder? Fabric(string name) => name switch
    {
        "straight-rows" => Fabrics.Straight("sc", 8, 6),
        "double-rows" => Fabrics.DoubleRows(10, 5),
        "circle" => Fabrics.DoubleCircle(4),
        "granny" => Fabrics.Granny(4),
        "diagonal" => Fabrics.Diagonal(8),
        "shells" => Fabrics.Shells(3, 5),
        "mesh" => Fabrics.Mesh(7, 5),
        "sampler" => Fabrics.Sampler(),
        _ => null,
    };
}
