using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Tests.Measuring;

public sealed class SwatchTests
{
    [Theory]
    [InlineData("16 sts, 18 rows = 10 x 10 cm, 12 g", 16, 18, 100, 100, 12.0)]
    [InlineData("16 sts, 18 rows = 10 × 10 cm", 16, 18, 100, 100, null)]
    [InlineData("13 sts and 7.5 rows = 4 in", 13, 7.5, 101.6, 101.6, null)]
    [InlineData("13 sts and 7½ rows over 4 in square", 13, 7.5, 101.6, 101.6, null)]
    [InlineData("17 sts and 17 rows to 10 cm", 17, 17, 100, 100, null)]
    [InlineData("16 sts x 18 rows = 4 x 4 in, 0.5 oz", 16, 18, 101.6, 101.6, 14.1747615625)]
    [InlineData("20 stitches & 10 rounds = 12,5 cm by 9 cm; weighs 8 g", 20, 10, 125, 90, 8.0)]
    [InlineData("16 sts, 18 rows = 10 cm, blocked, 12 g", 16, 18, 100, 100, 12.0)]
    [InlineData("4 in square = 14 sts, 16 rows", 14, 16, 101.6, 101.6, null)]
    [InlineData("16 sts in 4 in and 18 rows in 5 in", 16, 18, 101.6, 127, null)]
    public void A_swatch_is_read_in_the_trade_s_wordings(string text, double stitches, double rows, double width, double height, double? grams)
    {
        Parsed<Swatch> read = Swatch.Parse(text);
        Assert.True(read.IsRead, read.Message);
        Assert.Equal((stitches, rows), (read.Value.Stitches, read.Value.Rows));
        Assert.Equal(width, read.Value.Width.Millimetres, 6);
        Assert.Equal(height, read.Value.Height.Millimetres, 6);
        Assert.Equal(grams is null, read.Value.Weight is null);
        if (grams is not null) Assert.Equal(grams.Value, read.Value.Weight!.Value.Grams, 6);
        Assert.Null(read.Value.Stitch);
    }

    [Fact]
    public void A_swatch_may_name_its_stitch()
    {
        Assert.Equal("dc", Swatch.Parse("13 dc and 7.5 rows = 4 in").Value.Stitch?.Value);
        Assert.Equal("13 dc and 7.5 rows = 10.16 × 10.16 cm", Swatch.Parse("13 dc and 7.5 rows = 4 in").Value.ToString());
    }

    /// <summary>The same words name different stitches: US double crochet is UK treble.</summary>
    [Theory]
    [InlineData("13 dc and 7 rows = 10 cm", Terminology.Us, "dc")]
    [InlineData("13 dc and 13 rows = 10 cm", Terminology.Uk, "sc")]
    [InlineData("14 sts and 7 rows to 10 cm over treble", Terminology.Uk, "dc")]
    [InlineData("14 sts and 7 rows to 10 cm over half double crochet.", Terminology.Us, "hdc")]
    [InlineData("17 sts and 17 rows = 10 cm (4 in) in pattern.", Terminology.Us, null)]
    [InlineData("16 sts, 18 rows = 10 cm, after blocking", Terminology.Us, null)]
    [InlineData("14 sts and 14 rows = 10 cm (4 in) in pattern (Row 3).", Terminology.Us, null)]
    [InlineData("16 sc and 18 rnds = 10 cm / 4 in", Terminology.Us, "sc")]
    public void The_stitch_of_a_swatch_is_named_in_the_pattern_s_terms(string text, Terminology terms, string? stitch)
    {
        Parsed<Swatch> read = Swatch.Parse(text, terms);
        Assert.True(read.IsRead, read.Message);
        Assert.Equal(stitch, read.Value.Stitch?.Value);
        Assert.Equal(100, read.Value.Height.Millimetres);
    }

    [Theory]
    [InlineData("18 rows = 10 cm", "The swatch does not say how many stitches there are. Add it, such as '16 sts'; the whole swatch reads like '16 sts, 18 rows = 10 x 10 cm, 12 g'.")]
    [InlineData("16 sts = 10 cm", "The swatch does not say how many rows there are. Add it, such as '18 rows'; the whole swatch reads like '16 sts, 18 rows = 10 x 10 cm, 12 g'.")]
    [InlineData("16 sts, 18 rows", "The swatch does not say the width and height that they measure. Add it, such as '= 10 x 10 cm'; the whole swatch reads like '16 sts, 18 rows = 10 x 10 cm, 12 g'.")]
    [InlineData("-16 sts, 18 rows = 10 cm", "'-' was not understood in the swatch. Write it like '16 sts, 18 rows = 10 x 10 cm, 12 g'.")]
    [InlineData("1,600 sts, 18 rows = 10 cm", "'1,600' may be 1600 or 1.6: write it without the mark, or with another number of decimals.")]
    [InlineData("Rnds 2 and 3 = 7 cm across.", "A gauge of rounds is measured from the centre on: begin with Rnd 1, as in 'Rnds 1 and 2 = 7 cm across'.")]
    [InlineData("Rnds 1 and 2 = across.", "The gauge does not say how wide the rounds are. Add it, as in 'Rnds 1 and 2 = 7 cm across'.")]
    [InlineData("16, 18 rows = 10 cm", "'16' has no unit: is it stitches, rows, cm, in or g? Write it like '16 sts, 18 rows = 10 x 10 cm, 12 g'.")]
    [InlineData("16 sts, 18 rows = 10 cm 12", "'12' has no unit: is it stitches, rows, cm, in or g? Write it like '16 sts, 18 rows = 10 x 10 cm, 12 g'.")]
    [InlineData("16 sts, 18 rows = 0 cm", "The swatch does not say a width and height above 0. Add it, such as '= 10 x 10 cm'; the whole swatch reads like '16 sts, 18 rows = 10 x 10 cm, 12 g'.")]
    public void What_a_swatch_lacks_is_asked_for(string text, string message)
    {
        Parsed<Swatch> read = Swatch.Parse(text);
        Assert.False(read.IsRead);
        Assert.Equal(message, read.Message);
    }

    [Theory]
    [InlineData("Rnds 1 and 2 = 7 cm (2¾ in) across.", 2, 70, null)]
    [InlineData("Rnds 1-3 = 4 in, 3 g", 3, 101.6, 3.0)]
    [InlineData("First 3 rounds measure 10 cm", 3, 100, null)]
    [InlineData("Rnds 1 and 2 = 7 cm (2¾ in) square.", 2, 70, null)]
    [InlineData("Rnd 1 = 3 x 3 cm, 4 mm hook", 1, 30, null)]
    public void A_gauge_of_rounds_is_read(string text, int rounds, double across, double? grams)
    {
        Parsed<Swatch> read = Swatch.Parse(text);
        Assert.True(read.IsRead, read.Message);
        Assert.Equal((SwatchKind.Rounds, new RowRange(1, rounds)), (read.Value.Kind, read.Value.Over));
        Assert.Equal(across, read.Value.Width.Millimetres, 6);
        Assert.Equal(grams, read.Value.Weight?.Grams);
    }

    [Fact]
    public void Repeats_and_tiles_are_counted()
    {
        Swatch repeats = Swatch.Parse("4 repeats (24 sts) and 8 rows = 12 x 9 cm").Value;
        Assert.Equal((SwatchKind.Repeats, 4, 6), (repeats.Kind, repeats.Stitches, repeats.StitchesPerRepeat));
        Assert.Equal(24, repeats.InStitches(null)!.Stitches);
        Assert.Null(Swatch.Parse("4 repeats, 8 rows = 12 x 9 cm").Value.InStitches(null));
        Assert.Equal(40, Swatch.Parse("4 repeats, 8 rows = 12 x 9 cm").Value.InStitches(10)!.Stitches);
        Swatch tiles = Swatch.Parse("5 x 4 tiles = 12 x 10 cm, 9 g").Value;
        Assert.Equal((SwatchKind.Tiles, 5, 4, 120, 100), (tiles.Kind, tiles.Stitches, tiles.Rows, tiles.Width.Millimetres, tiles.Height.Millimetres));
        Assert.Equal((3, 3), (Swatch.Parse("3 tiles = 7.5 cm").Value.Stitches, Swatch.Parse("3 tiles = 7.5 cm").Value.Rows));
    }

    [Theory]
    [InlineData("16 sts, 18 rows = 10 x 10 cm, before blocking 11 x 9 cm, 12 g", 110, 90)]
    [InlineData("16 sts, 18 rows = 10 x 10 cm after blocking, 11 x 9 cm before blocking", 110, 90)]
    [InlineData("16 sts, 18 rows, unblocked 11 x 9 cm, blocked 10 x 10 cm", 110, 90)]
    public void A_swatch_may_have_a_size_before_blocking(string text, double width, double height)
    {
        Parsed<Swatch> read = Swatch.Parse(text);
        Assert.True(read.IsRead, read.Message);
        Assert.Equal((100, 100), (read.Value.Width.Millimetres, read.Value.Height.Millimetres));
        Assert.Equal((width, height), (read.Value.BeforeBlocking!.Value.Width.Millimetres, read.Value.BeforeBlocking.Value.Height.Millimetres));
    }

    [Fact]
    public void A_swatch_names_its_hook_and_its_rows()
    {
        Swatch swatch = Swatch.Parse("16 sts, 18 rows = 10 x 10 cm, 12 g, with a 4.5 mm (US 7) hook in Rows 2 and 3").Value;
        Assert.Equal((new HookSize(4.5), new RowRange(2, 3)), (swatch.Hook, swatch.Over));
        Assert.Equal((100, 100, 12), (swatch.Width.Millimetres, swatch.Height.Millimetres, swatch.Weight!.Value.Grams));
        Assert.Equal((new RowRange(2, 5), 11), (Swatch.Parse("16 sts, 18 rows = 10 cm in Rows 2–5, 11 g").Value.Over, Swatch.Parse("16 sts, 18 rows = 10 cm in Rows 2–5, 11 g").Value.Weight!.Value.Grams));
        Assert.Equal(new RowRange(3, 3), Swatch.Parse("14 sts and 14 rows = 10 cm (4 in) in pattern (Row 3).").Value.Over);
    }

    [Fact]
    public void A_stated_gauge_may_lack_rows_and_then_no_height_is_known()
    {
        Swatch stated = Swatch.ParseStated("18 sc = 10 cm (4 in)").Value;
        Assert.Equal((18, 0, 100), (stated.Stitches, stated.Rows, stated.Width.Millimetres));
        Assert.False(Swatch.Parse("18 sc = 10 cm (4 in)").IsRead);
        Swatch repeat = Swatch.ParseStated("one pattern repeat (6 sts) = 3 cm").Value;
        Assert.Equal(5, repeat.InStitches(null)!.StitchWidth.Millimetres);
        Assert.Equal((14, 12), (Swatch.ParseStated("14 sts and 12 rnds = 10 cm (4 in) in rib").Value.Stitches, Swatch.ParseStated("14 sts and 12 rnds = 10 cm (4 in) in rib").Value.Rows));
    }

    [Theory]
    [InlineData("16 sts, 18 rows = 10 x 10 cm, 12 g", null)]
    [InlineData("40 dc, 18 rows = 4 x 4 in, 30 g", null)]
    [InlineData("4 sts, 3 rows = 10 x 10 cm", null)]
    [InlineData("4 sts, 3 rows = 10 x 10 cm, 60 g", "each stitch would take 1000 cm of yarn")]
    [InlineData("16 sts, 18 rows = 10 x 10 cm, 0 g", "The swatch weighs nothing.")]
    [InlineData("16 sts, 1 rows = 10 x 100 cm", "A row would be 160 stitch widths high")]
    [InlineData("160 sts, 18 rows = 4 x 10 cm", "160 stitches don't fit into 4 cm: each would be 0.25 mm wide.")]
    [InlineData("2 sts, 2 rows = 80 x 80 cm", "Each stitch would be 40 cm wide.")]
    [InlineData("16 sts, 18 rows = 10 x 10 cm, 1200 g", "would be 1200 g for 10 × 10 cm")]
    [InlineData("16 sts, 18 rows = 10 x 10 cm, before blocking 3 x 10 cm", "Blocking would have made it 3.33 times as wide")]
    [InlineData("16 sts, 18 rows = 10 x 10 cm, 40 mm hook", "seldom made with a 40 mm hook")]
    public void Swatches_that_can_hardly_be_are_questioned_and_never_refused(string text, string? doubt)
    {
        Parsed<Swatch> read = Swatch.Parse(text);
        Assert.True(read.IsRead, read.Message);
        string[] doubts = [.. SwatchDoubts.Of(read.Value, YarnLabel.Parse("200 m = 100 g").Value)];
        if (doubt is null) Assert.Equal([], doubts);
        else Assert.Contains(doubts, told => told.Contains(doubt, StringComparison.Ordinal));
    }

    [Fact]
    public void Swatches_that_differ_by_an_inch_to_a_centimetre_are_asked_about()
    {
        Swatch gauge = Swatch.Parse("16 sts, 18 rows = 4 x 4 in").Value;
        Assert.Contains("an inch to a centimetre", Assert.Single(SwatchDoubts.Between([gauge, Swatch.Parse("16 sts, 18 rows = 4 x 4 cm").Value])), StringComparison.Ordinal);
        Assert.Empty(SwatchDoubts.Between([gauge, Swatch.Parse("18 sts, 17 rows = 4 x 4 in").Value]));
    }

    [Theory]
    [InlineData("200 m = 100 g", 200, 100)]
    [InlineData("218 yd / 3.5 oz", 199.3392, 99.2233309)]
    [InlineData("50 g (85 m / 93 yd)", 85, 50)]
    [InlineData("100g/200m", 200, 100)]
    public void A_ball_band_is_read(string text, double metres, double grams)
    {
        Parsed<YarnLabel> read = YarnLabel.Parse(text);
        Assert.True(read.IsRead, read.Message);
        Assert.Equal(metres, read.Value.BallLength.Metres, 4);
        Assert.Equal(grams, read.Value.BallWeight.Grams, 4);
    }

    [Theory]
    [InlineData("100 g", "The yarn has no length. Write it with its weight, as on the ball band: '200 m = 100 g'.")]
    [InlineData("200 m", "The yarn has no weight. Write it with its length, as on the ball band: '200 m = 100 g'.")]
    [InlineData("200 ells", "'200' has no unit known here. Write metres or yards and grams or ounces, such as '200 m = 100 g'.")]
    public void What_a_ball_band_lacks_is_asked_for(string text, string message) =>
        Assert.Equal(message, YarnLabel.Parse(text).Message);
}
