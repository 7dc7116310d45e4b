using PatternStudio.Craft.Measuring;

namespace PatternStudio.Craft.Tests.Measuring;

public sealed class LengthTests
{
    [Theory]
    [InlineData("4½ in", 114.3, "fraction sign after a whole")]
    [InlineData("4 ½ in", 114.3, "with a blank between")]
    [InlineData("3 1/2\"", 88.9, "typed fraction, inch sign")]
    [InlineData("3-1/2 in.", 88.9, "hyphen and period")]
    [InlineData("¾″", 19.05, "fraction alone, double prime")]
    [InlineData("10,5 cm", 105, "decimal comma")]
    [InlineData("10.5cm", 105, "no blank")]
    [InlineData("95 mm", 95, "millimetres")]
    [InlineData("2 inches", 50.8, "the unit in full")]
    [InlineData("8⅜ in", 212.725, "eighths")]
    public void A_length_is_read_as_makers_write_it(string text, double millimetres, string reason)
    {
        Parsed<Length> read = Length.Parse(text);
        Assert.True(read.IsRead, $"{reason}: {read.Message}");
        Assert.Equal(millimetres, read.Value.Millimetres, 6);
    }

    [Theory]
    [InlineData("", "No number was found. Write the length with its unit, such as '10 cm' or '4½ in'.")]
    [InlineData("wide", "No number was found. Write the length with its unit, such as '10 cm' or '4½ in'.")]
    [InlineData("4", "'4' has no unit. Write 'cm' or 'in' after the number.")]
    [InlineData("4 spans", "'spans' is not a unit of length known here. Use mm, cm or in.")]
    [InlineData("4 cm wide", "'wide' after the length was not understood. Write one length only, such as '10 cm'.")]
    [InlineData("0 cm", "'0 cm' is no length that a fabric can have. Give a length above 0 and below 100000 cm.")]
    public void What_can_t_be_read_is_told_with_what_to_do(string text, string message)
    {
        Parsed<Length> read = Length.Parse(text);
        Assert.False(read.IsRead);
        Assert.Equal(message, read.Message);
        Assert.Throws<InvalidOperationException>(() => read.Value);
    }

    [Theory]
    [InlineData(254, "25.4 cm (10 in)")]
    [InlineData(212, "21.2 cm (8¼ in)")]
    [InlineData(10, "1 cm (⅜ in)")]
    [InlineData(5, "0.5 cm (3/16 in)")]
    [InlineData(0, "0 cm (0 in)")]
    [InlineData(25.3, "2.5 cm (1 in)")]
    public void A_length_is_written_in_both_units(double millimetres, string written) =>
        Assert.Equal(written, Length.FromMillimetres(millimetres).ToString());

    /// <summary>Exact factors: international inch, yard and avoirdupois ounce; the reference tables round the ounce to 28.35 g.</summary>
    [Fact]
    public void Units_convert_by_their_exact_factors()
    {
        Assert.Equal(25.4, Length.FromInches(1).Millimetres);
        Assert.Equal(0.9144, YarnLength.FromYards(1).Metres);
        Assert.Equal(28.35, Mass.FromOunces(1).Grams, 2);
        Assert.Equal(1.6, (Length.FromInches(4) / Length.FromCentimetres(10) - 1) * 100, 1);
    }
}
