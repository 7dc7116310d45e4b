using System.Text;
using CsCheck;
using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Properties;

/// <summary>Every stitch stands in something: its feet are places that exist, and places that a hook can enter.</summary>
public sealed class FeetTests
{
    public static TheoryData<string> Files => WorkedByRunsTests.Files;

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_foot_stands_in_a_place_that_can_be_worked_into(string file)
    {
        var pattern = PatternReader.Read(File.ReadAllText(Repository.Path(file)));
        Assert.Equal("", string.Concat(Enumerable.Range(0, pattern.Sizes.Count).SelectMany(size => PatternWorker.Work(pattern, size).Fabric.Pieces).Select(Wrong)));
    }

    [Fact]
    public void The_feet_of_a_plain_row_go_along_the_row_below_in_one_direction() =>
        Choices.Gen.Select(RightPattern.Of).Sample(InOrder, iter: Math.Max(100, Check.Iter), threads: 1, print: pattern => pattern.Text);

    private static void InOrder(RightPattern pattern)
    {
        WorkedPiece piece = Assert.Single(PatternWorker.Work(PatternReader.Read(pattern.Text), 0).Fabric.Pieces);
        Assert.Equal("", Wrong(piece));
        foreach (WorkedRow row in piece.Rows)
        {
            long[] places = [.. row.Cells().Where(cell => cell.Kind == CellKind.Stitch).SelectMany(cell => cell.Feet).Select(foot => row.Turned ? -foot.Place : foot.Place)];
            Assert.Equal(places.Order(), places);
        }
    }

    private static string Wrong(WorkedPiece piece)
    {
        var wrong = new StringBuilder();
        // Each row's cells once: most feet stand in the row just below.
        var cells = new Dictionary<int, Cell[]>();
        foreach (WorkedRow row in piece.Rows)
        {
            int place = 0;
            foreach (Cell cell in row.Cells())
            {
                foreach (Foot foot in cell.Feet)
                    if (!Stands(piece, row, foot, cells)) wrong.AppendLine($"{row.Label} cell {place} ({cell.Stitch} {cell.Kind}): {foot}");
                place++;
                if (wrong.Length > 400) return wrong.ToString();
            }
        }
        return wrong.ToString();
    }

    private static bool Stands(WorkedPiece piece, WorkedRow row, Foot foot, Dictionary<int, Cell[]> cells)
    {
        // Along an edge the place is a row's end, not a cell. In its own row: 'in the sp just made'.
        if (foot.Kind == FootKind.RowEnd || (foot.Row == row.Index && foot.Place == -1)) return true;
        if (foot.Row < 0 || foot.Row >= row.Index) return false;
        if (!cells.TryGetValue(foot.Row, out Cell[]? below)) cells[foot.Row] = below = [.. piece.Rows[foot.Row].Cells()];
        if (foot.Place < 0 || foot.Place >= below.Length) return false;
        Cell stoodIn = below[foot.Place];
        return stoodIn.Kind is CellKind.Stitch or CellKind.Chains or CellKind.TurningChain or CellKind.FoundationChain or CellKind.Ring
            && (foot.Chain < 0 || foot.Chain < Math.Max(1, stoodIn.Chains));
    }
}
