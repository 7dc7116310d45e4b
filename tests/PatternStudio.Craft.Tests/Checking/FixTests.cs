namespace PatternStudio.Craft.Tests.Checking;

/// <summary>A fix takes its finding away and brings no other.</summary>
public sealed class FixTests
{
    private const string Puff = "Special stitches\nPuff stitch (puff): [Yo, insert hook in st, yo and draw up a loop] 3 times in same st, yo and draw through all 6 loops on hook.\n\n";
    private const string Mesh = "Ch 12.\nRow 1: Sc in 2nd ch from hook, *ch 2, sk next ch, sc in next ch; rep from * across. (6 sc, 5 ch-2 sps)\n";

    public static TheoryData<string, string, string> Fixes => new()
    {
        { Texts.TenSc + "Row 2: Ch 1, turn, 2 sc in first sc, sc in each sc across. (10 sc)\nRow 3: Ch 1, turn, sc in first 11 sc. (11 sc)", "(10 sc)\nRow 3", "(11 sc)\nRow 3" },
        { Puff + Texts.TenSc + "Row 2: Ch 1, turn, sc in first sc, *puff in next sc, sc in next 2 sc; rep from * across.", "all 6 loops", "all 7 loops" },
        { Mesh + "Row 2: Ch 1, turn, sc in first sc, *2 sc in next ch-3 sp, sc in next sc; rep from * across. (16 sc)", "ch-3 sp", "ch-2 sp" },
        { Texts.TenSc + "Row 2: Ch 1, turn, sc in each dc across. (10 sc)", "each dc", "each sc" },
        { Texts.TenSc + "Row 2: Ch 1, turn, sc in each sc across.\nRow 2: Ch 1, turn, sc in each sc across.\nRow 4: Ch 1, turn, sc in each sc across.", "\nRow 2: Ch 1, turn, sc in each sc across.\nRow 4", "\nRow 3: Ch 1, turn, sc in each sc across.\nRow 4" },
        { "US terms\n" + Texts.TenSc + "Row 2: Ch 2, turn, htr in each sc across.", "htr", "hdc" },
        { Texts.TenSc + "Row 2: Ch 1, turn, sc in first sc, dc in next sc, sc in next 8 sc.\nRow 3: Ch 1, turn, sc in first 8 sc, hdc in next sc, sc in last sc.", "hdc in next sc, sc in last sc", "hdc in next dc, sc in last sc" },
    };

    [Theory]
    [MemberData(nameof(Fixes))]
    public void Applying_it_removes_the_finding_and_adds_none(string text, string wrong, string right)
    {
        string mended = Texts.Mended(text);
        Assert.Equal(text.Replace(wrong, right, StringComparison.Ordinal), mended);
        Assert.Equal([], Texts.Codes(mended));
    }

    [Fact]
    public void A_count_whose_next_row_fits_the_stated_number_is_not_changed() =>
        Assert.Equal("no fix", Texts.Mended(Texts.TenSc + "Row 2: Ch 1, turn, 2 sc in first sc, sc in each sc across. (10 sc)\nRow 3: Ch 1, turn, sc in first 10 sc. (10 sc)"));

    [Fact]
    public void A_number_that_is_repeated_at_the_end_may_mean_either_row() =>
        Assert.Equal("no fix", Texts.Mended(Texts.TenSc + "Row 2: Ch 1, turn, sc in each sc across.\nRow 2: Ch 1, turn, sc in each sc across."));

    [Fact]
    public void A_space_that_could_be_either_of_two_is_left_to_the_designer()
    {
        const string two = "Ch 12.\nRow 1: Sc in 2nd ch from hook, ch 1, sk next ch, sc in next ch, *ch 2, sk next ch, sc in next ch; rep from * across.\n";
        Assert.Null(Texts.Only(two + "Row 2: Ch 1, turn, sc in first sc, 2 sc in next ch-3 sp, leave remaining sts unworked.").Fix);
    }

    [Fact]
    public void A_fix_keeps_the_capital_of_what_it_replaces() =>
        Assert.Contains("turn. Hdc in each", Texts.Mended("US terms\n" + Texts.TenSc + "Row 2: Ch 2, turn. Htr in each sc across."), StringComparison.Ordinal);
}
