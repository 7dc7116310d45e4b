using PatternStudio.Craft.Checking;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>Mistakes that only some of the sizes have: told once, at the row where they lie, for the sizes that have them, and with nothing told behind them.</summary>
public sealed class SizedMistakeTests
{
    /// <summary>'Sizes … only' rows are worked by those sizes, and only there is their count wrong.</summary>
    [Fact]
    public void A_wrong_count_among_rows_for_some_sizes_is_told_for_those()
    {
        const string Text = """
            Beanie
            Sizes: Baby (Child, Adult)
            Rnd 1: 8 dc in magic ring, join. (8 dc)
            Rnd 2: Ch 2, 2 dc in each st, join. (16 dc)
            Rnd 3: Ch 2, *dc in next st, 2 dc in next st; rep from * around, join. (24 dc)
            Sizes Child and Adult only:
            Rnd 4: Ch 2, *dc in next 2 sts, 2 dc in next st; rep from * around, join. (34 dc)
            Size Adult only:
            Rnd 5: Ch 2, *dc in next 3 sts, 2 dc in next st; rep from * around, join. (40 dc)
            All sizes:
            Next rnd: Ch 2, dc in each st around, join. 24 (32, 40) dc
            """;
        AssertOnly(Text, FindingCodes.CountDiffers, "Sizes Child and Adult: Rnd 4 states 34 dc, but working it gives 32.");
    }

    /// <summary>Colons between the sizes, and one of them wrong.</summary>
    [Fact]
    public void A_wrong_count_in_a_list_with_colons_is_told_for_its_size()
    {
        const string Text = """
            Top
            UK terms
            Make 61[65:69] ch.
            1st row: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. 60[64:68] dc
            2nd row: 1 ch, 1 dc in each dc to end, turn.
            Next row: ss over first 5 dc, 1 ch, 1 dc in each dc to last 5 dc, turn. 50[52:58] dc
            Next row: 1 ch, dc2tog, 1 dc in each dc to last 2 dc, dc2tog, turn. 48[52:56] dc
            """;
        AssertOnly(Text, FindingCodes.CountDiffers, "Size 2: Row 3 states 52 dc, but working it gives 54.");
    }

    /// <summary>'Row 16' where the size has 13 before it.</summary>
    [Fact]
    public void A_number_missing_among_numbers_by_size_is_told_for_its_size()
    {
        const string Text = """
            Vest
            Sizes S (M, L)
            Ch 31 (33, 35).
            Row 1: Sc in 2nd ch from hook and in each ch across. 30 (32, 34) sc.
            Rows 2-10 (12, 14): Ch 1, turn, sc in each sc across. 30 (32, 34) sc.
            Row 11 (13, 16): Ch 1, turn, sc2tog, sc in each sc across. 29 (31, 33) sc.
            Row 12 (14, 17): Ch 1, turn, sc in each st across. 29 (31, 33) sc.
            """;
        AssertOnly(Text, FindingCodes.RowNumberMissing, "Size L: Number 15 is missing: the numbers go from 14 to 16 here.");
    }

    /// <summary>'6 (6) more times' where the largest size needs 7.</summary>
    [Fact]
    public void Too_few_repeats_in_one_size_are_told_for_it()
    {
        const string Text = """
            Sleeve
            Sizes: 2 (4, 6)
            Ch 25 (27, 29).
            Row 1: Sc in 2nd ch from hook and in each ch across. 24 (26, 28) sc.
            Row 2 (inc row): Ch 1, turn, 2 sc in first sc, sc in each sc to last sc, 2 sc in last sc. 26 (28, 30) sc.
            Rep inc row 5 (6, 6) more times. 36 (40, 44) sc.
            """;
        AssertOnly(Text, FindingCodes.CountDiffers, "Size 6: Row 8 states 44 sc, but working it gives 42.");
    }

    private static void AssertOnly(string text, string code, string begins)
    {
        Finding only = Texts.Only(text);
        Assert.Equal(code, only.Code);
        Assert.StartsWith(begins, only.Message, StringComparison.Ordinal);
    }
}
