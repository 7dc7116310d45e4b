using System.CommandLine;
using PatternStudio.Craft.Checking;

namespace PatternStudio.Cli;

/// <summary>Which size of a pattern, by its name.</summary>
internal static class SizeOption
{
    public static Option<string?> Create() => new("--size")
    {
        Description = "The size, by its name in the pattern; the first where not given.",
        HelpName = "NAME",
    };

    /// <summary>The size's 0-based index.</summary>
    /// <exception cref="Refusal">The pattern has no such size.</exception>
    public static int Find(CheckedPattern pattern, string? name)
    {
        if (name is null) return 0;
        string[] names = [.. pattern.Sizes.Select(size => size.Name)];
        int found = Array.FindIndex(names, size => size.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase));
        if (found >= 0 && name.Length > 0) return found;
        throw new Refusal(pattern.HasSizes
            ? $"The pattern has no size '{name}'; it has {string.Join(", ", names)}."
            : $"The pattern has one size only, without a name; leave out --size {name}.");
    }
}
