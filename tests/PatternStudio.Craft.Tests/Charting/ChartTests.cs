using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Charting;

/// <summary>Reading rules of charts: as the reference of chart symbols gives them (CYC key, JIS L 0201, publishers' guides).</summary>
public sealed class ChartTests
{
    private static Drawing Draw(FabricBuilder fabric, ChartStyle? style = null) => Chart.Draw(fabric.Pattern(), 0, style);

    private static Point Middle(Symbol symbol)
    {
        Box box = symbol.Shapes.Aggregate(Box.Empty, (all, shape) => all.With(shape.Bounds));
        return new Point((box.Left + box.Right) / 2, (box.Top + box.Bottom) / 2);
    }

    /// <summary>Half way between the middles of its chains, however long they are drawn.</summary>
    private static Point MiddleOfChains(Symbol symbol)
    {
        Box box = symbol.Shapes.OfType<Oval>().Aggregate(Box.Empty, (all, oval) => all.With(oval.Centre));
        return new Point((box.Left + box.Right) / 2, (box.Top + box.Bottom) / 2);
    }

    private static Words Number(DrawnRow row) => row.Marks.OfType<Words>().Single();

    [Fact]
    public void Every_cell_is_drawn_once_and_knows_where_it_comes_from()
    {
        FabricBuilder fabric = Fabrics.Mesh(5, 3);
        Drawing drawing = Draw(fabric);
        foreach ((WorkedRow row, DrawnRow drawn) in fabric.Piece().Rows.Zip(drawing.Rows))
            Assert.Equal(Enumerable.Range(0, (int)row.Length).Select(i => (long)i), drawn.Symbols.Select(symbol => symbol.Cell));
    }

    /// <summary>Back-and-forth work: odd rows read right to left, even rows left to right, right-handed.</summary>
    [Fact]
    public void Rows_run_to_the_left_and_back_and_their_numbers_stand_where_they_begin()
    {
        Drawing drawing = Draw(Fabrics.Straight("sc", 8, 4));
        foreach (DrawnRow row in drawing.Rows.Skip(1))
        {
            double[] along = [.. row.Symbols.Skip(1).Select(symbol => Middle(symbol).X)];
            bool leftward = row.Row % 2 == 1;
            Assert.Equal(leftward ? along.OrderDescending() : along.Order(), along);
            Assert.True(leftward ? Number(row).At.X > along[0] : Number(row).At.X < along[0], row.Label);
        }
    }

    [Fact]
    public void Stitches_stand_above_those_they_are_worked_into()
    {
        Drawing drawing = Draw(Fabrics.DoubleRows(10, 5));
        foreach (DrawnRow row in drawing.Rows.Skip(2))
        {
            DrawnRow below = drawing.Rows[row.Row - 1];
            double[] above = [.. row.Symbols.Select(symbol => Math.Round(Middle(symbol).X, 6)).Order()];
            Assert.Equal(below.Symbols.Select(symbol => Math.Round(Middle(symbol).X, 6)).Order(), above);
            Assert.True(row.Symbols.Max(symbol => Middle(symbol).Y) < below.Symbols.Min(symbol => Middle(symbol).Y));
        }
    }

    /// <summary>Rounds: centre outward, anticlockwise for a right-hander.</summary>
    [Fact]
    public void Rounds_run_anticlockwise_on_growing_circles()
    {
        Drawing drawing = Draw(Fabrics.DoubleCircle(4));
        double outer = 0;
        foreach (DrawnRow row in drawing.Rows.Skip(1))
        {
            Point[] places = [.. row.Symbols.Where(symbol => symbol.Stitch.Value == "dc" && symbol.Shapes[0] is Line).Select(Middle)];
            double[] radii = [.. places.Select(place => place.Length)];
            Assert.InRange(radii.Max() - radii.Min(), 0, 0.7);
            Assert.True(radii.Min() > outer);
            Assert.All(places.Zip(places.Skip(1)), pair => Assert.True((pair.First.X * pair.Second.Y) - (pair.First.Y * pair.Second.X) < 0));
            outer = radii.Max();
        }
    }

    [Fact]
    public void A_granny_square_is_a_square_with_its_corner_spaces_in_the_corners()
    {
        Drawing drawing = Draw(Fabrics.Granny(4));
        foreach (DrawnRow round in drawing.Rows.Skip(1))
        {
            Point[] corners = [.. round.Symbols.Where(symbol => symbol.Name == "ch 2").Select(MiddleOfChains)];
            Assert.Equal(4, corners.Length);
            Assert.All(corners, corner => Assert.Equal(Math.Abs(corner.X), Math.Abs(corner.Y), 0.15));
            Assert.Equal(4, corners.Select(corner => (corner.X > 0, corner.Y > 0)).Distinct().Count());
        }
    }

    [Fact]
    public void A_square_worked_corner_to_corner_stands_on_its_corner_as_wide_as_high()
    {
        Drawing drawing = Draw(Fabrics.Diagonal(20));
        Box box = drawing.Rows.Skip(1).SelectMany(row => row.Symbols).Where(symbol => symbol.Stitch.Value != "ch").Aggregate(Box.Empty, (all, symbol) => all.With(Middle(symbol)));
        Assert.Equal(1, box.Width / box.Height, 0.06);
    }

    [Fact]
    public void Right_side_and_wrong_side_rows_differ_in_tone()
    {
        Drawing drawing = Draw(Fabrics.Straight("sc", 4, 3));
        Assert.Equal([RowTone.Foundation, RowTone.First, RowTone.Second, RowTone.First], drawing.Rows.Select(row => row.Tone));
        Assert.Equal(["foundation", "right-side rows", "wrong-side rows"], drawing.Tones.Select(tone => tone.Text));
    }

    [Fact]
    public void The_key_holds_only_the_symbols_used_in_both_terminologies()
    {
        Drawing drawing = Draw(Fabrics.Mesh(3, 2));
        Assert.Equal([("ch: chain", ""), ("dc: double crochet", "tr: treble")], drawing.Key.Select(entry => (entry.Name, entry.OtherName)));
        Assert.Equal("Key: US terms (UK terms)", drawing.KeyTitle);
    }

    [Fact]
    public void A_pattern_in_uk_terms_has_a_key_in_uk_terms()
    {
        CheckedPattern us = Fabrics.Mesh(3, 2).Pattern();
        CheckedPattern uk = us with { Pattern = us.Pattern with { Terms = us.Pattern.Terms with { Terminology = Terminology.Uk } } };
        Assert.Equal(("tr: treble", "dc: double crochet"), (Chart.Draw(uk).Key[1].Name, Chart.Draw(uk).Key[1].OtherName));
    }

    [Fact]
    public void Rows_that_were_not_checked_are_one_labelled_gap()
    {
        Drawing drawing = Draw(Fabrics.Straight("sc", 6, 2).NotChecked().NotChecked());
        DrawnRow gap = drawing.Rows[^1];
        Assert.Equal((RowTone.Gap, "Row 3 to Row 4: not checked, not drawn"), (gap.Tone, gap.Label));
        Assert.Contains(gap.Marks.OfType<Words>(), words => words.Text == gap.Label);
        Assert.True(gap.Marks.Max(mark => mark.Bounds.Bottom) < drawing.Rows[2].Symbols.Min(symbol => Middle(symbol).Y));
    }

    [Fact]
    public void Of_a_piece_too_large_for_every_stitch_the_first_rows_are_drawn_and_the_rest_is_named()
    {
        Drawing drawing = Draw(Fabrics.Straight("sc", 30, 30), new ChartStyle { MostCells = 500 });
        Assert.False(drawing.IsOverview);
        Assert.Equal("The piece has 960 stitches and chains, more than a page can show one by one (500). Only its first rows are drawn.", drawing.Notes.Single());
        Assert.Equal("Row 8 to Row 30: not drawn here", drawing.Rows[^1].Label);
    }

    [Fact]
    public void Of_a_piece_whose_rows_are_too_long_the_outline_is_drawn()
    {
        Drawing drawing = Draw(Fabrics.Straight("sc", 30, 30), new ChartStyle { MostCells = 200 });
        Assert.True(drawing.IsOverview);
        Assert.EndsWith("Each row is drawn as a block as long as its count.", drawing.Notes.Single(), StringComparison.Ordinal);
        Assert.All(drawing.Rows, row => Assert.Single(row.Marks.OfType<Block>()));
    }

    [Fact]
    public void A_blanket_of_four_hundred_rows_of_a_million_stitches_has_a_small_drawing()
    {
        FabricBuilder small = Fabrics.Straight("sc", 2, 1);
        WorkedRow row = small.Piece().Rows[1];
        Run run = new([row.Runs[0].Unit[1]], 1_000_000, -1);
        var rows = Enumerable.Range(1, 400).Select(n => row with { Number = n, Label = $"Row {n}", Runs = [run] }).ToEquatableArray();
        CheckedPattern pattern = small.Pattern();
        CheckedSize size = pattern.Sizes[0] with { Fabric = new Fabric("", [new WorkedPiece("", rows)]) };
        Drawing drawing = Chart.Draw(pattern with { Sizes = [size] });
        Assert.InRange(drawing.Rows.Count, 1, 400);
        Assert.True(drawing.IsOverview);
    }

    [Fact]
    public void Two_pieces_stand_one_under_the_other_and_one_can_be_drawn_alone()
    {
        CheckedPattern pattern = Fabrics.Straight("sc", 6, 2).Pattern();
        WorkedPiece front = Fabrics.Straight("sc", 6, 2).Piece() with { Name = "Front" };
        WorkedPiece back = Fabrics.DoubleRows(6, 2).Piece() with { Name = "Back" };
        pattern = pattern with { Sizes = [pattern.Sizes[0] with { Fabric = new Fabric("", [front, back]) }] };
        Drawing both = Chart.Draw(pattern);
        double frontBottom = both.Rows.Where(row => row.Piece == 0).SelectMany(row => row.Symbols).Max(symbol => Middle(symbol).Y);
        Assert.All(both.Rows.Where(row => row.Piece == 1).SelectMany(row => row.Symbols), symbol => Assert.True(Middle(symbol).Y > frontBottom));
        Assert.Equal([1], Chart.Draw(pattern, 0, new ChartStyle { Piece = 1 }).Rows.Select(row => row.Piece).Distinct());
    }

    [Fact]
    public void A_pattern_without_rows_gives_a_drawing_that_says_so()
    {
        CheckedPattern pattern = Fabrics.Straight("sc", 2, 1).Pattern();
        Drawing drawing = Chart.Draw(pattern with { Sizes = [pattern.Sizes[0] with { Fabric = new Fabric("", []) }] });
        Assert.Equal("There is nothing to draw yet: no rows were found in the text.", drawing.Notes.Single());
    }

    [Fact]
    public void The_description_tells_the_rows_in_words() =>
        Assert.Equal("Crochet chart. 2 rows or rounds. Row 1: 4 stitches. Row 2: 4 stitches.", Draw(Fabrics.Straight("sc", 4, 2)).Description);

    [Fact]
    public void A_border_in_rounds_lies_round_its_rows()
    {
        Drawing drawing = Draw(Fabrics.Straight("sc", 6, 3).Round("t1 " + FabricBuilder.Times(6, "sc")));
        Assert.Empty(drawing.Notes);
        Assert.Equal(4, drawing.Rows.Count(row => row.Row > 0 && row.Symbols.Count > 0));
    }

    /// <summary>Eight stitches along one side of a chain, three round its end and seven back along the other: stitches on both sides of it.</summary>
    [Fact]
    public void An_oval_lies_round_both_sides_of_its_chain()
    {
        const string oval = "Ch 9.\nRnd 1: Sc in 2nd ch from hook, sc in next 6 ch, 3 sc in last ch; working along other side of ch, sc in next 6 ch, 2 sc in last ch, join with sl st in first sc. (18 sc)";
        Drawing drawing = Chart.Draw(PatternCheck.Check(oval));
        Assert.False(drawing.IsOverview);
        double chain = drawing.Rows[0].Symbols.Average(symbol => Middle(symbol).Y);
        double[] sides = [.. drawing.Rows[1].Symbols.Where(symbol => symbol.Name == "sc").Select(symbol => Middle(symbol).Y - chain)];
        Assert.True(sides.Count(y => y < -0.3) >= 7 && sides.Count(y => y > 0.3) >= 7);
    }

    [Fact]
    public void Tubes_are_unrolled_so_that_each_round_begins_at_the_right()
    {
        FabricBuilder cowl = FabricBuilder.Ring(20);
        for (int i = 0; i < 4; i++) cowl.Round(FabricBuilder.Times(20, "sc"));
        foreach (DrawnRow round in Draw(cowl).Rows.Skip(1))
            Assert.True(Middle(round.Symbols[0]).X > Middle(round.Symbols[^1]).X);
    }

    [Fact]
    public void No_symbol_has_a_place_that_is_no_number()
    {
        FabricBuilder[] fabrics = [Fabrics.Sampler(), Fabrics.Shells(2, 6), Fabrics.Circle("sc", 6, 9), Fabrics.Granny(6), Fabrics.Diagonal(9), FabricBuilder.Chain(1).Row("t1 sc"), FabricBuilder.Ring(0).Round("sc")];
        Assert.All(fabrics.SelectMany(fabric => Draw(fabric).Rows).SelectMany(row => row.Symbols).SelectMany(symbol => symbol.Shapes), shape =>
            Assert.True(double.IsFinite(shape.Bounds.Left + shape.Bounds.Top + shape.Bounds.Right + shape.Bounds.Bottom)));
    }
}
