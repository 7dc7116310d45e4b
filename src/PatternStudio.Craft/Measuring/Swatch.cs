using System.Globalization;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Measuring;

/// <summary>
/// A swatch: so many stitches and rows measured over a width and a height, and what that piece of fabric weighs.
/// </summary>
/// <param name="Stitches">Stitches across <paramref name="Width"/>, chains of spaces counted one each; above 0.</param>
/// <param name="Rows">Rows in <paramref name="Height"/>; above 0.</param>
/// <param name="Width">The width that they measure, blocked as the piece will be.</param>
/// <param name="Height">The height that they measure.</param>
/// <param name="Weight">The weight of a piece of exactly that width and height; null where it was not weighed.</param>
public sealed record Swatch(double Stitches, double Rows, Length Width, Length Height, Mass? Weight)
{
    /// <summary>The stitch it is worked in ('16 dc = 10 cm'); null for '16 sts': the pattern's own stitches.</summary>
    public StitchId? Stitch { get; init; }

    /// <summary>What one stitch takes of the width.</summary>
    public Length StitchWidth => Width / Stitches;

    /// <summary>What one row adds to the height.</summary>
    public Length RowHeight => Height / Rows;

    /// <summary>
    /// Reads '16 sts, 18 rows = 10 x 10 cm, 12 g', '13 sts and 7.5 rows = 4 in', '16 dc and 9 rows over 10 cm square'.
    /// The weight may be left out. Words after the numbers are a note ('in pattern', 'after blocking'), unless they name the stitch ('over treble').
    /// </summary>
    /// <param name="text">What was typed.</param>
    /// <param name="terms">Whose words stitches are named in: 'dc' is another stitch in the United Kingdom.</param>
    public static Parsed<Swatch> Parse(string text, Terminology terms = Terminology.Us)
    {
        ArgumentNullException.ThrowIfNull(text);
        return new SwatchReader(text, terms).Read();
    }

    /// <summary>'16 sts and 18 rows = 10 × 10 cm, 12 g', as traces name it.</summary>
    public override string ToString()
    {
        string name = Stitch?.Value ?? "sts";
        string weight = Weight is { } mass ? $", {mass}" : "";
        return string.Create(CultureInfo.InvariantCulture, $"{Stitches:0.##} {name} and {Rows:0.##} rows = {Width.Centimetres:0.##} × {Height.Centimetres:0.##} cm{weight}");
    }
}
