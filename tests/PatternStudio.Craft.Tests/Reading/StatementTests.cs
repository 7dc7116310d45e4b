using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Tests.Reading;

public sealed class StatementTests
{
    [Theory]
    [InlineData("Gauge: 17 sts and 17 rows = 10 cm (4 in)", StatementKind.Gauge)]
    [InlineData("Tension: 17 sts = 10 cm", StatementKind.Gauge)]
    [InlineData("**Finished size:** 21 cm × 21 cm", StatementKind.FinishedSize)]
    [InlineData("Size: 8 cm across", StatementKind.FinishedSize)]
    [InlineData("Yarn: worsted, 1 ball", StatementKind.Yarn)]
    [InlineData("Hook: 5 mm (US H-8)", StatementKind.Hook)]
    [InlineData("Multiple of 6 + 2.", StatementKind.Multiple)]
    [InlineData("Level: Easy", StatementKind.Level)]
    [InlineData("Abbreviations (US): ch = chain; sc = single crochet", StatementKind.Abbreviation)]
    [InlineData("Written in UK terms", StatementKind.Terms)]
    public void Labels_of_the_front_matter_are_known(string line, StatementKind kind) =>
        Assert.Contains(PatternReader.Read($"{line}\n\nCh 21.\nRow 1: Ch 3, turn.").Statements, statement => statement.Kind == kind);

    [Theory]
    [InlineData("Ch 3 at beg of row counts as dc throughout.", 3, true, "dc")]
    [InlineData("The ch-1 at the beginning of a row does not count as a stitch.", 1, false, null)]
    [InlineData("Turning chains do not count as stitches.", 0, false, null)]
    [InlineData("Beg ch-2 counts as the first hdc throughout.", 2, true, "hdc")]
    public void Notes_on_turning_chains_are_understood(string note, int chains, bool counts, string? stitch)
    {
        Statement statement = PatternReader.Read($"{note}\n\nCh 21.\nRow 1: Sc in next st.").Statements.Single(one => one.Kind == StatementKind.TurningChain);
        Assert.Equal((chains, counts), statement.TurningChain);
        Assert.Equal(stitch, statement.CountsAs?.Value);
    }

    [Fact]
    public void Two_notes_in_one_line_are_two_statements() =>
        Assert.Equal(
            [(3, true), (2, true)],
            PatternReader.Read("UK terms. 3 ch at the start of a row counts as 1 tr; 2 ch at the start of a row counts as 1 htr.\n\nCh 28.")
                .Statements.Where(statement => statement.Kind == StatementKind.TurningChain).Select(statement => statement.TurningChain!.Value));

    [Fact]
    public void The_first_line_by_itself_is_the_title()
    {
        Pattern pattern = PatternReader.Read("**Lantern Lane Scarf**\n\nCh 27.\nRow 1: Sc in next st.");
        Assert.Equal("Lantern Lane Scarf", pattern.Statements.Single(statement => statement.Kind == StatementKind.Title).Text);
        Assert.Equal("", Assert.Single(pattern.Pieces).Name);
    }
}
