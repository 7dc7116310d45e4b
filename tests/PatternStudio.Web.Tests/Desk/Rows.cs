using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Web.Tests.Desk;

/// <summary>Rows and findings to show.</summary>
internal static class Rows
{
    public static RowReport Row(
        int number, long? stitches, int line = 0, string? stated = null, bool? agrees = null, RowStatus status = RowStatus.Checked, string piece = "") =>
        new(piece, number, $"Row {number}", line == 0 ? number : line, status, number % 2 == 1 ? "RS" : "WS", stitches, stated, agrees,
            new Dictionary<string, long> { ["sc"] = stitches ?? 0 }, new Dictionary<string, long>());

    public static ScheduleLine Takes(int number, double gramsSoFar, double share, string balls = "", params string[] marks) =>
        new("", $"Row {number}", null, null, null, gramsSoFar, share, null) { Balls = balls, Marks = marks };

    public static SizeResults Size(IReadOnlyList<RowReport> rows, params ScheduleLine[] schedule) =>
        new("", new ReadSummary(rows.Count, rows.Count, rows.Count), rows, schedule, null, null);

    public static LocatedFinding Found(Severity severity, string message, int line = 4, TextEdit? fix = null, int start = 30) =>
        new(new Finding("count-differs", severity, new TextSpan(start, 8), message, fix), line, 1);
}
