using System.Reflection;
using PatternStudio.Craft.Checking;
using PatternStudio.Publishing;

namespace PatternStudio.Studio.Designs;

/// <summary>Which make of the program computed something.</summary>
internal static class EngineStamp
{
    /// <summary>
    /// '0.1.0+1a2b3c4d.5e6f7a8b.9c0d1e2f': the version, and the build marks of engine, painter and studio. Builds are deterministic, so the
    /// marks change when the code does and at no other time.
    /// </summary>
    public static string Text { get; } = Of(typeof(PatternCheck).Assembly, typeof(SvgPainter).Assembly, typeof(EngineStamp).Assembly);

    private static string Of(params Assembly[] parts) =>
        $"{parts[0].GetName().Version?.ToString(3)}+{string.Join('.', parts.Select(MarkOf))}";

    private static string MarkOf(Assembly part) => part.ManifestModule.ModuleVersionId.ToString("N")[..8];
}
