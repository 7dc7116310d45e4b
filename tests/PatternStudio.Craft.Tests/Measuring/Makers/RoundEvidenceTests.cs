using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Measuring.Makers;

namespace PatternStudio.Craft.Tests.Measuring.Makers;

/// <summary>Invented makers of an invented cloth: 16 sts and 18 rows to 10 cm, 20 × 20 cm, 80 m of a yarn of 170 m = 100 g, three hours.</summary>
public sealed class RoundEvidenceTests
{
    private static readonly YarnLabel Ball = new(YarnLength.FromMetres(85), Mass.FromGrams(50));
    private static readonly ExpectedNumbers Cloth = new(
        Gauge(16, 18), [new ExpectedSize(Cm(20), Cm(20), YarnLength.FromMetres(80), TimeSpan.FromHours(3))], Ball) { Hook = new HookSize(4.5) };

    /// <summary>16, 17 and 15.5 to 10 cm: two agree to a half, the third is a whole stitch off. Each speaks for her own hand.</summary>
    [Fact]
    public void Three_honest_makers_are_all_counted()
    {
        MeasureEvidence stitches = Stitches(16, 16, 18.5);
        Assert.Equal((3, 1), (stitches.Makers, stitches.Median));
        Assert.All(stitches.Answers, answer => Assert.False(answer.LeftOut));
    }

    [Fact]
    public void With_two_makers_nobody_is_an_outlier_but_a_usual_slip_is_asked_about()
    {
        MeasureEvidence stitches = Stitches(16, 40);
        Assert.Equal(2, stitches.Makers);
        Assert.Equal((Slip.InchesAndCentimetres, false), (stitches.Answers[1].Slip, stitches.Answers[1].LeftOut));
    }

    /// <summary>16 sts over 4, written as cm: 40 to 10 cm. 40 ÷ 16 = 2.5.</summary>
    [Fact]
    public void Inches_for_centimetres_are_recognised_and_left_out()
    {
        MeasureEvidence stitches = Evidence(
            Maker("Ada") with { Gauge = Gauge(16, 18) }, Maker("Bea") with { Gauge = Gauge(16.5, 18) },
            Maker("Cleo") with { Gauge = new CountedGauge(16, 18, Cm(4), Cm(4)) }, Maker("Dot") with { Gauge = Gauge(15.5, 18) }).Of(MakerMeasure.Stitches)!;
        MakerAnswer cleo = stitches.Answers[2];
        Assert.Equal((true, Slip.InchesAndCentimetres, 3), (cleo.LeftOut, cleo.Slip, stitches.Makers));
        Assert.Equal("Stitches to 10 cm are 2.46 times the middle of all makers: not counted. That is about an inch to a centimetre (2.54): was it measured in the other unit?", cleo.Reason);
        Assert.Equal(1, stitches.Median);
    }

    /// <summary>Counted over 5 cm, written as 10: half the stitches and half the rows.</summary>
    [Fact]
    public void A_count_over_half_the_length_is_recognised()
    {
        RoundEvidence round = Evidence(Plain("Ada"), Plain("Bea"), Plain("Cleo"), Maker("Dot") with { Gauge = Gauge(8, 9) });
        Assert.Equal(Slip.OtherLength, round.Of(MakerMeasure.Stitches)!.Answers[3].Slip);
        Assert.Equal(Slip.OtherLength, round.Of(MakerMeasure.Rows)!.Answers[3].Slip);
    }

    /// <summary>As many stitches as the others and twice the rows: single crochet for the taller double.</summary>
    [Fact]
    public void Stitches_of_the_other_terms_are_recognised_by_rows_alone()
    {
        RoundEvidence round = Evidence(Plain("Ada"), Plain("Bea"), Plain("Cleo"), Maker("Dot") with { Gauge = Gauge(16, 36), Width = Cm(20), Height = Cm(10) });
        Assert.False(round.Of(MakerMeasure.Stitches)!.Answers[3].LeftOut);
        Assert.Equal(Slip.OtherTerms, round.Of(MakerMeasure.Rows)!.Answers[3].Slip);
        Assert.Equal(Slip.OtherTerms, round.Of(MakerMeasure.Height)!.Answers[3].Slip);
    }

    /// <summary>80 m are 47 g. 100 g is two whole balls; 1 is one ball; 1.65 is as many ounces.</summary>
    [Theory]
    [InlineData(100, Slip.WholeBalls)]
    [InlineData(1, Slip.WholeBalls)]
    [InlineData(1.65, Slip.OuncesForGrams)]
    [InlineData(83, Slip.None)]
    public void Slips_of_the_scales_are_recognised(double grams, Slip slip)
    {
        MakerAnswer odd = Evidence(Used("Ada", 46), Used("Bea", 47), Used("Cleo", 48), Used("Dot", grams)).Of(MakerMeasure.Yarn)!.Answers[3];
        Assert.Equal((true, slip), (odd.LeftOut, odd.Slip));
    }

    [Fact]
    public void Another_yarn_is_compared_by_its_length_and_not_by_its_weight()
    {
        var fine = new YarnLabel(YarnLength.FromMetres(200), Mass.FromGrams(50));
        MakerAnswer dot = Evidence(Used("Ada", 47), Used("Dot", 20) with { Yarn = fine }).Of(MakerMeasure.Yarn)!.Answers[1];
        Assert.Equal(1, dot.Ratio, 10);
    }

    /// <summary>Blocking opens everybody's fabric by a tenth, and closes hers by as much. All of them are honest hands: it is asked, not left out.</summary>
    [Fact]
    public void Blocking_exchanged_is_asked_about()
    {
        MakerReport Blocked(string name, double before, double after) => Maker(name) with { BeforeBlocking = Gauge(before, 18), Gauge = Gauge(after, 18) };
        MakerAnswer dot = Evidence(Blocked("Ada", 17.6, 16), Blocked("Bea", 18, 16.4), Blocked("Cleo", 17, 15.5), Blocked("Dot", 16, 17.6)).Of(MakerMeasure.Stitches)!.Answers[3];
        Assert.Equal((Slip.BlockingExchanged, false), (dot.Slip, dot.LeftOut));
    }

    [Fact]
    public void A_maker_of_two_pieces_speaks_once()
    {
        MeasureEvidence stitches = Evidence(Plain("Ada"), Maker("Bea") with { Gauge = Gauge(17, 18) }, Maker("bea") with { Gauge = Gauge(19, 18) }).Of(MakerMeasure.Stitches)!;
        Assert.Equal((2, 3), (stitches.Makers, stitches.Answers.Count));
        Assert.Equal((1 + (18 / 16.0)) / 2, stitches.Median, 10);
    }

    /// <summary>17, 17, 16.5, 17.5, 17: median 17, s = 0.354; 17 ± t(0.95, 4) · s ÷ √5 = 17 ± 0.337, which leaves 16 out. 20 cm · 16 ÷ 17 = 18.8 cm.</summary>
    [Fact]
    public void A_gauge_that_testers_do_not_get_is_put_to_the_designer()
    {
        RoundEvidence round = Evidence([.. ((double[])[17, 17, 16.5, 17.5, 17]).Select((count, at) => Maker($"M{at}") with { Gauge = Gauge(count, 18), YarnUsed = Mass.FromGrams(80 / 1.7) })]);
        Proposal gauge = Assert.Single(round.Proposals);
        Assert.Equal((ProposalKind.Gauge, 5), (gauge.Kind, gauge.Makers));
        Assert.Equal("Printed gauge 16 sts to 10 cm, testers' median 17 (n = 5): recommend a larger hook, or change the numbers?", gauge.Question);
        Assert.Equal("With the numbers as they are, pieces come out 6 % narrower (18.8 cm instead of 20 cm). To keep the size at the testers' gauge takes 6 % more stitches; they use 100 % of the expected yarn now, and would use 106 %.", gauge.Effect);
    }

    [Theory]
    [InlineData(new double[] { 17, 17 })] // two makers are too few
    [InlineData(new double[] { 14, 17, 19 })] // they don't agree
    [InlineData(new double[] { 16.2, 16.3, 16.2, 16.3 })] // beyond chance, but no tape tells it
    public void Nothing_is_proposed_that_the_evidence_does_not_carry(double[] counts) => Assert.Empty(Evidence([.. counts.Select((count, at) => Maker($"M{at}") with { Gauge = Gauge(count, 18) })]).Proposals);

    [Fact]
    public void The_hook_that_gets_the_gauge_is_proposed()
    {
        RoundEvidence round = Evidence([.. Enumerable.Range(0, 4).Select(at => Plain($"M{at}") with { Hook = new HookSize(at == 3 ? 4.5 : 5) })]);
        Assert.Equal("3 of 4 testers who got the gauge used 5 mm (US H-8), and the pattern names 4.5 mm (US 7): name theirs?", Assert.Single(round.Proposals).Question);
        Assert.Equal(HookVerdict.TooTight, new HookUse("Ada", new HookSize(4), 1.1).Verdict);
    }

    [Fact]
    public void No_reports_are_no_evidence() => Assert.Empty(Evidence().Measures);

    private static MeasureEvidence Stitches(params double[] counts) => Evidence([.. counts.Select((count, at) => Maker($"M{at}") with { Gauge = Gauge(count, 18) })]).Of(MakerMeasure.Stitches)!;

    private static RoundEvidence Evidence(params MakerReport[] reports) => RoundEvidence.Of(reports, Cloth);

    private static MakerReport Maker(string name) => new(name, 0);

    private static MakerReport Plain(string name) => Maker(name) with { Gauge = Gauge(16, 18), Width = Cm(20), Height = Cm(20) };

    private static MakerReport Used(string name, double grams) => Maker(name) with { YarnUsed = Mass.FromGrams(grams) };

    private static CountedGauge Gauge(double stitches, double rows) => new(stitches, rows, Cm(10), Cm(10));

    private static Length Cm(double cm) => Length.FromCentimetres(cm);
}
