using PatternStudio.Craft.Charting.InSpace;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;

namespace PatternStudio.Craft.Tests.Charting;

/// <summary>
/// Published rules for flat circles (craftymaria.blogspot.com/2009/06: 6 sc, 8 hdc, 12 dc more each round; mkcarroll.com/blog/2009/5/14: dc 10 to 12, tr 12 to 14, 8 sc ruffled for one
/// tester). Fewer make a bowl, more a ruffle: a flat circle needs 2π × height ÷ width more each round.
/// </summary>
public sealed class FlatnessTests
{
    private static PieceFlatness Circle(string stitch, int first, int rounds = 7)
    {
        CheckedPattern pattern = Fabrics.Circle(stitch, first, rounds).Pattern();
        return FlatnessFinder.Find(pattern.Sizes[0].Fabric.Pieces[0], new StitchForms(pattern.Pattern));
    }

    [Theory]
    [InlineData("sc", 6)]
    [InlineData("hdc", 8)]
    [InlineData("dc", 12)]
    [InlineData("dc", 10)]
    public void The_published_numbers_lie_flat(string stitch, int more)
    {
        PieceFlatness flat = Circle(stitch, more);
        Assert.Equal((Shape3.Flat, "It lies flat."), (flat.Shape, flat.Text));
    }

    [Theory]
    [InlineData("sc", 4)]
    [InlineData("dc", 7)]
    public void Too_few_make_a_bowl(string stitch, int more) => Assert.Equal(Shape3.Cupped, Circle(stitch, more).Shape);

    [Theory]
    [InlineData("sc", 9)]
    [InlineData("dc", 20)]
    public void Too_many_ruffle(string stitch, int more) => Assert.Equal(Shape3.Ruffled, Circle(stitch, more).Shape);

    /// <summary>Round 5 of 4 more each: 20 stitches; 2π × 5 × 0.95 = 29.8 would lie flat, 10 more.</summary>
    [Fact]
    public void It_says_how_many_stitches_would_lie_flat()
    {
        RoundFlatness fifth = Circle("sc", 4).Rounds[4];
        Assert.Equal((20, 29.8, 10), (fifth.Stitches, Math.Round(fifth.Flat, 1), fifth.Change));
    }

    /// <summary>Six rounds of a flat circle, then four without increases: a bowl whose side begins there.</summary>
    [Fact]
    public void A_bowl_says_where_its_side_begins()
    {
        FabricBuilder bowl = Fabrics.Circle("sc", 6, 6);
        for (int i = 0; i < 4; i++) bowl.Round(FabricBuilder.Times(36, "sc") + " j");
        CheckedPattern pattern = bowl.Pattern();
        PieceFlatness found = FlatnessFinder.Find(pattern.Sizes[0].Fabric.Pieces[0], new StitchForms(pattern.Pattern));
        Assert.Equal(Shape3.Cupped, found.Shape);
        Assert.InRange(found.Begins!.Row, 7, 9);
        Assert.StartsWith("It lies flat up to Rnd ", found.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_piece_in_rows_has_no_rounds_to_tell_of()
    {
        CheckedPattern pattern = Fabrics.Straight("sc", 6, 3).Pattern();
        Assert.Equal(Shape3.NotKnown, FlatnessFinder.Find(pattern.Sizes[0].Fabric.Pieces[0], new StitchForms(pattern.Pattern)).Shape);
    }
}
