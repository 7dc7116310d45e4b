using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;

namespace PatternStudio.Craft.Tests.Measuring;

public sealed class YarnNeedTests
{
    private const string Cloth = "Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRows 2–40: Ch 1, turn, sc in each sc across. (20 sc)\n";
    private const string Striped = "With A, ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRows 2–20: Ch 1, turn, sc in each sc across. (20 sc)\nFasten off A.\nRow 21: With B, ch 1, turn, sc in each sc across. (20 sc)\nRows 22–30: Ch 1, turn, sc in each sc across. (20 sc)\n";

    private static readonly YarnLabel Ball = YarnLabel.Parse("50 m = 25 g").Value;

    private static Swatch Of(string grams, string maker = "") => Swatch.Parse($"16 sc, 18 rows = 10 x 10 cm, {grams} g").Value with { Maker = maker };

    private static RowSchedule Compute(string text, params Swatch[] swatches) =>
        RowSchedule.Compute(PatternCheck.Check(text), new MeasuringBasis([.. swatches], Ball) { StitchesPerMinute = 20 }).Value;

    /// <summary>11, 12 and 13 g: mean 12, s = 1, so 8.33 % of the amount; t(0.9, 2) = 1.886, √(1 + 1/3): 0.08333 × 1.8856 × 1.1547 = 0.1814.</summary>
    [Fact]
    public void Several_swatches_give_the_spread()
    {
        YarnNeed need = Compute(Cloth, Of("12"), Of("11"), Of("13")).Yarn.Value;
        YarnNeed one = Compute(Cloth, Of("12")).Yarn.Value;
        Assert.Equal(one.Used.Metres, need.Used.Metres, 6);
        Assert.Equal(0.1814, need.Margin, 4);
        Assert.Contains("3 swatches of one maker", need.Assumption, StringComparison.Ordinal);
        Assert.True(need.Low < need.Used && need.Buy < need.High);
    }

    /// <summary>Two makers of two swatches each speak by their means, 11.5 and 12.5: two observations, not four.</summary>
    [Fact]
    public void Makers_speak_once_each()
    {
        YarnNeed need = Compute(Cloth, Of("11", "Ada"), Of("12", "Ada"), Of("12", "Bea"), Of("13", "Bea")).Yarn.Value;
        Assert.Contains("2 makers (Student's t, 1 degrees of freedom)", need.Assumption, StringComparison.Ordinal);
        Assert.Equal(3.078 * Math.Sqrt(0.5) / 12 * Math.Sqrt(1.5), need.Margin, 3);
    }

    /// <summary>15, 16 and 17 stitches to 10 cm: 6.667, 6.25 and 5.882 mm, mean 6.266, s = 0.3926; t(0.95, 2) = 2.920, √(4/3): ± 1.324 mm, so 4.942 to 7.590 mm for each stitch of the gauge's 6.25.</summary>
    [Fact]
    public void Several_swatches_tell_how_far_sizes_will_differ()
    {
        Swatch[] swatches = [.. new[] { "16 sc, 18 rows = 10 cm", "15 sc, 18 rows = 10 cm", "17 sc, 18 rows = 10 cm", "9 dc, 8 rows = 10 cm" }.Select(text => Swatch.Parse(text).Value)];
        GaugeSpread spread = RowSchedule.Compute(PatternCheck.Check(Cloth), new MeasuringBasis([.. swatches], null)).Value.Spread!;
        (Length low, Length high) = spread.Widths(Length.FromMillimetres(6.25));
        Assert.Equal((4.94, 7.59), (Math.Round(low.Millimetres, 2), Math.Round(high.Millimetres, 2)));
        Assert.Equal(3, spread.Swatches);
        (Length lowest, Length highest) = spread.Heights(Length.FromCentimetres(10))!.Value;
        Assert.InRange(highest.Centimetres - 10, 0.3, 0.6);
        Assert.InRange(10 - lowest.Centimetres, 0.3, 0.6);
        Assert.Null(GaugeSpread.From(MeasuringBasis.Of(swatches[0], null)));
    }

    [Fact]
    public void Balls_are_rounded_up_for_each_colour()
    {
        YarnNeed need = Compute(Striped, Of("12")).Yarn.Value;
        Assert.Equal(["A", "B"], need.Colours.Select(colour => colour.Colour));
        Assert.All(need.Colours, colour => Assert.Equal((int)Math.Ceiling(colour.Buy.Metres / 50), colour.Balls));
        Assert.Equal(need.Colours.Sum(colour => colour.Balls), need.Balls);
    }

    [Fact]
    public void A_colour_may_have_a_ball_of_its_own()
    {
        var basis = new MeasuringBasis([Of("12")], Ball) { Labels = [new ColourLabel("B", YarnLabel.Parse("10 m = 5 g").Value)] };
        YarnNeed need = RowSchedule.Compute(PatternCheck.Check(Striped), basis).Value.Yarn.Value;
        Assert.Equal((int)Math.Ceiling(need.Colours[1].Buy.Metres / 10), need.Colours[1].Balls);
    }

    [Fact]
    public void A_swatch_that_weighs_nothing_leaves_yarn_not_known_and_is_asked_about()
    {
        RowSchedule schedule = Compute(Cloth, Swatch.Parse("16 sc, 18 rows = 10 x 10 cm, 0 g").Value);
        Assert.False(schedule.Yarn.IsKnown);
        Assert.Contains("weighs nothing", schedule.Yarn.Trace, StringComparison.Ordinal);
        Assert.Single(schedule.Doubts);
    }

    /// <summary>Medium yarn (4): 11 to 14 sc to 10 cm, 7.1 to 9.1 mm wide; 4 widths for each of the two loops of sc: 65 mm a stitch. The spread is wide and said.</summary>
    [Fact]
    public void Without_a_swatch_there_is_a_rough_guess_that_says_so()
    {
        CheckedPattern pattern = PatternCheck.Check(Cloth);
        RowSchedule schedule = RowSchedule.Compute(pattern, new MeasuringBasis([], Ball) { YarnWeight = 4 }).Value;
        YarnNeed need = schedule.Yarn.Value;
        Assert.True(need.IsRough);
        Assert.InRange(need.Used.Metres, 40 * 20 * 0.060, 40 * 20 * 0.072);
        Assert.InRange(need.Margin, 0.3, 0.5);
        Assert.Contains("rough guess", need.Assumption, StringComparison.Ordinal);
        Assert.False(schedule.Pieces[0].Width.IsKnown);
        Assert.False(RowSchedule.Compute(pattern, new MeasuringBasis([], Ball)).Value.Yarn.IsKnown);
    }

    [Fact]
    public void A_hook_narrows_the_guess()
    {
        YarnWeightClass medium = YarnStandards.Of(4)!;
        (Length narrow, Length wide) = medium.StitchWidths(null);
        (Length thinNarrow, Length thinWide) = medium.StitchWidths(new HookSize(5.5));
        Assert.True(thinNarrow == narrow && thinWide < wide);
        Assert.Null(YarnStandards.Of(8));
    }

    /// <summary>
    /// Published yardages (a tester's page, source 24 of the reference): squares of 8.75 and 9 in in worsted cotton with a 4.5 mm hook took 66.5 and 73.5 yd. A solid sc square of that size at 15 sc
    /// and 16 rows to 10 cm, guessed by stitch width, must come within the guess's own interval.
    /// </summary>
    [Theory]
    [InlineData(8.75, 66.5)]
    [InlineData(9, 73.5)]
    public void The_rough_guess_holds_the_published_dishcloths(double inches, double yards)
    {
        int stitches = (int)Math.Round(inches * 2.54 * 1.5), rows = (int)Math.Round(inches * 2.54 * 1.6);
        CheckedPattern pattern = PatternCheck.Check($"Ch {stitches + 1}.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRows 2–{rows}: Ch 1, turn, sc in each sc across.\n");
        var basis = new MeasuringBasis([Swatch.Parse("15 sc, 16 rows = 10 x 10 cm").Value], null) { YarnWeight = 4 };
        YarnNeed need = RowSchedule.Compute(pattern, basis).Value.Yarn.Value;
        Assert.InRange(yards, need.Low.Yards, need.High.Yards);
        Assert.InRange(need.Used.Yards / yards, 0.75, 1.25);
        Assert.Equal(0, need.Balls);
    }

    [Fact]
    public void Rows_tell_balls_time_share_and_instruction()
    {
        PieceSchedule cloth = Compute(Cloth, Of("12")).Pieces[0];
        ScheduledRow last = cloth.Rows[^1];
        Assert.Equal(1, last.Share!.Value, 9);
        Assert.Equal("Rows 2–40: Ch 1, turn, sc in each sc across. (20 sc)", last.Instruction);
        Assert.Equal((1, new KeyValuePair<string, long>("sc", 20)), (last.Counts.Count, last.Counts[0]));
        Assert.Equal(((40 * 20) + 21) / 20.0, last.TimeSoFar!.Value.TotalMinutes, 6);
        ScheduledRow ends = cloth.Rows.First(row => row.Marks.Any(mark => mark.Kind == ScheduleMarkKind.BallEnds));
        Assert.Equal("Ball 1 ends in this row.", ends.Marks.First(mark => mark.Kind == ScheduleMarkKind.BallEnds).Text);
        Assert.True(ends.Total!.Value.Metres >= 50 && ends.Total.Value.Metres - ends.Yarn!.Value.Metres < 50);
        Assert.Equal(2, ends.Balls[0].Number);
        Assert.Equal(cloth.HalfUsedAfter, cloth.Rows.First(row => row.Marks.Any(mark => mark.Kind == ScheduleMarkKind.HalfUsed)).Heading);
        Assert.DoesNotContain(cloth.Rows, row => row.Marks.Any(mark => mark.Kind == ScheduleMarkKind.LongestRow));
    }

    [Fact]
    public void The_longest_row_and_the_border_are_marked()
    {
        CheckedPattern washcloth = PatternCheck.Check(File.ReadAllText(Repository.Path("samples/diagonal-square-washcloth.txt")));
        PieceSchedule square = RowSchedule.Compute(washcloth, StatedMaterials.Of(washcloth)).Value.Pieces[0];
        Assert.Equal("Row 25", Assert.Single(square.Rows, row => row.Marks.Any(mark => mark.Kind == ScheduleMarkKind.LongestRow)).Heading);
        CheckedPattern panel = PatternCheck.Check(File.ReadAllText(Repository.Path("tests/PatternStudio.Craft.Tests/RightPatterns/055-bordered-panel.txt")));
        PieceSchedule bordered = RowSchedule.Compute(panel, Of("12"), Ball).Value.Pieces[0];
        ScheduledRow before = Assert.Single(bordered.Rows, row => row.Marks.Any(mark => mark.Kind == ScheduleMarkKind.LeaveForBorder));
        Assert.Equal("Row 20", before.Heading);
        SectionYarn border = bordered.Sections[^1];
        Assert.Equal(("Border", "Rnd 1"), (border.Name, border.From));
        Assert.Equal(bordered.Yarn.Value.Metres - before.Total!.Value.Metres, border.Yarn.Metres, 6);
        Assert.StartsWith($"Leave {border.Yarn.Metres:0.0} m ({Ball.WeightOf(border.Yarn)}) of B for the border (Rnd 1 on).", before.Marks.First(mark => mark.Kind == ScheduleMarkKind.LeaveForBorder).Text, StringComparison.Ordinal);
    }
}
