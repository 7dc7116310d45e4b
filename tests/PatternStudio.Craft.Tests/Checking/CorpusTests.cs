using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>
/// Published instructions out of copyright, read from the folder beside the repository; nothing of their text is kept here. The totals are those that the books state, or that follow
/// from their words by arithmetic, as remarked. Sources: Star Rug Book No. 106 (Project Gutenberg 60350), Handbook of Wool Knitting and Crochet, 1918 (26113), and the Star books of the American
/// Thread Company that the folder's index lists.
/// </summary>
public sealed class CorpusTests
{
    private static string Folder { get; } = Repository.Path("../shared/corpus");

    public static TheoryData<string, string, int, string, string> Passages => new()
    {
        { "046-home-sweet-home-rug", "", 1, "69 69", "stated: 69 d c" },
        { "052-happy-clown-rug", "", 1, "60 60 60 60", "chain 61, worked from the 2nd" },
        { "120-tam-o-shanter", "", 1, "7 14 21 28 35", "seven sections, one double more in each, each round" },
        { "010-lantern-potholder", "", 1, "20 30", "ch 3 and 19; then a popcorn and 2 d c ten times" },
        { "038-corner-and-edging-8122", "MOTIF", 1, "8 8", "8 in the ring, a d c over each" },
        { "038-corner-and-edging-8122", "MOTIF", 4, "68", "4 + 4 + 4 + 1 + 4 on each of four sides" },
        { "042-jewel-chair-set", "ARM REST", 1, "63 63 63", "an s c, then pairs: an odd number" },
        { "012-baby-booties-pincushion", "FRONT SECTION", 1, "14 18 22", "2 + 10 + 2; ch 3 + 2 + 12 + 3; 2 + 2 + 14 + 2 + 2" },
    };

    [Theory]
    [MemberData(nameof(Passages))]
    public void A_published_passage_comes_to_its_totals(string name, string piece, int from, string totals, string why)
    {
        CheckedPattern result = PatternCheck.Check(Read(name));
        RowReport[] rows = [.. result.Sizes[0].Rows.Where(row => row.Piece == piece && row.Number >= from).Take(totals.Split(' ').Length)];
        Assert.True(rows.All(row => row.Status == RowStatus.Checked), why);
        Assert.True(totals == string.Join(' ', rows.Select(row => row.Stitches)), $"{string.Join(' ', rows.Select(row => row.Stitches))} instead of {totals}: {why}");
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
