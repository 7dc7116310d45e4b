using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Tests;

/// <summary>Texts, a swatch and a yarn of our own invention.</summary>
public static class Texts
{
    /// <summary>A right pattern.</summary>
    public const string Cloth = """
        Ch 21.
        Row 1: Sc in 2nd ch from hook and in each ch across. (20 sc)
        Row 2: Ch 1, turn, sc in each st across. (20 sc)
        """;

    /// <summary>The same with a wrong count in line 3.</summary>
    public const string WrongCloth = """
        Ch 21.
        Row 1: Sc in 2nd ch from hook and in each ch across. (20 sc)
        Row 2: Ch 1, turn, sc in each st across. (21 sc)
        """;

    public static readonly SwatchDetails Swatch =
        new(20, 24, 12, 11.5, 9.5, 4.5, null, "Washed.", new DateOnly(2026, 2, 14));

    public static readonly YarnDetails Yarn = new("Marram Cotton", "100% cotton", 4, 85, 50, "Dusk", "#8899AA");
}
