using System.Globalization;
using System.Text;
using PatternStudio.Studio.Rounds;

namespace PatternStudio.Web.Features.Testing.Designers;

/// <summary>The days of a round as a calendar (RFC 5545): its first and its last day, each a whole day.</summary>
internal static class RoundCalendar
{
    /// <summary>A content line has at most 75 octets without its end (RFC 5545, 3.1).</summary>
    private const int LineOctets = 75;

    /// <param name="made">When it was made: every entry must say (3.8.7.2).</param>
    public static string Write(RoundBook book, string first, string last, DateTimeOffset made)
    {
        var calendar = new StringBuilder();
        foreach (string line in (string[])
            [
                "BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Pattern Studio//Test rounds//EN",
                .. Day(book, "opens", book.Plan.Opens, first, made), .. Day(book, "ends", book.Plan.Ends, last, made),
                "END:VCALENDAR",
            ])
            Fold(calendar, line);
        return calendar.ToString();
    }

    private static string[] Day(RoundBook book, string which, DateOnly day, string summary, DateTimeOffset made) =>
    [
        "BEGIN:VEVENT",
        $"UID:{book.Id}-{which}@pattern-studio",
        $"DTSTAMP:{made.UtcDateTime.ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture)}",
        $"DTSTART;VALUE=DATE:{day.ToString("yyyyMMdd", CultureInfo.InvariantCulture)}",
        $"DTEND;VALUE=DATE:{day.AddDays(1).ToString("yyyyMMdd", CultureInfo.InvariantCulture)}",
        $"SUMMARY:{Escape(summary)}",
        "TRANSP:TRANSPARENT",
        "END:VEVENT",
    ];

    /// <summary>Backslash, semicolon, comma and line ends are escaped in text (3.3.11).</summary>
    private static string Escape(string text) => text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace(";", "\\;", StringComparison.Ordinal)
        .Replace(",", "\\,", StringComparison.Ordinal).ReplaceLineEndings("\\n");

    /// <summary>Long lines go on in the next one after a blank; no letter is cut in two.</summary>
    private static void Fold(StringBuilder calendar, string line)
    {
        int octets = 0;
        foreach (Rune letter in line.EnumerateRunes())
        {
            if (octets + letter.Utf8SequenceLength > LineOctets)
            {
                calendar.Append("\r\n ");
                octets = 1;
            }

            calendar.Append(letter.ToString());
            octets += letter.Utf8SequenceLength;
        }

        calendar.Append("\r\n");
    }
}
