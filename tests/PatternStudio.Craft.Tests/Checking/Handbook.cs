using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>Works a text and gives the totals of its rows, for comparing with a handbook's table.</summary>
internal static class Handbook
{
    /// <summary>The rows of a text that must be read and worked whole and give no finding.</summary>
    public static IReadOnlyList<RowReport> Rows(string text)
    {
        CheckedPattern result = PatternCheck.Check(text);
        Assert.Equal([], result.Findings.Select(finding => finding.Message));
        IReadOnlyList<RowReport> rows = Assert.Single(result.Sizes).Rows;
        Assert.All(rows, row => Assert.Equal(RowStatus.Checked, row.Status));
        return rows;
    }

    /// <summary>The stitches of each row.</summary>
    public static long[] Totals(string text) => [.. Rows(text).Select(row => row.Stitches!.Value)];
}
