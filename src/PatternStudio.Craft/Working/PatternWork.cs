using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>One size of a pattern, worked.</summary>
/// <param name="Fabric">The worked rows.</param>
/// <param name="Mishaps">What went wrong, each at its cause.</param>
/// <param name="Conventions">What the pattern takes for granted, as found.</param>
public sealed record PatternWork(Fabric Fabric, EquatableArray<Mishap> Mishaps, Conventions Conventions);
