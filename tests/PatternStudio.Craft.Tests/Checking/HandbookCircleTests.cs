using System.Globalization;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>
/// Flat circles by the published rule: so many stitches in the first round, and as many more in each (craftymaria.blogspot.com/2009/06, mkcarroll.com/blog/2009/5/14);
/// the words of round n, [1 in each of next n − 2, 2 in next], from thecrochetbag.blogspot.com/2013/05, worked there to 30.
/// </summary>
public sealed class HandbookCircleTests
{
    [Theory]
    [InlineData("sc", 6, "6 12 18 24 30 36 42 48")]
    [InlineData("hdc", 8, "8 16 24 32 40 48 56 64")]
    [InlineData("dc", 12, "12 24 36 48 60 72 84 96")]
    [InlineData("tr", 16, "16 32 48 64 80 96 112 128")]
    public void Eight_rounds_come_to_the_table(string stitch, int start, string table) => Assert.Equal(table, Join(Handbook.Totals(Circle(stitch, start, ""))));

    /// <summary>The same numbers under UK names: dc 6, htr 8, tr 12.</summary>
    [Theory]
    [InlineData("dc", 6, "6 12 18 24 30 36 42 48")]
    [InlineData("htr", 8, "8 16 24 32 40 48 56 64")]
    [InlineData("tr", 12, "12 24 36 48 60 72 84 96")]
    public void The_same_in_UK_terms(string stitch, int start, string table) => Assert.Equal(table, Join(Handbook.Totals(Circle(stitch, start, "UK terms\n"))));

    private static string Circle(string stitch, int start, string terms)
    {
        var rounds = new List<string> { $"{terms}Rnd 1: {start} {stitch} in magic ring. ({start} {stitch})", $"Rnd 2: 2 {stitch} in each st around. ({2 * start} {stitch})" };
        for (int n = 3; n <= 8; n++) rounds.Add($"Rnd {n}: [{stitch} in each of next {n - 2} sts, 2 {stitch} in next st] {start} times. ({n * start} {stitch})");
        return string.Join('\n', rounds);
    }

    private static string Join(IEnumerable<long> totals) => string.Join(' ', totals.Select(total => total.ToString(CultureInfo.InvariantCulture)));
}
