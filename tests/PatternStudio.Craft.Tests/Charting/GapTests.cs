using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Charting;

/// <summary>Of a fabric with a break, what is known is drawn and the break is shown.</summary>
public sealed class GapTests
{
    /// <summary>Row 3 says what nobody can work; rows 1 and 2 of 10 sc are known.</summary>
    private const string Broken = "Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across. (10 sc)\nRow 2: Ch 1, turn, sc in each sc across. (10 sc)\nRow 3: Ch 1, turn, wibble the frobs all over. (10 sc)\nRow 4: Ch 1, turn, sc in each sc across. (10 sc)\n";

    [Fact]
    public void Rows_below_a_break_are_drawn_and_the_break_says_which_row_it_is()
    {
        CheckedPattern pattern = PatternCheck.Check(Broken);
        WorkedRow[] unknown = [.. pattern.Sizes[0].Fabric.Pieces[0].Rows.Where(row => row.Status != RowStatus.Checked)];
        Assert.NotEmpty(unknown);
        Drawing drawing = Chart.Draw(pattern);
        DrawnRow gap = drawing.Rows.First(row => row.Tone == RowTone.Gap);
        Assert.StartsWith("Row 3", gap.Label, StringComparison.Ordinal);
        Assert.Contains("not checked", gap.Label, StringComparison.Ordinal);
        Assert.Contains(gap.Marks.OfType<Words>(), words => words.Text == gap.Label);
        Assert.Equal([10, 10], drawing.Rows.Where(row => row.Row is 1 or 2).Select(row => row.Symbols.Count(symbol => symbol.Stitch.Value == "sc")));
        double below = drawing.Rows.Where(row => row.Row is 1 or 2).SelectMany(row => row.Symbols).SelectMany(symbol => symbol.Shapes).Min(shape => shape.Bounds.Top);
        Assert.All(gap.Marks, mark => Assert.True(mark.Bounds.Bottom < below + 0.1));
    }

    /// <summary>Rows above a break are drawn too where their counts are known, beyond the words of the gap.</summary>
    [Fact]
    public void Rows_above_a_break_stand_beyond_its_words()
    {
        Drawing drawing = Chart.Draw(PatternCheck.Check(Broken));
        DrawnRow gap = drawing.Rows.First(row => row.Tone == RowTone.Gap);
        Assert.All(drawing.Rows.Where(row => row.Row > gap.Row && row.Tone != RowTone.Gap).SelectMany(row => row.Symbols).SelectMany(symbol => symbol.Shapes), shape =>
            Assert.True(shape.Bounds.Bottom <= gap.Marks.Max(mark => mark.Bounds.Bottom)));
    }

    [Fact]
    public void A_piece_without_rows_is_not_told_of()
    {
        const string named = "Notes\nUse a small hook.\n\nPanel\nCh 11.\nRow 1: Sc in 2nd ch from hook and in each ch across. (10 sc)\n";
        Assert.DoesNotContain("0 rows", Chart.Draw(PatternCheck.Check(named)).Description, StringComparison.Ordinal);
    }

    /// <summary>One million stitches: an outline, each of its blocks a few rows.</summary>
    [Fact]
    public void A_million_stitches_have_an_outline()
    {
        Drawing drawing = Chart.Draw(PatternCheck.Check("Ch 1001.\nRow 1: Sc in 2nd ch from hook and in each ch across. (1000 sc)\nRows 2-1000: Ch 1, turn, sc in each sc across. (1000 sc)\n"));
        Assert.InRange(drawing.Rows.Count, 1, 300);
    }
}
