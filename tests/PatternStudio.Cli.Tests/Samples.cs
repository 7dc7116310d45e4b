using System.Runtime.CompilerServices;

namespace PatternStudio.Cli.Tests;

/// <summary>The patterns of the samples folder, and small ones of our own.</summary>
internal static class Samples
{
    public const string Scarf =
        """
        US terms
        Ch 21.
        Row 1: Sc in 2nd ch from hook and in each ch across. (20 sts)
        Row 2: Ch 1, turn, sc in each st across. (20 sts)

        """;

    /// <summary>The same with a wrong count in row 2.</summary>
    public static readonly string WrongScarf = Scarf.Replace("across. (20 sts)\n", "across. (21 sts)\n", StringComparison.Ordinal).Replace("ch across. (21", "ch across. (20", StringComparison.Ordinal);

    public const string TwoSizes =
        """
        US terms
        Sizes: Small (Large)
        Ch 21 (31).
        Row 1: Sc in 2nd ch from hook and in each ch across. 20 (30) sts
        Row 2: Ch 1, turn, sc in each st across. 20 (30) sts

        """;

    public static string File(string name, [CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "samples", name));
}
