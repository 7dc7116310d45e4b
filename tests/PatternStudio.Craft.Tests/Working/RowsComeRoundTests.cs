using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Tests.Properties;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Working;

/// <summary>Rows that are repeated are kept as so many turns; held against the same rows worked one by one. Common practice, no source.</summary>
public sealed class RowsComeRoundTests
{
    private const string Start = "Ch 22.\nRow 1: Sc in 2nd ch from hook and in each ch across. (21 sc)\n";
    private const string Two = Start + "Row 2: Ch 1, turn, sc in first sc, *ch 1, sk next sc, sc in next sc; rep from * across. (11 sc, 10 ch-1 sps)\nRow 3: Ch 1, turn, sc in each sc and in each ch-1 sp across. (21 sc)\n";

    [Theory]
    [InlineData(Start + "Rows 2–40: Ch 1, turn, sc in each sc across. (21 sc)")]
    [InlineData(Start + "Row 2: Ch 3 (counts as dc), turn, sk first st, dc in each st across. (21 dc)\nRows 3–40: Rep Row 2.")]
    [InlineData(Two + "Rows 4–41: Rep Rows 2 and 3.")]
    [InlineData(Two + "Rows 4–40: Rep Rows 2 and 3.\nRow 41: Ch 1, turn, sc in each sc and in each ch-1 sp across. (21 sc)\nRow 42: Rep Row 18.\nRow 43: Rep Row 19.")]
    [InlineData(Two + "Rep Rows 2 and 3 for 37 more rows.\nFasten off.")]
    [InlineData(Two + "Rep Rows 2 and 3 20 more times.\nRow 44: Ch 1, turn, sc in each sc across.")]
    [InlineData(Two + "Rep Rows 2 and 3 until Row 50.")]
    [InlineData(Start + "Row 2: Ch 1, turn, sc in each st across.\nRow 3: Ch 1, turn, sc in each sc across.\nRow 4: Ch 3 (counts as dc), turn, sk first st, dc in each st across.\nRows 5–60: Rep Rows 2, 3 and 4.")]
    [InlineData(Start + "Row 2: With B, ch 1, turn, sc in each sc across.\nRow 3: Ch 1, turn, sc in each sc across.\nRow 4: With A, ch 1, turn, sc in each sc across.\nRow 5: Ch 1, turn, sc in each sc across.\nRows 6–61: Rep Rows 2, 3, 4 and 5.\nRow 62: Ch 1, turn, sc in each sc across.")]
    [InlineData("Rnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: 2 sc in each sc around. (12 sc)\nRnds 3–30: Sc in each sc around. (12 sc)\nRnd 31: *Sc2tog; rep from * around. (6 sc)")]
    [InlineData("Ch 24, join with sl st to form a ring.\nRnd 1: Ch 1, sc in each ch around, join with sl st to first sc. (24 sc)\nRnd 2: Ch 1, sc in each sc around, join with sl st to first sc. (24 sc)\nRnds 3–30: Rep Rnd 2.")]
    public void Rows_that_come_round_are_the_rows_worked_one_by_one(string text)
    {
        Assert.Equal("", WorkComparison.Differences(PatternReader.Read(text)));
        Assert.DoesNotContain(PatternCheck.Check(text).Findings, finding => finding.Severity == Severity.Error);
    }

    /// <summary>Two rows of openwork are 11 sc and 10 sps, then 21 sc: Row 2 + 2k is openwork, Row 3 + 2k plain.</summary>
    [Fact]
    public void Any_row_of_a_long_piece_can_be_asked_for()
    {
        CheckedSize size = PatternCheck.Check(Two + "Rows 4–2001: Rep Rows 2 and 3.\nRow 2002: Ch 1, turn, sc in each sc across. (21 sc)").Sizes[0];
        Assert.Equal(2002, size.Rows.Count);
        Assert.Equal(new ReadSummary(2002, 2002, 2002), size.Read);
        Assert.Equal((1234, "Row 1234", 11L, 5, "WS"), (size.Rows[1233].Number, size.Rows[1233].Heading, size.Rows[1233].Stitches, size.Rows[1233].Line, size.Rows[1233].Side));
        Assert.Equal((2001, "Row 2001", 21L), (size.Rows[2000].Number, size.Rows[2000].Heading, size.Rows[2000].Stitches));
        Assert.Equal(("Row 2002", 6), (size.Rows[2001].Heading, size.Rows[2001].Line));
        WorkedRows rows = size.Fabric.Pieces[0].Rows;
        Assert.Equal((1234, 1233), (rows[1234].Index, rows[1234].Into));
        Assert.Same(rows[1234], rows[1234]);
        Assert.Equal(Enumerable.Range(0, 2003), rows.Select(row => row.Number));
    }

    /// <summary>The count behind 'Rows 4–41' holds for Row 41, which is plain: 21 sc, not 20.</summary>
    [Fact]
    public void A_count_behind_repeated_rows_is_compared_with_the_last_of_them()
    {
        Finding found = Assert.Single(PatternCheck.Check(Two + "Rows 4–41: Rep Rows 2 and 3. (20 sc)").Findings, finding => finding.Severity == Severity.Error);
        Assert.Equal(FindingCodes.CountDiffers, found.Code);
        Assert.Contains("Row 41", found.Message);
    }
}
