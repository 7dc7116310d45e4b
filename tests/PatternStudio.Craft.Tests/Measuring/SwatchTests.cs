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
    [InlineData("Rnds 1 and 2 = 7 cm (2¾ in) across.", "A gauge of whole rounds can't be used yet. Work a swatch in rows of the same stitch and write it like '16 sts, 18 rows = 10 x 10 cm, 12 g'.")]
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
