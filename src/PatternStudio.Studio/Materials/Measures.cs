using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Studio.Materials;

/// <summary>Swatches and yarns as the engine measures with them.</summary>
public static class Measures
{
    /// <summary>
    /// What sizes and yarn are computed from. Without a swatch it is what the pattern itself states. Samples of another stitch pattern by name tell nothing of the
    /// design's own stitches and are left out, unless the gauge is one.
    /// </summary>
    internal static MeasuringBasis ToBasis(this DesignMaterials materials, CheckedPattern pattern)
    {
        MeasuringBasis stated = StatedMaterials.Of(pattern);
        YarnLabel? label = materials.Yarn?.ToLabel() ?? (materials.Yarn is null ? stated.Yarn : null);
        if (materials.Swatches is not [{ Details: { } gauge }, ..])
            return stated with { Yarn = label, YarnWeight = materials.Yarn?.WeightClass ?? stated.YarnWeight };
        MeasuredSwatch[] telling = [.. materials.Swatches.Where(swatch => swatch.Details.Pattern.Equals(gauge.Pattern, StringComparison.OrdinalIgnoreCase))];
        return new MeasuringBasis(telling.Select(swatch => swatch.Details.ToMeasure(swatch.Yarn)).ToEquatableArray(), label)
        {
            YarnWeight = materials.Yarn?.WeightClass,
            Hook = gauge.HookMm is { } hook ? new HookSize(hook) : null,
            StitchesPerMinute = Speed(telling),
        };
    }

    /// <summary>A swatch as the engine takes it.</summary>
    /// <param name="yarn">The yarn it is worked in; null for the design's.</param>
    public static PatternStudio.Craft.Measuring.Swatch ToMeasure(this SwatchDetails swatch, YarnDetails? yarn = null) => new(
        swatch.Stitches,
        swatch.Counted == Counting.Rounds ? 0 : swatch.Rows,
        Length.FromCentimetres(swatch.WidthCm),
        Length.FromCentimetres(swatch.HeightCm),
        swatch.WeightGrams is { } grams ? Mass.FromGrams(grams) : null)
    {
        Stitch = swatch.Stitch.Length > 0 ? new StitchId(swatch.Stitch) : null,
        Kind = (SwatchKind)swatch.Counted,
        Over = swatch.Counted == Counting.Rounds ? new RowRange(1, (int)swatch.Rows) : swatch is { FromRow: { } from, ToRow: { } to } ? new RowRange(from, to) : null,
        StitchesPerRepeat = swatch.StitchesEach,
        BeforeBlocking = swatch is { WidthBeforeCm: { } width, HeightBeforeCm: { } height }
            ? new FabricSize(Length.FromCentimetres(width), Length.FromCentimetres(height)) : null,
        Hook = swatch.HookMm is { } hook ? new HookSize(hook) : null,
        Yarn = yarn?.ToLabel(),
        MeasuredOn = swatch.MeasuredOn,
        Note = swatch.Note,
    };

    /// <summary>Null where the label does not say how long and how heavy a ball is: then grams can't be turned into metres.</summary>
    public static YarnLabel? ToLabel(this YarnDetails yarn) =>
        yarn is { MetresPerBall: { } metres, GramsPerBall: { } grams }
            ? new YarnLabel(YarnLength.FromMetres(metres), Mass.FromGrams(grams))
            : null;

    /// <summary>Stitches in a minute, of all swatches that were timed; null where none was.</summary>
    private static double? Speed(IEnumerable<MeasuredSwatch> swatches)
    {
        SwatchDetails[] timed = [.. swatches.Select(swatch => swatch.Details).Where(swatch => swatch is { Minutes: > 0, Counted: Counting.Stitches })];
        return timed.Length == 0 ? null : timed.Sum(swatch => swatch.Stitches * swatch.Rows) / timed.Sum(swatch => swatch.Minutes!.Value);
    }
}
