using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Measuring;

namespace PatternStudio.Craft.Tests.Charting;

public sealed class SchematicTests
{
    private static PieceSchedule Piece(ConstructionKind kind, double width, double height, params double[] rows) => new(
        "Front", 1, new Construction(kind, "told"), Measured.Known(Length.FromCentimetres(width), "told"), Measured.Known(Length.FromCentimetres(height), "told"),
        [.. rows.Select((row, i) => new ScheduledRow(i, $"Row {i}", "RS", null, null, Length.FromCentimetres(row), null, null))], Measured.NotKnown<YarnLength>("not asked"));

    /// <summary>50 cm are 19.69 in: 19 3/4 to a quarter.</summary>
    [Fact]
    public void The_measures_stand_beside_the_outline_in_both_units()
    {
        Drawing drawing = Schematic.Draw(Piece(ConstructionKind.StraightRows, 50, 25))!;
        string[] words = [.. drawing.Rows[0].Marks.OfType<Words>().Select(word => word.Text)];
        Assert.Contains(words, word => word.StartsWith("50 cm (19", StringComparison.Ordinal));
        Assert.Equal("Front: finished measures", drawing.Title);
    }

    /// <summary>A rectangle twice as wide as high is drawn so: 30 by 15.</summary>
    [Fact]
    public void The_outline_has_the_shape_of_the_piece()
    {
        Drawing drawing = Schematic.Draw(Piece(ConstructionKind.StraightRows, 50, 25))!;
        Line[] sides = [.. drawing.Rows[0].Marks.OfType<Line>().Take(4)];
        Assert.Equal([30, 15, 30, 15], sides.Select(side => Math.Round((side.To - side.From).Length, 6)));
    }

    [Fact]
    public void Shaped_rows_are_as_wide_as_they_are()
    {
        Drawing drawing = Schematic.Draw(Piece(ConstructionKind.ShapedRows, 30, 30, 10, 20, 30))!;
        double[] corners = [.. drawing.Rows[0].Marks.OfType<Line>().Take(3).Select(side => side.From.X)];
        Assert.Equal([5, 10, 15], corners);
    }

    [Fact]
    public void Without_a_width_there_is_no_schematic() =>
        Assert.Null(Schematic.Draw(Piece(ConstructionKind.StraightRows, 50, 25) with { Width = Measured.NotKnown<Length>("no swatch") }));
}
