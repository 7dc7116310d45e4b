using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Writing;

namespace PatternStudio.Craft.Tests.Writing;

public sealed class TreePrinterTests
{
    [Theory]
    [MemberData(nameof(RightPatterns.Names), MemberType = typeof(RightPatterns))]
    public void What_is_printed_reads_back_the_same(string name)
    {
        Pattern pattern = RightPatterns.Read(name);
        Assert.Null(TreeShape.FirstDifference(pattern, PatternReader.Read(TreePrinter.Print(pattern), pattern.Terms.Terminology)));
    }

    [Theory]
    [MemberData(nameof(RightPatterns.Names), MemberType = typeof(RightPatterns))]
    public void Printing_what_was_printed_changes_nothing(string name)
    {
        Pattern pattern = RightPatterns.Read(name);
        string once = TreePrinter.Print(pattern);
        Assert.Equal(once, TreePrinter.Print(PatternReader.Read(once, pattern.Terms.Terminology)));
    }

    [Theory]
    [InlineData("1st Row. 1 s c in 2nd st from hook, 1 s c in each remaining st of ch, ch 1, turn.", "Row 1: Sc in 2nd ch from hook, sc in each ch across, ch 1, turn.")]
    [InlineData("Row 2: Chain 3 (counts as double crochet), turn, skip first stitch, double crochet in each stitch across.", "Row 2: Ch 3 (counts as dc), turn, sk next st, dc in each st across.")]
    [InlineData("Rnd 3: *sc in next 2 sts, inc; repeat from * around. — 24 sc", "Rnd 3: *sc in next 2 sts, inc; rep from * around. (24 sc)")]
    [InlineData("Row 4: *dc in next st, ch 1, skip 1; rep from * five times, dc in last st.", "Row 4: *dc in next st, ch 1, sk next st; rep from * 5 more times, dc in last st.")]
    [InlineData("Row 5: (2 dc, ch 2, 2 dc) into next ch-2 space.", "Row 5: (2 dc, ch 2, 2 dc) in next ch-2 sp.")]
    [InlineData("Row 6: Sc in the back loop only of each st across.", "Row 6: Sc in BLO of each st across.")]
    [InlineData("Rows 7 to 10: Repeat Row 6.", "Rows 7–10: Rep Row 6.")]
    [InlineData("Rnd 8: ** dc in next dc, * ch 1, dc in next dc, rep from * 3 times, ch 2, rep from ** around.", "Rnd 8: **dc in next dc, [ch 1, dc in next dc] 4 times, ch 2; rep from ** around.")]
    public void Old_and_long_wordings_become_modern(string written, string printed)
    {
        Pattern pattern = PatternReader.Read(written, Terminology.Us);
        Assert.Equal(printed, TreePrinter.Print(pattern, Assert.Single(pattern.Pieces[0].Items)));
    }

    [Fact]
    public void Sizes_are_printed_in_their_brackets()
    {
        Pattern pattern = PatternReader.Read("Sizes: S (M, L)\nChain 21 (31, 41).\nRow 1: Sc in 2nd ch from hook and in each ch across. [20 (30, 40) sts]");
        Assert.Equal("Ch 21 (31, 41).", TreePrinter.Print(pattern, pattern.Pieces[0].Items[0]));
        Assert.EndsWith("[20 (30, 40) sts]", TreePrinter.Print(pattern, pattern.Pieces[0].Items[1]), StringComparison.Ordinal);
    }

    [Fact]
    public void Words_that_were_not_read_stay_as_they_were_written()
    {
        Pattern pattern = PatternReader.Read("Row 1: Sc in next st, flibber the wobble twice over, sc in last st.", Terminology.Us);
        Assert.Contains("flibber the wobble twice over", TreePrinter.Print(pattern), StringComparison.Ordinal);
    }
}
