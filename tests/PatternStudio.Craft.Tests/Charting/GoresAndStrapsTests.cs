using PatternStudio.Craft.Charting.Layout;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Charting;

/// <summary>What no flat disc can show: balls that close, bags with straps. Drawn so by custom of the trade: common practice, no source.</summary>
public sealed class GoresAndStrapsTests
{
    private const string Ball = "Rnd 1: 6 sc in magic ring (6)\nRnd 2: inc x 6 (12)\nRnd 3: (sc, inc) x 6 (18)\nRnds 4-5: sc around (18)\n";

    /// <summary>18 stitches in 6 gores of 3; a decrease of the two last of each leaves 2, then 1. Both of its feet are one stitch apart, so no leg is longer than √(1² + 1²) and a little.</summary>
    [Fact]
    public void A_ball_closes_in_gores_whose_decreases_are_two_stitches_wide()
    {
        List<LaidRow> rows = Laid(Ball + "Rnd 6: (sc, dec) x 6 (12)\nRnd 7: dec x 6 (6)");
        var standing = new Standing(rows);
        LaidCell[] decreases = [.. rows.Skip(6).SelectMany(row => row.Cells).Where(cell => cell.Cell.Feet.Count == 2)];
        Assert.Equal(12, decreases.Length);
        Assert.All(decreases, cell => Assert.All(cell.Cell.Feet, foot => Assert.InRange((standing.Of(foot, cell.Top)!.Value - cell.Top).Length, 0.9, 1.6)));
        // The last stitch of each gore stands farther out than all below it.
        Assert.True(rows[7].Cells.Min(cell => cell.Top.Length) > rows[6].Cells.Max(cell => cell.Top.Length));
    }

    /// <summary>Decreases that do not stand above each other make no gores: the sc of the next round reach over what would be cut open.</summary>
    [Fact]
    public void Decreases_set_off_from_each_other_are_not_cut_open() =>
        Assert.Null(Peeled(Ball + "Rnd 6: (sc, dec) x 6 (12)\nRnd 7: sc, (dec, sc 2) twice, dec, sc (9)"));

    /// <summary>30 chains over 10 of 30 stitches: the strap lies wholly outside the rim, and the stitches beside it stand where they are worked.</summary>
    [Fact]
    public void A_strap_is_an_arch_beside_the_opening()
    {
        List<LaidRow> rows = Laid("Rnd 1: 6 sc in magic ring (6)\nRnd 2: inc x 6 (12)\nRnd 3: (sc, inc) x 6 (18)\nRnd 4: (2 sc, inc) x 6 (24)\nRnd 5: (3 sc, inc) x 6 (30)\nRnd 6: sc in next 20 sc, ch 30, sk next 10 sc. (20 sc, 1 ch-30 sp)");
        LaidCell strap = rows[^1].Cells.Single(cell => cell.Cell.Kind == CellKind.Chains);
        Assert.True(strap.Top.Length > rows[^2].Cells.Max(cell => cell.Top.Length) + 2);
        Assert.All(rows[^1].Cells.Where(cell => cell.Width == 1), cell => Assert.InRange((cell.Top - rows[^2].Cells[cell.Cell.Feet[0].Place].Top).Length, 0.9, 1.1));
    }

    private static List<LaidRow> Laid(string text)
    {
        CheckedPattern pattern = PatternCheck.Check(text);
        Assert.False(pattern.HasErrors);
        return [.. new Layouts(pattern.Sizes[0].Fabric.Pieces[0], new StitchForms(pattern.Pattern)).Lay()];
    }

    private static List<LaidRow>? Peeled(string text)
    {
        CheckedPattern pattern = PatternCheck.Check(text);
        Assert.False(pattern.HasErrors);
        var forms = new StitchForms(pattern.Pattern);
        var layouts = new Layouts(pattern.Sizes[0].Fabric.Pieces[0], forms);
        return new Gores(layouts.Cells, forms, layouts.Lay()).Lay();
    }
}
