using Bunit;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Web.Features.Desk;

namespace PatternStudio.Web.Tests.Desk;

public sealed class TermsLineTests : PageTest
{
    private readonly List<Terminology> chosen = [];

    [Theory]
    [InlineData(TermsOrigin.Stated, "stated in the pattern")]
    [InlineData(TermsOrigin.Found, "found from the words, 92\u202f% sure")]
    [InlineData(TermsOrigin.Assumed, "assumed: nothing in the words tells")]
    public void Tells_which_terms_and_how_that_is_known(TermsOrigin origin, string says)
    {
        IRenderedComponent<TermsLine> line = Show(new TermsDecision(Terminology.Uk, origin, 0.92, []));

        Assert.Equal("Uk", line.Field("Terms").GetAttribute("value"));
        Assert.Contains(says, line.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void Terms_that_are_not_stated_can_be_written_into_the_pattern()
    {
        Show(new TermsDecision(Terminology.Uk, TermsOrigin.Found, 0.9, [])).Button("Say so in the pattern").Click();

        Assert.Equal([Terminology.Uk], chosen);
    }

    [Fact]
    public void A_choice_of_the_other_terms_is_told()
    {
        Show(new TermsDecision(Terminology.Us, TermsOrigin.Stated, 1, [])).Field("Terms").Change("Uk");

        Assert.Equal([Terminology.Uk], chosen);
    }

    private IRenderedComponent<TermsLine> Show(TermsDecision terms) => Render<TermsLine>(with => with
        .Add(line => line.Terms, terms)
        .Add(line => line.Chosen, chosen.Add));
}
