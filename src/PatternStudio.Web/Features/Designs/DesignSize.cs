using PatternStudio.Studio.Designs;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.Designs;

/// <summary>Says the sizes of a design in a line.</summary>
internal static class DesignSize
{
    /// <summary>'S, M, L · 20 × 22 cm'; the measures are those of the first size. Null where neither names nor measures are known.</summary>
    public static string? Say(DesignSummary design)
    {
        string measures = design is { WidthCm: { } width, HeightCm: { } height } ? Numbers.Sides(width, height) : "";
        string[] parts = [.. new[] { design.Sizes, measures }.Where(part => part.Length > 0)];
        return parts.Length == 0 ? null : string.Join(" · ", parts);
    }
}
