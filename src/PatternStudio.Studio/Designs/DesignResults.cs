using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Designs;

/// <summary>Computes what the desk shows, without saving: the same numbers that a save stores.</summary>
public static class DesignResults
{
    /// <summary>The version of the engine, kept beside everything it computes.</summary>
    public static string EngineVersion { get; } =
        typeof(PatternCheck).Assembly.GetName().Version?.ToString(3) ?? "0.0.0";

    /// <summary>Computes the results of a text. Pure: the same input gives the same results, and nothing is read or written.</summary>
    /// <param name="text">The pattern.</param>
    /// <param name="swatch">The swatch that calibrates size and yarn; null for none.</param>
    /// <param name="yarn">The yarn it is made of; null for none.</param>
    public static Results Compute(string text, SwatchDetails? swatch = null, YarnDetails? yarn = null)
    {
        CheckedPattern pattern = PatternCheck.Check(text);
        return new Results(
            EngineVersion,
            pattern.Pattern.Terms.Terminology == Terminology.Uk ? "UK" : "US",
            [.. pattern.Findings.Select(finding => Locate(pattern.Pattern.Source, finding))],
            [.. pattern.Sizes.Select(size => Measure(size, swatch, yarn))]);
    }

    private static LocatedFinding Locate(SourceText source, Finding finding)
    {
        LinePosition position = source.Locate(finding.Span.Start);
        return new LocatedFinding(finding, position.Line, position.Column);
    }

    private static SizeResults Measure(CheckedSize size, SwatchDetails? swatch, YarnDetails? yarn) =>
        new(size.Name, size.Read, [.. size.Rows], [], null, null, null);
}
