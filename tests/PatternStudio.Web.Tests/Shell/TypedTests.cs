using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Tests.Shell;

/// <summary>1 in = 2.54 cm, 1 yd = 0.9144 m, 1 oz = 28.349523125 g (international yard and pound, 1959).</summary>
public sealed class TypedTests
{
    [Theory]
    [InlineData("10", 10)]
    [InlineData("10,5", 10.5)]
    [InlineData(" 10.5 cm ", 10.5)]
    [InlineData("4½ in", 11.43)]
    [InlineData("3 1/2\"", 8.89)]
    [InlineData("95 mm", 9.5)]
    public void Lengths_are_taken_in_any_unit_and_without_one_in_centimetres(string written, double centimetres) =>
        Assert.Equal(centimetres, Typed.Centimetres(written).Value, 9);

    [Theory]
    [InlineData("16", 16)]
    [InlineData("16½", 16.5)]
    [InlineData("16,5 sts", 16.5)]
    [InlineData("7 1/2 rows", 7.5)]
    public void Counts_may_be_halves_and_bear_their_word(string written, double count) => Assert.Equal(count, Typed.Count(written).Value);

    [Theory]
    [InlineData("0")]
    [InlineData("-1")]
    [InlineData("1 000")]
    [InlineData("1,000")]
    [InlineData("1.2.3")]
    [InlineData("∞")]
    [InlineData("NaN")]
    [InlineData("1e9")]
    [InlineData("999999999999999999999")]
    [InlineData("10 cm")]
    public void No_counts(string written) => Assert.NotNull(Typed.Count(written).Trouble);

    [Theory]
    [InlineData("50", 50)]
    [InlineData("1:20", 80)]
    [InlineData("1 h 20 min", 80)]
    [InlineData("2 h", 120)]
    [InlineData("45 min", 45)]
    public void Times(string written, double minutes) => Assert.Equal(minutes, Typed.Minutes(written).Value);

    [Theory]
    [InlineData("")]
    [InlineData(":")]
    [InlineData("h")]
    [InlineData("0")]
    [InlineData("soon")]
    [InlineData("1:2:3")]
    public void No_times(string written) => Assert.NotNull(Typed.Minutes(written).Trouble);

    [Fact]
    public void What_was_taken_is_said_back_only_where_it_is_not_plain()
    {
        Assert.Equal("10.16 cm", Typed.Echo("4 in", Typed.Centimetres, "cm"));
        Assert.Null(Typed.Echo("10 cm", Typed.Centimetres, "cm"));
        Assert.Null(Typed.Echo("10", Typed.Centimetres, "cm"));
        Assert.Null(Typed.Echo("4 furlongs", Typed.Centimetres, "cm"));
    }
}
