using CsCheck;
using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Properties;

/// <summary>Working by runs is only a faster way: it comes to the very cells that working turn by turn comes to.</summary>
public sealed class WorkedByRunsTests
{
    public static TheoryData<string> Files =>
        [.. new[] { "tests/PatternStudio.Craft.Tests/RightPatterns", "samples" }
            .SelectMany(folder => Directory.EnumerateFiles(Repository.Path(folder), "*.txt").Order(StringComparer.Ordinal).Select(path => folder + "/" + Path.GetFileName(path)))];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_written_pattern_comes_to_the_same_cells_by_runs_and_turn_by_turn(string file) =>
        Same(File.ReadAllText(Repository.Path(file)));

    /// <summary>Row 2 should be repeated 56 times: what Row 3 reaches through is the row as it was meant, stitch by stitch, down to Row 1.</summary>
    [Fact]
    public void Stitches_two_rows_down_reach_through_a_row_with_too_few_turns()
    {
        const string Text =
            """
            Ch 63.
            Row 1: Dc in 4th ch from hook and in each ch across.
            Row 2: Ch 4 (counts as dc and ch 1), turn, hdc in each of next 4 sts, *dc in next st; rep from * 12 more times.
            Row 3: Ch 2 (does not count as a st), turn, dc in next dc, *dc in next st 2 rows below; rep from * across.
            """;
        Same(Text);
        IReadOnlyList<WorkedRow> rows = PatternWorker.Work(PatternReader.Read(Text), 0).Fabric.Pieces[0].Rows;
        int first = rows.Count - 3;
        Assert.Equal("Row 1", rows[first].Label);
        Assert.All(rows[^1].Cells().Where(cell => cell.Kind == CellKind.Stitch).Skip(1).SkipLast(1), cell => Assert.Equal(first, Assert.Single(cell.Feet).Row));
    }

    /// <summary>The turning chain and the two stitches behind it look like the three stitches of one place further on, but stand in places of their own.</summary>
    [Fact]
    public void A_row_that_begins_like_a_group_of_another_place_begins_with_no_group()
    {
        const string Text =
            """
            Ch 45.
            Row 1: Dc in 4th ch from hook and in each ch across.
            Row 2: Ch 3 (counts as dc), turn, dc in each of next 4 sts, 3 dc in next st, *sc in next st; rep from * across.
            """;
        Same(Text);
        Assert.Equal(0, PatternWorker.Work(PatternReader.Read(Text), 0).Fabric.Pieces[0].Rows[^1].Cells().First().GroupSize);
    }

    /// <summary>More patterns: set CsCheck_Iter. The one that failed: CsCheck_Seed.</summary>
    [Fact]
    public void Any_pattern_comes_to_the_same_cells_by_runs_and_turn_by_turn() =>
        Choices.Gen.Select(AnyPattern.Write).Sample(text => Same(text), iter: Math.Max(300, Check.Iter), threads: 1);

    private static void Same(string text)
    {
        string differences = WorkComparison.Differences(PatternReader.Read(text));
        if (differences.Length > 0) Assert.Fail(differences);
    }
}
