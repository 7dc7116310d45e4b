using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Tests.Checking;

namespace PatternStudio.Craft.Tests.Charting;

/// <summary>A number that lies on a symbol or on another number can't be read: common practice, no source.</summary>
public sealed class RowNumberTests
{
    public static TheoryData<string> Fabric => ["straight", "double", "diagonal", "shells", "circle", "granny", "sampler"];

    [Theory]
    [MemberData(nameof(Fabric))]
    public void Numbers_stand_clear(string name) => AllClear(Chart.Draw((name switch
    {
        "straight" => Fabrics.Straight("sc", 8, 6),
        "double" => Fabrics.DoubleRows(10, 5),
        "diagonal" => Fabrics.Diagonal(8),
        "shells" => Fabrics.Shells(3, 5),
        "circle" => Fabrics.DoubleCircle(4),
        "granny" => Fabrics.Granny(4),
        _ => Fabrics.Sampler(),
    }).Pattern()));

    /// <summary>Where rows close in on each other, at the top of a mitred square, and between tiles.</summary>
    [Theory]
    [InlineData("081-mitred-square")]
    [InlineData("045-oval-placemat")]
    [InlineData("037-tile-square")]
    [InlineData("026-hexagon")]
    public void Numbers_stand_clear_where_there_is_little_room(string name) => AllClear(Chart.Draw(PatternCheck.Check(RightPatterns.Load(name).Text)));

    private static void AllClear(Drawing drawing)
    {
        Words[] numbers = [.. drawing.Rows.SelectMany(row => row.Marks).OfType<Words>().Where(words => words.Text.All(char.IsAsciiDigit))];
        Assert.NotEmpty(numbers);
        SymbolOutline[] outlines = [.. numbers.Select(number => new SymbolOutline([number]))];
        SymbolOutline[] symbols = [.. drawing.Rows.SelectMany(row => row.Symbols).Select(symbol => new SymbolOutline([.. symbol.Shapes]))];
        for (int i = 0; i < outlines.Length; i++)
        {
            Assert.All(symbols, symbol => Assert.InRange(outlines[i].Overlap(symbol).Share, 0, 0.1));
            Assert.All(outlines.Take(i), other => Assert.Equal(0, outlines[i].Overlap(other).Share));
        }
    }
}
