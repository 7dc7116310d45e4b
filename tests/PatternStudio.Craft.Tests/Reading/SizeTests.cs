using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Tests.Reading;

/// <summary>Sizes ascending, the smallest outside the brackets; one number holds for all (mooglyblog.com/crochet-pattern-symbols, yayforyarn.com pattern pages).</summary>
public sealed class SizeTests
{
    private const string Cuff = "Sizes: Small (Medium, Large)\n\nCh 21 (31, 41).\nRow 1: Sc in 2nd ch from hook and in each ch across. (20, 30, 40 sc)\nRep Row 1 for 12 (- , 20) more rows.";

    [Fact]
    public void A_size_list_has_one_number_for_each_size()
    {
        Pattern pattern = PatternReader.Read(Cuff);
        Assert.Equal(["Small", "Medium", "Large"], pattern.Sizes);
        Assert.Equal("Foundation: ch 21/31/41\nRow 1: sc fromhook2 ch & each ch to-end (20/30/40 sc)\nREP 1 MoreRows 12/-/20", TreeText.Of(pattern));
    }

    [Theory]
    [InlineData("Ch 21 (31) (41).\nRow 1: Sc in next 5 (6) (7) sts.", "Foundation: ch 21/31/41\nRow 1: sc next 5/6/7 st")]
    [InlineData("Sizes: S (M)\nCh 21 (25).\nRow 1: Sc in each of next 3 (4) ch.", "Foundation: ch 21/25\nRow 1: sc each 3/4 ch")]
    [InlineData("Ch 12 (14, 16) [18].\nRow 1: Dc in next 3 (4, 5) [6] ch.", "Foundation: ch 12/14/16/18\nRow 1: dc next 3/4/5/6 ch")]
    public void Lists_are_written_in_several_ways(string text, string tree) => Assert.Equal(tree, Reader.Pattern(text));

    [Fact]
    public void A_list_with_too_few_numbers_is_reported()
    {
        ReadingTrouble trouble = Assert.Single(PatternReader.Read("Ch 21 (31, 41, 51).\nRow 1: Sc in next 5 (6, 7) sts.").Troubles);
        Assert.Equal(ReadingTroubleKind.SizeListLength, trouble.Kind);
    }
}
