using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Writing;

namespace PatternStudio.Craft.Tests.Writing;

/// <summary>US and UK names: funcrochetdesigns.com (terms by country), doradoes.co.uk (decreases), ruleofthejewel.blog (skip and miss, gauge and tension).</summary>
public sealed class TermsConverterTests
{
    [Theory]
    [InlineData("Row 1: Sc in next st, dc in next st.", "Row 1: Dc in next st, tr in next st.")]
    [InlineData("Row 1: Hdc in next st, tr in next st, dtr in next st.", "Row 1: Htr in next st, dtr in next st, ttr in next st.")]
    [InlineData("Row 1: Sc2tog, dc3tog, hdc2tog.", "Row 1: Dc2tog, tr3tog, htr2tog.")]
    [InlineData("Row 1: FPdc around next st, BPdc around next st.", "Row 1: FPtr around next st, BPtr around next st.")]
    [InlineData("Row 1: Single crochet in next st, double crochet in next st.", "Row 1: Double crochet in next st, treble crochet in next st.")]
    [InlineData("Row 1: 2 dc, ch 2, sl st in same st.", "Row 1: 2 tr, ch 2, sl st in same st.")]
    [InlineData("Row 1: Sk next st, sc in next st, skip next ch-1 sp.", "Row 1: Miss next st, dc in next st, miss next ch-1 sp.")]
    [InlineData("1st row: 3 s c in next st, 2 d c in next st.", "1st row: 3 d c in next st, 2 tr c in next st.")]
    [InlineData("Row 1: 3-dc cluster in next st. (4 dcs)", "Row 1: 3-tr cluster in next st. (4 trs)")]
    [InlineData("Gauge: 16 sc and 18 rows = 10 cm.", "Tension: 16 dc and 18 rows = 10 cm.")]
    [InlineData("4 mm hook, or size to obtain gauge", "4 mm hook, or size to obtain tension")]
    [InlineData("Written in US terms", "Written in UK terms")]
    [InlineData("Abbreviations (US terms)", "Abbreviations (UK terms)")]
    [InlineData("Note: 5 mm (US H-8) hook.", "Note: 5 mm (US H-8) hook.")]
    [InlineData("Note: Do not skip the swatch. Use a double strand for a single motif.", "Note: Do not skip the swatch. Use a double strand for a single motif.")]
    public void What_the_two_call_differently_changes_and_nothing_else(string us, string uk)
    {
        Assert.Equal(uk, TermsConverter.Convert(us, Terminology.Uk, Terminology.Us));
    }

    [Theory]
    [InlineData("Row 1: Dc in next st, tr in next st, dtr in next st, ttr in next st.", "Row 1: Sc in next st, dc in next st, tr in next st, dtr in next st.")]
    [InlineData("Row 1: Miss next st, ss in next st.", "Row 1: Skip next st, ss in next st.")]
    [InlineData("Tension: 14 tr and 7 rows = 10 cm, in treble.", "Gauge: 14 dc and 7 rows = 10 cm, in double crochet.")]
    [InlineData("Note: Keep an even tension.", "Note: Keep an even tension.")]
    [InlineData("Row 1: (RS) 1 half treble into next st, 2 trebles into next st.", "Row 1: (RS) 1 half double into next st, 2 double crochets into next st.")]
    public void The_way_back_is_the_same(string uk, string us) => Assert.Equal(us, TermsConverter.Convert(uk, Terminology.Us, Terminology.Uk));

    [Fact]
    public void A_designers_own_name_stays_but_the_stitches_it_is_made_of_change()
    {
        const string Us = "US terms\nSpecial stitches\nPetal stitch (pet): (dc, ch 1, dc) in same st.\nRow 1: Pet in next st, dc in next st.";
        const string Uk = "UK terms\nSpecial stitches\nPetal stitch (pet): (tr, ch 1, tr) in same st.\nRow 1: Pet in next st, tr in next st.";
        Assert.Equal(Uk, TermsConverter.Convert(Us, Terminology.Uk));
    }

    [Fact]
    public void A_pattern_already_in_those_terms_stays_as_it_is()
    {
        const string Text = "US terms\nRow 1: Sc in next st.";
        Assert.Same(Text, TermsConverter.Convert(PatternReader.Read(Text), Terminology.Us));
    }

    [Theory]
    [MemberData(nameof(RightPatterns.Names), MemberType = typeof(RightPatterns))]
    public void There_and_back_the_same_is_worked(string name)
    {
        Pattern pattern = RightPatterns.Read(name);
        Terminology other = pattern.Terms.Terminology == Terminology.Us ? Terminology.Uk : Terminology.Us;
        Pattern there = PatternReader.Read(TermsConverter.Convert(pattern, other), other);
        Pattern back = PatternReader.Read(TermsConverter.Convert(there, pattern.Terms.Terminology), pattern.Terms.Terminology);
        Assert.Null(TreeShape.FirstDifference(pattern, there, workOnly: true));
        Assert.Null(TreeShape.FirstDifference(pattern, back, workOnly: true));
    }
}
