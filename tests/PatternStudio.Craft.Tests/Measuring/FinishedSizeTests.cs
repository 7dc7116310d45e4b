using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;

namespace PatternStudio.Craft.Tests.Measuring;

/// <summary>Finished sizes that our own sample patterns state, computed from the gauges that they state.</summary>
public sealed class FinishedSizeTests
{
    private static CheckedPattern Sample(string name) => PatternCheck.Check(File.ReadAllText(Repository.Path($"samples/{name}.txt")));

    private static CheckedPattern Right(string name) => PatternCheck.Check(File.ReadAllText(Repository.Path($"tests/PatternStudio.Craft.Tests/RightPatterns/{name}.txt")));

    private static PieceSchedule Piece(CheckedPattern pattern, int size = 0) => RowSchedule.Compute(pattern, StatedMaterials.Of(pattern), size).Value.Pieces[0];

    private static PieceSchedule Piece(CheckedPattern pattern, string swatch) => RowSchedule.Compute(pattern, Swatch.Parse(swatch).Value, null).Value.Pieces[0];

    /// <summary>
    /// 15 sts and 11 rnds to 10 cm: 64 (72, 80) stitches are 42.7 (48, 53.3) cm round; 19 (21, 23) rounds of 9.1 mm and a ring of 4 chains make 17.7 (19.5, 21.3) cm from crown to brim.
    /// The pattern states 43 (48, 53) and 17 (19, 21).
    /// </summary>
    [Theory]
    [InlineData(0, 42.67, 17)]
    [InlineData(1, 48, 19)]
    [InlineData(2, 53.33, 21)]
    public void A_hat_is_as_wide_as_its_widest_round_and_as_high_as_crown_and_sides(int size, double around, double height)
    {
        PieceSchedule hat = Piece(Sample("hat-three-sizes"), size);
        Assert.Equal(ConstructionKind.CrownAndTube, hat.Construction.Kind);
        Assert.True(hat.Height.IsKnown, hat.Height.Trace);
        Assert.Equal(around, hat.Around!.Value.Centimetres, 2);
        Assert.Equal(around / 2, hat.Width.Value.Centimetres, 0.01);
        Assert.Equal(height, hat.Height.Value.Centimetres, 0.75);
        Assert.Contains("crown's radius", hat.Height.Trace, StringComparison.Ordinal);
    }

    /// <summary>58 sc at 18 to 10 cm are 32.2 cm; the pattern states 32 cm. Its shell row has a third more stitches and is no wider.</summary>
    [Fact]
    public void An_edging_is_as_long_as_its_plain_row()
    {
        PieceSchedule edging = Piece(Sample("lace-edging"));
        Assert.Equal(ConstructionKind.RowsOnPlain, edging.Construction.Kind);
        Assert.Equal(32.2, edging.Width.Value.Centimetres, 1);
        Assert.Contains("does not count rows", edging.Height.Trace, StringComparison.Ordinal);
    }

    /// <summary>Stated: 11 cm across, Rnds 1 and 2 = 7 cm across; 14 cm square, Rnds 1 and 2 = 7 cm square.</summary>
    [Theory]
    [InlineData("flat-circle-coaster", 11)]
    [InlineData("granny-square", 14)]
    public void A_gauge_of_rounds_measures_a_motif(string name, double across)
    {
        PieceSchedule motif = Piece(Sample(name));
        Assert.True(motif.Width.IsKnown, motif.Width.Trace);
        Assert.InRange(motif.Width.Value.Centimetres / across, 0.9, 1.1);
    }

    [Theory]
    [InlineData("diagonal-square-washcloth", 21, 21)]
    [InlineData("straight-rows-dishcloth", 20, 20)]
    public void Cloths_come_out_at_their_stated_size(string name, double width, double height)
    {
        PieceSchedule cloth = Piece(Sample(name));
        Assert.InRange(cloth.Width.Value.Centimetres / width, 0.95, 1.05);
        Assert.InRange(cloth.Height.Value.Centimetres / height, 0.95, 1.05);
    }

    /// <summary>A rug of 4 × 6 tiles by a swatch of 3 × 3 tiles on 7.5 cm: 10 × 15 cm. By a swatch in stitches it has no size, and the reason asks for tiles.</summary>
    [Fact]
    public void Tiles_are_measured_by_tiles()
    {
        PieceSchedule rug = Piece(Right("038-tile-rectangle"), "3 x 3 tiles = 7.5 x 7.5 cm");
        Assert.Equal((10, 15), (Math.Round(rug.Width.Value.Centimetres, 9), Math.Round(rug.Height.Value.Centimetres, 9)));
        Assert.Contains("count a swatch in tiles", Piece(Right("038-tile-rectangle"), "16 dc, 9 rows = 10 cm").Width.Trace, StringComparison.Ordinal);
        Assert.Contains("is counted in tiles", Piece(Right("001-plain-sc-cloth"), "3 tiles = 7.5 cm").Width.Trace, StringComparison.Ordinal);
    }

    /// <summary>20 sc at 20 to 10 cm are 10 cm wide, 20 rows at 20 are 10 cm high; two rounds of 5 mm all about make 12 × 12 cm.</summary>
    [Fact]
    public void A_border_adds_its_rounds_on_every_side()
    {
        PieceSchedule panel = Piece(Right("055-bordered-panel"), "20 sc, 20 rows = 10 x 10 cm");
        Assert.Equal(ConstructionKind.Bordered, panel.Construction.Kind);
        Assert.Equal((12, 12), (Math.Round(panel.Width.Value.Centimetres, 6), Math.Round(panel.Height.Value.Centimetres, 6)));
    }

    /// <summary>60 stitches at 16 to 10 cm are 37.5 cm round: one stitch in each chain of a ring is a tube, also where its rounds are turned.</summary>
    [Fact]
    public void A_ring_of_chains_worked_once_round_is_no_oval()
    {
        PieceSchedule cowl = Piece(Right("111-turned-rounds"), "16 sc, 18 rows = 10 x 10 cm");
        Assert.Equal(ConstructionKind.Tube, cowl.Construction.Kind);
        Assert.Equal(37.5, cowl.Around!.Value.Centimetres, 6);
    }

    /// <summary>A border 'evenly around' without a number: whatever was worked of it, size and yarn are not claimed from there on, and the body's rows keep theirs.</summary>
    [Fact]
    public void A_border_of_unknown_stitches_has_no_size_and_no_yarn()
    {
        CheckedPattern cloth = PatternCheck.Check("Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRows 2–20: Ch 1, turn, sc in each sc across. (20 sc)\n\nBorder\nRnd 1: Ch 1, sc evenly around, working 3 sc in each corner, join with sl st in first sc.\n");
        RowSchedule schedule = RowSchedule.Compute(cloth, Swatch.Parse("20 sc, 20 rows = 10 x 10 cm, 12 g").Value, YarnLabel.Parse("85 m = 50 g").Value).Value;
        Assert.False(schedule.Pieces[0].Width.IsKnown);
        Assert.False(schedule.Yarn.IsKnown);
        Assert.NotNull(schedule.Pieces[0].Rows.First(row => row.Heading == "Row 20").Total);
        Assert.Null(schedule.Pieces[0].Rows[^1].Total);
    }

    /// <summary>32 sc at 20 to 10 cm are 16 cm round; the base ends with a round in the back loops, so the cup is as high as rounds 5 to 22.</summary>
    [Fact]
    public void A_cup_stands_on_its_base()
    {
        PieceSchedule cup = Piece(Right("043-pencil-cup"), "20 sc, 20 rows = 10 x 10 cm");
        Assert.True(cup.Construction.HasBase, cup.Construction.Reason);
        Assert.Equal(16, cup.Around!.Value.Centimetres, 6);
        Assert.InRange(cup.Height.Value.Centimetres, 8, 9);
    }

    [Theory]
    [InlineData("041-toy-ball", "stuffing")]
    [InlineData("066-pineapple-motif", "Not known")]
    public void Stuffed_and_lacy_pieces_have_no_size(string name, string reason)
    {
        PieceSchedule piece = Piece(Right(name), "20 sc, 20 rows = 10 x 10 cm");
        Assert.False(piece.Width.IsKnown);
        Assert.Contains(reason, piece.Width.Trace, StringComparison.Ordinal);
    }

    /// <summary>Ovals: a chain of 8 worked on both sides with four rounds of sc; a chain of 9 with three of dc.</summary>
    [Theory]
    [InlineData("044-oval-sc-base", "20 sc, 21 rows = 10 x 10 cm")]
    [InlineData("045-oval-placemat", "15 dc, 8 rows = 10 x 10 cm")]
    public void Ovals_are_longer_than_wide_by_their_chain(string name, string swatch)
    {
        PieceSchedule oval = Piece(Right(name), swatch);
        Assert.True(oval.Width.IsKnown, oval.Width.Trace);
        Length stitch = Swatch.Parse(swatch).Value.StitchWidth;
        Assert.InRange((oval.Width.Value - oval.Height.Value) / stitch, 5.9, 8.1);
    }

    /// <summary>sc swatch: rows 5.5 mm; dc swatch: rows 10 mm. A fabric of both in turn is as high as both, not as the usual proportion has it.</summary>
    [Fact]
    public void Two_swatches_tell_the_heights_of_two_kinds_of_row()
    {
        CheckedPattern cloth = PatternCheck.Check("Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRow 2: Ch 3 (counts as dc), turn, dc in next sc and in each sc across. (20 dc)\nRow 3: Ch 1, turn, sc in each dc across. (20 sc)\nRow 4: Rep Row 2. (20 dc)\n");
        var basis = new MeasuringBasis([Swatch.Parse("16 sc, 20 rows = 10 x 11 cm").Value, Swatch.Parse("16 dc, 10 rows = 10 x 10 cm").Value], null);
        PieceSchedule piece = RowSchedule.Compute(cloth, basis).Value.Pieces[0];
        Assert.Equal((2 * 5.5) + (2 * 10), piece.Height.Value.Millimetres, 6);
        Assert.Contains("least squares from 2 swatches", piece.Height.Trace, StringComparison.Ordinal);
    }

    /// <summary>The swatch is worked in Row 2 of the design, which is dc; a piece of mostly sc rows is lower than the swatch's rows.</summary>
    [Fact]
    public void A_swatch_may_name_rows_of_the_design()
    {
        CheckedPattern cloth = PatternCheck.Check("Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRow 2: Ch 3 (counts as dc), turn, dc in next sc and in each sc across. (20 dc)\nRow 3: Ch 1, turn, sc in each dc across. (20 sc)\nRows 4–9: Ch 1, turn, sc in each sc across. (20 sc)\n");
        PieceSchedule piece = Piece(cloth, "16 sts, 8 rows = 10 x 10 cm in Row 2");
        Assert.Equal(12.5 + (8 * 12.5 * 0.95 / 1.91), piece.Height.Value.Millimetres, 6);
        Assert.Contains("worked in Row 2 of the design", piece.Height.Trace, StringComparison.Ordinal);
    }

    /// <summary>
    /// 60 sc at 20 to 10 cm are 30 cm round; 12 rounds of 5 mm, then 9 that close from 54 to 6: 21 rounds of 5 mm, along the fabric.
    /// </summary>
    [Fact]
    public void A_hat_from_its_band_up_is_measured_too()
    {
        string crown = string.Concat(Enumerable.Range(0, 9).Select(i => i == 8
            ? "Rnd 21: Ch 1, [sc2tog] 6 times, join with sl st in first sc. (6 sc)\n"
            : $"Rnd {13 + i}: Ch 1, [sc in next {8 - i} sts, sc2tog] 6 times, join with sl st in first sc. ({54 - (6 * i)} sc)\n"));
        CheckedPattern hat = PatternCheck.Check("Ch 60, join with sl st to form a ring.\nRnd 1: Ch 1, sc in each ch around, join with sl st in first sc. (60 sc)\nRnds 2–12: Ch 1, sc in each sc around, join with sl st in first sc. (60 sc)\n" + crown);
        PieceSchedule piece = Piece(hat, "20 sc, 20 rows = 10 x 10 cm");
        Assert.Equal((ConstructionKind.CrownAndTube, true), (piece.Construction.Kind, piece.Construction.CrownLast));
        Assert.Equal((30, 10.5), (Math.Round(piece.Around!.Value.Centimetres, 6), Math.Round(piece.Height.Value.Centimetres, 6)));
    }

    [Theory]
    [InlineData("001-plain-sc-cloth", SizeSource.Gauge)]
    [InlineData("017-traditional-granny", SizeSource.GaugeOrRounds)]
    [InlineData("037-tile-square", SizeSource.TileSwatch)]
    [InlineData("041-toy-ball", SizeSource.WorkedPiece)]
    [InlineData("051-hat-three-sizes", SizeSource.Gauge)]
    public void A_construction_tells_what_its_size_comes_from(string name, SizeSource source) =>
        Assert.Equal(source, Piece(Right(name), "16 sc, 18 rows = 10 x 10 cm").Construction.SizeFrom);

    public static TheoryData<string> Patterns =>
        [.. Directory.EnumerateFiles(Repository.Path("tests/PatternStudio.Craft.Tests/RightPatterns"), "*.txt").Select(path => Path.GetFileNameWithoutExtension(path)!).Order(StringComparer.Ordinal)];

    /// <summary>Whatever the swatch, a schedule comes out, no number is below zero or endless, and what is not known has a reason.</summary>
    [Theory]
    [MemberData(nameof(Patterns))]
    public void Every_pattern_and_every_swatch_make_a_schedule(string name)
    {
        CheckedPattern pattern = Right(name);
        Swatch[] swatches = [.. new[] { "16 sts, 18 rows = 10 x 10 cm, 12 g", "14 dc, 8 rows = 10 cm, 0 g", "Rnds 1 and 2 = 7 cm, 2 g", "5 tiles = 12 cm, 9 g", "4 repeats, 8 rows = 12 x 9 cm, 8 g", "16 sts, 18 rows = 10 cm in Row 2, 11 g" }.Select(text => Swatch.Parse(text).Value)];
        IEnumerable<MeasuringBasis> bases = swatches.Select(swatch => MeasuringBasis.Of(swatch, YarnLabel.Parse("85 m = 50 g").Value)).Append(StatedMaterials.Of(pattern)).Append(new MeasuringBasis([.. swatches], YarnLabel.Parse("85 m = 50 g").Value) { StitchesPerMinute = 20, YarnWeight = 4 });
        foreach (MeasuringBasis basis in bases)
            for (int size = 0; size < pattern.Sizes.Count; size++)
                foreach (PieceSchedule piece in RowSchedule.Compute(pattern, basis, size).Value.Pieces)
                {
                    Assert.All(new[] { piece.Width, piece.Height }, side => Assert.True(side.IsKnown ? side.Value > Length.Zero && side.Value.Centimetres < 10_000 : side.Trace.Length > 0, side.Trace));
                    Assert.All(piece.Rows, row => Assert.True(row.Width is not { } width || (width >= Length.Zero && width.Centimetres < 10_000)));
                    Assert.True(!piece.Yarn.IsKnown || double.IsFinite(piece.Yarn.Value.Metres));
                }
    }
}
