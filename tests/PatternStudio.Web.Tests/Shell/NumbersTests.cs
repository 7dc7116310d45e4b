using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Tests.Shell;

public sealed class NumbersTests
{
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

    [Theory]
    [InlineData(0.4, "0\u202fmin")]
    [InlineData(59, "59\u202fmin")]
    [InlineData(60, "1\u202fh")]
    [InlineData(200, "3\u202fh 20\u202fmin")]
    [InlineData(3_100, "52\u202fh")]
    public void Says_times_as_people_do(double minutes, string said) => Assert.Equal(said, Numbers.Time(minutes));
}
