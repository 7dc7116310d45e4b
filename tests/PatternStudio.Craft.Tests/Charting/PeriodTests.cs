using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Checking;

namespace PatternStudio.Craft.Tests.Charting;

/// <summary>A ripple is written from edge to edge, its repeat cut through at both; the chart finds it all the same.</summary>
public sealed class PeriodTests
{
    /// <summary>
    /// One wave takes 2 + 3 + 2 × 2 + 3 = 12 stitches and gives 4 + 3 + 2 + 3 = 12. Of 48 stitches 36 lie between the half waves at the edges (1 + 3 + 2 + 3 at each with the doubled ones).
    /// </summary>
    private const string Ripple = """
        Ch 51.
        Row 1: Dc in 4th ch from hook (skipped chs count as first dc), dc in next 3 chs, dc2tog twice, dc in next 3 chs, *2 dc in each of next 2 chs, dc in next 3 chs, dc2tog twice, dc in next 3 chs; rep from * across to last ch, 2 dc in last ch. (48 sts)
        Row 2: Ch 3 (counts as dc), turn, dc in first st, dc in next 3 sts, dc2tog twice, dc in next 3 sts, *2 dc in each of next 2 sts, dc in next 3 sts, dc2tog twice, dc in next 3 sts; rep from * across to last st, 2 dc in last st. (48 sts)
        Row 3: Ch 3 (counts as dc), turn, dc in first st, dc in next 3 sts, dc2tog twice, dc in next 3 sts, *2 dc in each of next 2 sts, dc in next 3 sts, dc2tog twice, dc in next 3 sts; rep from * across to last st, 2 dc in last st. (48 sts)
        """;

    private static string[] Marks(Drawing drawing) => [.. drawing.Rows.SelectMany(row => row.Marks).OfType<Words>().Select(words => words.Text)];

    [Fact]
    public void The_repeat_of_a_ripple_is_bracketed() =>
        Assert.Contains(Marks(Chart.Draw(PatternCheck.Check(Ripple))), text => text.StartsWith("rep 12 sts, ", StringComparison.Ordinal));

    /// <summary>Every row loses the same whole repeats, so all have as many stitches still.</summary>
    [Fact]
    public void The_repeat_alone_leaves_whole_waves_out()
    {
        CheckedPattern pattern = PatternCheck.Check(Ripple);
        long[] all = [.. Chart.Draw(pattern).Rows.Skip(1).Select(row => (long)row.Symbols.Count)];
        Drawing compact = Chart.Draw(pattern, 0, new ChartStyle { RepeatOnly = true });
        long[] left = [.. compact.Rows.Skip(1).Select(row => (long)row.Symbols.Count)];
        Assert.Contains("rep 12 sts", Marks(compact));
        Assert.All(all.Zip(left), rows => Assert.True(rows.First > rows.Second && (rows.First - rows.Second) % 12 == 0, $"{rows.First} to {rows.Second}"));
    }

    /// <summary>One stitch again and again is no repeat across, and neither are two unlike places in a row of others.</summary>
    [Theory]
    [InlineData("Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRow 2: Ch 1, turn, sc in each sc across. (20 sc)\n")]
    [InlineData("Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRow 2: Ch 1, turn, sc in first 5 sc, dc in next sc, sc in next 9 sc, dc in next sc, sc in last 4 sc. (20 sts)\n")]
    public void What_is_no_repeat_is_not_bracketed(string text) =>
        Assert.DoesNotContain(Marks(Chart.Draw(PatternCheck.Check(text))), mark => mark.Contains(" sts, ", StringComparison.Ordinal));
}
