using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Tests.Reading;

/// <summary>Modern UK terms have no single crochet, so 'sc' is US (craftydogblog.blogspot.com/2011/01); miss for skip, yrh for yo are UK (ruleofthejewel.blog, issuhub.com).</summary>
public sealed class TermsFinderTests
{
    [Theory]
    [InlineData("Row 1: Sc in next st.", Terminology.Us, TermsOrigin.Found)]
    [InlineData("Row 1: Hdc in next st, dc in next st.", Terminology.Us, TermsOrigin.Found)]
    [InlineData("Row 1: Htr in next st, dc in next st.", Terminology.Uk, TermsOrigin.Found)]
    [InlineData("Row 1: Tr in next st, miss 1 tr, yrh.", Terminology.Uk, TermsOrigin.Found)]
    [InlineData("UK terms.\nRow 1: Dc in next st.", Terminology.Uk, TermsOrigin.Stated)]
    [InlineData("US terms.\nRow 1: Dc in next st.", Terminology.Us, TermsOrigin.Stated)]
    [InlineData("Row 1: Dc in next st.", Terminology.Us, TermsOrigin.Assumed)]
    public void The_terminology_is_found(string text, Terminology terms, TermsOrigin origin)
    {
        TermsDecision decision = PatternReader.Read(text).Terms;
        Assert.Equal((terms, origin), (decision.Terminology, decision.Origin));
    }

    [Fact]
    public void Words_of_the_other_terminology_are_shown()
    {
        TermsDecision decision = PatternReader.Read("UK terms.\nRow 1: Dc in next st, sc in next st.").Terms;
        Assert.Equal(Terminology.Uk, decision.Terminology);
        Assert.Single(decision.Against);
    }
}
