using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Working;

/// <summary>Works an instruction tree into a fabric, row upon row.</summary>
public static class PatternWorker
{
    /// <summary>Works one size of a pattern.</summary>
    /// <param name="pattern">The tree.</param>
    /// <param name="size">0-based index into <see cref="Pattern.Sizes"/>.</param>
    public static Fabric Work(Pattern pattern, int size) => new(pattern.Sizes[size], []);
}
