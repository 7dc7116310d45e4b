using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Sample;

/// <summary>The yarns of the sample studio. All invented.</summary>
internal static class SampleYarns
{
    public static readonly YarnDetails TidelineCotton = new("Tideline Cotton", "100% cotton", 4, 85, 50, "Kelp", "#5E6B3B");

    public static readonly YarnDetails QuaysideWool = new("Quayside Wool", "100% wool", 3, 120, 50, "Slate", "#4A5560");

    public static readonly YarnDetails QuaysideAran = new("Quayside Aran", "100% wool", 4, 90, 50, "Gull", "#B9BFC4");

    public static readonly YarnDetails FineCotton = new("Saltmarsh Fine Cotton", "100% cotton", 1, 200, 50, "Foam", "#F2F0E6");

    public static readonly IReadOnlyList<YarnDetails> All = [TidelineCotton, QuaysideWool, QuaysideAran, FineCotton];
}
