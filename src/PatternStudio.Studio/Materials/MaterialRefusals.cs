namespace PatternStudio.Studio.Materials;

/// <summary>Why an operation on swatches and yarns is refused, in sentences.</summary>
internal static class MaterialRefusals
{
    public static readonly FieldMessage NoSwatch =
        new("", "This swatch is not in your studio, or it was removed. Look at the design's swatches again.");

    public static readonly FieldMessage NoYarn =
        new("", "This yarn is not in your studio, or it was removed. Look at the list of yarns again.");

    public static readonly FieldMessage NoYarnOfSwatch =
        new(nameof(SwatchDetails.YarnId), "This yarn is not in your studio. Choose one from the list, or none.");

    public static readonly FieldMessage SwatchOfAnother =
        new("", "This swatch belongs to another design. Choose one of this design, or measure a new one.");

    /// <summary>What is wrong with a swatch's numbers; empty where nothing is.</summary>
    public static FieldMessage[] OfSwatch(SwatchDetails swatch) =>
    [
        .. Range(nameof(swatch.Stitches), "Stitches", swatch.Stitches, 0, 10_000, ""),
        .. Range(nameof(swatch.Rows), "Rows", swatch.Rows, 0, 10_000, ""),
        .. Range(nameof(swatch.WidthCm), "The width", swatch.WidthCm, 0, 1_000, " cm"),
        .. Range(nameof(swatch.HeightCm), "The height", swatch.HeightCm, 0, 1_000, " cm"),
        .. Range(nameof(swatch.WeightGrams), "The weight", swatch.WeightGrams, 0, 10_000, " g"),
        .. Range(nameof(swatch.HookMm), "The hook size", swatch.HookMm, 0.3, 50, " mm"),
        .. Wording.ShortFaults(nameof(swatch.Stitch), "The stitch", swatch.Stitch, Swatch.StitchLength),
        .. Wording.ShortFaults(nameof(swatch.Note), "The note", swatch.Note, Swatch.NoteLength),
    ];

    /// <summary>What is wrong with a yarn's label; empty where nothing is.</summary>
    public static FieldMessage[] OfYarn(YarnDetails yarn) =>
    [
        .. Wording.NameFaults(nameof(yarn.Name), "yarn", yarn.Name, Yarn.NameLength),
        .. Wording.ShortFaults(nameof(yarn.Fibre), "The fibre", yarn.Fibre, Yarn.NameLength),
        .. Wording.ShortFaults(nameof(yarn.ColourName), "The colour name", yarn.ColourName, Yarn.NameLength),
        .. Range(nameof(yarn.MetresPerBall), "The length of a ball", yarn.MetresPerBall, 0, 10_000, " m"),
        .. Range(nameof(yarn.GramsPerBall), "The weight of a ball", yarn.GramsPerBall, 0, 10_000, " g"),
        .. WeightClassFaults(yarn.WeightClass),
        .. ColourFaults(yarn.ColourHex),
    ];

    private static IEnumerable<FieldMessage> Range(string field, string subject, double? number, double above, double most, string unit)
    {
        if (number is { } given && !(given > above && given <= most))
            yield return new(field, $"{subject} must be more than {above}{unit} and at most {most:N0}{unit}. Measure again, and mind the unit.");
    }

    private static IEnumerable<FieldMessage> WeightClassFaults(int? weightClass)
    {
        if (weightClass is < 0 or > 7)
            yield return new(nameof(YarnDetails.WeightClass), "The yarn weight is a number from 0 (lace) to 7 (jumbo). Choose one, or none.");
    }

    private static IEnumerable<FieldMessage> ColourFaults(string hex)
    {
        if (hex.Length != 0 && !(hex.Length == 7 && hex[0] == '#' && hex.Skip(1).All(char.IsAsciiHexDigit)))
            yield return new(nameof(YarnDetails.ColourHex), "The colour must be written like #6A8F9C: a hash and six of the signs 0-9 and A-F. Or leave it empty.");
    }
}
