using PatternStudio.Craft.Anatomy;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Tests.Charting;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Measuring;

public sealed class RowScheduleTests
{
    private static readonly Swatch SixteenByEighteen = Swatch.Parse("16 sts, 18 rows = 10 x 10 cm, 12 g").Value;
    private static readonly YarnLabel Ball = YarnLabel.Parse("200 m = 100 g").Value;

    private static RowSchedule Compute(FabricBuilder fabric, Swatch? swatch, YarnLabel? yarn = null) =>
        RowSchedule.Compute(fabric.Pattern(), swatch, yarn).Value;

    private static PieceSchedule Piece(FabricBuilder fabric, Swatch? swatch, YarnLabel? yarn = null) => Compute(fabric, swatch, yarn).Pieces[0];

    /// <summary>A row of one stitch as a run, however long.</summary>
    private static WorkedRow RowOf(string stitch, long stitches, int number)
    {
        WorkedRow row = Fabrics.Straight(stitch, 2, 1).Piece().Rows[1];
        return row with { Number = number, Label = $"Row {number}", Runs = [new Run([row.Runs[0].Unit[1]], stitches, -1)], Total = stitches };
    }

    private static CheckedPattern PatternOf(EquatableArray<WorkedRow> rows)
    {
        CheckedPattern pattern = Fabrics.Straight("sc", 2, 1).Pattern();
        return pattern with { Sizes = [pattern.Sizes[0] with { Fabric = new Fabric("", [new WorkedPiece("", rows)]) }] };
    }

    /// <summary>
    /// Pattern arithmetic, worked example for gauge: 13 dc and 7.5 rows to 4 in, blanket 50 × 60 in → 162 stitches, 112 rows. Turned round:
    /// 162 × 4/13 = 49.85 in and 112 × 4/7.5 = 59.73 in.
    /// </summary>
    [Fact]
    public void The_blanket_of_the_gauge_example_comes_out_at_its_size()
    {
        PieceSchedule blanket = Piece(Fabrics.Straight("dc", 162, 112), Swatch.Parse("13 dc and 7.5 rows = 4 in").Value);
        Assert.Equal(ConstructionKind.StraightRows, blanket.Construction.Kind);
        Assert.Equal(49.85, blanket.Width.Value.Inches, 2);
        Assert.Equal(59.73, blanket.Height.Value.Inches, 2);
        Assert.Equal(18_144, blanket.Rows.Sum(row => row.Stitches));
        Assert.Contains("13 dc and 7.5 rows", blanket.Width.Trace, StringComparison.Ordinal);
    }

    /// <summary>Published first rounds for flat circles: sc 6, hdc 8, dc 12, tr 16 (rule A of the reference and the common figure for tr), as many more each round.</summary>
    [Theory]
    [InlineData("sc", 6, 8)]
    [InlineData("hdc", 8, 6)]
    [InlineData("dc", 12, 6)]
    [InlineData("tr", 16, 5)]
    public void A_circle_by_the_published_increases_lies_flat_and_its_edge_fits_its_radius(string stitch, int first, int rounds)
    {
        Swatch square = Swatch.Parse("20 sc, 21 rows = 10 x 10 cm").Value;
        PieceSchedule circle = Piece(Fabrics.Circle(stitch, first, rounds), square);
        Assert.Equal(ConstructionKind.Circle, circle.Construction.Kind);
        Assert.True(circle.Width.IsKnown, circle.Width.Trace);
        double edge = first * rounds * 5;
        Assert.Equal(edge / Math.PI, circle.Width.Value.Millimetres, edge / Math.PI * 0.08);
    }

    [Fact]
    public void Too_few_increases_make_a_cup_and_too_many_a_ruffle_and_neither_has_a_width()
    {
        Swatch square = Swatch.Parse("20 sc, 21 rows = 10 x 10 cm").Value;
        Assert.Contains("draws in and does not lie flat", Piece(Fabrics.Circle("dc", 6, 6), square).Width.Trace, StringComparison.Ordinal);
        Assert.Contains("ruffles", Piece(Fabrics.Circle("sc", 12, 6), square).Width.Trace, StringComparison.Ordinal);
        Assert.False(Piece(Fabrics.Circle("sc", 12, 6), square).Width.IsKnown);
    }

    /// <summary>Published growth of a 7-round granny square: 2 to 2.5 cm each round from the third on, 15.5 cm at last (photographed ruler, UK tutorial [17] of the reference).</summary>
    [Fact]
    public void A_granny_square_grows_by_two_row_heights_each_round()
    {
        Swatch dk = Swatch.Parse("15 dc, 9.5 rows = 10 x 10 cm").Value;
        PieceSchedule square = Piece(Fabrics.Granny(7), dk);
        Assert.Equal((ConstructionKind.Polygon, 4), (square.Construction.Kind, square.Construction.Corners));
        Assert.Equal(15.5, square.Width.Value.Centimetres, 1.0);
        Length[] widths = [.. square.Rows.Select(row => row.Width).OfType<Length>()];
        Assert.All(widths.Zip(widths.Skip(1)), pair => Assert.InRange((pair.Second - pair.First).Centimetres, 2, 2.5));
        Assert.Equal(square.Width.Value, square.Height.Value);
    }

    /// <summary>Granny squares: 12n dc in round n, 6n(n + 1) in all (derived in the reference).</summary>
    [Fact]
    public void The_granny_square_of_the_tests_has_the_counts_of_the_table() =>
        Assert.Equal([12, 24, 36, 48, 60, 72], Piece(Fabrics.Granny(6), null).Rows.Skip(1).Select(row => row.Stitches!.Value));

    /// <summary>A square corner opens by one row height on either side of the diagonal: with two more sc a row, the square comes out where a stitch is as wide as a row is high.</summary>
    [Fact]
    public void A_square_on_the_diagonal_has_its_longest_row_for_diagonal()
    {
        PieceSchedule square = Piece(Fabrics.Diagonal(25), Swatch.Parse("17 sts and 17 rows = 10 cm").Value);
        Assert.Equal(ConstructionKind.CornerToCorner, square.Construction.Kind);
        Assert.Equal(50 * 100.0 / 17 / Math.Sqrt(2), square.Width.Value.Millimetres, 6);
        Assert.Contains("longest row ÷ √2", square.Width.Trace, StringComparison.Ordinal);
        Assert.Contains("cross-check", square.Width.Trace, StringComparison.Ordinal);
    }

    [Fact]
    public void Diagonals_that_disagree_give_no_side()
    {
        PieceSchedule square = Piece(Fabrics.Diagonal(25), Swatch.Parse("17 sts and 22 rows = 10 cm").Value);
        Assert.False(square.Width.IsKnown);
        Assert.Contains("The corners are not square", square.Width.Trace, StringComparison.Ordinal);
    }

    /// <summary>
    /// Rows at 45°: short side = longest row ÷ √2, and both sides ÷ √2 are all row heights. The longest row has 16 stitches; 8 growing, 8 leaning and 7 falling rows.
    /// </summary>
    [Fact]
    public void A_rectangle_on_the_diagonal_has_a_short_and_a_long_side()
    {
        PieceSchedule mat = Piece(Fabrics.DiagonalRectangle(8, 8), Swatch.Parse("17 sts and 17 rows = 10 cm").Value);
        Assert.Equal(ConstructionKind.CornerToCorner, mat.Construction.Kind);
        double unit = 100.0 / 17;
        Assert.Equal(16 * unit / Math.Sqrt(2), mat.Width.Value.Millimetres, 6);
        Assert.Equal((23 * unit * Math.Sqrt(2)) - (16 * unit / Math.Sqrt(2)), mat.Height.Value.Millimetres, 6);
    }

    /// <summary>
    /// 8 chains are worked into, so the centres of the ends lie 7 stitch widths of 6.25 mm apart. Rounds are 5.56 mm high: two make 11.1 mm on each side. The edge: 2 × 43.75 + 2π × 11.1 =
    /// 157 mm; 24 sc make 150 mm.
    /// </summary>
    [Fact]
    public void An_oval_is_its_chain_and_its_rounds()
    {
        FabricBuilder oval = FabricBuilder.Chain(8).Round(FabricBuilder.Times(7, "sc") + " 9sc").Round(FabricBuilder.Times(8, "sc") + " " + FabricBuilder.Times(8, "2sc"));
        PieceSchedule piece = Piece(oval, SixteenByEighteen);
        Assert.Equal(ConstructionKind.Oval, piece.Construction.Kind);
        Assert.True(piece.Width.IsKnown, piece.Width.Trace);
        Assert.Equal((7 * 6.25) + (4 * 100 / 18.0), piece.Width.Value.Millimetres, 6);
        Assert.Equal(4 * 100 / 18.0, piece.Height.Value.Millimetres, 6);
    }

    [Fact]
    public void A_square_increased_by_three_in_a_corner_stitch_is_a_square()
    {
        FabricBuilder square = FabricBuilder.Ring(0).Round("sc sc sc sc j").Round("3sc 3sc 3sc 3sc j").Round(FabricBuilder.Times(4, "sc 3sc sc") + " j").Round(FabricBuilder.Times(4, "sc sc 3sc sc sc") + " j");
        Assert.Equal((ConstructionKind.Polygon, 4), (Piece(square, null).Construction.Kind, Piece(square, null).Construction.Corners));
    }

    /// <summary>The plain row of 25 at 6.25 mm holds the arches: 15.6 cm. How far arches of five chains hang down no gauge tells.</summary>
    [Fact]
    public void Arches_on_a_plain_row_are_as_wide_as_that_and_of_unknown_depth()
    {
        FabricBuilder edging = FabricBuilder.Chain(25).Row("t1 " + FabricBuilder.Times(25, "sc")).Row("t1 sc " + FabricBuilder.Times(8, "c5 -2 sc"));
        PieceSchedule piece = Piece(edging, SixteenByEighteen);
        Assert.Equal(156.25, piece.Width.Value.Millimetres, 6);
        Assert.Contains("hang down", piece.Height.Trace, StringComparison.Ordinal);
    }

    [Fact]
    public void A_net_of_arches_is_lace_and_has_no_size()
    {
        FabricBuilder net = FabricBuilder.Chain(40).Row("t1 " + FabricBuilder.Times(10, "sc c5 -3")).Row("t5 " + FabricBuilder.Times(9, "sc c5 -1"));
        Assert.False(Piece(net, SixteenByEighteen).Width.IsKnown);
    }

    /// <summary>Half-yarn rule of the reference: through the longest row of N × N tiles (N + 1)/(2N) of the yarn is used: N = 20 gives 52.5 %.</summary>
    [Fact]
    public void Half_of_the_yarn_is_used_by_the_longest_row_of_a_diagonal_square()
    {
        var rows = Enumerable.Range(1, 39).Select(n => RowOf("sc", n <= 20 ? n : 40 - n, n)).ToEquatableArray();
        PieceSchedule square = RowSchedule.Compute(PatternOf(rows), SixteenByEighteen, Ball).Value.Pieces[0];
        Assert.Equal("Row 20", square.HalfUsedAfter);
        Assert.Equal(0.525, square.Rows[19].Total!.Value / square.Yarn.Value, 9);
    }

    /// <summary>Yarn by stitch, as published: grams of the swatch ÷ its stitches × stitches of the piece, then grams × (ball m ÷ ball g).</summary>
    [Fact]
    public void Yarn_follows_the_swatch_s_weight_stitch_by_stitch()
    {
        PieceSchedule cloth = Piece(Fabrics.Straight("sc", 40, 45), Swatch.Parse("16 sc, 18 rows = 10 x 10 cm, 12 g").Value, Ball);
        double bodyMetres = 40 * 45 / (16.0 * 18) * 12 * 2;
        YarnLength body = cloth.Rows.Skip(1).Select(row => row.Yarn!.Value).Aggregate((sum, row) => sum + row);
        double turningChains = 45 / 2.0 / (16.0 * 18) * 24;
        Assert.Equal(bodyMetres + turningChains, body.Metres, 6);
        Assert.Equal(cloth.Yarn.Value, cloth.Rows[^1].Total);
    }

    [Fact]
    public void The_amount_to_buy_is_the_ninety_percent_point_in_whole_balls()
    {
        YarnNeed need = Compute(Fabrics.Straight("sc", 40, 45), SixteenByEighteen, Ball).Yarn.Value;
        Assert.Equal(need.Used.Metres * 1.12816, need.Buy.Metres, 2);
        Assert.Equal((int)Math.Ceiling(need.Buy.Metres / 200), need.Balls);
        Assert.Contains("from memory", need.Assumption, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_weight_sizes_are_known_and_yarn_is_not()
    {
        PieceSchedule cloth = Piece(Fabrics.Straight("sc", 16, 18), Swatch.Parse("16 sts, 18 rows = 10 x 10 cm").Value, Ball);
        Assert.Equal((100, 100), (cloth.Width.Value.Millimetres, Math.Round(cloth.Height.Value.Millimetres, 6)));
        Assert.False(cloth.Yarn.IsKnown);
        Assert.All(cloth.Rows, row => Assert.Null(row.Yarn));
        Assert.Equal("Yarn is not known: the swatch (16 sts and 18 rows = 10 × 10 cm) has no weight. Weigh it and add the grams.", cloth.Yarn.Trace);
    }

    [Fact]
    public void Without_a_swatch_only_counts_are_known()
    {
        RowSchedule schedule = Compute(Fabrics.Straight("sc", 16, 4), null, Ball);
        Assert.False(schedule.Pieces[0].Width.IsKnown);
        Assert.False(schedule.Yarn.IsKnown);
        Assert.Equal([null, 16, 16, 16, 16], schedule.Pieces[0].Rows.Select(row => row.Number == 0 ? null : row.Stitches));
    }

    [Fact]
    public void A_row_that_was_not_checked_ends_what_is_known()
    {
        PieceSchedule cloth = Piece(Fabrics.Straight("sc", 16, 4).NotChecked(), SixteenByEighteen, Ball);
        Assert.Equal("from Row 5 on the piece could not be checked, so size and yarn end there.", cloth.NotKnownFrom);
        Assert.False(cloth.Width.IsKnown);
        Assert.False(cloth.Height.IsKnown);
        Assert.False(cloth.Yarn.IsKnown);
        Assert.NotNull(cloth.Rows[4].Total);
        Assert.Equal((null, null, null, null), (cloth.Rows[5].Stitches, cloth.Rows[5].Width, cloth.Rows[5].Yarn, cloth.Rows[5].Total));
    }

    [Fact]
    public void Rows_that_half_as_many_more_are_worked_into_have_no_width_by_counting()
    {
        FabricBuilder frill = Fabrics.Straight("sc", 10, 1).Row("t1 " + FabricBuilder.Times(10, "2sc")).Row("t1 " + FabricBuilder.Times(20, "sc"));
        Assert.Contains("ruffles or fans out", Piece(frill, SixteenByEighteen).Width.Trace, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stitch_that_nobody_told_how_to_work_leaves_height_and_yarn_not_known()
    {
        PieceSchedule cloth = Piece(Fabrics.Straight("limpet", 16, 4), SixteenByEighteen, Ball);
        Assert.False(cloth.Height.IsKnown);
        Assert.Equal("Yarn is not known: how 'limpet' is worked can't be told; define it as a special stitch.", cloth.Yarn.Trace);
    }

    [Fact]
    public void A_row_of_a_million_stitches_is_measured_by_its_repeat()
    {
        var rows = Enumerable.Range(1, 400).Select(n => RowOf("sc", 1_000_000, n)).ToEquatableArray();
        RowSchedule schedule = RowSchedule.Compute(PatternOf(rows), SixteenByEighteen, Ball).Value;
        Assert.Equal(6250, schedule.Pieces[0].Width.Value.Millimetres / 1000, 6);
        Assert.Equal(400, schedule.Pieces[0].Rows.Count);
    }

    [Fact]
    public void A_tube_is_as_wide_as_half_its_round_when_laid_flat()
    {
        FabricBuilder cowl = FabricBuilder.Ring(64);
        for (int i = 0; i < 18; i++) cowl.Round(FabricBuilder.Times(64, "sc") + " j");
        PieceSchedule tube = Piece(cowl, SixteenByEighteen);
        Assert.Equal(ConstructionKind.Tube, tube.Construction.Kind);
        Assert.Equal((200, 100), (tube.Width.Value.Millimetres, Math.Round(tube.Height.Value.Millimetres, 6)));
    }

    [Fact]
    public void A_pattern_without_rows_has_no_schedule()
    {
        var pattern = Fabrics.Straight("sc", 4, 1).Pattern();
        var empty = pattern with { Sizes = [pattern.Sizes[0] with { Fabric = new Fabric("", []) }] };
        Assert.Equal("There is no schedule yet: no rows were found in the text.", RowSchedule.Compute(empty, null, null).Trace);
    }

    [Fact]
    public void A_special_stitch_is_measured_by_its_own_motions()
    {
        Motion[] motions = [new YarnOver(1), new Insert(false), new DrawUpLoop(), new DrawThrough(2, null), new DrawThrough(2, null)];
        var read = new ReadMotions(motions.Select(motion => new LocatedMotion(motion, default)).ToEquatableArray(), []);
        var definition = new StitchDefinition(new StitchId("limpet"), ["limpet"], default) { Motions = read };
        RowSchedule own = RowSchedule.Compute(Fabrics.Straight("limpet", 16, 4).Pattern(definition), Swatch.Parse("16 dc, 9 rows = 10 x 10 cm, 12 g").Value, Ball).Value;
        RowSchedule plain = Compute(Fabrics.Straight("dc", 16, 4), Swatch.Parse("16 dc, 9 rows = 10 x 10 cm, 12 g").Value, Ball);
        Assert.Equal(plain.Pieces[0].Height.Value, own.Pieces[0].Height.Value);
        Assert.Equal(plain.Pieces[0].Yarn.Value, own.Pieces[0].Yarn.Value);
    }
}
