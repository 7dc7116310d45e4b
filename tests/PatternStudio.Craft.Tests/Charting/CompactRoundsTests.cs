using PatternStudio.Craft.Charting;

namespace PatternStudio.Craft.Tests.Charting;

/// <summary>Of rounds that are made of equal parts, the first part of each is enough to work from.</summary>
public sealed class CompactRoundsTests
{
    private static readonly ChartStyle Compact = new() { RepeatOnly = true };

    /// <summary>Six parts: 6, 12, 18, 24 sc in four rounds are 1, 2, 3 and 4 in each part.</summary>
    [Fact]
    public void One_part_of_each_round_is_drawn_and_the_bracket_counts_it()
    {
        Drawing drawing = Chart.Draw(Fabrics.Circle("sc", 6, 4).Pattern(), 0, Compact);
        Assert.Equal([1, 2, 3, 4], drawing.Rows.Skip(1).Select(row => row.Symbols.Count(symbol => symbol.Stitch.Value == "sc")));
        Assert.Contains(drawing.Rows.SelectMany(row => row.Marks).OfType<Words>(), words => words.Text == "rep 4 sts, 6 times");
    }

    /// <summary>A granny square has four equal sides: 3 of 12 groups of three in its fourth round are on each, and with them 2 + 1 + 1 + 1 chains in their spaces.</summary>
    [Fact]
    public void A_square_is_four_times_its_side()
    {
        Drawing drawing = Chart.Draw(Fabrics.Granny(3).Pattern(), 0, Compact);
        Assert.Contains(drawing.Rows.SelectMany(row => row.Marks).OfType<Words>(), words => words.Text.EndsWith("sts, 4 times", StringComparison.Ordinal));
        Assert.True(drawing.Rows.Sum(row => row.Symbols.Count) < Chart.Draw(Fabrics.Granny(3).Pattern()).Rows.Sum(row => row.Symbols.Count) / 2);
    }
}
