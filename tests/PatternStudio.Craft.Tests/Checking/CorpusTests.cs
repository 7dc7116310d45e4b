using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>
/// Published instructions out of copyright, read from the folder beside the repository; nothing of their text is kept here. The totals are those that the books state, or that follow
/// from their words by arithmetic, as remarked. Sources: Star Rug Book No. 106 (Project Gutenberg 60350), Handbook of Wool Knitting and Crochet, 1918 (26113), and the Star books of the American
/// Thread Company that the folder's index lists.
/// </summary>
public sealed class CorpusTests(ITestOutputHelper output)
{
    private static string Folder { get; } = Repository.Path("../shared/corpus");

    public static TheoryData<string, string, int, string, string> Passages => new()
    {
        { "046-home-sweet-home-rug", "", 1, "69 69", "stated: 69 d c" },
        { "052-happy-clown-rug", "", 1, "60 60 60 60", "chain 61, worked from the 2nd" },
        { "120-tam-o-shanter", "", 1, "7 14 21 28 35", "seven sections, one double more in each, each round" },
        { "094-daffodil", "", 1, "8 16 24 32 40", "eight more in each, by 'in every nth'" },
        { "056-round-and-round-rug", "", 10, "144 144 144", "stated: 144 s c" },
        { "010-lantern-potholder", "", 1, "20 30", "ch 3 and 19; then a popcorn and 2 d c ten times" },
        { "038-corner-and-edging-8122", "MOTIF", 1, "8 8", "8 in the ring, a d c over each" },
        { "038-corner-and-edging-8122", "MOTIF", 4, "68", "4 + 4 + 4 + 1 + 4 on each of four sides" },
        { "042-jewel-chair-set", "ARM REST", 1, "63 63 63", "an s c, then pairs: an odd number" },
        { "012-baby-booties-pincushion", "FRONT SECTION", 1, "14 18 22", "2 + 10 + 2; ch 3 + 2 + 12 + 3; 2 + 2 + 14 + 2 + 2" },
        { "004-luncheon-cloth", "FLOWER", 1, "24 32 8 96", "ch 3 and 23; 8 picots with 4 s c each; a d c between each two; 8 petals of 12" },
        { "004-luncheon-cloth", "LEAF", 1, "24 24 24 24 24 24 24 24", "10 + 4 in the end + 10; then 10 + 4 + 10 seven times" },
        { "012-baby-booties-pincushion", "FRONT SECTION", 11, "38 38 38 38 38", "22 and 2 more each row, eight times; then without increase" },
        { "024-green-place-mats-817", "MOTIF", 1, "8 16 56 16", "8 in the ring; 2 s c each; 7 d c eight times; an s c and a d c eight times" },
        { "030-towel-edging-8117", "", 4, "17 9 25 9 18 17 17 9", "8 over the loop and 9; the shells and the chain; 16 + 9; 9; ch 3 + 8 + 9; 9 + 8; 8 s c + 9; 9" },
        { "034-shaded-pink-edging-8114", "", 1, "4 4 4 4 10 11 4 4 4 4 10", "shells of 4; 4 + 5 + 1; ch 3 + 5 clusters + 1 + 4" },
        { "038-corner-and-edging-8122", "MOTIF", 3, "12 68 28", "8 clusters and 4 d c; see above; 4 d c at each corner, 3 s c on each side" },
        { "044-irish-crochet-chair-set", "ROSE", 1, "6 42 6 54 6 66", "6 petals of 7, of 9 and of 11, 6 loops behind them" },
        { "044-irish-crochet-chair-set", "LEAF", 1, "22 19 18 18 18 18 18 18", "11 + 3 + 8; 9 + 3 + 7; 8 + 3 + 7" },
        { "044-irish-crochet-chair-set", "CHAIR BACK", 1, "56 56", "227 chains: 3 for the first picot, then 4 for each s c" },
        { "048-young-modern-rug", "", 1, "82 82 82", "84 chains, worked from the 4th; 2 + 4 times 20; 1 in each" },
        { "056-round-and-round-rug", "", 13, "144 144 144 160", "4 + 8 times 16 + 8 + 4; 8 more at each end" },
        { "120-tam-o-shanter", "", 6, "42 49 56", "one double more in each of seven sections" },
        { "120-tam-o-shanter", "", 31, "217 224 196 168 112 112", "30 between widenings: 7 × 32; of 8 to 7: 28 × 7; of 7 to 6: 28 × 6; of 3 to 2: 56 × 2" },
        { "128-dahlia-couvrette", "", 1, "30 36 18 18 144 180 216 252 288 324 360 396", "36 ÷ 2; 18 + 18 × 5 + 18 × 2; then 18 × 2 more in each" },
        { "128-dahlia-couvrette", "", 14, "18 18 18 18 45", "18 loops stated; nine times 1, 1 and 3" },
        { "138-doyley-1", "", 1, "9 40 8 88 44 44 44", "8 and the closing one; 8 × 5; 8; 8 × 11; half of that" },
        { "122-babys-shoes", "", 1, "68", "31 + 3 + 31 + 3" },
        { "146-crochet-lace-468", "", 1, "4", "one and three times more" },
        { "118-ribbed-pattern-stitch", "", 1, "11 11 11 11 11", "over 4 × 3 chains: one less, and 2 + 3 × 3" },
        { "132-crochet-lace-251", "", 1, "9 5", "over 9 chains: 9, every other one of them" },
        { "134-crochet-border-253", "", 2, "18 35 35 18 69 33", "over 4 × 17 + 1 chains: 18 and 17 loops; both; 18 with 17 × 3 chain between; four times 8, and the first again" },
    };

    /// <summary>The second pattern of D'Oyley No. 1: six loops of 4, 6, … 14 chains; into each 1, as many long stitches as chains, 1.</summary>
    [Fact]
    public void Petals_grow_behind_petals()
    {
        RowReport[] rows = [.. PatternCheck.Check(Read("138-doyley-1")).Sizes[0].Rows.Skip(7)];
        Assert.Equal([6, 6 * 6, 6, 6 * 8, 6, 6 * 10, 6, 6 * 12, 6, 6 * 14, 6, 6 * 16, 6], rows.Select(row => row.Stitches));
    }

    [Theory]
    [MemberData(nameof(Passages))]
    public void A_published_passage_comes_to_its_totals(string name, string piece, int from, string totals, string why)
    {
        CheckedPattern result = PatternCheck.Check(Read(name));
        RowReport[] rows = [.. result.Sizes[0].Rows.Where(row => row.Piece == piece && row.Number >= from).Take(totals.Split(' ').Length)];
        Assert.True(rows.All(row => row.Status == RowStatus.Checked), why);
        Assert.True(totals == string.Join(' ', rows.Select(row => row.Stitches)), $"{string.Join(' ', rows.Select(row => row.Stitches))} instead of {totals}: {why}");
    }

    /// <summary>Nine rows in ten are read, three in four are worked, and the only errors are those that docs/corpus.md explains one by one.</summary>
    [Fact]
    public void Most_rows_are_read_and_worked_and_the_errors_are_the_books_own()
    {
        Assert.SkipUnless(Directory.Exists(Folder), "SKIPPED, NOT CHECKED: the published instructions are not beside the repository (looked for ../shared/corpus).");
        string explained = File.ReadAllText(Repository.Path("docs/corpus.md"));
        int rows = 0, read = 0, worked = 0;
        var unexplained = new List<string>();
        foreach (string path in Directory.EnumerateFiles(Folder, "*.txt").Order(StringComparer.Ordinal))
        {
            CheckedPattern result = PatternCheck.Check(File.ReadAllText(path));
            IReadOnlyList<RowReport> all = result.Sizes[0].Rows;
            int whole = all.Count(row => row.Status != RowStatus.NotRead), known = all.Count(row => row.Status == RowStatus.Checked);
            output.WriteLine($"{Path.GetFileNameWithoutExtension(path),-45} {all.Count,4} rows, {whole,4} read, {known,4} worked");
            (rows, read, worked) = (rows + all.Count, read + whole, worked + known);
            if (!explained.Contains(Path.GetFileName(path)[..3], StringComparison.Ordinal)) unexplained.AddRange(result.Findings.Where(finding => finding.Severity == Severity.Error).Select(finding => $"{Path.GetFileName(path)}: {finding.Message}"));
        }
        output.WriteLine($"in all {rows} rows, {100.0 * read / rows:0.0} % read, {100.0 * worked / rows:0.0} % worked");
        Assert.Empty(unexplained);
        Assert.InRange((double)read / rows, 0.9, 1);
        Assert.InRange((double)worked / rows, 0.75, 1);
    }

    /// <summary>Two rows, the second worked 94 times more.</summary>
    [Fact]
    public void A_rug_of_96_rows_is_worked_whole()
    {
        CheckedPattern result = PatternCheck.Check(Read("052-happy-clown-rug"));
        Assert.Equal(new ReadSummary(96, 96, 96), result.Sizes[0].Read);
        Assert.False(result.HasErrors);
    }

    /// <summary>Ch 65, worked from the 2nd: 64 stitches, where an s c and pairs need an odd number. The book is one chain out.</summary>
    [Fact]
    public void A_chain_that_a_book_makes_too_long_is_found() =>
        Assert.Contains(PatternCheck.Check(Read("042-jewel-chair-set")).Findings, finding => finding.Code == FindingCodes.RepeatUneven);

    private static string Read(string name)
    {
        string path = Path.Combine(Folder, name + ".txt");
        Assert.SkipUnless(File.Exists(path), $"SKIPPED, NOT CHECKED: the published instructions are not beside the repository (looked for {name}.txt in ../shared/corpus).");
        return File.ReadAllText(path);
    }
}
