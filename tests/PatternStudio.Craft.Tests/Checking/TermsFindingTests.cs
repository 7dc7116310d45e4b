using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>Terms of the other terminology. Which word means what: the published US/UK tables that the reference lists.</summary>
public sealed class TermsFindingTests
{
    private const string Uk = "UK terms\nCh 11.\nRow 1: Dc in 2nd ch from hook and in each ch across. (10 dc)\n";

    [Fact]
    public void Mixed_terms_are_one_finding_at_the_first_word_with_what_it_would_be()
    {
        const string text = Uk + "Row 2: Ch 2, turn, htr in each dc across.\nRow 3: Ch 1, turn, sc in each htr across.\nRow 4: Ch 1, turn, sc in each dc across.";
        Assert.Equal([FindingCodes.OtherTerms], Texts.Codes(text));
        Assert.Equal("'sc' is a US term, but the pattern is in UK terms. What US terms call an sc is a dc in UK terms: use one terminology throughout.", Texts.Only(text).Message);
    }

    [Fact]
    public void A_stated_terminology_that_the_rows_contradict_is_found()
    {
        const string text = "UK terms\n" + Texts.TenSc + "Row 2: Ch 1, turn, sc in each sc across. (10 sc)";
        Assert.Equal([FindingCodes.OtherTerms], Texts.Codes(text));
        Assert.Equal("The pattern says that it is in UK terms, but 'Sc' is a US term and no row has a term of UK alone. State US terms, or convert the rows.", Texts.Only(text).Message);
    }

    [Theory]
    [InlineData(Uk + "Row 2: Ch 1, turn, skip first dc, dc in each dc across. Gauge does not matter, nor does color.")]
    [InlineData("US terms\n" + Texts.TenSc + "Row 2: Ch 1, turn, miss first sc, sc in each sc across. (9 sc)")]
    [InlineData("US terms\nTension: 16 sc = 10 cm\n" + Texts.TenSc)]
    [InlineData("US terms\nCh 13.\nRow 1: Treble in 5th ch from hook and in each ch across. Sc in last ch.")]
    public void Habits_of_spelling_are_no_mixture(string text) => Assert.DoesNotContain(FindingCodes.OtherTerms, Texts.Codes(text));

    [Fact]
    public void A_table_of_both_terms_outside_the_rows_is_no_mixture() =>
        Assert.DoesNotContain(FindingCodes.OtherTerms, Texts.Codes("US terms\nNotes\nUK makers: sc is your dc, hdc is your htr.\n\n" + Texts.TenSc));

    [Fact]
    public void The_same_holds_where_the_terms_are_told() =>
        Assert.Contains(PatternCheck.Check(Texts.TenSc + "Row 2: Ch 2, turn, htr in each sc across.", Terminology.Us).Findings, finding => finding.Code == FindingCodes.OtherTerms);
}
