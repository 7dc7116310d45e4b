using System.Globalization;
using System.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>
/// Writes a schedule as CSV by RFC 4180: fields with commas, quotes or line breaks in double quotes, quotes doubled, lines ended by CR LF. Words from the pattern that a
/// spreadsheet would take for a formula (they begin with =, +, -, @, a tab or a line break) get an apostrophe before them; numbers of ours stay numbers.
/// </summary>
public static class ScheduleCsv
{
    private const string LineEnd = "\r\n";

    private static readonly string[] Titles =
    [
        "Piece", "Section", "Row", "Side", "Instruction", "Stitches", "By kind", "Change", "Width cm", "Width in", "Yarn m", "Yarn so far m", "Share %", "Balls", "Minutes", "Minutes so far", "Marks",
    ];

    /// <summary>The whole schedule: a line of titles, then a line for each row. What is not known is empty.</summary>
    public static string Write(RowSchedule schedule)
    {
        ArgumentNullException.ThrowIfNull(schedule);
        string[] colours = [.. schedule.Pieces.SelectMany(piece => piece.Colours.Select(colour => colour.Colour)).Where(colour => colour.Length > 0).Distinct(StringComparer.Ordinal)];
        var text = new StringBuilder();
        Line(text, Titles.Concat(colours.Select(colour => Words($"{colour} so far m"))));
        foreach (PieceSchedule piece in schedule.Pieces)
            foreach (ScheduledRow row in piece.Rows)
                Line(text, Fields(piece, row).Concat(colours.Select(colour => Number(Of(row, colour)?.Metres, "0.00"))));
        return text.ToString();
    }

    private static IEnumerable<string> Fields(PieceSchedule piece, ScheduledRow row) =>
    [
        Words(piece.Name),
        Words(row.Section),
        Words(row.Heading),
        row.Side,
        Words(row.Instruction),
        Number(row.Stitches, "0"),
        Words(string.Join(", ", row.Counts.Concat(row.Spaces).Select(count => $"{count.Value} {count.Key}"))),
        Number(row.Change, "0"),
        Number(row.Width?.Centimetres, "0.0"),
        Number(row.Width?.Inches, "0.00"),
        Number(row.Yarn?.Metres, "0.00"),
        Number(row.Total?.Metres, "0.00"),
        Number(row.Share * 100, "0.0"),
        Words(string.Join(", ", row.Balls.Select(ball => ball.Colour.Length > 0 ? $"{ball.Colour} {ball.Number}" : $"{ball.Number}"))),
        Number(row.Time?.TotalMinutes, "0.0"),
        Number(row.TimeSoFar?.TotalMinutes, "0.0"),
        Words(string.Join(" ", row.Marks.Select(mark => mark.Text))),
    ];

    private static YarnLength? Of(ScheduledRow row, string colour)
    {
        foreach (ColourYarn yarn in row.ColourTotals)
            if (yarn.Colour == colour)
                return yarn.Length;
        return null;
    }

    private static string Number(double? number, string format) => number?.ToString(format, CultureInfo.InvariantCulture) ?? "";

    private static string Words(string words) => words is ['=' or '+' or '-' or '@' or '\t' or '\r' or '\n', ..] ? "'" + words : words;

    private static void Line(StringBuilder text, IEnumerable<string> fields) => text.AppendJoin(',', fields.Select(Field)).Append(LineEnd);

    private static string Field(string field) => field.AsSpan().IndexOfAny(",\"\r\n") < 0 ? field : $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
