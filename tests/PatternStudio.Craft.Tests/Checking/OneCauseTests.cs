using PatternStudio.Craft.Checking;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>One cause, one finding, at the smallest stretch that shows it.</summary>
public sealed class OneCauseTests
{
    [Theory]
    [InlineData("Row 2: Ch 1, turn, wibble the yarn, sc in each sc across.", "not-read")]
    [InlineData("Row 2: Ch 1, turn, sc in next sc; rep from * across. (10 sc)", "repeat-without-star")]
    [InlineData("Row 2: Ch 1, turn, sc in each sc across.\nRow 2: Ch 1, turn, sc in each sc across.\nRow 4: Ch 1, turn, sc in each sc across.", "row-number-repeated")]
    [InlineData("Row 2: Ch 1, turn, sc in next 12 sc. (12 sc)\nRow 3: Ch 1, turn, sc in each sc across. (12 sc)\nRow 4: Rep Row 3.", "past-the-end")]
    [InlineData("Row 2: Ch 1, turn, sc in each sc across. (12 sc)\nRow 3: Ch 1, turn, sc in each sc across. (12 sc)", "count-differs")]
    public void What_only_follows_is_not_said(string rows, string cause) => Assert.Equal([cause], Texts.Codes(Texts.TenSc + rows));

    [Fact]
    public void Two_unread_stretches_of_a_row_are_two_findings() =>
        Assert.Equal(["not-read", "not-read"], Texts.Codes(Texts.TenSc + "Row 2: Ch 1, turn, wibble the yarn, sc in next 5 sc, wobble the hook, sc in next 5 sc."));

    [Fact]
    public void Rows_worked_from_the_same_words_are_one_finding() =>
        Assert.Single(Texts.Codes(Texts.TenSc + "Rows 2–9: Ch 1, turn, sc in next 9 sc."), FindingCodes.StitchesLeft);

    [Fact]
    public void Findings_are_in_the_order_of_the_text()
    {
        int[] starts = [.. PatternCheck.Check("Finished size: 20 cm (9 in)\n\n" + Texts.TenSc + "Row 2: Ch 1, turn, sc in next 9 sc.\nRow 4: Ch 1, turn, sc in each sc across.").Findings.Select(finding => finding.Span.Start)];
        Assert.Equal(starts.Order(), starts);
        Assert.Equal(3, starts.Length);
    }

    [Fact]
    public void A_gap_behind_words_that_may_tell_rows_is_not_claimed() =>
        Assert.DoesNotContain(FindingCodes.RowNumberMissing, Texts.Codes(Texts.TenSc + "Row 2: Ch 1, turn, sc in each sc across, and then carry on for another row the way you like.\nRow 4: Ch 1, turn, sc in each sc across."));

    [Fact]
    public void A_row_behind_missing_rows_is_not_judged_by_the_row_before_the_gap() =>
        Assert.Equal([FindingCodes.RowNumberMissing], Texts.Codes(Texts.TenSc + "Row 9: Ch 1, turn, sc in next 14 sc."));

    [Fact]
    public void Rows_told_in_turn_have_their_numbers() =>
        Assert.DoesNotContain(FindingCodes.RowNumberRepeated, Texts.Codes(Texts.TenSc + "Rows 2 and 4: Ch 1, turn, sc in each sc across.\nRows 3 and 5: Ch 1, turn, sc in each sc across."));
}
