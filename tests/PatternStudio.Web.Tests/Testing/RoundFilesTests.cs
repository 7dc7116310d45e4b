using PatternStudio.Studio.Rounds;
using PatternStudio.Web.Features.Testing.Designers;

namespace PatternStudio.Web.Tests.Testing;

public sealed class RoundFilesTests
{
    private static readonly DateTimeOffset Noon = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);
    private static readonly Guid Ada = Guid.NewGuid(), Report = Guid.NewGuid();

    /// <summary>RFC 4180: CRLF, cells with commas and quotation marks in quotation marks, those doubled. Words that begin like a formula are made words.</summary>
    [Fact]
    public void Reports_become_a_table_in_which_strangers_words_stay_words()
    {
        string[] lines = ReportsCsv.Write(Book(new ReportDetails(1) { Stitches = 17.5, OverCm = 10, Yarn = "Kelp, \"worsted\"", Words = "=1+1" }), ["Small", "Large"]).Split("\r\n");
        Assert.StartsWith("tester,sent (UTC),version,size,stitches,rows,over cm,", lines[0]);
        Assert.Equal("Ada,2026-11-25 12:00,1,Large,17.5,,10,,,,\"Kelp, \"\"worsted\"\"\",,,,,,,'=1+1,Row 2 each: Which?", lines[1]);
        Assert.Equal("", lines[2]);
    }

    /// <summary>RFC 5545: whole days end on the day after (3.6.1), text is escaped (3.3.11), no line is longer than 75 octets (3.1).</summary>
    [Fact]
    public void The_days_of_a_round_become_a_calendar()
    {
        string calendar = RoundCalendar.Write(Book(new ReportDetails(0)), "Cockle Band, begins; now", new string('å', 60), Noon);
        string[] lines = calendar.Split("\r\n");
        Assert.Equal(("BEGIN:VCALENDAR", "END:VCALENDAR", ""), (lines[0], lines[^2], lines[^1]));
        Assert.Contains("DTSTAMP:20261125T120000Z", lines);
        Assert.Contains("DTSTART;VALUE=DATE:20261201", lines);
        Assert.Contains("DTEND;VALUE=DATE:20261216", lines);
        Assert.Contains("SUMMARY:Cockle Band\\, begins\\; now", lines);
        Assert.All(lines, line => Assert.True(System.Text.Encoding.UTF8.GetByteCount(line) <= 75, line));
        Assert.Contains($"SUMMARY:{new string('å', 60)}", calendar.Replace("\r\n ", "", StringComparison.Ordinal));
    }

    private static RoundBook Book(ReportDetails details) => new(
        Guid.NewGuid(), Guid.NewGuid(), "Cockle Band", new RoundPlan(1, new(2026, 12, 1), new(2026, 12, 15), 3, [0], AskedFor.Everything, true, ""), true, [],
        [new KeptTester(Ada, "Ada", null, Noon)], [new KeptReport(Report, Ada, "Ada", 1, details, Noon, Noon)],
        [new KeptRemark(Guid.NewGuid(), Report, "Ada", 1, new("Row 2", "each", "Which?"), null, Noon, new(AnswerKind.None, null, ""))]);
}
