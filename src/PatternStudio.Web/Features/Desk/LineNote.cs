using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Working;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.Desk;

/// <summary>What stands in the margin beside a line of the pattern: the count of the rows that the line calls for.</summary>
/// <param name="Line">1-based.</param>
/// <param name="Says">'21 sts ✓'.</param>
/// <param name="Tone">'good', 'error' or empty.</param>
public sealed record LineNote(int Line, string Says, string Tone)
{
    /// <summary>A note for every line that calls for rows.</summary>
    /// <param name="rows">The rows of one size.</param>
    /// <param name="notChecked">The words for a row whose count is not known.</param>
    public static IReadOnlyList<LineNote> Of(IReadOnlyList<RowReport> rows, string notChecked) =>
        [.. rows.GroupBy(row => row.Line).Select(line => Of(line.Key, [.. line], notChecked))];

    private static LineNote Of(int line, RowReport[] rows, string notChecked)
    {
        if (rows.Any(row => row.Status != RowStatus.Checked || row.Stitches is null)) return new(line, notChecked, "");
        long first = rows[0].Stitches!.Value, last = rows[^1].Stitches!.Value;
        string count = first == last ? Numbers.Count(last) : $"{Numbers.Count(first)}–{Numbers.Count(last)}";
        if (rows.Any(row => row.CountAgrees == false)) return new(line, $"{count} ✗", "error");
        return rows.Any(row => row.CountAgrees == true) ? new(line, $"{count} ✓", "good") : new(line, count, "");
    }
}
