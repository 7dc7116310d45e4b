using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Reading.Pasting;

namespace PatternStudio.Craft.Tests.Reading;

/// <summary>Texts as they come from mails, pages and printed sheets; the pattern of our own invention.</summary>
public sealed class PastedTextTests
{
    private const string Cloth = """
        Quay cloth
        US terms

        Ch 20.
        Row 1: Sc in 2nd ch from hook and in each ch across, turn. (19 sc)
        Row 2: Ch 1, sc in each sc across, turn. (19 sc)
        Rows 3-10: Rep Row 2.
        Fasten off.
        """;

    public static TheoryData<string> RightTexts => [.. Directory.EnumerateFiles(Folder, "*.txt").Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal)];

    private static string Folder => Repository.Path("tests/PatternStudio.Craft.Tests/RightPatterns");

    [Fact]
    public void A_clean_text_is_left_as_it_is()
    {
        TidiedText tidied = PastedText.Tidy(Cloth);
        Assert.Equal(Cloth, tidied.Text);
        Assert.Empty(tidied.Repairs);
    }

    [Fact]
    public void A_quoted_mail_loses_its_marks_and_its_head()
    {
        string mail = "On Tue, 3 Feb 2026 at 10:11, Pat <pat@example.org> wrote:\n" + string.Join('\n', Cloth.Split('\n').Select(line => "> " + line));
        TidiedText tidied = PastedText.Tidy(mail);

        Assert.Equal(Cloth, tidied.Text);
        Assert.Equal([new(RepairKind.MailQuotes, 8, []), new(RepairKind.MailHeads, 1, ["On Tue, 3 Feb 2026 at 10:11, Pat <pat@example.org> wrote:"])], tidied.Repairs);
    }

    [Fact]
    public void A_forwarded_mail_loses_the_lines_that_say_from_whom_it_is() =>
        Assert.Equal(Cloth, PastedText.Tidy($"---------- Forwarded message ----------\nFrom: Pat\nDate: 3 Feb\nSubject: the cloth\n\n{Cloth}").Text);

    [Fact]
    public void A_web_page_becomes_lines()
    {
        const string Page = "<html><head><title>shop</title><style>p{}</style></head><body><h1>Quay cloth</h1><p>US terms</p>\n<p>Ch 20.<br/>Row 1: Sc in 2nd ch from hook and\n in each ch across, turn. (19&nbsp;sc)</p><ul><li>Row 2: Ch 1, sc in each sc across, turn. (19 sc)</li></ul><!-- x --><p>Rows 3&#45;10: Rep Row&nbsp;2. &amp; Fasten off.</p></body></html>";
        Assert.Equal(
            "Quay cloth\nUS terms\nCh 20.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (19 sc)\nRow 2: Ch 1, sc in each sc across, turn. (19 sc)\nRows 3-10: Rep Row 2. & Fasten off.",
            PastedText.Tidy(Page).Text);
    }

    [Fact]
    public void A_lone_angle_bracket_is_the_patterns_own() =>
        Assert.Equal("Row 1: Sc in next st <3 times>.", PastedText.Tidy("Row 1: Sc in next st <3 times>.").Text);

    [Fact]
    public void Printed_signs_become_plain_ones()
    {
        TidiedText tidied = PastedText.Tidy("Puﬀ st, ﬁrst cro\u00adchet, 4\u00a0mm hook, 3½ in, 1\u20442 yd, \u200bfl\u00ad\noat");
        Assert.Equal("Puff st, first crochet, 4 mm hook, 3 1/2 in, 1/2 yd, float", tidied.Text);
        Assert.Equal(
            [new(RepairKind.SoftHyphens, 2, []), new(RepairKind.Invisible, 1, []), new(RepairKind.Ligatures, 2, []), new(RepairKind.Spaces, 1, []), new(RepairKind.Fractions, 2, [])],
            tidied.Repairs);
    }

    [Theory]
    [InlineData("• Row 2: Ch 1, turn.", "Row 2: Ch 1, turn.")]
    [InlineData("\uf0b7 Row 2: Ch 1, turn.", "Row 2: Ch 1, turn.")]
    [InlineData("* Row 2: Ch 1, turn.", "Row 2: Ch 1, turn.")]
    [InlineData("• Yarn needle", "- Yarn needle")]
    [InlineData("- Row 2: Ch 1, turn.", "Row 2: Ch 1, turn.")]
    [InlineData("**Row 2:** Ch 1, turn.", "Row 2: Ch 1, turn.")]
    [InlineData("## Border", "Border")]
    [InlineData("*sc in next st; rep from * across.", "*sc in next st; rep from * across.")]
    [InlineData("** sc in next st; rep from ** once.", "** sc in next st; rep from ** once.")]
    public void Marks_of_lists_are_dropped_and_stars_of_repeats_are_not(string pasted, string tidy) => Assert.Equal(tidy, PastedText.Tidy(pasted).Text);

    [Fact]
    public void Page_numbers_and_heads_are_dropped_and_the_title_stays()
    {
        string paper = "Quay cloth - Alder Row\nUS terms\n\nCh 20.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (19 sc)\nPage 1 of 3\n\fQuay cloth - Alder Row\nRow 2: Ch 1, sc in each sc across, turn. (19 sc)\nPage 2 of 3\n\fQuay cloth - Alder Row\nRows 3-10: Rep Row 2.\nFasten off.\nPage 3 of 3";
        TidiedText tidied = PastedText.Tidy(paper);

        Assert.Equal(
            ["Quay cloth - Alder Row", "US terms", "Ch 20.", "Row 1: Sc in 2nd ch from hook and in each ch across, turn. (19 sc)", "Row 2: Ch 1, sc in each sc across, turn. (19 sc)", "Rows 3-10: Rep Row 2.", "Fasten off."],
            tidied.Text.Split('\n').Where(line => line.Length > 0));
        Assert.Contains(new TextRepair(RepairKind.PageNumbers, 3, ["Page 1 of 3", "Page 2 of 3", "Page 3 of 3"]), tidied.Repairs);
        Assert.Contains(new TextRepair(RepairKind.PageHeads, 2, ["Quay cloth - Alder Row", "Quay cloth - Alder Row"]), tidied.Repairs);
    }

    [Fact]
    public void Lines_of_the_work_that_come_twice_stay() =>
        Assert.Equal(2, PastedText.Tidy("Row 1: Sc across.\nFasten off.\n1\nRow 2: Dc across.\nFasten off.\n2\n").Text.Split("Fasten off.").Length - 1);

    [Fact]
    public void Rows_broken_for_a_narrow_column_are_whole_again()
    {
        const string Narrow = "Quay cloth\nUS terms\n\nCh 20.\nRow 1: Sc in 2nd ch from hook and\nin each ch across, turn. (19 sc)\nRow 2: Ch 1, sc in each sc across,\nturn. (19 sc)\nRows 3-10: Rep Row 2.\nFasten off.";
        TidiedText tidied = PastedText.Tidy(Narrow);
        Assert.Equal(Cloth, tidied.Text);
        Assert.Equal([new(RepairKind.Wraps, 2, [])], tidied.Repairs);
    }

    [Theory]
    [InlineData("Rnd 3: Sc in each st around\nStuff the head.\nRnd 4: Sc around.")]
    [InlineData("Rnd 3: sc in each st around\nstuff the head\nRnd 4: sc around")]
    [InlineData("Materials:\nworsted yarn\n5 mm hook\n\nCh 20.\nRow 1: sc in 2nd ch from hook")]
    public void Lines_that_end_of_themselves_are_not_joined(string text) => Assert.Equal(text, PastedText.Tidy(text).Text);

    /// <summary>Whatever is tidied in a right pattern, it stays right: same rows, same counts, no finding.</summary>
    [Theory]
    [MemberData(nameof(RightTexts))]
    public void A_right_pattern_stays_right(string file)
    {
        string text = File.ReadAllText(Path.Combine(Folder, file));
        Assert.Equal(Worked(text), Worked(PastedText.Tidy(text).Text));
    }

    /// <summary>The same after the worst that a mail does: wrapped at 64, quoted, hard spaces, a page number in the midst.</summary>
    [Theory]
    [MemberData(nameof(RightTexts))]
    public void A_right_pattern_comes_through_a_mail(string file)
    {
        string text = File.ReadAllText(Path.Combine(Folder, file));
        string mail = string.Join('\n', text.ReplaceLineEndings("\n").Split('\n').SelectMany(line => Wrapped(line, 64)).Select(line => "> " + line.Replace(" st", "\u00a0st")));
        Assert.Equal(Worked(text), Worked(PastedText.Tidy(mail).Text));
    }

    private static string Worked(string text)
    {
        CheckedPattern pattern = PatternCheck.Check(text);
        return string.Join('\n', [
            .. pattern.Findings.Select(finding => finding.Message),
            .. pattern.Sizes.SelectMany(size => size.Rows).Select(row => $"{row.Piece} {row.Heading} {row.Status} {row.Stitches} {string.Join(' ', row.Counts)} {string.Join(' ', row.Spaces)}"),
        ]);
    }

    private static IEnumerable<string> Wrapped(string line, int width)
    {
        string rest = line;
        while (rest.Length > width && rest.LastIndexOf(' ', width) is var at && at > 0)
        {
            yield return rest[..at];
            rest = rest[(at + 1)..];
        }

        yield return rest;
    }
}
