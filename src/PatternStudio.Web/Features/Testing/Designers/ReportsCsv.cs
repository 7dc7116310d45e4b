using System.Globalization;
using System.Text;
using PatternStudio.Studio.Rounds;

namespace PatternStudio.Web.Features.Testing.Designers;

/// <summary>Reports as a table for spreadsheets (RFC 4180).</summary>
internal static class ReportsCsv
{
    private static readonly string[] Heads =
    [
        "tester", "sent (UTC)", "version", "size", "stitches", "rows", "over cm", "stitches before blocking", "rows before blocking", "hook mm", "yarn", "yarn used g", "ball m", "ball g",
        "width cm", "height cm", "minutes", "words", "remarks",
    ];

    public static string Write(RoundBook book, IReadOnlyList<string> sizes)
    {
        var csv = new StringBuilder();
        Line(csv, Heads);
        foreach (KeptReport report in book.Reports)
        {
            ReportDetails told = report.Details;
            Line(csv,
            [
                report.TesterName, report.Sent.UtcDateTime.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture), Number(report.Version),
                told.Size < sizes.Count && sizes[told.Size].Length > 0 ? sizes[told.Size] : Number(told.Size + 1),
                Number(told.Stitches), Number(told.Rows), Number(told.OverCm), Number(told.StitchesBefore), Number(told.RowsBefore), Number(told.HookMm), told.Yarn, Number(told.YarnGrams),
                Number(told.BallMetres), Number(told.BallGrams), Number(told.WidthCm), Number(told.HeightCm), Number(told.Minutes), told.Words,
                string.Join(" / ", book.Remarks.Where(remark => remark.ReportId == report.Id).Select(remark => $"{remark.Details.Row} {remark.Details.Word}: {remark.Details.Text}".Trim())),
            ]);
        }

        return csv.ToString();
    }

    private static void Line(StringBuilder csv, IEnumerable<string> cells) => csv.AppendJoin(',', cells.Select(Cell)).Append("\r\n");

    /// <summary>Words of strangers: a cell that begins like a formula would be worked out by a spreadsheet, so it gets a quotation mark before it.</summary>
    private static string Cell(string text)
    {
        string safe = text.Length > 0 && text[0] is '=' or '+' or '-' or '@' or '\t' or '\r' ? "'" + text : text;
        return safe.AsSpan().IndexOfAny(",\"\r\n") < 0 ? safe : $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }

    private static string Number(double? number) => number?.ToString("0.###", CultureInfo.InvariantCulture) ?? "";
}
