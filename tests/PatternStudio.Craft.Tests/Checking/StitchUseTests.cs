using PatternStudio.Craft.Checking;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>Stitches used and defined. 'Names are not standard': wendyteaches-mrsscubafish.blogspot.com/2018/03.</summary>
public sealed class StitchUseTests
{
    private const string Puff = "Puff stitch (puff): [Yo, insert hook in st, yo and draw up a loop] 3 times in same st, yo and draw through all 7 loops on hook.\n";
    private const string Cluster = "Cluster (cl): [Yo, insert hook in st, yo and draw up a loop, yo and draw through 2 loops] 3 times in same st, yo and draw through all 4 loops on hook.\n";

    [Theory]
    [InlineData("cl")]
    [InlineData("bobble")]
    [InlineData("puff")]
    [InlineData("popcorn")]
    [InlineData("shell")]
    public void A_name_that_designers_use_differently_needs_a_definition(string name)
    {
        string text = Texts.TenSc + $"Row 2: Ch 1, turn, sc in first sc, *{name} in next sc, sc in next 2 sc; rep from * across.";
        Assert.Contains(FindingCodes.StitchUndefined, Texts.Codes(text));
        Assert.Equal(Severity.Warning, FindingCodes.SeverityOf(FindingCodes.StitchUndefined));
    }

    [Theory]
    [InlineData("3-dc cl")]
    [InlineData("sc2tog over same sc and")]
    [InlineData("fpdc around")]
    [InlineData("V-st in")]
    public void A_stitch_that_its_name_describes_needs_none(string name) =>
        Assert.DoesNotContain(FindingCodes.StitchUndefined, Texts.Codes(Texts.TenSc + $"Row 2: Ch 1, turn, sc in first sc, *{name} in next sc, sc in next 2 sc; rep from * across."));

    [Theory]
    [InlineData("Row 2: Ch 1, turn, sc in first sc, *shell (5 dc) in next sc, sc in next 2 sc; rep from * across.")]
    [InlineData("Row 2: Ch 1, turn, sc in first sc, *5 dc in next sc (shell), sc in next 2 sc; rep from * across.")]
    [InlineData("Note: To make a shell, insert the hook in the stitch and work 5 dc there.\nRow 2: Ch 1, turn, sc in first sc, *shell in next sc, sc in next 2 sc; rep from * across.")]
    public void A_stitch_told_on_the_way_is_no_finding(string row) =>
        Assert.DoesNotContain(FindingCodes.StitchUndefined, Texts.Codes(Texts.TenSc + row));

    [Fact]
    public void A_stitch_is_reported_once_at_its_first_use()
    {
        const string text = Texts.TenSc + "Row 2: Ch 1, turn, sc in first sc, *puff in next sc, sc in next 2 sc; rep from * across.\nRow 3: Ch 1, turn, sc in first sc, *sc in next sc, puff in next sc, sc in next sc; rep from * across.";
        Assert.Single(Texts.Codes(text), FindingCodes.StitchUndefined);
    }

    [Fact]
    public void A_definition_that_nothing_uses_is_a_warning_at_its_name()
    {
        const string text = "Special stitches\n" + Puff + "\n" + Texts.TenSc;
        Assert.Equal([FindingCodes.StitchUnused], Texts.Codes(text));
        Assert.Equal("'puff' is defined here, but no row uses it. Use it, or take the definition out.", Texts.Only(text).Message);
    }

    [Theory]
    [InlineData("Row 2: Ch 1, turn, sc in first sc, *puff in next sc, sc in next 2 sc; rep from * across.")]
    [InlineData("Row 2: Ch 1, turn, sc in first sc, *Puff st in next sc, sc in next 2 sc; rep from * across.")]
    [InlineData("Row 2: Ch 1, turn, sc in first sc, (puff, ch 1, puff) in next sc, sc in next 8 sc.")]
    [InlineData("Row 2: Ch 1, turn, work puffs in the pattern of your choice.")]
    [InlineData("Row 2: Ch 1, turn, sc in each sc across. (10 sc, no puffs)")]
    public void A_stitch_named_anywhere_else_counts_as_used(string row) =>
        Assert.DoesNotContain(FindingCodes.StitchUnused, Texts.Codes("Special stitches\n" + Puff + "\n" + Texts.TenSc + row));

    [Fact]
    public void A_stitch_used_only_in_another_definition_counts_as_used() =>
        Assert.DoesNotContain(FindingCodes.StitchUnused, Texts.Codes("Special stitches\n" + Cluster + "Corner (cnr): (cl, ch 2, cl) in same st.\n\n" + Texts.TenSc + "Row 2: Ch 1, turn, sc in first 4 sc, cnr in next sc, sc in next 5 sc."));

    [Fact]
    public void From_a_definition_that_is_not_read_nothing_is_concluded() =>
        Assert.DoesNotContain(FindingCodes.StitchUnused, Texts.Codes("Special stitches\nWhirl (wh): turn the cloth upside down thrice and hope.\n\n" + Texts.TenSc));
}
