using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Tests.Shell;

public sealed class NumbersTests
{
    [Theory]
    [InlineData("10", 10)]
    [InlineData("10.5", 10.5)]
    [InlineData("10,5", 10.5)]
    [InlineData(" 7 ", 7)]
    public void Reads_a_number_with_point_or_comma(string written, double number) => Assert.Equal(number, Numbers.ReadPositive(written));

    [Theory]
    [InlineData("")]
    [InlineData("0")]
    [InlineData("-1")]
    [InlineData("1 000")]
    [InlineData("1.2.3")]
    [InlineData("∞")]
    public void Takes_nothing_else_for_a_number(string written) => Assert.Null(Numbers.ReadPositive(written));

    // 1 inch is 2.54 cm by definition (international yard and pound agreement, 1959).
    [Theory]
    [InlineData(2.54, "1")]
    [InlineData(50.8, "20")]
    [InlineData(52.705, "20¾")]
    [InlineData(1.27, "½")]
    [InlineData(0.2, "0")]
    public void Says_inches_to_the_quarter(double cm, string inches) => Assert.Equal(inches, Numbers.Inches(cm));

    [Theory]
    [InlineData(52.4, "52.5")]
    [InlineData(52.2, "52")]
    [InlineData(10, "10")]
    public void Says_centimetres_to_the_half(double cm, string said) => Assert.Equal(said, Numbers.Centimetres(cm));

    [Fact]
    public void Sets_thousands_off() => Assert.Equal("40\u202f000", Numbers.Count(40_000));
}
