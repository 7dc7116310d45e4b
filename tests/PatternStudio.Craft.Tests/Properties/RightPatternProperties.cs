using CsCheck;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Properties;

/// <summary>Patterns written right by construction, worked a second time with pencil and paper, and with one count changed.</summary>
public sealed class RightPatternProperties
{
    private static long Turns => Math.Max(300, Check.Iter);

    [Fact]
    public void Every_row_comes_to_the_stitches_that_pencil_and_paper_come_to() =>
        Choices.Gen.Select(RightPattern.Of).Sample(AsWithPencil, iter: Turns, threads: 1, print: pattern => pattern.Text);

    [Fact]
    public void A_count_changed_by_one_is_one_error_at_its_row() =>
        Gen.Select(Choices.Gen.Select(RightPattern.Of), Choices.Gen).Select((pattern, which) => pattern.WithWrongCount(which))
            .Sample(wrong => OneErrorAt(wrong.Text, wrong.Line), iter: Turns, threads: 1, print: wrong => $"line {wrong.Line} of\n{wrong.Text}");

    private static void AsWithPencil(RightPattern pattern)
    {
        CheckedPattern result = PatternCheck.Check(pattern.Text);
        Assert.Empty(result.Findings.Where(finding => finding.Severity != Severity.Note).Select(finding => finding.Message));
        WorkedRow[] worked = [.. Assert.Single(result.Sizes[0].Fabric.Pieces).Rows.Where(row => row.Kind != RowKind.Foundation)];
        Assert.Equal(pattern.Rows.Count, worked.Length);
        foreach ((PencilRow expected, WorkedRow row) in pattern.Rows.Zip(worked))
            Assert.Equal(expected.Stitches.Select(Line), row.Cells().Where(cell => cell.Kind is CellKind.Stitch or CellKind.Chains).Select(cell => Line(cell, worked, row)));
    }

    private static string Line(PencilStitch stitch) => $"{stitch.Name}{(stitch.IsSpace ? stitch.Chains : "")} in {string.Join(' ', stitch.Feet)}";

    /// <summary>The turning chain is a cell of its own at the start of the row below; the list with pencil leaves it out.</summary>
    private static string Line(Cell cell, WorkedRow[] worked, WorkedRow row)
    {
        bool opened = Array.IndexOf(worked, row) is > 0 and var index && worked[index - 1].Runs[0].Unit[0].Kind == CellKind.TurningChain;
        return $"{cell.Stitch.Value}{(cell.Kind == CellKind.Chains ? cell.Chains : "")} in {string.Join(' ', cell.Feet.Select(foot => foot.Place - (opened ? 1 : 0)))}";
    }

    private static void OneErrorAt(string text, int line)
    {
        CheckedPattern result = PatternCheck.Check(text);
        Finding error = Assert.Single(result.Findings, finding => finding.Severity == Severity.Error);
        Assert.Equal(line, result.Pattern.Source.Locate(error.Span.Start).Line);
    }
}
