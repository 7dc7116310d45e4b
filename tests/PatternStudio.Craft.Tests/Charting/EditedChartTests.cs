using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Charting.Layout;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;

namespace PatternStudio.Craft.Tests.Charting;

/// <summary>A small edit moves what it must and nothing else, so that a designer finds her place again.</summary>
public sealed class EditedChartTests
{
    private const int Rows = 12;

    /// <summary>A mitred square, two fewer each row: row 7 is 7 sc, 3 together, 7 sc over the 17 of row 6. Edited, its first 7 are worked as 4 sc, 2 in one and 2 together: 4 + 2 + 1 over 4 + 1 + 2.</summary>
    private static string Mitred(bool edited) => "Ch 28.\nRow 1: Sc in 2nd ch from hook and in each ch across. (27 sc)\n" + string.Concat(Enumerable.Range(2, Rows - 1).Select(row =>
    {
        int side = 14 - row;
        string first = edited && row == 7 ? $"sc in first {side - 3} sts, 2 sc in next st, sc2tog" : $"sc in first {side} sts";
        return $"Row {row}: Ch 1, turn, {first}, sc3tog, sc in last {side} sts. ({(2 * side) + 1} sts)\n";
    }));

    private static (IReadOnlyList<LaidRow> Rows, int Turns) Lay(string text, IReadOnlyList<LaidRow>? former = null)
    {
        CheckedPattern pattern = PatternCheck.Check(text);
        Assert.False(pattern.HasErrors);
        var layouts = new Layouts(pattern.Sizes[0].Fabric.Pieces[0], new StitchForms(pattern.Pattern));
        IReadOnlyList<LaidRow> rows = layouts.Lay(former);
        return (rows, layouts.Effort.Turns);
    }

    [Fact]
    public void Rows_well_away_from_a_changed_one_stay_where_they_are()
    {
        IReadOnlyList<LaidRow> before = Lay(Mitred(edited: false)).Rows;
        IReadOnlyList<LaidRow> after = Lay(Mitred(edited: true), before).Rows;
        foreach (LaidRow row in after.Where(row => Math.Abs(row.Index - 7) > 2))
        {
            Assert.Equal(before[row.Index].Cells.Length, row.Cells.Length);
            Assert.All(before[row.Index].Cells.Zip(row.Cells), pair => Assert.InRange((pair.First.Top - pair.Second.Top).Length, 0, 0.1));
        }
    }

    [Fact]
    public void It_comes_to_rest_in_fewer_turns_than_anew()
    {
        IReadOnlyList<LaidRow> before = Lay(Mitred(edited: false)).Rows;
        int anew = Lay(Mitred(edited: true)).Turns;
        Assert.InRange(Lay(Mitred(edited: true), before).Turns, 1, anew - 1);
    }

    [Fact]
    public void The_edited_chart_is_one_to_work_from()
    {
        Drawing before = Chart.Draw(PatternCheck.Check(Mitred(edited: false)));
        CheckedPattern pattern = PatternCheck.Check(Mitred(edited: true));
        Drawing after = Chart.Draw(pattern, 0, null, before);
        Assert.Equal([], new ChartQuality(after, pattern.Sizes[0].Fabric.Pieces[0], 0, new StitchForms(pattern.Pattern)).Troubles);
    }

    /// <summary>A row put in moves those above it by its height and no more.</summary>
    [Fact]
    public void A_row_put_in_keeps_the_rows_below_it()
    {
        string longer = Mitred(edited: false).Replace("Row 12:", "Row 13:", StringComparison.Ordinal).Replace("Row 13:", "Row 12: Ch 1, turn, sc in each st across. (7 sts)\nRow 13:", StringComparison.Ordinal);
        IReadOnlyList<LaidRow> before = Lay(Mitred(edited: false)).Rows;
        IReadOnlyList<LaidRow> after = Lay(longer, before).Rows;
        Assert.Equal(before.Count + 1, after.Count);
        Assert.All(Enumerable.Range(0, 9), row => Assert.All(before[row].Cells.Zip(after[row].Cells), pair => Assert.InRange((pair.First.Top - pair.Second.Top).Length, 0, 0.1)));
    }

    /// <summary>What is drawn the same is the same, however it came to lie.</summary>
    [Fact]
    public void A_drawing_from_a_former_one_of_the_same_text_equals_it_in_its_places()
    {
        CheckedPattern pattern = PatternCheck.Check(Mitred(edited: false));
        Drawing first = Chart.Draw(pattern);
        Assert.Equal(first.Places, Chart.Draw(pattern, 0, null, first).Places);
    }
}
