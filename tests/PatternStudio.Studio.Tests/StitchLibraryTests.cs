using System.Text.RegularExpressions;
using PatternStudio.Craft.Checking;
using PatternStudio.Studio.StitchLibrary;

namespace PatternStudio.Studio.Tests;

/// <summary>Every stitch of the library is worked by the engine, narrow and wide.</summary>
public sealed partial class StitchLibraryTests
{
    public static TheoryData<string> Keys => [.. StitchShelf.All.Select(stitch => stitch.Key)];

    [Theory]
    [MemberData(nameof(Keys))]
    public void Every_row_is_worked_and_nothing_is_found_at_any_width(string key)
    {
        LibraryStitch stitch = StitchShelf.Find(key)!;
        foreach (int repeats in new[] { 3, 4, 7, 20, 61 })
        {
            string text = stitch.Write(repeats);
            CheckedPattern pattern = PatternCheck.Check(text);
            Assert.True(pattern.Findings.Count == 0, $"{repeats} repeats: {string.Join(" / ", pattern.Findings.Select(finding => finding.Message))}\n{text}");
            ReadSummary read = pattern.Sizes[0].Read;
            Assert.True(read.Rows > 1 && read.Rows == read.Read && read.Rows == read.Checked, $"{read}");
        }
    }

    /// <summary>The chains beside the multiple are those that turn up into the first row: 1 (sc) to 3 (dc), 4 (tr), 2 more where a mesh begins with chains.</summary>
    [Theory]
    [MemberData(nameof(Keys))]
    public void The_foundation_has_the_multiple_and_what_turns_up_from_it(string key)
    {
        LibraryStitch stitch = StitchShelf.Find(key)!;
        int[] beside = [.. new[] { 3, 8, 40 }.Select(repeats => Chains(stitch.Write(repeats)) - stitch.StitchesFor(repeats))];
        Assert.All(beside, chains => Assert.InRange(chains, 1, 5));
        Assert.Single(beside.Distinct());
    }

    private static int Chains(string text) => int.Parse(Foundation().Match(text).Groups[1].ValueSpan, System.Globalization.CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(?:With A, c|C)h (\d+)\.", RegexOptions.Multiline)]
    private static partial Regex Foundation();

    [Theory]
    [MemberData(nameof(Keys))]
    public void Has_a_picture_a_name_and_a_sentence(string key)
    {
        LibraryStitch stitch = StitchShelf.Find(key)!;
        Assert.NotNull(StitchShelf.Picture(stitch));
        Assert.InRange(stitch.Difficulty, 1, 3);
        Assert.EndsWith(".", stitch.About, StringComparison.Ordinal);
        Assert.DoesNotContain('{', stitch.Write(5));
    }

    [Fact]
    public void There_are_many_and_each_has_a_name_of_its_own()
    {
        Assert.True(StitchShelf.All.Count >= 36, $"{StitchShelf.All.Count}");
        Assert.Equal(StitchShelf.All.Count, StitchShelf.All.Select(stitch => stitch.Name).Distinct().Count());
    }

    /// <summary>By hand: 6 n + 1 with n = 4 is 25, on 6 × 4 + 2 = 26 chains.</summary>
    [Fact]
    public void A_width_gives_its_numbers()
    {
        LibraryStitch shells = StitchShelf.Find("shells")!;
        Assert.Equal((6, 25), (shells.StitchesEach, shells.StitchesFor(4)));
        Assert.Contains("\nCh 26.\n", shells.Write(4), StringComparison.Ordinal);
        Assert.Contains("(4 shells, 5 sc)", shells.Write(4), StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => shells.Write(2));
    }

    [Fact]
    public void They_are_found_by_name_kind_and_other_names()
    {
        Assert.Contains(StitchShelf.Find("moss"), StitchShelf.Search("granite"));
        Assert.Contains(StitchShelf.Find("ripple"), StitchShelf.Search("CHEVRON waves"));
        Assert.All(StitchShelf.Search("", StitchKind.Rib), stitch => Assert.Equal(StitchKind.Rib, stitch.Kind));
        Assert.Empty(StitchShelf.Search("no such stitch"));
    }
}
