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

    public static readonly FieldMessage YarnInCupboard =
        new("", "Some of this yarn is in the cupboard. Remove it there first.");

    /// <summary>What is wrong with a swatch's numbers; empty where nothing is.</summary>
    public static FieldMessage[] OfSwatch(SwatchDetails swatch) =>
    [
        .. Range(nameof(swatch.Stitches), swatch.Counted.ToString(), swatch.Counted == Counting.Rounds ? null : swatch.Stitches, 0, 10_000, ""),
        .. Range(nameof(swatch.Rows), swatch.Counted == Counting.Rounds ? "Rounds" : "Rows", swatch.Rows, 0, 10_000, ""),
        .. Range(nameof(swatch.StitchesEach), "The stitches of one repeat", swatch.StitchesEach, 0, 10_000, ""),
        .. Range(nameof(swatch.Minutes), "The minutes", swatch.Minutes, 0, 100_000, ""),
        .. RowFaults(swatch),
        .. Range(nameof(swatch.WidthCm), "The width", swatch.WidthCm, 0, 1_000, " cm"),
        .. Range(nameof(swatch.HeightCm), "The height", swatch.HeightCm, 0, 1_000, " cm"),
        .. Range(nameof(swatch.WidthBeforeCm), "The width before blocking", swatch.WidthBeforeCm, 0, 1_000, " cm"),
        .. Range(nameof(swatch.HeightBeforeCm), "The height before blocking", swatch.HeightBeforeCm, 0, 1_000, " cm"),
        .. Range(nameof(swatch.WeightGrams), "The weight", swatch.WeightGrams, 0, 10_000, " g"),
        .. Range(nameof(swatch.HookMm), "The hook size", swatch.HookMm, 0.3, 50, " mm"),
        .. Wording.ShortFaults(nameof(swatch.Stitch), "The stitch", swatch.Stitch, Swatch.StitchLength),
        .. Wording.ShortFaults(nameof(swatch.Pattern), "The name of the stitch pattern", swatch.Pattern, Swatch.PatternLength),
        .. Wording.ShortFaults(nameof(swatch.Note), "The note", swatch.Note, Swatch.NoteLength),
    ];

    /// <summary>What is wrong with a yarn's label; empty where nothing is.</summary>
    public static FieldMessage[] OfYarn(YarnDetails yarn) =>
    [
        .. Wording.NameFaults(nameof(yarn.Name), "yarn", yarn.Name, Yarn.NameLength),
        .. Wording.ShortFaults(nameof(yarn.Fibre), "The fibre", yarn.Fibre, Yarn.NameLength),
        .. Wording.ShortFaults(nameof(yarn.ColourName), "The colour name", yarn.ColourName, Yarn.NameLength),
        .. Wording.ShortFaults(nameof(yarn.Care), "The care", yarn.Care, Yarn.CareLength),
        .. Range(nameof(yarn.MetresPerBall), "The length of a ball", yarn.MetresPerBall, 0, 10_000, " m"),
        .. Range(nameof(yarn.GramsPerBall), "The weight of a ball", yarn.GramsPerBall, 0, 10_000, " g"),
        .. WeightClassFaults(yarn.WeightClass),
        .. PriceFaults(yarn),
        .. ColourFaults(yarn.ColourHex),
    ];

    internal static IEnumerable<FieldMessage> Range(string field, string subject, double? number, double above, double most, string unit)
    {
        if (number is { } given && !(given > above && given <= most))
            yield return new(field, $"{subject} must be more than {above}{unit} and at most {most:N0}{unit}. Measure again, and mind the unit.");
    }

    private static IEnumerable<FieldMessage> RowFaults(SwatchDetails swatch)
    {
        if (swatch is { FromRow: null, ToRow: null }) yield break;
        if (swatch is not { FromRow: >= 1 and <= 100_000, ToRow: >= 1 and <= 100_000 } || swatch.ToRow < swatch.FromRow)
            yield return new(nameof(swatch.FromRow), "Say from which row to which it is worked, such as 2 to 3, the lower number first.");
    }

    private static IEnumerable<FieldMessage> WeightClassFaults(int? weightClass)
    {
        if (weightClass is < 0 or > 7)
            yield return new(nameof(YarnDetails.WeightClass), "The yarn weight is a number from 0 (lace) to 7 (jumbo). Choose one, or none.");
    }

    private static IEnumerable<FieldMessage> PriceFaults(YarnDetails yarn)
    {
        if (yarn.Price is < 0 or > 100_000)
            yield return new(nameof(YarnDetails.Price), "The price of a ball must be 0 to 100,000. Leave it empty where it is not known.");
        if (yarn.Price is not null && !(yarn.Currency.Length == 3 && yarn.Currency.All(char.IsAsciiLetterUpper)))
            yield return new(nameof(YarnDetails.Currency), "Say in which currency the price is, by its three letters: EUR, GBP, USD.");
    }

    private static IEnumerable<FieldMessage> ColourFaults(string hex)
    {
        if (hex.Length != 0 && !(hex.Length == 7 && hex[0] == '#' && hex.Skip(1).All(char.IsAsciiHexDigit)))
            yield return new(nameof(YarnDetails.ColourHex), "The colour must be written like #6A8F9C: a hash and six of the signs 0-9 and A-F. Or leave it empty.");
    }
}
