using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Writing.Completion;

namespace PatternStudio.Craft.Tests.Writing.Completion;

/// <summary>Patterns of our own in three sizes; what comes next is counted by hand in each, and holds in all or is not offered.</summary>
public sealed class WhatComesNextInSizesTests
{
    /// <summary>21, 25 and 29 chains, 1 of them turning chain, leave 20, 24 and 28 sc.</summary>
    private const string Plain = "US terms\nSizes: Small (Medium, Large)\n\nCh 21 (25, 29).\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20, 24, 28 sc)\n";

    /// <summary>Rounds of 8, 9 and 10 sc, doubled to 16, 18 and 20.</summary>
    private const string Crown = "US terms\nSizes: Child (Teen, Adult)\n\nRnd 1: 8 (9, 10) sc in magic ring. [8 (9, 10) sc]\nRnd 2: 2 sc in each sc around. [16 (18, 20) sc]\n";

    /// <summary>Row 2 makes of every two sc one sc and a ch-1 space: 20, 24 and 28 sc give 10, 12 and 14 of each.</summary>
    private const string Mesh = Plain + "Row 2: Ch 1, *sc in next sc, ch 1, skip next sc; rep from * across, turn. [10 (12, 14) sc, 10 (12, 14) ch-1 sps]\n";

    [Fact]
    public void The_next_row_has_the_next_number()
    {
        Assert.Equal("Row 1: ", First("US terms\n\nCh 21 (25, 29).\n", "", asked: true));
        Assert.Equal("Row 2: ", First(Plain, "", asked: true));
        Assert.Equal("Rnd 3: ", First(Crown, "Rn", asked: false));
    }

    [Fact]
    public void A_row_that_has_another_number_in_each_size_is_not_numbered()
    {
        // Row 2, then 4, 5 or 6 rows more: 6, 7 or 8 rows are worked.
        string[] words = Words(Plain + "Row 2: Ch 1, sc in each sc across, turn.\nRep Row 2 4 (5, 6) more times.\n", "", asked: true);

        Assert.DoesNotContain(words, word => word.StartsWith("Row", StringComparison.Ordinal));
        Assert.Contains("Fasten off.", words);
    }

    [Fact]
    public void After_the_heading_come_stitches_and_then_what_the_row_below_has()
    {
        Assert.Contains("sc", Words(Plain, "Row 2: ", asked: true));
        string[] places = Words(Mesh, "Row 3: Ch 1, sc in ", asked: true);
        Assert.Contains("next sc", places);
        Assert.Contains("next ch-1 sp", places);
        Assert.Contains("each ch-1 sp across", places);
        Assert.Contains("Row 2 has 10 (12, 14)", Choices(Mesh, "Row 3: Ch 1, sc in ch", asked: false).Select(choice => choice.Says));
    }

    [Fact]
    public void What_the_hook_meets_next_comes_first()
    {
        // Turned, the hook meets the last ch-1 space first, then the sc before it, in every size.
        Assert.Equal("next sc", First(Mesh, "Row 3: Ch 1, sc in next ch-1 sp, sc in ", asked: true));
        Assert.Equal("next ch-1 sp", First(Mesh, "Row 3: Ch 1, sc in next ch-1 sp, sc in next sc, sc in ", asked: true));
    }

    [Fact]
    public void So_many_alike_are_counted_in_each_size()
    {
        // 20, 24 and 28 sc; the first holds 2 sc, which leaves 19, 23 and 27.
        Assert.Contains("next 19 (23, 27) sc", Words(Plain, "Row 2: Ch 1, 2 sc in next sc, sc in ", asked: true));
        Assert.Contains("next 19 (23, 27) sc", Words(Plain, "Row 2: Ch 1, 2 sc in next sc, sc in next 19 (2", asked: true));
        // All but 4: 20 − 16, 24 − 20 and 28 − 24 leave 4 in every size.
        Assert.Contains("next 4 sc", Words(Plain, "Row 2: Ch 1, sc in next 16 (20, 24) sc, sc in ", asked: true));
        // One size: 8 sc of which 3 are worked leave 5.
        Assert.Contains("next 5 sc", Words("US terms\n\nCh 9.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (8 sc)\n", "Row 2: Ch 1, sc in next 3 sc, sc in ", asked: true));
    }

    [Fact]
    public void Where_a_size_has_none_left_nothing_is_said_of_the_next()
    {
        // 20 sc are worked in every size: Small has none left, Medium 4, Large 8.
        string[] words = Words(Plain, "Row 2: Ch 1, sc in next 20 sc, sc in ", asked: true);
        Assert.DoesNotContain(words, word => word.StartsWith("next", StringComparison.Ordinal) || word.StartsWith("each", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_typed_of_a_number_goes_on_only_where_every_size_has_so_many()
    {
        Assert.Contains("next 4 (6, 8) sc", Words(Plain, "Row 2: Ch 1, sc in next 4 (6, 8) ", asked: true));
        Assert.Contains("next 20 sc", Words(Plain, "Row 2: Ch 1, sc in next 20 s", asked: true));
        // Small has 20 sc, not 21; and a list of two numbers is none of three sizes.
        Assert.Empty(Words(Plain, "Row 2: Ch 1, sc in next 21 ", asked: true));
        Assert.Empty(Words(Plain, "Row 2: Ch 1, sc in next 4 (6) ", asked: true));
    }

    [Fact]
    public void Inside_a_size_list_nothing_is_offered_but_its_numbers()
    {
        foreach (string line in new[] { "Ch 21 (", "Ch 21 (25, ", "Row 2: Ch 1, sc in next 4 (", "Row 2: Ch 1, sc in next 4 (6, ", "Row 2: Ch 1, 4 (6, ", "Row 2: Ch 1, sc in each sc across. (20, 25, " })
            Assert.Empty(Words(Plain, line, asked: true));
        Assert.Equal(["(20, 24, 28 sc)"], Words(Plain, "Row 2: Ch 1, sc in each sc across. (20, 2", asked: true));
    }

    [Fact]
    public void The_count_at_the_end_is_told_for_every_size_as_the_rows_above_tell_theirs()
    {
        Assert.Contains("(20, 24, 28 sc)", Words(Plain, "Row 2: Ch 1, sc in each sc across. ", asked: true));
        Assert.Contains("turn. (20, 24, 28 sc)", Words(Plain, "Row 2: Ch 1, sc in each sc across, tu", asked: false));
        // One more at each end: 22, 26 and 30.
        Assert.Contains("(22, 26, 30 sc)", Words(Plain, "Row 2: Ch 1, 2 sc in first sc, sc in each sc to last sc, 2 sc in last sc. ", asked: true));
        // Every second of 16, 18 and 20 sc is increased: 16 + 8, 18 + 9, 20 + 10.
        Assert.Contains("[24 (27, 30) sc]", Words(Crown, "Rnd 3: *Sc in next sc, 2 sc in next sc; rep from * around. ", asked: true));
        string bare = Crown.Replace("[16 (18, 20) sc]", "16 (18, 20) sc", StringComparison.Ordinal);
        Assert.Contains("16 (18, 20) sc", Words(bare, "Rnd 3: Sc in each sc around. ", asked: true));
        // Sc and spaces one by one, as Row 2 tells them: the mesh set over itself keeps its numbers.
        Assert.Contains("[10 (12, 14) sc, 10 (12, 14) ch-1 sps]", Words(Mesh, "Row 3: Ch 1, *sc in next ch-1 sp, ch 1, skip next sc; rep from * across. ", asked: true));
    }

    [Fact]
    public void Where_one_size_is_not_at_its_end_no_count_is_offered() =>
        Assert.DoesNotContain(Words(Plain, "Row 2: Ch 1, sc in next 20 sc. ", asked: true), word => word.Any(char.IsDigit) && word.Contains("sc", StringComparison.Ordinal));

    [Fact]
    public void A_line_may_be_the_first_to_tell_sizes()
    {
        // 6 sc in the ring, then 2 sc in each: 12. Of 12, 4, 6 or 8 are worked and the rest left: 4, 6 or 8.
        const string Ring = "US terms\n\nRnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: 2 sc in each sc around. (12 sc)\n";
        string[] words = Words(Ring, "Rnd 3: Sc in next 4 (6, 8) sc, sc in ", asked: true);
        Assert.Contains("next 8 (6, 4) sc", words);
        Assert.DoesNotContain("next 8 sc", words);
    }

    [Fact]
    public void Repeats_are_offered_as_they_come_out_in_every_size()
    {
        // 20, 24 and 28 are each divisible by 4.
        string[] even = Words(Plain, "Row 2: Ch 1, *sc in next 3 sc, ch 1, skip next sc; re", asked: false);
        Assert.Contains("rep from * across", even);
        // 20 ÷ 4 = 5, 24 ÷ 4 = 6, 28 ÷ 4 = 7; the first is worked already.
        Assert.Contains("rep from * 4 (5, 6) more times", even);

        // 20 = 6 × 3 + 2, 24 = 8 × 3, 28 = 9 × 3 + 1: across does not come out, nor is the same left.
        Assert.DoesNotContain(Words(Plain, "Row 2: Ch 1, *sc in next 2 sc, skip next sc; re", asked: false), word => word.StartsWith("rep", StringComparison.Ordinal));

        // 20 = 2 × 9 + 2, 24 = 2 × 9 + 6, 28 = 3 × 9 + 1.
        Assert.Contains("rep from * to last 2 (6, 1) sts", Words(Plain, "Row 2: Ch 1, *sc in next 8 sc, skip next sc; re", asked: false));
    }

    [Fact]
    public void Brackets_are_worked_as_often_as_they_fit_in_every_size()
    {
        // 16, 18 and 20 sc in twos: 8, 9 and 10 times.
        Assert.Contains("8 (9, 10) times", Words(Crown, "Rnd 3: [Sc in next sc, 2 sc in next sc] ", asked: true));
        Assert.Contains("8 (9, 10) times", Words(Crown, "Rnd 3: [Sc in next sc, 2 sc in next sc] 8 (9, 10) ti", asked: false));
    }

    [Fact]
    public void Two_and_five_sizes_are_as_good_as_three()
    {
        // 13 and 17 chains leave 12 and 16 sc.
        Assert.Contains("[12 (16) sc]", Words("US terms\nSizes: Small (Large)\n\nCh 13 (17).\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. [12 (16) sc]\n", "Row 2: Ch 1, sc in each sc across. ", asked: true));
        // 15 − 1, 17 − 1, 19 − 1, 21 − 1 and 23 − 1.
        const string Five = "US terms\nTo fit: XS (S, M, L, XL)\nCh 15 (17, 19, 21, 23).\nRow 1: Hdc in 2nd ch from hook and in each ch across. 14 (16, 18, 20, 22) hdc.\n";
        Assert.Contains("14 (16, 18, 20, 22) hdc", Words(Five, "Row 2: Ch 1, turn, hdc in each st across. ", asked: true));
        Assert.Contains("next 13 (15, 17, 19, 21) hdc", Words(Five, "Row 2: Ch 1, turn, hdc in next hdc, hdc in next 13 (15, 17, 19, 2", asked: true));
    }

    [Fact]
    public void A_turning_chain_that_counts_as_no_stitch_is_not_left_over()
    {
        // Row 2 begins with ch 1, which is no stitch: Row 3 is at its end after its 20, 24 and 28 sc.
        string[] words = Words(Plain + "Row 2: Ch 1, sc in each sc across, turn. (20, 24, 28 sc)\n", "Row 3: Ch 1, sc in each sc across. ", asked: true);
        Assert.Contains("(20, 24, 28 sc)", words);
    }

    [Fact]
    public void What_is_offered_can_be_worked_in_every_size()
    {
        foreach ((string above, string row) in new[] { (Plain, "Row 2: Ch 1, sc"), (Mesh, "Row 3: Ch 1, sc"), (Crown, "Rnd 3: Sc") })
            foreach (string line in new[] { $"{row} in ", $"{row} in next st, skip next st, sc in ", $"{row} in next 8 (9, 10) sts, sc in ", $"{row} in next 15 sts, sc in " })
                foreach (string words in Words(above, line, asked: true))
                {
                    CheckedPattern all = PatternCheck.Check($"{above}{line}{words}, leaving remaining sts unworked.\n");
                    Assert.True(all.Findings.All(found => found.Severity == Severity.Note || found.Span.End <= above.Length), $"{line}{words}: {string.Join("; ", all.Findings.Select(found => found.Message))}");
                }
    }

    [Fact]
    public void No_number_is_told_where_the_maker_chooses_the_length()
    {
        const string Open = "US terms\n\nCh a multiple of 2 plus 1.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\n";
        foreach (string line in new[] { "Row 2: Ch 1, sc in each sc across. ", "Row 2: Ch 1, sc in next sc, sc in ", "Row 2: Ch 1, *sc in next sc, ch 1, skip next sc; re" })
            Assert.DoesNotContain(Words(Open, line, asked: true), word => word.StartsWith('(') || word.StartsWith("next ", StringComparison.Ordinal) && word.Any(char.IsDigit) || word.StartsWith("rep", StringComparison.Ordinal) && word.Any(char.IsDigit));
    }

    [Fact]
    public void What_is_typed_behind_in_is_gone_on_with_or_left_alone()
    {
        Assert.DoesNotContain("each st across", Words(Plain, "Row 2: Ch 1, sc in next ", asked: true));
        Assert.Contains("next sc", Words(Plain, "Row 2: Ch 1, sc in next ", asked: true));
        Assert.DoesNotContain("in each st across", Words(Plain, "Row 2: Ch 1, ", asked: true));
        Assert.Contains("in each st across", Words(Plain, "Row 2: Ch 1, sc ", asked: true));
        Assert.DoesNotContain(Words(Crown, "Rnd 3: *Sc in next sc, 2 sc in next sc; rep from * around ", asked: true), word => word.StartsWith("next", StringComparison.Ordinal));
    }

    [Fact]
    public void A_round_is_closed_at_the_stitch_that_it_began_with()
    {
        Assert.Contains("join with sl st to first hdc", Words(Crown, "Rnd 3: Hdc in each sc around, jo", asked: false));
        // Ch 3 stands for the first of 16, 18 and 20 dc.
        Assert.Contains("join with sl st to top of beg ch-3. [16 (18, 20) dc]", Words(Crown, "Rnd 3: Ch 3, skip first sc, dc in each sc around, jo", asked: false));
    }

    private static string? First(string above, string line, bool asked) => Words(above, line, asked).FirstOrDefault();

    private static string[] Words(string above, string line, bool asked) => [.. Choices(above, line, asked).Select(choice => choice.Words)];

    private static EquatableArray<Choice> Choices(string above, string line, bool asked) => WhatComesNext.At(RowsAbove.Of(above), line, asked);
}
