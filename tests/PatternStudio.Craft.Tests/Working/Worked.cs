using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Working;

/// <summary>Works a small pattern of our own invention, for the tables of these tests.</summary>
internal static class Worked
{
    /// <summary>The totals of its rows in order, '?' for a row that is not checked; with the errors behind them, where there are any.</summary>
    public static string Totals(string text)
    {
        CheckedPattern result = PatternCheck.Check(text);
        string[] errors = [.. result.Findings.Where(finding => finding.Severity == Severity.Error).Select(finding => finding.Message)];
        return string.Join(' ', result.Sizes[0].Rows.Select(row => row.Status == RowStatus.Checked ? $"{row.Stitches}" : "?").Concat(errors));
    }

    /// <summary>The spaces of its last row: '8 ch-3, 4 ch-5'.</summary>
    public static string LastSpaces(string text) =>
        string.Join(", ", PatternCheck.Check(text).Sizes[0].Rows[^1].Spaces.Select(space => $"{space.Value} {space.Key}"));

    /// <summary>Where the stitches of its last row stand, with how many are in each place: '1.3 x6' for six in cell 3 of row 1.</summary>
    public static string PlacesOfLast(string text) =>
        string.Join(", ", PatternCheck.Check(text).Sizes[0].Fabric.Pieces[0].Rows[^1].Cells().Where(cell => cell.Kind is CellKind.Stitch or CellKind.TurningChain).SelectMany(cell => cell.Feet).GroupBy(foot => (foot.Row, foot.Place)).Select(place => $"{place.Key.Row}.{place.Key.Place} x{place.Count()}"));
}
