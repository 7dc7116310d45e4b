using System.Globalization;
using System.Text.RegularExpressions;

namespace PatternStudio.Studio.StitchLibrary;

/// <summary>What kind of fabric a stitch pattern makes.</summary>
public enum StitchKind { Plain, Rib, Texture, Shells, Lace, Waves, Colour, Edging }

/// <summary>A stitch pattern to begin a design from, in US terms, as wide as wanted.</summary>
/// <param name="Key">Its name in addresses: 'moss'.</param>
/// <param name="Also">Other words it may be looked for by.</param>
/// <param name="Difficulty">1 for a beginner, 2 with some practice, 3 for experienced hands.</param>
/// <param name="Multiple">'6 + 1': stitches of a repeat and those beside the repeats.</param>
/// <param name="About">What the fabric is like.</param>
public sealed partial record LibraryStitch(
    string Key, string Name, StitchKind Kind, string Also, int Difficulty, string Multiple, string About)
{
    /// <summary>Fewest and most repeats that a design may begin with.</summary>
    public const int FewestRepeats = 3, MostRepeats = 1_000;

    /// <summary>The pattern, with numbers that depend on the width as '{6n+1}'.</summary>
    public required string Template { get; init; }

    /// <summary>Stitches of one repeat.</summary>
    public int StitchesEach => int.Parse(Multiple.Split('+')[0], CultureInfo.InvariantCulture);

    /// <summary>Stitches across in all: the multiple, so many times, and what is beside it.</summary>
    public int StitchesFor(int repeats) =>
        (StitchesEach * repeats) + (Multiple.Split('+') is [_, var beside] ? int.Parse(beside, CultureInfo.InvariantCulture) : 0);

    /// <summary>The pattern for a width, as it would be written by hand.</summary>
    /// <param name="repeats">3 to 1 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer or more repeats.</exception>
    public string Write(int repeats)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(repeats, FewestRepeats);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(repeats, MostRepeats);
        return $"{Name}\nUS terms\nStitch multiple: {Multiple}\n\n{Number().Replace(Template, number => Reckon(number, repeats).ToString(CultureInfo.InvariantCulture))}";
    }

    private static int Reckon(Match number, int repeats)
    {
        int each = number.Groups[1].Length > 0 ? int.Parse(number.Groups[1].ValueSpan, CultureInfo.InvariantCulture) : 1;
        int beside = number.Groups[2].Length > 0 ? int.Parse(number.Groups[2].ValueSpan, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture) : 0;
        return (each * repeats) + beside;
    }

    [GeneratedRegex(@"\{([0-9]*)n([+-][0-9]+)?\}")]
    private static partial Regex Number();
}
