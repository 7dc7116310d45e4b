using PatternStudio.Craft.Measuring;

namespace PatternStudio.Craft.Tests.Measuring;

/// <summary>The worked examples of the reference on pattern arithmetic, each with its source as numbered there.</summary>
public sealed class ArithmeticTests
{
    private static readonly Swatch Blanket = Swatch.Parse("13 dc and 7.5 rows = 4 in").Value;

    /// <summary>Source 2 (sdrta.net): 13 dc and 7.5 rows to 4 in, blanket 50 × 60 in → 162.5 and 112.5, rounded down 162 × 112 = 18,144 stitches.</summary>
    [Fact]
    public void Gauge_gives_stitches_and_rows()
    {
        Assert.Equal(162.5, GaugeSums.StitchesFor(Length.FromInches(50), Blanket), 9);
        Assert.Equal(112.5, GaugeSums.RowsFor(Length.FromInches(60), Blanket), 9);
        Assert.Equal(18_144, Math.Floor(162.5) * Math.Floor(112.5));
    }

    /// <summary>Source 3 (Crochet World): 10 dc to 1 in wanted; 12 are too many (larger hook), 8 too few (smaller hook): stitches narrower and wider than wanted.</summary>
    [Theory]
    [InlineData(12, -1)]
    [InlineData(8, 1)]
    public void Too_many_stitches_are_too_narrow(double got, int sign)
    {
        Length wanted = Swatch.Parse("10 dc, 5 rows = 1 in").Value.StitchWidth;
        Assert.Equal(sign, Swatch.Parse($"{got} dc, 5 rows = 1 in").Value.StitchWidth.CompareTo(wanted));
    }

    /// <summary>Sources 7, 8 and 10 of the section on multiples.</summary>
    [Theory]
    [InlineData(8, 10, 12, 106, "7: 12 × 8 + 10")]
    [InlineData(12, 2, 9, 110, "8: 108 + 2")]
    [InlineData(6, 2, 11, 68, "5: 66 + 2")]
    public void A_multiple_is_so_many_repeats_and_the_rest_once(int each, int extra, int repeats, long stitches, string source)
    {
        var multiple = new StitchMultiple(each, extra);
        Assert.True(multiple.Of(repeats) == stitches, source);
        Assert.True(multiple.Allows(stitches), source);
        Assert.False(multiple.Allows(stitches + 1), source);
        Assert.False(multiple.Allows(extra), source);
    }

    /// <summary>Source 5: near 70 stitches, a multiple of 6 + 2 gives 68 (and 74 above). Source 9: 2 + 5 at 2 repeats to the inch, 8 in wide: 2 × 2 × 8 = 32, and 5 once: 37.</summary>
    [Fact]
    public void The_nearest_allowed_counts_lie_about_a_wish()
    {
        Assert.Equal((68, 74), new StitchMultiple(6, 2).Around(70));
        Assert.Equal(68, new StitchMultiple(6, 2).Nearest(70));
        Assert.Equal((37, 37), new StitchMultiple(2, 5).Around((2 * 2 * 8) + 5));
        Assert.Equal((8, 8), new StitchMultiple(6, 2).Around(1) with { Above = 8 });
    }

    /// <summary>Corner to corner, the table of section 5 (derived there; source 20 agrees for 100 × 80).</summary>
    [Theory]
    [InlineData(8, 12, 96, 19, 8, 4, 7, 36)]
    [InlineData(80, 100, 8_000, 179, 80, 20, 79, 3_240)]
    [InlineData(50, 50, 2_500, 99, 50, 0, 49, 1_275)]
    public void Tiles_are_counted_along_the_diagonals(int shorter, int longer, long tiles, int rows, int increasing, int straight, int decreasing, long throughCorner)
    {
        var grid = new TileGrid(shorter, longer);
        Assert.Equal((tiles, rows, increasing, straight, decreasing), (grid.Tiles, grid.Rows, grid.Increasing, grid.Straight, grid.Decreasing));
        Assert.Equal(throughCorner, grid.TilesThrough(shorter));
        Assert.Equal(tiles, grid.TilesThrough(rows));
        Assert.Equal((0, 1, 1, 0), (grid.TilesIn(0), grid.TilesIn(1), grid.TilesIn(rows), grid.TilesIn(rows + 1)));
        Assert.Equal(grid, TileGrid.From([.. Enumerable.Range(1, rows).Select(row => (long)grid.TilesIn(row))]));
    }

    [Fact]
    public void Rows_that_make_no_rectangle_are_no_grid()
    {
        Assert.Null(TileGrid.From([1, 2, 2, 2, 3]));
        Assert.Null(TileGrid.From([]));
        Assert.Null(TileGrid.From([5, 5]));
    }

    /// <summary>Half-yarn rule, section 6: (N + 1)/(2N): 10 → 55 %, 20 → 52.5 %, 30 → 51.7 %, 50 → 51 %, 100 → 50.5 %.</summary>
    [Theory]
    [InlineData(10, 55)]
    [InlineData(20, 52.5)]
    [InlineData(30, 51.7)]
    [InlineData(50, 51)]
    [InlineData(100, 50.5)]
    public void Half_the_yarn_is_used_a_little_before_the_longest_row_ends(int tiles, double percent) =>
        Assert.Equal(percent, Math.Round(HalfYarn.ShareThroughLongestRow(tiles) * 100, 1));

    /// <summary>Section 6: after row n go on if what remains makes (n + 1) + n (n + 1)/2 tiles. With yarn for 100 tiles (10 × 10): 55 used after row 10 leaves 45 = 10 × 9/2.</summary>
    [Fact]
    public void The_exact_test_tells_the_last_row_to_grow()
    {
        int row = 1;
        while (HalfYarn.MayGrow(row, 100 - (row * (row + 1) / 2.0))) row++;
        Assert.Equal(10, row);
        Assert.Equal(45, HalfYarn.TilesToClose(10));
        Assert.False(HalfYarn.MayGrow(10, 65.9));
        Assert.True(HalfYarn.MayGrow(10, 11 + 55));
    }

    /// <summary>Section 7, source 22: grams = swatch grams × areas; metres = grams × ball m ÷ ball g; skeins rounded up. Source 2: grams ÷ stitches × stitches, all decimals kept.</summary>
    [Fact]
    public void Yarn_is_estimated_by_area_and_by_stitch()
    {
        Swatch swatch = Swatch.Parse("16 sc, 18 rows = 10 x 10 cm, 12 g").Value;
        var piece = new FabricSize(Length.FromCentimetres(25), Length.FromCentimetres(25));
        Mass grams = GaugeSums.YarnByArea(swatch, piece);
        Assert.Equal(75, grams.Grams, 9);
        Assert.Equal(75, GaugeSums.YarnByStitch(swatch, 40 * 45).Grams, 9);
        YarnLabel ball = YarnLabel.Parse("85 m = 50 g").Value;
        Assert.Equal(127.5, ball.LengthOf(grams).Metres, 9);
        Assert.Equal(2, GaugeSums.Balls(ball.LengthOf(grams), ball));
        Assert.Equal(2, GaugeSums.Balls(YarnLength.FromMetres(170), ball));
        Assert.Equal(3, GaugeSums.Balls(YarnLength.FromMetres(170.01), ball));
    }

    /// <summary>Section 7: 1 yd = 0.9144 m, 1 oz = 28.35 g, 1 lb = 453.592 g, yd/lb × 0.2016 = m/100 g.</summary>
    [Fact]
    public void Units_are_those_of_the_table()
    {
        Assert.Equal(453.592, Mass.Parse("1 lb").Value.Grams, 3);
        YarnLabel pound = YarnLabel.Parse("1000 yd = 1 lb").Value;
        Assert.Equal(201.6, pound.MetresPer100Grams, 1);
    }

    /// <summary>Section 1: 4 in and 10 cm are treated as the same; true 4 in are 10.16 cm, 1.6 % more.</summary>
    [Fact]
    public void Four_inches_are_not_quite_ten_centimetres() => Assert.Equal(10.16, Length.FromInches(4).Centimetres, 9);
}
