using PatternStudio.Craft.Checking;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>Numbers of the front matter. 1 in = 2.54 cm exactly; 10 cm = 4 in is the trade's equality (1.6 % apart).</summary>
public sealed class StatementFindingTests
{
    [Theory]
    [InlineData("Finished size: 20 cm (8 in)")]
    [InlineData("Finished size: 20 cm × 30 cm (8 in × 12 in)")]
    [InlineData("Finished size: 20 x 30 cm (8 x 12 in)")]
    [InlineData("Finished size: 14 cm wide, 15 cm long (5½ in x 6 in)")]
    [InlineData("Finished size: 57 cm (22½ in). Height: 12.5 cm (5 in).")]
    [InlineData("Finished size: 8 in (20 cm)")]
    [InlineData("Finished size: 8\" (20.5 cm)")]
    [InlineData("Finished size: 100 cm (40 in)")]
    [InlineData("Finished size: about 130 cm (50 in)")]
    [InlineData("Around: 43 (48, 53) cm / 17 (19, 21) in")]
    [InlineData("Gauge: 16 sc and 20 rows = 10 cm (4 in)")]
    [InlineData("Gauge: 16 sc and 20 rows = 10 cm / 4 in")]
    [InlineData("Materials: 5 mm hook (US H-8), 100 g yarn")]
    [InlineData("Finished size: 20 cm wide (30 rows)")]
    [InlineData("Finished size: 20, 25 or 30 cm (12 in)")]
    [InlineData("Finished size: 7 cm (2 3/4 in) square")]
    public void Lengths_that_agree_or_can_not_be_paired_give_none(string statement) =>
        Assert.DoesNotContain(FindingCodes.CmInchesDiffer, Texts.Codes(statement + "\n\n" + Texts.TenSc));

    [Theory]
    [InlineData("Finished size: 20 cm (9 in)", "20 cm (9 in)")]
    [InlineData("Finished size: 20 cm × 30 cm (8 in × 10 in)", "20 cm × 30 cm (8 in × 10 in)")]
    [InlineData("Finished size: 21 cm wide (8 in wide), 12 cm (4 in) high", "12 cm (4 in)")]
    [InlineData("Around: 43 (48, 53) cm / 17 (19, 23) in", "43 (48, 53) cm / 17 (19, 23) in")]
    [InlineData("Gauge: 16 sc and 20 rows = 10 cm (5 in)", "10 cm (5 in)")]
    public void Lengths_that_disagree_are_found_at_their_words(string statement, string at)
    {
        string text = statement + "\n\n" + Texts.TenSc;
        Assert.Equal([FindingCodes.CmInchesDiffer], Texts.Codes(text));
        Assert.Equal(at, Texts.Words(text));
    }

    /// <summary>'a + b' may count chains or stitches: oombawkadesigncrochet.com/using-stitch-pattern-multiples (a reader's confusion about exactly this).</summary>
    [Theory]
    [InlineData("Multiple of 8 + 2", 26, "the chains themselves")]
    [InlineData("Multiple of 8 + 2", 27, "stitches, and 1 chain for turning")]
    [InlineData("Multiple of 8", 25, "stitches, and 1 chain for turning")]
    [InlineData("Multiple of 8 sts + 2, plus 1 for the foundation chain", 27, "the third number apart")]
    [InlineData("Stitch multiple: 8 (add 1 for the base chain)", 25, "the third number apart")]
    [InlineData("Stitch count: any odd number", 26, "25 stitches")]
    [InlineData("Multiple of 8 + 2 for the body and a multiple of 4 for the border", 24, "two multiples: nothing is claimed")]
    [InlineData("Multiple of eight-ish", 24, "not read: nothing is claimed")]
    public void A_foundation_that_fits_in_any_reading_gives_none(string stated, int chains, string why) =>
        Assert.True(!Texts.Codes($"{stated}\n\nCh {chains}.\nRow 1: Sc in 2nd ch from hook and in each ch across.").Contains(FindingCodes.MultipleDiffers), why);

    [Theory]
    [InlineData("Multiple of 8 + 2", 25, "Counted in chains, 18 or 26 would fit.")]
    [InlineData("Multiple of 12 + 3", 30, "Counted in chains, 27 or 39 would fit.")]
    [InlineData("Multiple of 10 sts + 1, plus 1 for the foundation chain", 30, "Counted in chains, 22 or 32 would fit.")]
    public void A_foundation_that_fits_in_no_reading_is_found(string stated, int chains, string nearest)
    {
        string text = $"{stated}\n\nCh {chains}.\nRow 1: Sc in 2nd ch from hook and in each ch across.";
        Assert.Equal([FindingCodes.MultipleDiffers], Texts.Codes(text));
        Assert.Contains(nearest, Texts.Only(text).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_ring_has_no_multiple() =>
        Assert.DoesNotContain(FindingCodes.MultipleDiffers, Texts.Codes("Multiple of 8 + 2\n\nRnd 1: 6 sc in magic ring. (6 sc)"));
}
