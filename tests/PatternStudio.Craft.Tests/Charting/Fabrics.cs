using static PatternStudio.Craft.Tests.Charting.FabricBuilder;

namespace PatternStudio.Craft.Tests.Charting;

/// <summary>The fabrics that measuring and charting are tried on; all our own.</summary>
internal static class Fabrics
{
    /// <summary>Rows of one stitch, its turning chain not counting.</summary>
    public static FabricBuilder Straight(string stitch, int stitches, int rows, int turningChain = 1)
    {
        FabricBuilder fabric = Chain(stitches);
        for (int i = 0; i < rows; i++) fabric.Row($"t{turningChain} {Times(stitches, stitch)}");
        return fabric;
    }

    /// <summary>Rows of dc with turning chains that count.</summary>
    public static FabricBuilder DoubleRows(int stitches, int rows)
    {
        FabricBuilder fabric = Chain(stitches);
        for (int i = 0; i < rows; i++) fabric.Row($"T3dc -1 {Times(stitches - 1, "dc")}");
        return fabric;
    }

    /// <summary>A flat circle: a in round 1, a more each round, in one stitch, no chains.</summary>
    public static FabricBuilder Circle(string stitch, int first, int rounds, int ring = 0)
    {
        FabricBuilder fabric = Ring(ring).Round(Times(first, stitch) + " j");
        for (int n = 2; n <= rounds; n++) fabric.Round(Times(first, $"{Times(n - 2, stitch)} 2{stitch}") + " j");
        return fabric;
    }

    /// <summary>A flat circle of dc, each round begun with a turning chain that counts.</summary>
    public static FabricBuilder DoubleCircle(int rounds)
    {
        FabricBuilder fabric = Ring(4).Round($"T3dc {Times(11, "dc")} j").Round($"T3dc dc {Times(11, "2dc")} j");
        for (int n = 3; n <= rounds; n++) fabric.Round($"T3dc -1 {Times(n - 3, "dc")} 2dc {Times(11, $"{Times(n - 2, "dc")} 2dc")} j");
        return fabric;
    }

    /// <summary>A traditional granny square of 3-dc groups, corner ch-2, side ch-1 (growth as published: 12, 24, 36 dc).</summary>
    public static FabricBuilder Granny(int rounds)
    {
        FabricBuilder fabric = Ring(4).Round(Times(4, "3dc c2") + " j");
        for (int n = 2; n <= rounds; n++)
        {
            string side = $"-3 3dc c2 =dc =dc =dc c1 {Times(n - 2, "-3 3dc c1")}";
            fabric.Round(Times(4, side) + " j");
        }
        return fabric;
    }

    /// <summary>A solid square from corner to corner: two more sc each row, then two fewer.</summary>
    public static FabricBuilder Diagonal(int half)
    {
        FabricBuilder fabric = Chain(2).Row("t1 2sc");
        for (int n = 2; n <= half; n++) fabric.Row($"t1 2sc {Times((2 * n) - 4, "sc")} 2sc");
        for (int n = half - 1; n >= 1; n--) fabric.Row($"t1 sc2tog {Times((2 * n) - 2, "sc")} sc2tog");
        return fabric;
    }

    /// <summary>A solid rectangle on the bias: rows grow, lean, fall.</summary>
    public static FabricBuilder DiagonalRectangle(int half, int leaning)
    {
        FabricBuilder fabric = Chain(2).Row("t1 2sc");
        for (int n = 2; n <= half; n++) fabric.Row($"t1 2sc {Times((2 * n) - 4, "sc")} 2sc");
        for (int i = 0; i < leaning; i++) fabric.Row(i % 2 == 0 ? $"t1 2sc {Times((2 * half) - 3, "sc")} sc2tog" : $"t1 sc2tog {Times((2 * half) - 3, "sc")} 2sc");
        for (int n = half - 1; n >= 1; n--) fabric.Row($"t1 sc2tog {Times((2 * n) - 2, "sc")} sc2tog");
        return fabric;
    }

    /// <summary>Shells of five dc in a stitch, a sc between, shifted by half a repeat every row.</summary>
    public static FabricBuilder Shells(int repeats, int rows)
    {
        FabricBuilder fabric = Chain((6 * repeats) + 1).Row("t1 sc " + Times(repeats, "-2 5dc -2 sc"));
        for (int i = 1; i < rows; i++)
            fabric.Row(i % 2 == 1
                ? "T3dc 2dc " + Times(repeats - 1, "-2 sc -2 5dc") + " -2 sc -2 3dc"
                : "t1 sc " + Times(repeats - 1, "-2 5dc -2 sc") + " -2 5dc -2 sc");
        return fabric;
    }

    /// <summary>Squares of mesh: dc, ch 1.</summary>
    public static FabricBuilder Mesh(int squares, int rows)
    {
        FabricBuilder fabric = Chain((2 * squares) + 1);
        for (int i = 0; i < rows; i++) fabric.Row("T3dc -1 " + Times(squares, "c1 -1 dc"));
        return fabric;
    }

    /// <summary>Texture: posts, clusters, puffs, popcorns, decreases.</summary>
    public static FabricBuilder Sampler() => Chain(17)
        .Row("T3dc -1 " + Times(16, "dc"))
        .Row("T3dc -1 fpdc bpdc puff cl popcorn bobble dc dc2tog dc3tog hdc tr sc dc")
        .Row("t1 " + Times(7, "sc") + " p3 " + Times(7, "sc"));
}
