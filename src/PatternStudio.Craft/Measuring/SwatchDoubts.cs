using System.Globalization;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>
/// Questions about a swatch whose numbers can hardly be. They are asked and nothing is changed: the maker has the fabric in her hands. The limits are wide, so that no
/// lace and no rope is questioned.
/// </summary>
public static class SwatchDoubts
{
    /// <summary>No row is so many stitch widths high or low: the tallest stitch in use (quintuple treble) is under 6.</summary>
    private const double MostSlender = 10;

    /// <summary>Stitch widths in millimetres: thread lace has some 0.8, arms-thick yarn some 80 (from memory); a stitch width is between half and six times the hook.</summary>
    private const double Narrowest = 0.4;
    private const double Widest = 150;
    private const double HooksLeast = 0.5;
    private const double HooksMost = 6;

    /// <summary>Grams of a square decimetre: thread lace some 1, rope rugs some 50 (from memory).</summary>
    private const double Lightest = 0.1;
    private const double Heaviest = 200;

    /// <summary>Yarn in one stitch beside its width: single crochet takes some 8 (see the yarn model's document), tall and crossed stitches more.</summary>
    private const double YarnLeast = 2;
    private const double YarnMost = 120;

    /// <summary>Blocking stretches lace by a half; more is another piece of fabric.</summary>
    private const double BlockingMost = 2;

    /// <summary>Hands differ by a quarter; twice is another stitch, another hook or another unit.</summary>
    private const double HandsMost = 1.8;

    /// <summary>Questions about one swatch; empty where there are none.</summary>
    /// <param name="swatch">The swatch.</param>
    /// <param name="yarn">The ball band, so that grams can be told in metres; null where not known.</param>
    public static EquatableArray<string> Of(Swatch swatch, YarnLabel? yarn = null)
    {
        ArgumentNullException.ThrowIfNull(swatch);
        return ((string?[])[Slender(swatch), Width(swatch), Hook(swatch), Weight(swatch), Density(swatch), YarnOfStitch(swatch, swatch.Yarn ?? yarn), Blocking(swatch)])
            .OfType<string>().ToEquatableArray();
    }

    /// <summary>Questions about swatches of one design that can't be of the same fabric.</summary>
    public static EquatableArray<string> Between(IReadOnlyList<Swatch> swatches)
    {
        ArgumentNullException.ThrowIfNull(swatches);
        var doubts = new List<string>();
        for (int i = 1; i < swatches.Count; i++)
            if (Between(swatches[0], swatches[i]) is { } doubt)
                doubts.Add(doubt);
        return doubts.ToEquatableArray();
    }

    private static string? Between(Swatch first, Swatch other)
    {
        if (first.Kind != SwatchKind.Stitches || other.Kind != SwatchKind.Stitches || first.Stitch != other.Stitch) return null;
        double ratio = other.StitchWidth / first.StitchWidth;
        if (ratio is < HandsMost and > 1 / HandsMost) return null;
        string unit = ratio is > 2.3 and < 2.8 or > 1 / 2.8 and < 1 / 2.3 ? " That is about an inch to a centimetre: was one measured in the other unit?" : " Was one of them worked in another stitch, or with another hook?";
        return string.Create(CultureInfo.InvariantCulture, $"The stitches of '{other}' are {ratio:0.0#} times as wide as those of '{first}'.{unit}");
    }

    private static string? Slender(Swatch swatch)
    {
        if (swatch.Kind != SwatchKind.Stitches || swatch.Rows <= 0 || swatch.Stitches <= 0) return null;
        double high = swatch.RowHeight / swatch.StitchWidth;
        return high is > MostSlender or < 1 / MostSlender
            ? string.Create(CultureInfo.InvariantCulture, $"A row would be {high:0.##} stitch widths high, which no stitch is. Are stitches and rows, or width and height, exchanged, or is one measured in the other unit?")
            : null;
    }

    private static string? Width(Swatch swatch)
    {
        if (swatch.Kind != SwatchKind.Stitches || swatch.Stitches <= 0) return null;
        double millimetres = swatch.StitchWidth.Millimetres;
        return millimetres switch
        {
            < Narrowest => string.Create(CultureInfo.InvariantCulture, $"{swatch.Stitches:0.##} stitches don't fit into {swatch.Width.InCentimetres()}: each would be {millimetres:0.##} mm wide. Is the width right?"),
            > Widest => string.Create(CultureInfo.InvariantCulture, $"Each stitch would be {millimetres / 10:0.#} cm wide. Is the width right, and the count?"),
            _ => null,
        };
    }

    private static string? Hook(Swatch swatch)
    {
        if (swatch.Hook is not { Millimetres: > 0 } hook || swatch.Kind != SwatchKind.Stitches || swatch.Stitches <= 0) return null;
        double hooks = swatch.StitchWidth.Millimetres / hook.Millimetres;
        return hooks is < HooksLeast or > HooksMost
            ? string.Create(CultureInfo.InvariantCulture, $"A stitch {swatch.StitchWidth.Millimetres:0.#} mm wide is seldom made with a {hook} hook. Is the hook right?")
            : null;
    }

    private static string? Weight(Swatch swatch) => swatch.Weight switch
    {
        { Grams: < 0 } => "A weight below 0 can't be. What do the scales show?",
        { Grams: 0 } => "The swatch weighs nothing. If the scales are too coarse, weigh several swatches, or leave the weight out; yarn is not known until then.",
        _ => null,
    };

    private static string? Density(Swatch swatch)
    {
        if (swatch.Weight is not { Grams: > 0 } weight) return null;
        double squareDecimetres = swatch.Width.Centimetres * swatch.Height.Centimetres / 100;
        double grams = weight.Grams / squareDecimetres;
        return grams is < Lightest or > Heaviest
            ? string.Create(CultureInfo.InvariantCulture, $"{weight} on {swatch.Width.InCentimetres()} × {swatch.Height.InCentimetres()} would be {grams:0.##} g for 10 × 10 cm. Is it the weight of just that piece, in grams?")
            : null;
    }

    private static string? YarnOfStitch(Swatch swatch, YarnLabel? yarn)
    {
        if (yarn is null || swatch.Kind != SwatchKind.Stitches || swatch.Weight is not { Grams: > 0 } weight || swatch.Rows <= 0 || swatch.Stitches <= 0) return null;
        double each = yarn.LengthOf(weight).Metres * 1000 / (swatch.Stitches * swatch.Rows);
        double widths = each / swatch.StitchWidth.Millimetres;
        return widths is < YarnLeast or > YarnMost
            ? string.Create(CultureInfo.InvariantCulture, $"By weight and ball band ({yarn}) each stitch would take {each / 10:0.#} cm of yarn, {widths:0.#} times its width. Is the weight right, and is it this yarn?")
            : null;
    }

    private static string? Blocking(Swatch swatch)
    {
        if (swatch.BeforeBlocking is not { } before || before.Width <= Length.Zero || before.Height <= Length.Zero) return null;
        double width = swatch.Width / before.Width, height = swatch.Height / before.Height;
        return Math.Max(width, height) > BlockingMost || Math.Min(width, height) < 1 / BlockingMost
            ? string.Create(CultureInfo.InvariantCulture, $"Blocking would have made it {width:0.0#} times as wide and {height:0.0#} times as high. Were both sizes measured on the same swatch?")
            : null;
    }
}
