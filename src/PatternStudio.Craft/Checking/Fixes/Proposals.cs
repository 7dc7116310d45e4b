using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Checking.Fixes;

/// <summary>Findings with fixes that nobody has tried yet.</summary>
/// <param name="Findings">All findings of the text.</param>
/// <param name="Told">The terminology that the check was told; null for none.</param>
internal sealed record Proposals(EquatableArray<Finding> Findings, Terminology? Told);
