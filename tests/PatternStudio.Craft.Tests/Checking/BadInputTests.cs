using System.Text;
using PatternStudio.Craft.Checking;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>Whatever is handed in, a check returns with a finding that says what is wrong.</summary>
public sealed class BadInputTests
{
    [Theory]
    [InlineData("")]
    [InlineData("   \n\t \r\n \u00a0")]
    [InlineData("A poem about the sea.")]
    public void A_text_without_rows_has_nothing_to_check(string text) => Assert.Equal([FindingCodes.NothingToCheck], Texts.Codes(text));

    [Fact]
    public void Bytes_are_no_text()
    {
        byte[] bytes = [.. Enumerable.Range(0, 20_000).Select(i => (byte)(i * 7919 % 256))];
        Assert.Equal([FindingCodes.NotText], Texts.Codes(Encoding.Latin1.GetString(bytes)));
        Assert.Equal([FindingCodes.NotText], Texts.Codes(Encoding.UTF8.GetString(bytes)));
    }

    /// <summary>Digits of other scripts are no numbers here; nothing is thrown for them.</summary>
    [Theory]
    [InlineData("Gauge: 13 sts and 9 rows = 10\u0665 cm (4 in) in pattern.")]
    [InlineData("Size: 2\u0660 cm (8 in) wide, multiple of \u0664 + \u0662.")]
    [InlineData("Row 2: Increase in every \u0663th sc, then work \u0662 rows even.")]
    public void Digits_of_other_scripts_are_read_as_words(string line) => Assert.NotNull(PatternCheck.Check(line + "\n" + Texts.TenSc));

    [Fact]
    public void Five_megabytes_are_too_large()
    {
        string text = Texts.TenSc + string.Concat(Enumerable.Repeat("Sew in the ends with care and patience.\n", 125_000));
        Assert.True(text.Length >= 5_000_000);
        Assert.Contains(FindingCodes.TooLarge, Texts.Codes(text));
    }

    [Theory]
    [InlineData('(')]
    [InlineData('[')]
    [InlineData(')')]
    public void Ten_thousand_nested_brackets_are_said_to_be_wrong(char bracket) =>
        Assert.NotEmpty(Texts.Codes(Texts.TenSc + "Row 2: Ch 1, turn, " + new string(bracket, 10_000) + "sc in next sc."));

    [Fact]
    public void Ten_thousand_brackets_that_close_are_too_deep() =>
        Assert.Contains(FindingCodes.TooLarge, Texts.Codes(Texts.TenSc + "Row 2: Ch 1, turn, " + new string('(', 10_000) + "sc in next sc" + new string(')', 10_000) + " twice."));

    [Theory]
    [InlineData("Ch 999999999.\nRow 1: Sc in 2nd ch from hook and in each ch across.")]
    [InlineData("Ch 99999999999999999999999.\nRow 1: Sc in 2nd ch from hook and in each ch across.")]
    [InlineData(Texts.TenSc + "Row 2: Ch 1, turn, [sc in next sc] 999999999 times.")]
    public void A_number_beyond_measure_is_too_large(string text) => Assert.Contains(FindingCodes.TooLarge, Texts.Codes(text));

    [Theory]
    [InlineData(Texts.TenSc + "Row 2: Ch 1, turn, sc in each sc across.\nRows 3–99999999: Rep Row 2.")]
    [InlineData(Texts.TenSc + "Row 2: Ch 1, turn, sc in each sc across.\nRep Row 2 for 999999 more rows.")]
    [InlineData(Texts.TenSc + "Row 2: Rep Row 2.")]
    [InlineData(Texts.TenSc + "Row 2: Rep Row 3.\nRow 3: Rep Row 2.")]
    [InlineData("Special stitches\nAb: cd in next st.\nCd: ab in next st.\n\n" + Texts.TenSc + "Row 2: Ch 1, turn, ab in each sc across.")]
    [InlineData("Special stitches\nAb (ab): (ab, ab) in same st.\n\n" + Texts.TenSc + "Row 2: Ch 1, turn, ab in each sc across.")]
    [InlineData("Ch 5, join with sl st to form ring.\nRnd 1: 1000 sc in ring. (1000 sc)\nRnd 2: 1000 sc in each sc around.\nRnd 3: 1000 sc in each sc around.\nRnd 4: 1000 sc in each sc around.")]
    public void Work_without_end_comes_to_an_end(string text) => Assert.NotNull(PatternCheck.Check(text));

    [Fact]
    public void Ten_thousand_sizes_come_to_an_end()
    {
        string sizes = string.Join(", ", Enumerable.Range(20, 10_000));
        Assert.NotNull(PatternCheck.Check($"Ch 19 ({sizes}).\nRow 1: Sc in 2nd ch from hook and in each ch across."));
    }

    [Fact]
    public void Ten_thousand_definitions_come_to_an_end()
    {
        string names = string.Concat(Enumerable.Range(1, 10_000).Select(i => $"Puff {i} (puff{i}): 3 dc in same st.\n"));
        Assert.NotNull(PatternCheck.Check("Special stitches\n" + names + "\n" + Texts.TenSc));
    }
}
