using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>
/// Ways of telling a row that handbooks of 1850 to 1920 have (Beeton's Book of Needlework, Project Gutenberg 15147; Handbook of Wool Knitting and Crochet, 26113), in texts of our
/// own. The totals follow by the arithmetic beside them.
/// </summary>
public sealed class OldWordsTests
{
    /// <summary>One stitch more in each of six sections: 6 × (n + 1) for n plain ones, up to n = 9.</summary>
    [Fact]
    public void Rows_go_on_in_the_same_way_until_the_number_said()
    {
        RowReport[] rows = Rows("""
            Terms: UK
            Make a chain of 3 stitches, join.
            1. Six doubles in ring.
            2. Two doubles in each double.
            3. A double in double, 2 in next; repeat.
            4. A double in each of 2 doubles, 2 in next; repeat.
            Continue in this way, adding 1 double between widenings each row, until you have 9 doubles between widenings.
            12. A double in each stitch.
            """);
        Assert.Equal([6, 12, 18, 24, 30, 36, 42, 48, 54, 60, 66, 66], rows.Select(row => row.Stitches));
        Assert.Equal(Enumerable.Range(1, 12), rows.Select(row => row.Number));
    }

    /// <summary>The next row's number tells that more rows were meant than the words give: which, is not guessed.</summary>
    [Fact]
    public void A_row_number_that_does_not_fit_leaves_it_open()
    {
        CheckedPattern result = PatternCheck.Check("""
            Terms: UK
            Make a chain of 3 stitches, join.
            1. Six doubles in ring.
            2. Two doubles in each double.
            3. A double in double, 2 in next; repeat.
            Continue in this way, adding 1 double between widenings each row, until you have 9 doubles between widenings.
            20. A double in each of 6 doubles, miss 1; repeat.
            """);
        Assert.DoesNotContain(result.Sizes[0].Rows, row => row is { Number: > 3, Status: RowStatus.Checked });
        Assert.False(result.HasErrors);
    }

    /// <summary>24 over 16; every other one: 12; the same over loops: 12; 12 + 12 × 3 + 12 × 2 = 72; 24 more.</summary>
    [Fact]
    public void A_round_told_as_one_turn_is_worked_all_round()
    {
        RowReport[] rows = Rows("""
            Terms: UK
            Make a chain of 10 stitches, and join it into a circle.
            1st round: 16 stitches of double crochet over the circle.
            2nd round: 24 stitches of double crochet.
            3rd round: 1 double, 3 chain, miss 1.
            4th round: The same as the preceding--the 1 double always on the 2nd chain.
            5th round: Close double crochet; 3 stitches in 1 in the centre stitch of each loop.
            6th round: The same as the 5th, close double crochet, increasing in the centre of each scallop.
            """);
        Assert.Equal([16, 24, 12, 12, 72, 96], rows.Select(row => row.Stitches));
        Assert.Equal(12, rows[3].Spaces["ch-3"]);
    }

    /// <summary>A turn of 3 does not fit 16: whether the number or the words are wrong can't be told.</summary>
    [Fact]
    public void One_turn_that_does_not_fit_the_round_is_not_checked()
    {
        CheckedPattern result = PatternCheck.Check("Terms: UK\nMake a chain of 10 stitches, join.\n1st round: 16 doubles in ring.\n2nd round: 1 double, 5 chain, miss 2.");
        Assert.Equal(RowStatus.NotChecked, result.Sizes[0].Rows[1].Status);
        Assert.False(result.HasErrors);
    }

    /// <summary>Twelve loops below; 12 with 4 chain between, also between the last and the first.</summary>
    [Fact]
    public void Chains_between_close_the_round()
    {
        RowReport[] rows = Rows("Terms: UK\nMake a chain of 8 stitches, join.\n1st round: 24 trebles in ring.\n2nd round: 1 double, 3 chain, miss 1 loop, repeat.\n3rd round: 1 double in centre of each loop, 4 chain between.");
        Assert.Equal([24, 12, 12], rows.Select(row => row.Stitches));
        Assert.Equal(12, rows[2].Spaces["ch-4"]);
    }

    /// <summary>The third shortest of 3, 6, 9, … from 4 on: 12 chains, 11 doubles; 2 + 3 × 3.</summary>
    [Fact]
    public void A_foundation_of_open_length_is_worked_over_a_sample_and_said_so()
    {
        CheckedPattern result = PatternCheck.Check("""
            Terms: UK
            Chain a number of stitches divisible by 3, turn.
            1. Miss 1, a double in each remaining stitch of chain, turn.
            2. Chain 1, a double in each of 2 doubles, * wool over, insert hook in next stitch, draw a loop through, (over, draw through 2 stitches) twice, a double in each of next 2 doubles; repeat from * to end of row, turn.
            """);
        Assert.Equal([11, 11], result.Sizes[0].Rows.Select(row => row.Stitches));
        Assert.Equal((3, 8), (result.Sizes[0].Rows[1].Counts["dc"], result.Sizes[0].Rows[1].Counts["sc"]));
        Assert.All(result.Sizes[0].Rows, row => Assert.Equal(12, row.SampleChains));
        Assert.Equal([FindingCodes.SampleFoundation], result.Findings.Select(finding => finding.Code));
    }

    /// <summary>A row that comes out over no length: it may be wrong, or the words may leave something out. Not checked, and no error.</summary>
    [Fact]
    public void What_comes_out_over_no_length_is_no_error()
    {
        CheckedPattern result = PatternCheck.Check("Terms: UK\nChain a number of stitches divisible by 4.\n1. A double in each stitch, turn.\n2. A double in each of 3 doubles, * 3 trebles in next double, miss 3; repeat from *, ending with a double in each of last 2 doubles.");
        Assert.False(result.HasErrors);
        Assert.Equal(RowStatus.NotChecked, result.Sizes[0].Rows[1].Status);
    }

    /// <summary>4 × 3 + 1 chains: 4 doubles and 3 loops; 4 and 3 with 2 chain between; close over all: 7 + 6 × 2.</summary>
    [Fact]
    public void Stitches_for_two_kinds_of_place_are_met_in_the_order_of_the_row()
    {
        RowReport[] rows = Rows("""
            Terms: UK
            On a sufficiently long foundation chain work the 1st row: 1 double in each chain stitch.
            2nd row: Alternately 1 double, 7 chain, miss under the latter 3 stitches of the preceding row.
            3rd row: 1 treble in each double of the preceding row, 1 double in the middle stitch of each scallop, 2 chain between.
            4th row: 1 double in each stitch of the preceding row.
            """);
        int loops = (rows[0].SampleChains!.Value - 1) / 4;
        Assert.Equal([(4 * loops) + 1, loops + 1, (2 * loops) + 1, (2 * loops) + 1 + (4 * loops)], rows.Select(row => row.Stitches!.Value));
        Assert.Equal(2 * loops, rows[2].Spaces["ch-2"]);
    }

    /// <summary>10 + 3 + 10 + 3: the chain that was missed takes the last three.</summary>
    [Fact]
    public void An_oval_goes_down_the_other_side()
    {
        RowReport[] rows = Rows("Terms: UK\nMake a chain of 12 stitches.\n1. Miss 1st stitch, a double in each of 10 stitches, 3 in end stitch, 1 in each of 10 stitches down other side and 3 in last, join.");
        Assert.Equal(26, rows[0].Stitches);
    }

    private static RowReport[] Rows(string text)
    {
        CheckedPattern result = PatternCheck.Check(text);
        Assert.DoesNotContain(result.Findings, finding => finding.Severity < Severity.Note);
        Assert.All(result.Sizes[0].Rows, row => Assert.True(row.Status == RowStatus.Checked, row.Heading));
        return [.. result.Sizes[0].Rows];
    }
}
