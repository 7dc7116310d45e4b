using CsCheck;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;

namespace PatternStudio.Craft.Tests.Measuring;

/// <summary>Numbers as people type them: read, or refused in words; nothing typed is passed over.</summary>
public sealed class MeasureReadingTests
{
    [Theory]
    [InlineData("10 cm (4 in)", 100)]
    [InlineData("4 in / 10 cm", 101.6)]
    [InlineData("1.5 m", 1500)]
    [InlineData("5 ft", 1524)]
    [InlineData("1 yd", 914.4)]
    [InlineData("0,5 cm", 5)]
    [InlineData("12 1/4 in", 311.15)]
    [InlineData("1200 mm", 1200)]
    public void Lengths_are_read(string text, double millimetres)
    {
        Parsed<Length> read = Length.Parse(text);
        Assert.True(read.IsRead, read.Message);
        Assert.Equal(millimetres, read.Value.Millimetres, 6);
    }

    [Theory]
    [InlineData("-4 cm", "'-4 cm' is below 0, and no length is. Write it without the minus.")]
    [InlineData("− 4 in", "'− 4 in' is below 0, and no length is. Write it without the minus.")]
    [InlineData("10 cm (5 in)", "'10 cm (5 in)' says two different things: write one length, or the same in both units.")]
    [InlineData("1,000 mm", "'1,000' may be 1000 or 1.0: write it without the mark, or with another number of decimals.")]
    [InlineData("10 cm 4 mm", "'4 mm' after the length was not understood. Write one length only, such as '10 cm'.")]
    [InlineData("10 g", "'g' is not a unit of length known here. Use mm, cm or in.")]
    [InlineData("2000 km", "'km' is not a unit of length known here. Use mm, cm or in.")]
    [InlineData("99999999 cm", "'99999999 cm' is no length that a fabric can have. Give a length above 0 and below 100000 cm.")]
    [InlineData("4½", "'4½' has no unit. Write 'cm' or 'in' after the number.")]
    public void Lengths_that_can_t_be_are_refused(string text, string message)
    {
        Parsed<Length> read = Length.Parse(text);
        Assert.False(read.IsRead);
        Assert.Equal(message, read.Message);
    }

    [Theory]
    [InlineData("12 g", 12)]
    [InlineData("0,5 oz", 14.1747615625)]
    [InlineData("3½ oz", 99.2233309375)]
    [InlineData("0.1 kg", 100)]
    [InlineData("100 g (3.5 oz)", 100)]
    public void Weights_are_read(string text, double grams) => Assert.Equal(grams, Mass.Parse(text).Value.Grams, 6);

    [Theory]
    [InlineData("0 g", "'0 g' is no weight of yarn. Give one above 0 and below 1000 kg.")]
    [InlineData("12", "'12' has no unit. Write 'g' or 'oz' after the number.")]
    [InlineData("-12 g", "'-12 g' is below 0, and no weight is. Write it without the minus.")]
    public void Weights_that_can_t_be_are_refused(string text, string message) => Assert.Equal(message, Mass.Parse(text).Message);

    [Fact]
    public void Yarn_lengths_are_read_in_metres_and_yards()
    {
        Assert.Equal(85, YarnLength.Parse("93 yd (85 m)").Value.Metres, 0);
        Assert.False(YarnLength.Parse("93 yd (93 m)").IsRead);
        Assert.False(YarnLength.Parse("40 cm").IsRead);
    }

    [Theory]
    [InlineData("200 m = -100 g", "'-100' is below 0, and no ball is. Write it like '200 m = 100 g'.")]
    [InlineData("50 g (85 m / 110 yd)", "'50 g (85 m / 110 yd)' gives two different balls. Write one of them, such as '200 m = 100 g'.")]
    [InlineData("1,000 m = 100 g", "'1,000' may be 1000 or 1.0: write it without the mark, or with another number of decimals.")]
    [InlineData("100 m = 200 kg", "'100 m = 200 kg' makes 0.0005 m in a gram, which no yarn has. Look at the units again; a ball band reads like '200 m = 100 g'.")]
    public void Ball_bands_that_can_t_be_are_refused(string text, string message) => Assert.Equal(message, YarnLabel.Parse(text).Message);

    [Fact]
    public void A_ball_band_may_tell_the_fibre() => Assert.Equal(85, YarnLabel.Parse("50 g = 85 m, 100 % cotton").Value.BallLength.Metres);

    [Theory]
    [InlineData("5 mm", 5, "5 mm (US H-8)")]
    [InlineData("4,25 mm hook", 4.25, "4.25 mm")]
    [InlineData("6.5", 6.5, "6.5 mm (US K-10½)")]
    public void Hooks_are_kept_in_millimetres(string text, double millimetres, string written)
    {
        Assert.Equal(millimetres, HookSize.Parse(text).Value.Millimetres);
        Assert.Equal(written, HookSize.Parse(text).Value.ToString());
    }

    [Theory]
    [InlineData("G")]
    [InlineData("500 mm")]
    [InlineData("5 in")]
    public void Hooks_by_letter_are_refused(string text) => Assert.False(HookSize.Parse(text).IsRead);

    /// <summary>The rounding rules of the document on measuring: half centimetres, quarter inches, halves up, each from the unrounded length.</summary>
    [Theory]
    [InlineData(212, "21 cm (8¼ in)")]
    [InlineData(102.5, "10.5 cm (4 in)")]
    [InlineData(102.4, "10 cm (4 in)")]
    [InlineData(317.5, "32 cm (12½ in)")]
    [InlineData(15, "1.5 cm (9/16 in)")]
    [InlineData(27, "2.5 cm (1 in)")]
    public void Printed_lengths_are_rounded_by_rule(double millimetres, string printed) => Assert.Equal(printed, Length.FromMillimetres(millimetres).ForPrint());

    /// <summary>Whatever is printed passes the program's own check of centimetres against inches.</summary>
    [Fact]
    public void No_printed_length_disagrees_with_itself() =>
        Gen.Double[20, 3000].Sample(millimetres =>
        {
            string text = $"# Cloth\n\nFinished size: {Length.FromMillimetres(millimetres).ForPrint()} wide.\n\nCh 5.\nRow 1: Sc in 2nd ch from hook and in each ch across. (4 sc)\n";
            return PatternCheck.Check(text).Findings.All(finding => finding.Code != FindingCodes.CmInchesDiffer);
        }, iter: 300);

    /// <summary>Any text at all is read or refused; none throws.</summary>
    [Fact]
    public void No_text_breaks_a_reader() =>
        Gen.String[Gen.Char["0123456789 .,/½¼-−()x×=cmingoztsrwdbef\"'"], 0, 24].Sample(text =>
        {
            _ = Length.Parse(text).IsRead;
            _ = Mass.Parse(text).IsRead;
            _ = YarnLength.Parse(text).IsRead;
            _ = YarnLabel.Parse(text).IsRead;
            _ = HookSize.Parse(text).IsRead;
            Parsed<Swatch> swatch = Swatch.Parse(text);
            if (swatch.IsRead) _ = SwatchDoubts.Of(swatch.Value).Count + swatch.Value.ToString().Length;
        }, iter: 20_000);
}
