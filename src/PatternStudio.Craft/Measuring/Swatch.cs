using System.Globalization;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Measuring;

/// <summary>What a swatch counts.</summary>
public enum SwatchKind
{
    /// <summary>Stitches and rows, or stitches and rounds one above the other.</summary>
    Stitches,

    /// <summary>Repeats of the stitch pattern across, rows up.</summary>
    Repeats,

    /// <summary>Tiles of a corner-to-corner fabric.</summary>
    Tiles,

    /// <summary>The first rounds of the design itself, measured across: 'Rnds 1 and 2 = 7 cm across'.</summary>
    Rounds,
}

/// <summary>Rows or rounds of the design by their numbers, first and last included.</summary>
public readonly record struct RowRange(int First, int Last)
{
    /// <summary>'Row 3', 'Rows 2–5'.</summary>
    public override string ToString() => First == Last ? $"Row {First}" : $"Rows {First}–{Last}";
}

/// <summary>Width and height of a piece of fabric.</summary>
public readonly record struct FabricSize(Length Width, Length Height);

/// <summary>
/// A swatch: so many stitches and rows measured over a width and a height, and what that piece of fabric weighs.
/// </summary>
/// <param name="Stitches">Stitches across <paramref name="Width"/>, chains of spaces counted one each (or repeats, or tiles: <see cref="Kind"/>); above 0, but 0 for rounds.</param>
/// <param name="Rows">Rows in <paramref name="Height"/>; 0 where they were not counted, and then no height is known.</param>
/// <param name="Width">The width that they measure, blocked as the piece will be.</param>
/// <param name="Height">The height that they measure.</param>
/// <param name="Weight">The weight of a piece of exactly that width and height; null where it was not weighed.</param>
public sealed record Swatch(double Stitches, double Rows, Length Width, Length Height, Mass? Weight)
{
    /// <summary>What <see cref="Stitches"/> counts.</summary>
    public SwatchKind Kind { get; init; }

    /// <summary>The stitch it is worked in ('16 dc = 10 cm'); null for '16 sts': the pattern's own stitches.</summary>
    public StitchId? Stitch { get; init; }

    /// <summary>The rows of the design that it is worked in, over and over ('in Rows 2 and 3'); null for the whole design's mix. For rounds, the rounds measured.</summary>
    public RowRange? Over { get; init; }

    /// <summary>Stitches in one repeat, where said ('one repeat (6 sts) = 3 cm'); null for the design's stated multiple.</summary>
    public double? StitchesPerRepeat { get; init; }

    /// <summary>Its size before it was blocked; null where not measured.</summary>
    public FabricSize? BeforeBlocking { get; init; }

    /// <summary>The hook; null where not said.</summary>
    public HookSize? Hook { get; init; }

    /// <summary>The yarn it is worked in, where that is not the design's; null for the design's.</summary>
    public YarnLabel? Yarn { get; init; }

    /// <summary>Who worked it; empty for the designer. Several swatches of one maker tell less than one each of several.</summary>
    public string Maker { get; init; } = "";

    /// <summary>The day it was measured; null where not said.</summary>
    public DateOnly? MeasuredOn { get; init; }

    /// <summary>The maker's own words.</summary>
    public string Note { get; init; } = "";

    /// <summary>What one stitch takes of the width. Only for <see cref="SwatchKind.Stitches"/>.</summary>
    public Length StitchWidth => Width / Stitches;

    /// <summary>What one row adds to the height. Only where rows were counted.</summary>
    public Length RowHeight => Height / Rows;

    /// <summary>The same swatch as it was before blocking, for sizes on the hook; null where that was not measured.</summary>
    public Swatch? Unblocked => BeforeBlocking is { } before ? this with { Width = before.Width, Height = before.Height, BeforeBlocking = null } : null;

    /// <summary>The same swatch counted in stitches; null where a repeat's stitches are not known.</summary>
    /// <param name="multiple">Stitches in a repeat as the design states its multiple; null where it states none.</param>
    public Swatch? InStitches(int? multiple) => Kind switch
    {
        SwatchKind.Stitches => this,
        SwatchKind.Repeats when (StitchesPerRepeat ?? multiple) is > 0 and { } each => this with { Kind = SwatchKind.Stitches, Stitches = Stitches * each },
        _ => null,
    };

    /// <summary>
    /// Reads '16 sts, 18 rows = 10 x 10 cm, 12 g', '13 sts and 7.5 rows = 4 in', '16 dc and 9 rows over 10 cm square', '4 repeats (24 sts) and 8 rows = 12 x 9 cm',
    /// '5 x 5 tiles = 12 x 12 cm', 'Rnds 1 and 2 = 7 cm across'; with 'before blocking 11 x 10 cm', '5 mm hook' and the weight where they are given. Words
    /// after the numbers are a note ('in pattern', 'after blocking'), unless they name the stitch ('over treble') or rows ('in Rows 2 and 3').
    /// </summary>
    /// <param name="text">What was typed.</param>
    /// <param name="terms">Whose words stitches are named in: 'dc' is another stitch in the United Kingdom.</param>
    public static Parsed<Swatch> Parse(string text, Terminology terms = Terminology.Us)
    {
        ArgumentNullException.ThrowIfNull(text);
        return RoundsReader.Read(text) ?? new SwatchReader(text, terms).Read();
    }

    /// <summary>Reads a gauge as patterns state it, where the rows may be left out ('18 sc = 10 cm'): heights are then not known.</summary>
    public static Parsed<Swatch> ParseStated(string text, Terminology terms = Terminology.Us)
    {
        ArgumentNullException.ThrowIfNull(text);
        return RoundsReader.Read(text) ?? new SwatchReader(text, terms) { RowsMayLack = true }.Read();
    }

    /// <summary>'16 sts and 18 rows = 10 × 10 cm, 12 g', as traces name it.</summary>
    public override string ToString()
    {
        string weight = Weight is { } mass ? $", {mass}" : "";
        string size = string.Create(CultureInfo.InvariantCulture, $"{Width.Centimetres:0.##} × {Height.Centimetres:0.##} cm{weight}");
        if (Kind == SwatchKind.Rounds) return $"Rnds {Over?.First}–{Over?.Last} = {Width.InCentimetres()} across{weight}";
        string name = Kind switch { SwatchKind.Repeats => "repeats", SwatchKind.Tiles => "tiles", _ => Stitch?.Value ?? "sts" };
        string up = Kind == SwatchKind.Tiles ? "tiles high" : "rows";
        return Rows > 0
            ? string.Create(CultureInfo.InvariantCulture, $"{Stitches:0.##} {name} and {Rows:0.##} {up} = {size}")
            : string.Create(CultureInfo.InvariantCulture, $"{Stitches:0.##} {name} = {Width.Centimetres:0.##} cm{weight}");
    }
}
