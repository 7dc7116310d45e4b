using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Checking;

namespace PatternStudio.Craft.Tests.Charting;

/// <summary>What may be chosen about a chart.</summary>
public sealed class ChartStyleTests
{
    private const string Shells = """
        Ch 26.
        Row 1: Sc in 2nd ch from hook, *sk next 2 ch, 5 dc in next ch, sk next 2 ch, sc in next ch; rep from * across.
        Row 2: Ch 3 (counts as dc), turn, 2 dc in first sc, *sk next 2 dc, sc in next dc, sk next 2 dc, 5 dc in next sc; rep from * across, ending with 3 dc in last sc.
        Row 3: Ch 1, turn, sc in first dc, *sk next 2 dc, 5 dc in next sc, sk next 2 dc, sc in next dc; rep from * across, ending with sc in top of turning ch.
        Rows 4-9: Rep Rows 2 and 3.
        """;

    private const string Stripes = """
        With A, ch 9.
        Row 1: Sc in 2nd ch from hook and in each ch across. (8 sc)
        Row 2: Ch 1, turn, sc in each sc across. Change to B. (8 sc)
        Row 3: Ch 1, turn, sc in each sc across. (8 sc)
        """;

    private static Box BoxOf(Drawing drawing) => drawing.Rows.SelectMany(row => row.Symbols).SelectMany(symbol => symbol.Shapes).Aggregate(Box.Empty, (all, shape) => all.With(shape.Bounds));

    [Fact]
    public void A_left_handers_chart_is_the_mirror_of_a_right_handers()
    {
        CheckedPattern pattern = Fabrics.Straight("sc", 6, 2).Pattern();
        Drawing right = Chart.Draw(pattern);
        Drawing left = Chart.Draw(pattern, 0, new ChartStyle { LeftHanded = true });
        Assert.Equal(-BoxOf(right).Right, BoxOf(left).Left, 6);
        Assert.Equal(-right.Rows[1].Marks.OfType<Words>().Single().At.X, left.Rows[1].Marks.OfType<Words>().Single().At.X, 6);
    }

    /// <summary>24 stitches in four repeats of 6 and one stitch more: one repeat and the edge are 7 wide.</summary>
    [Fact]
    public void The_repeat_alone_is_one_repeat_wide_and_says_how_many_stitches()
    {
        CheckedPattern pattern = PatternCheck.Check(Shells);
        Drawing compact = Chart.Draw(pattern, 0, new ChartStyle { RepeatOnly = true });
        Assert.Equal("rep 6 sts", compact.Rows[0].Marks.OfType<Words>().Single().Text);
        Assert.InRange(BoxOf(compact).Width, 6, 10);
        Assert.True(compact.Rows.Count < pattern.Sizes[0].Fabric.Pieces[0].Rows.Count);
    }

    [Fact]
    public void The_full_chart_has_brackets_with_counts()
    {
        string[] words = [.. Chart.Draw(PatternCheck.Check(Shells)).Rows[0].Marks.OfType<Words>().Select(word => word.Text)];
        Assert.Contains("rep 6 sts, 4 times", words);
        Assert.Contains(words, word => word.StartsWith("rep 2 rows, ", StringComparison.Ordinal));
    }

    [Fact]
    public void A_chart_in_colour_has_the_yarns_colours_and_a_letter_in_each_stitch()
    {
        var style = new ChartStyle { InColour = true, YarnColours = [new("B", "#112233", "Tideline Cotton, slate"), new("A", "", "Tideline Cotton")] };
        Drawing drawing = Chart.Draw(PatternCheck.Check(Stripes), 0, style);
        Assert.Equal([("A", "Tideline Cotton"), ("B", "Tideline Cotton, slate")], drawing.Colours.Select(colour => (colour.Letter, colour.Yarn)));
        Assert.Matches("^#[0-9a-f]{6}$", drawing.Colours[0].Hex);
        Symbol[] third = [.. drawing.Rows[3].Symbols];
        Assert.All(third, symbol => Assert.Equal("#112233", symbol.Shapes.OfType<Patch>().Single().Hex));
        Assert.All(third, symbol => Assert.Equal(("B", "#ffffff"), (symbol.Shapes.OfType<Words>().Single().Text, symbol.Shapes.OfType<Words>().Single().Ink)));
        Assert.True(drawing.Key.IsEmpty);
    }

    [Fact]
    public void The_two_keys_draw_a_single_crochet_upright_or_slanted()
    {
        CheckedPattern pattern = Fabrics.Straight("sc", 2, 1).Pattern();
        Assert.True(IsUpright(Chart.Draw(pattern)));
        Assert.False(IsUpright(Chart.Draw(pattern, 0, new ChartStyle { Symbols = SymbolStyle.Jis })));
        Assert.True(Chart.Draw(pattern).KeysDiffer);
        Assert.False(Chart.Draw(Fabrics.Straight("dc", 2, 1).Pattern()).KeysDiffer);

        static bool IsUpright(Drawing drawing) => drawing.Key[1].Shapes.OfType<Line>().Any(line => Math.Abs(line.From.X - line.To.X) < 1e-9);
    }
}
