using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Studio.Materials;

/// <summary>Swatches and yarns as the engine measures with them.</summary>
internal static class Measures
{
    public static PatternStudio.Craft.Measuring.Swatch? ToMeasure(this SwatchDetails swatch) => swatch.Counted != Counting.Stitches ? null : new(
        swatch.Stitches,
        swatch.Rows,
        Length.FromCentimetres(swatch.WidthCm),
        Length.FromCentimetres(swatch.HeightCm),
        swatch.WeightGrams is { } grams ? Mass.FromGrams(grams) : null)
    {
        Stitch = swatch.Stitch.Length > 0 ? new StitchId(swatch.Stitch) : null,
    };

    /// <summary>Null where the label does not say how long and how heavy a ball is: then grams can't be turned into metres.</summary>
    public static YarnLabel? ToLabel(this YarnDetails yarn) =>
        yarn is { MetresPerBall: { } metres, GramsPerBall: { } grams }
            ? new YarnLabel(YarnLength.FromMetres(metres), Mass.FromGrams(grams))
            : null;
}
