using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;

namespace PatternStudio.Craft.Tests.Measuring;

public sealed class YarnSupplyTests
{
    private const string Cloth = "Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRows 2–40: Ch 1, turn, sc in each sc across. (20 sc)\n";
    private const string Striped = "With A, ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRows 2–20: Ch 1, turn, sc in each sc across. (20 sc)\nFasten off A.\nRow 21: With B, ch 1, turn, sc in each sc across. (20 sc)\nRows 22–30: Ch 1, turn, sc in each sc across. (20 sc)\n";

    private static readonly YarnLabel Ball = YarnLabel.Parse("100 m = 50 g").Value;

    private static RowSchedule Schedule(string text) => RowSchedule.Compute(PatternCheck.Check(text), Swatch.Parse("16 sc, 18 rows = 10 x 10 cm, 12 g").Value, Ball).Value;

    private static YarnLot Lot(double grams, string colour = "", string dye = "") => new(colour, Mass.FromGrams(grams), Ball, dye);

    private static SupplyAnswer Ask(string text, params YarnLot[] lots) => YarnSupply.Ask(Schedule(text), lots).Value;

    /// <summary>The cloth takes some 35 g: 40 g are enough for 90 of 100 makers, 36 g just so, 20 g end on the way.</summary>
    [Fact]
    public void Yarn_is_enough_tight_or_not_enough()
    {
        YarnNeed need = Schedule(Cloth).Yarn.Value;
        Assert.Equal(SupplyVerdict.Enough, Ask(Cloth, Lot(need.Weight.Grams * 1.13)).Verdict);
        Assert.Equal(SupplyVerdict.Tight, Ask(Cloth, Lot(need.Weight.Grams * 1.05)).Verdict);
        Assert.Null(Ask(Cloth, Lot(need.Weight.Grams * 1.05)).End);
        SupplyAnswer half = Ask(Cloth, Lot(need.Weight.Grams / 2));
        Assert.Equal(SupplyVerdict.NotEnough, half.Verdict);
        Assert.Equal("Row 19", half.End!.LastRow);
        Assert.Equal(need.Buy.Metres - (need.Used.Metres / 2), half.Colours[0].Missing.Metres, 6);
    }

    [Fact]
    public void Nothing_at_hand_reaches_no_row() => Assert.Null(Ask(Cloth).End!.LastRow);

    [Fact]
    public void The_colour_that_runs_out_first_ends_the_work()
    {
        SupplyAnswer answer = Ask(Striped, Lot(500, "a"), Lot(3, "B"), Lot(10, "Mauve"));
        Assert.Equal("B", answer.End!.Colour);
        Assert.Equal([SupplyVerdict.Enough, SupplyVerdict.NotEnough], answer.Colours.Select(colour => colour.Verdict));
        Assert.Equal("The pattern has no colour 'Mauve', so 10 g of it were not counted.", Assert.Single(answer.Warnings));
        Assert.StartsWith("Row 2", answer.End.LastRow, StringComparison.Ordinal);
    }

    [Fact]
    public void Dye_lots_are_named_where_they_must_mix()
    {
        Assert.Empty(Ask(Cloth, Lot(50, "", "12"), Lot(10, "", "13")).Warnings);
        string warning = Assert.Single(Ask(Cloth, Lot(25, "", "12"), Lot(25, "", "13")).Warnings);
        Assert.StartsWith("No dye lot is enough alone (12, 13).", warning, StringComparison.Ordinal);
        Assert.Empty(Ask(Cloth, Lot(25, "", "12"), Lot(25, "", "12")).Warnings);
    }

    [Fact]
    public void Copies_are_counted_one_after_the_other()
    {
        string pair = "Square (make 2)\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRows 2–40: Ch 1, turn, sc in each sc across. (20 sc)\n";
        double both = Schedule(pair).Yarn.Value.Weight.Grams;
        SupplyEnd end = Ask(pair, Lot(both * 0.75)).End!;
        Assert.Equal((2, "Row 19"), (end.Copy, end.LastRow));
    }

    [Fact]
    public void A_schedule_without_yarn_answers_with_its_reason() =>
        Assert.False(YarnSupply.Ask(RowSchedule.Compute(PatternCheck.Check(Cloth), null, null).Value, []).IsKnown);

    /// <summary>RFC 4180: CR LF, quotes doubled, fields with commas quoted; words that a spreadsheet takes for formulas are kept words.</summary>
    [Fact]
    public void The_schedule_is_written_as_csv()
    {
        string csv = ScheduleCsv.Write(Schedule(Striped));
        string[] lines = csv.Split("\r\n");
        Assert.StartsWith("Piece,Section,Row,Side,Instruction,Stitches,By kind,Change,Width cm,Width in,Yarn m,", lines[0], StringComparison.Ordinal);
        Assert.EndsWith(",A so far m,B so far m", lines[0], StringComparison.Ordinal);
        Assert.Equal(30 + 1 + 1 + 1, lines.Length);
        Assert.Equal("", lines[^1]);
        Assert.Contains("\"Row 21: With B, ch 1, turn, sc in each sc across. (20 sc)\"", csv, StringComparison.Ordinal);
        Assert.Contains(",20,20 sc,0,12.5,4.92,", csv, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("=HYPERLINK(\"x\")", "\"'=HYPERLINK(\"\"x\"\")\"")]
    [InlineData("+cmd", "'+cmd")]
    [InlineData("@sum", "'@sum")]
    [InlineData("-2+3", "'-2+3")]
    public void Names_that_look_like_formulas_stay_words(string name, string field)
    {
        RowSchedule schedule = Schedule(Cloth);
        RowSchedule named = schedule with { Pieces = [schedule.Pieces[0] with { Name = name }] };
        Assert.StartsWith(field + ",", ScheduleCsv.Write(named).Split("\r\n")[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Numbers_below_zero_stay_numbers()
    {
        string narrowing = "Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across. (10 sc)\nRow 2: Ch 1, turn, sc2tog, sc in each st to last 2 sts, sc2tog. (8 sts)\n";
        Assert.Contains(",-2,", ScheduleCsv.Write(Schedule(narrowing)), StringComparison.Ordinal);
    }
}
