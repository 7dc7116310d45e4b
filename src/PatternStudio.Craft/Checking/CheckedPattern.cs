using PatternStudio.Craft.Checking.Fixes;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Checking;

/// <summary>A pattern read, worked in every size and checked: what everything after it is computed from.</summary>
/// <param name="Pattern">The instruction tree.</param>
/// <param name="Sizes">One for each size, in the pattern's order; never empty.</param>
/// <param name="Findings">In the order of the text.</param>
public sealed record CheckedPattern(Pattern Pattern, EquatableArray<CheckedSize> Sizes, EquatableArray<Finding> Findings)
{
    /// <summary>True where the pattern has more than one size.</summary>
    public bool HasSizes => Sizes.Count > 1;

    /// <summary>True where an error was found.</summary>
    public bool HasErrors => Findings.Any(finding => finding.Severity == Severity.Error);

    /// <summary>Fixes that wait for their proof; null for none.</summary>
    internal Proposals? Proposed { get; init; }
}

/// <summary>One size, worked.</summary>
/// <param name="Fabric">The worked rows with all their cells.</param>
/// <param name="Rows">The same rows as reports, foundations left out.</param>
/// <param name="Read">How much was read and checked.</param>
public sealed record CheckedSize(Fabric Fabric, IReadOnlyList<RowReport> Rows, ReadSummary Read)
{
    /// <summary>How counts go on over repeated rows, where that follows from the rows.</summary>
    public EquatableArray<GrowthLaw> Laws { get; init; }

    /// <summary>The size's name; empty where there is one only.</summary>
    public string Name => Fabric.Size;
}

/// <summary>Rows in all, rows read whole, rows worked whole.</summary>
public readonly record struct ReadSummary(int Rows, int Read, int Checked);
