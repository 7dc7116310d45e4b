using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Sample;

/// <summary>The yarns of the sample studio. All invented.</summary>
internal static class SampleYarns
{
    public static readonly YarnDetails TidelineCotton = new("Tideline Cotton", "100% cotton", 4, 85, 50, "Kelp", "#5E6B3B")
    {
        Care = "40 °C, dry flat",
        Price = 3.40m,
        Currency = "EUR",
    };

    public static readonly YarnDetails QuaysideWool = new("Quayside Wool", "100% wool", 3, 120, 50, "Slate", "#4A5560")
    {
        Care = "hand wash, dry flat",
        Price = 5.90m,
        Currency = "EUR",
    };

    public static readonly YarnDetails QuaysideAran = new("Quayside Aran", "100% wool", 4, 90, 50, "Gull", "#B9BFC4");

    public static readonly YarnDetails FineCotton = new("Saltmarsh Fine Cotton", "100% cotton", 1, 200, 50, "Foam", "#F2F0E6");

    /// <summary>What of them is in the cupboard: enough for a cloth, and a wool in two dye lots.</summary>
    public static readonly IReadOnlyList<(YarnDetails Yarn, int Balls, double? OpenedGrams, string DyeLot, string Place)> Lots =
    [
        (TidelineCotton, 2, 18, "K 214", "top shelf"),
        (QuaysideWool, 1, null, "S 07", "basket by the window"),
        (QuaysideWool, 1, 30, "S 11", "basket by the window"),
    ];

    public static readonly IReadOnlyList<YarnDetails> All = [TidelineCotton, QuaysideWool, QuaysideAran, FineCotton];
}
