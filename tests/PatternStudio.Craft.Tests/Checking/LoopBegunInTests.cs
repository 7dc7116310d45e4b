using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>Rounds that go on from the middle of a loop, and rounds that slip to one: common practice, no source.</summary>
public sealed class LoopBegunInTests
{
    /// <summary>
    /// Eight loops over eight stitches, the last one half chains and half a treble in the joining. The hook then stands in the middle of that last loop: 'next loop' is the first, and 'same loop' the last.
    /// </summary>
    private const string Loops = """
        Ch 6, join with sl st to form a ring.
        Rnd 1: Ch 1, 8 sc in ring, join with sl st in first sc. (8 sc)
        Rnd 2: *Ch 7, sc in next sc; rep from * 6 times more, ch 3, tr in joining.
        Rnd 3: Ch 6, 2 dc in same loop, *(2 dc, ch 3, 2 dc) in next loop; rep from * 6 times more, dc in first loop, join with sl st in 3rd ch of beg ch-6.
        """;

    /// <summary>2 + 1 + the chain's own dc = 4 in the first loop, 4 in each of the seven others: 32, and a space in each of the eight.</summary>
    [Fact]
    public void Same_loop_is_the_one_that_the_closing_stitch_completes()
    {
        CheckedPattern pattern = PatternCheck.Check(Loops);
        Assert.False(pattern.HasErrors);
        IReadOnlyList<WorkedRow> rows = pattern.Sizes[0].Fabric.Pieces[0].Rows;
        Assert.Equal(32, rows[3].Total);
        Cell[] second = [.. rows[2].Cells()], third = [.. rows[3].Cells()];
        // The hook stands on the first sc: seven loops lead to the other seven, the treble comes back to the first.
        Assert.Equal([2, 3, 4, 5, 6, 7, 8], second.Where(cell => cell.Stitch.Value == "sc").Select(cell => cell.Feet[0].Place));
        Assert.Equal(1, second[^1].Feet[0].Place);
        int halfLoop = second.Length - 2;
        Cell[] inIt = [.. third.Where(cell => !cell.Feet.IsEmpty && cell.Feet[0].Place == halfLoop && cell.Counts)];
        Assert.Equal(4, inIt.Length);
        Assert.Equal(0, third.First(cell => cell.Kind == CellKind.Stitch && cell.Feet[0].Place != halfLoop).Feet[0].Place);
    }

    /// <summary>The round below begins with a loop: the slip stitch goes into that one, not past it. Five loops of 5 sc.</summary>
    [Fact]
    public void The_next_loop_is_the_one_that_the_hook_stands_before()
    {
        const string Words = "Ch 20, join with sl st to form a ring.\nRnd 1: Ch 1, sc in each ch around, join with sl st in first sc. (20 sc)\nRnd 2: *Ch 5, sk next 3 sc, sc in next sc; rep from * around, join. (5 sc, 5 ch-5 sps)\n"
            + "Rnd 3: Sl st in next ch-5 loop, ch 1, 5 sc in same loop, 5 sc in each ch-5 loop around, join with sl st in first sc. (25 sc)";
        Assert.Equal([20, 5, 25], Handbook.Totals(Words));
        Assert.Equal(0, PatternCheck.Check(Words).Sizes[0].Fabric.Pieces[0].Rows[3].Cells().First().Feet[0].Place);
    }

    /// <summary>Round a piece worked in rows, its sides are worked along too; how many stitches go there is not told, so nothing is counted.</summary>
    [Fact]
    public void A_row_around_the_fabric_is_not_the_row_along_its_top()
    {
        CheckedPattern pattern = PatternCheck.Check("Ch 12.\nRow 1: Dc in 4th ch from hook and in each ch across. (10 dc)\nRows 2-6: Ch 3, turn, dc in each dc across. (10 dc)\nWork a row of sc all around working 3 sc in each corner, join.");
        Assert.Equal(RowStatus.NotChecked, pattern.Sizes[0].Rows[^1].Status);
        Assert.False(pattern.HasErrors);
    }
}
