using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Charting;

/// <summary>Symbols as the reference tells them in words: bars on the stem are yarn overs before inserting, the half double has none, a chain is an open oval, a slip stitch a filled dot.</summary>
public sealed class SymbolComposerTests
{
    private static List<Shape> Compose(string stitch, int feet = 1)
    {
        Point[] at = [.. Enumerable.Range(0, feet).Select(i => new Point(i - ((feet - 1) / 2.0), 0))];
        return [.. SymbolComposer.Compose(StitchForms.FromName(stitch)!, at, new Point(0, -2), new Point(0, -1), stitch)];
    }

    /// <summary>A stem and a head, and one bar for each yarn over.</summary>
    [Theory]
    [InlineData("hdc", 0)]
    [InlineData("dc", 1)]
    [InlineData("tr", 2)]
    [InlineData("dtr", 3)]
    [InlineData("trtr", 4)]
    public void Bars_on_the_stem_are_the_yarn_overs(string stitch, int bars)
    {
        List<Shape> shapes = Compose(stitch);
        Assert.Equal(2 + bars, shapes.OfType<Line>().Count());
    }

    [Fact]
    public void A_single_crochet_is_a_cross_and_a_slip_stitch_a_dot()
    {
        Line[] strokes = [.. Compose("sc").OfType<Line>()];
        Assert.Contains(strokes, line => Math.Abs(line.From.X - line.To.X) < 1e-9);
        Assert.Contains(strokes, line => Math.Abs(line.From.Y - line.To.Y) < 1e-9);
        Assert.True(Compose("slst").OfType<Oval>().Single().Filled);
    }

    [Theory]
    [InlineData("dc2tog", 2)]
    [InlineData("dc3tog", 3)]
    public void Stitches_worked_together_have_feet_apart_and_one_head(string stitch, int legs)
    {
        Line[] stems = [.. Compose(stitch, legs).OfType<Line>().Where(line => Math.Abs(line.From.Y - line.To.Y) > 1)];
        Assert.Equal(legs, stems.Length);
        Assert.Equal(legs, stems.Select(stem => Math.Round(stem.From.X, 3)).Distinct().Count());
        Assert.Single(stems.Select(stem => stem.To).Distinct());
    }

    [Theory]
    [InlineData("dc3cl", 3, 3)]
    [InlineData("dc5cl", 5, 5)]
    [InlineData("puff", 3, 0)]
    public void A_cluster_joins_its_legs_at_both_ends_with_bars_and_a_puff_without(string stitch, int legs, int bars)
    {
        List<Shape> shapes = Compose(stitch);
        Curve[] curves = [.. shapes.OfType<Curve>()];
        Assert.Equal(legs, curves.Length);
        Assert.Single(curves.Select(curve => (curve.From, curve.To)).Distinct());
        Assert.Equal(bars + 1, shapes.OfType<Line>().Count());
    }

    [Fact]
    public void A_popcorn_is_closed_by_a_small_open_oval() =>
        Assert.False(Compose("popcorn").OfType<Oval>().Single().Filled);

    [Fact]
    public void Post_stitches_end_in_hooks_that_curl_opposite_ways()
    {
        Curve front = Compose("fpdc").OfType<Curve>().Single();
        Curve back = Compose("bpdc").OfType<Curve>().Single();
        Assert.Equal(front.To.X, -back.To.X, 9);
        Assert.NotEqual(0, front.To.X);
    }

    /// <summary>By the Craft Yarn Council's key two arcs that open opposite ways, by JIS one bar below.</summary>
    [Fact]
    public void A_stitch_in_one_loop_has_an_arc_or_a_bar_at_its_foot()
    {
        Curve back = Assert.IsType<Curve>(SymbolComposer.LoopMark(FootKind.BackLoop, new Point(0, 0), new Point(0, -1)));
        Curve front = Assert.IsType<Curve>(SymbolComposer.LoopMark(FootKind.FrontLoop, new Point(0, 0), new Point(0, -1)));
        Assert.True(back.Toward.Y < back.From.Y && front.Toward.Y > front.From.Y);
        Assert.IsType<Line>(SymbolComposer.LoopMark(FootKind.BackLoop, new Point(0, 0), new Point(0, -1), SymbolStyle.Jis));
        Assert.Null(SymbolComposer.LoopMark(FootKind.BothLoops, new Point(0, 0), new Point(0, -1)));
    }
}
