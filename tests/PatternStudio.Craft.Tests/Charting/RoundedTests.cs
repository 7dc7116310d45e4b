using PatternStudio.Craft.Charting.Layout;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Charting;

/// <summary>Older texts number rounds as rows; their charts go round all the same.</summary>
public sealed class RoundedTests
{
    [Fact]
    public void Rows_joined_from_the_first_go_round()
    {
        WorkedPiece piece = Rounded.Of(Piece("Magic ring.\nRow 1: 6 sc in ring, join with sl st to first sc. (6 sc)\nRow 2: Ch 1, 2 sc in each sc, join with sl st to first sc. (12 sc)\n"));
        Assert.All(piece.Rows.Where(row => row.Length > 1), row => Assert.Equal(RowKind.Round, row.Kind));
    }

    /// <summary>Six stitches that stand on six stitches of a flat row end as far apart as that row is wide.</summary>
    [Fact]
    public void A_joined_row_across_open_rows_stays_a_row()
    {
        WorkedPiece piece = Rounded.Of(Piece("Ch 7.\nRow 1: Sc in 2nd ch from hook and in each ch across. (6 sc)\nRow 2: Ch 1, turn, sc in each sc across. (6 sc)\nRow 3: Ch 1, turn, sc in each sc across, join with sl st to first sc. (6 sc)\n"));
        Assert.Equal(RowKind.Row, piece.Rows[^1].Kind);
    }

    private static WorkedPiece Piece(string text) => PatternCheck.Check(text).Sizes[0].Fabric.Pieces.First(piece => !piece.Rows.IsEmpty);
}
