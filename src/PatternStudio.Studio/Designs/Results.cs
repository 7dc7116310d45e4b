using PatternStudio.Craft.Checking;

namespace PatternStudio.Studio.Designs;

/// <summary>Everything computed from a text, a swatch and a yarn: what the desk shows and what a save stores.</summary>
/// <param name="EngineVersion">The version of the engine that computed it.</param>
/// <param name="Terms">'US' or 'UK': the terms that the pattern was read in.</param>
/// <param name="Findings">In the order of the text.</param>
/// <param name="Sizes">One for each size of the pattern; never empty.</param>
public sealed record Results(
    string EngineVersion, string Terms, IReadOnlyList<LocatedFinding> Findings, IReadOnlyList<SizeResults> Sizes)
{
    /// <summary>Number of findings that are errors.</summary>
    public int Errors => Findings.Count(found => found.Finding.Severity == Severity.Error);

    /// <summary>Number of findings that are warnings.</summary>
    public int Warnings => Findings.Count(found => found.Finding.Severity == Severity.Warning);
}

/// <summary>A finding and where it stands as people count.</summary>
/// <param name="Line">1-based line.</param>
/// <param name="Column">1-based column.</param>
public sealed record LocatedFinding(Finding Finding, int Line, int Column);
