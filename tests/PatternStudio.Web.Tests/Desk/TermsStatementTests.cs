using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;
using PatternStudio.Web.Features.Desk;

namespace PatternStudio.Web.Tests.Desk;

public sealed class TermsStatementTests
{
    [Fact]
    public void Terms_that_are_not_stated_are_written_below_the_title()
    {
        const string Text = "Harbour cloth\nCh 20.";
        var read = new TermsDecision(Terminology.Us, TermsOrigin.Found, 0.9, []);

        Assert.Equal("Harbour cloth\nWritten in US terms.\nCh 20.", TermsStatement.Write(Text, read, Terminology.Us).ApplyTo(Text));
    }

    [Fact]
    public void A_statement_that_is_there_is_changed_in_place()
    {
        const string Text = "Harbour cloth uses US terms.\nCh 20.";
        var read = new TermsDecision(Terminology.Us, TermsOrigin.Stated, 1, [new TextSpan(14, 13)]);

        Assert.Equal("Harbour cloth uses UK terms.\nCh 20.", TermsStatement.Write(Text, read, Terminology.Uk).ApplyTo(Text));
    }
}
