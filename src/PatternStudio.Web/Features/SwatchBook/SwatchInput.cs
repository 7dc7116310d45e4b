using System.Globalization;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.SwatchBook;

/// <summary>A swatch as typed into the form, number by number as written.</summary>
public sealed class SwatchInput
{
    public string Stitches { get; set; } = "";

    public string Rows { get; set; } = "";

    public string WidthCm { get; set; } = "10";

    public string HeightCm { get; set; } = "10";

    public string WeightGrams { get; set; } = "";

    public string HookMm { get; set; } = "";

    public string Note { get; set; } = "";

    public string MeasuredOn { get; set; } = "";

    public Guid? YarnId { get; set; }

    /// <summary>The vocabulary's key of the plain stitch it is worked in; empty for the design's own stitches.</summary>
    public string Stitch { get; set; } = "";

    /// <summary>An empty form for a swatch measured on a day.</summary>
    public static SwatchInput New(DateOnly today) => new() { MeasuredOn = Write(today) };

    /// <summary>A kept swatch to be corrected.</summary>
    public static SwatchInput Of(SwatchDetails kept) => new()
    {
        Stitches = Numbers.Write(kept.Stitches),
        Rows = Numbers.Write(kept.Rows),
        WidthCm = Numbers.Write(kept.WidthCm),
        HeightCm = Numbers.Write(kept.HeightCm),
        WeightGrams = Numbers.Write(kept.WeightGrams),
        HookMm = Numbers.Write(kept.HookMm),
        Note = kept.Note,
        MeasuredOn = Write(kept.MeasuredOn),
        YarnId = kept.YarnId,
        Stitch = kept.Stitch,
    };

    /// <summary>Reads the form.</summary>
    /// <param name="notANumber">The sentence for a field that is no number above zero.</param>
    /// <param name="noDay">The sentence for a day that is none.</param>
    /// <returns>The swatch; or what is wrong with which field.</returns>
    public Outcome<SwatchDetails> Read(string notANumber, string noDay)
    {
        var wrong = new List<FieldMessage>();
        double stitches = Needed(nameof(Stitches), Stitches), rows = Needed(nameof(Rows), Rows);
        double width = Needed(nameof(WidthCm), WidthCm), height = Needed(nameof(HeightCm), HeightCm);
        double? weight = Optional(nameof(WeightGrams), WeightGrams), hook = Optional(nameof(HookMm), HookMm);
        if (!DateOnly.TryParseExact(MeasuredOn, "yyyy-MM-dd", out DateOnly day)) wrong.Add(new(nameof(MeasuredOn), noDay));
        return wrong.Count > 0
            ? Outcome.Refused(wrong)
            : new SwatchDetails(stitches, rows, width, height, weight, hook, YarnId, Note.Trim(), day) { Stitch = Stitch };

        double Needed(string field, string written)
        {
            if (Numbers.ReadPositive(written) is { } number) return number;
            wrong.Add(new(field, notANumber));
            return 0;
        }

        double? Optional(string field, string written) => string.IsNullOrWhiteSpace(written) ? null : Needed(field, written);
    }

    private static string Write(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
