using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>
/// Ways of writing that the booklets of the thread companies share, each in a small pattern of our own with its arithmetic (common practice, no source), and published passages
/// out of copyright that are told so, read from the folder beside the repository (Star Books No. 57, 106 and 143 of the American Thread Company, Project Gutenberg 62805, 60350, 62486; Book 54 of
/// Virginia Snow Studios, 65873).
/// </summary>
public sealed class OldBookletRowTests
{
    private const string Increasing =
        """
        Ch 11.
        Row 1: Sc in 2nd ch from hook and in each ch across, turn. (10 sc)
        Row 2: Ch 1, 2 sc in first sc, sc in each sc across, turn. (11 sc)
        Row 3: Ch 1, sc in each sc across, turn. (11 sc)
        Rows 4 and 5: Rep Rows 2 and 3.
        Row 6: Rep Row 5.
        Row 7: Rep Row 4.
        Row 8: Rep Row 7.
        """;

    /// <summary>Row 5 was Row 3, Row 4 was Row 2: 12, 12; then 12 as Row 3, 13 as Row 2, 14 as Row 2.</summary>
    [Fact]
    public void A_repeat_of_a_repeating_row_means_what_that_row_was() => Assert.Equal("10 11 11 12 12 12 13 14", Totals(Increasing));

    /// <summary>Row 5 was Row 3 and Row 4 was Row 2, whichever of the two comes next in turn: 12, 13, 13.</summary>
    [Fact]
    public void The_last_rows_repeated_are_what_they_were() =>
        Assert.Equal("10 11 11 12 12 12 13 13", Totals(Increasing[..Increasing.IndexOf("Row 6", StringComparison.Ordinal)] + "Rep Row 5 once. Rep Rows 4 and 5 once."));

    [Fact]
    public void More_rows_than_can_be_worked_are_said_to_be_too_many()
    {
        CheckedPattern result = PatternCheck.Check("Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: Ch 1, turn, sc in each sc across.\nRep Row 2 for 30000 more rows.");
        Finding finding = Assert.Single(result.Findings, found => found.Severity == Severity.Error);
        Assert.Equal(FindingCodes.TooLarge, finding.Code);
        Assert.Equal(4, result.Pattern.Source.Locate(finding.Span.Start).Line);
    }

    /// <summary>Half the stitches each round, 12, 6, 3: that a spiral's last hdc stands in the last stitch below does not make it the other half of a loop.</summary>
    [Fact]
    public void A_spiral_of_hdc_and_chains_ends_in_a_stitch() =>
        Assert.Equal("12 6 3", Totals("Rnd 1: 12 sc in magic ring. (12 sc)\nRnd 2: *Ch 2, sk next st, hdc in next st; rep from * around. (6 sts, 6 ch-2 sps)\nRnd 3: Rep Rnd 2. (3 sts, 3 ch-2 sps)"));

    /// <summary>'12 sts increased in round' says how many more there are: neither the row's count nor words that can't be followed.</summary>
    [Fact]
    public void What_a_round_adds_is_no_count_of_it() =>
        Assert.Equal("12 24 24", Totals("Rnd 1: 12 sc in magic ring. (12 sc)\nRnd 2: 2 sc in each st around. (12 sts increased in round)\nRnd 3: Sc in each st around. (24 sts)"));

    /// <summary>Rows 3 to 8 are Row 2 again, as the 9 that follows tells: ten each, then twice ten.</summary>
    [Fact]
    public void The_number_of_the_next_row_tells_how_often_a_row_is_repeated()
    {
        const string text = "Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: Ch 1, turn, sc in each sc across. Repeat the last row until the strip is long enough.\nRow 9: Ch 1, turn, 2 sc in each sc across. (20 sc)";
        Assert.Equal("10 10 10 10 10 10 10 10 20", Totals(text));
        Assert.DoesNotContain(PatternCheck.Check(text).Findings, found => found.Severity != Severity.Note);
    }

    /// <summary>What changes from one repeat to the next is not told: those rows are not worked as if it were.</summary>
    [Fact]
    public void Rows_repeated_with_shaping_are_left_to_the_maker() =>
        Assert.Equal("10 10", Totals("Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: Ch 1, turn, sc in each sc across. Repeat the last row 4 times always decreasing in center of row."));

    /// <summary>A beginning chain of 3 has no 4th chain.</summary>
    [Theory]
    [InlineData("Ch 3", "3rd", false)]
    [InlineData("Ch 3", "4th", true)]
    [InlineData("Ch 1", "3rd", true)]
    public void A_join_to_a_chain_that_the_round_did_not_begin_with_is_found(string begin, string nth, bool found)
    {
        string text = $"Ch 4, join to form a ring.\n1st Round. Ch 3, 11 d c in ring, join in 3rd st of ch.\n2nd Round. {begin}, 1 d c in same st, 2 d c in each of the next 11 d c, join in {nth} st of ch.";
        Assert.Equal(found, PatternCheck.Check(text).Findings.Any(finding => finding.Code == FindingCodes.JoinToNothing));
        Assert.Equal(found, PatternCheck.Check(text).HasErrors);
    }

    /// <summary>Rows 3 and 5 tell an even row behind them, which has a number of its own: 8, 16, 24, 24, 32; then 2 × 32, 64 and 32 more, the same, and 96 and 32 more.</summary>
    [Fact]
    public void A_row_repeated_by_its_number_is_one_row() =>
        Assert.Equal("8 16 24 24 32 64 96 96 128", Totals("Ch 6, join to form a ring, ch 1 and work 8 s c in ring, do not join this or the following rows.\n2nd Row: 2 s c in each s c.\n3rd Row: Increase in every 2nd s c, then work 1 row even.\n5th Row: Increase in every 3rd s c. Repeat the 2nd, 3rd, 4th and 5th rows."));

    /// <summary>16 stitches, 4 to a loop: three loops with an s c and the one that the d c closes.</summary>
    [Fact]
    public void A_spiral_closes_on_the_stitch_that_it_began_on() =>
        Assert.Equal("16 4 4", Totals("Ch 5, join to form a ring.\n1st Round: Ch 1 and work 16 s c in ring, do not join this or the following rounds.\n2nd Round: * Ch 6, skip 3 s c, s c in next s c, repeat from * all around ending with ch 3, d c in same st with the 1st ch 6.\n3rd Round: * Ch 7, s c in next loop, repeat from * all around ending with ch 3, tr c in d c."));

    /// <summary>Four s c, two clusters between each two; the last s c of both rounds is the one that they began with.</summary>
    [Fact]
    public void A_round_ends_on_the_stitch_that_it_began_with()
    {
        const string text = "Ch 5, join to form a ring.\n1st Row: Ch 1, 16 sc in ring, join in 1st sc.\n2nd Row: Ch 1, sc in same sc, * ch 6, skip 1 sc, 2 cluster sts with ch 6 between in next sc, ch 6, skip 1 sc, sc in next sc, repeat from * all around, join in 1st s c.\n3rd Row: Ch 1, s c in same s c, * ch 6, cluster st between next 2 cluster sts, ch 1, cluster st in same space, ch 6, s c in next s c, repeat from * all around, break thread.";
        Assert.Equal("16 12 12", Totals(text));
        Assert.False(PatternCheck.Check(text).HasErrors);
    }

    /// <summary>9 of 10 chains, 3 in the last; 8 back, and 3 in the chain that was missed: 8 + 3 + 8 + 3.</summary>
    [Fact]
    public void The_last_of_an_oval_is_the_chain_that_was_missed() =>
        Assert.Equal("22", Totals("Chain 10.\n1. Miss 1st stitch, a double crochet in each of 8 stitches, 3 in end stitch, 1 in each of 8 stitches down other side and 3 in last, join."));

    [Theory]
    [InlineData("094-daffodil", "", 17, "117 130 130 143 143 143 156", "13 more by every 8th, 9th, 10th and 11th")]
    [InlineData("094-daffodil", "", 29, "182 182 182 182 182 208 208 234 234 234 234 234 260 260 260 260 286 286 286 286 286 312", "26 more each; stated: 312 s c")]
    [InlineData("094-daffodil", "", 69, "195", "39 s c and as many times 4 clusters")]
    [InlineData("120-tam-o-shanter", "", 46, "112 112", "one in each of the 112")]
    [InlineData("084-poinsettia", "MOTIF", 9, "48 48 60 60", "24 tr and 24 s c, twice; 16 clusters, 20 s c; 20 clusters, 16 s c")]
    [InlineData("108-sunburst-ruffle", "", 15, "? 60 44 45", "a star is lost; 5 × 7 and 25; 15 d c and 29 s c; 45 loops")]
    [InlineData("032-motif-edging-8119", "", 2, "? 12 88", "a star is lost; 12 clusters; 4 × (5 + 12 + 5)")]
    [InlineData("056-round-and-round-rug", "", 33, "144 272 272 272 272 302 302 320", "144 of 272 told; then 15 more at each end, then 9")]
    [InlineData("064-basque-blouse", "", 1, "4 2 ? 3 3 2 2", "4 d c; 2 shells; 2 and an s c; 3; 1 and an s c; 2")]
    [InlineData("064-basque-blouse", "", 13, "10 10", "8 shells and 2 d c; 10 shells")]
    [InlineData("094-daffodil", "", 55, "78 78 78 78 155 117", "77 loops and the half one; 78 clusters and 77 s c; 3 × 38 + 2 s c and the tr")]
    [InlineData("094-daffodil", "", 61, "156 156 156 156 155 78 78 117", "78 shells; 155 s c and the tr; 78 shells; 39 pairs of clusters and of s c; 154 s c and the d tr; 78 loops; 78 clusters and 39 s c")]
    [InlineData("106-blossom-ruffle", "", 19, "89 89 89 352 352", "80 tr, 8 clusters, the d c; 88 loops; 2 + 87 tr; 4 × 88 loops")]
    [InlineData("108-sunburst-ruffle", "", 8, "75 85 95 105 95 85 75", "5 sections of 21 s c at most, then 19, 17, 15")]
    [InlineData("084-poinsettia", "MOTIF", 4, "64 32 33 40", "8 × 8 d c; 28 tr and 4 s c; 32 s c and the d c; 12 d c and 28 s c")]
    [InlineData("058-pinwheel-rug", "", 7, "56 64 72 80 88 96 104 112 120 120 128 136", "8 sections of 7 to 15, then 15, 16, 17")]
    public void A_published_passage_comes_to_its_totals(string name, string piece, int from, string totals, string why) => Assert.True(totals == Published(name, piece, from, totals), Published(name, piece, from, totals) + ": " + why);

    /// <summary>Told by its shells: 20 (three times), 19, 18 (four times), 17, 16 (three times), 15.</summary>
    [Fact]
    public void A_published_sleeve_has_the_shells_it_tells() => Assert.Equal("20 20 20 19 18 18 18 18 17 16 16 16 15", Published("064-basque-blouse", "Sleeve", 14, "1 2 3 4 5 6 7 8 9 10 11 12 13"));

    private static string Published(string name, string piece, int from, string totals) =>
        string.Join(' ', PatternCheck.Check(Read(name)).Sizes[0].Rows.Where(row => row.Piece == piece && row.Number >= from).Take(totals.Split(' ').Length)
            .Select(row => row.Status == RowStatus.Checked ? row.Stitches.ToString() : "?"));

    private static string Totals(string text) => string.Join(' ', PatternCheck.Check(text).Sizes[0].Rows.Select(row => row.Status == RowStatus.Checked ? row.Stitches.ToString() : "?"));

    private static string Read(string name)
    {
        string path = Path.Combine(Repository.Path("../shared/corpus"), name + ".txt");
        Assert.SkipUnless(File.Exists(path), $"SKIPPED, NOT CHECKED: the published instructions are not beside the repository (looked for {name}.txt in ../shared/corpus).");
        return File.ReadAllText(path);
    }
}
