using System.Globalization;
using Microsoft.Extensions.Localization;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.SwatchBook;

/// <summary>A swatch as typed into the form, number by number as written.</summary>
public sealed class SwatchInput
{
    /// <summary>The choice 'some rows of the design' among the stitches.</summary>
    public const string SomeRows = "rows";

    /// <summary>The choice 'another stitch pattern' among the stitches.</summary>
    public const string Named = "named";

    public Counting Counted { get; set; } = Counting.Stitches;

    public string Stitches { get; set; } = "";

    public string StitchesEach { get; set; } = "";

    public string Rows { get; set; } = "";

    public string WidthCm { get; set; } = "10";

    public string HeightCm { get; set; } = "10";

    public string WidthBeforeCm { get; set; } = "";

    public string HeightBeforeCm { get; set; } = "";

    public string WeightGrams { get; set; } = "";

    public string HookMm { get; set; } = "";

    public string Minutes { get; set; } = "";

    public string Note { get; set; } = "";

    public string MeasuredOn { get; set; } = "";

    public Guid? YarnId { get; set; }

    /// <summary>What it is worked in: empty for the design's own stitches, <see cref="SomeRows"/>, <see cref="Named"/>, or the vocabulary's key of a plain stitch.</summary>
    public string WorkedIn { get; set; } = "";

    public string FromRow { get; set; } = "";

    public string ToRow { get; set; } = "";

    public string Pattern { get; set; } = "";

    /// <summary>An empty form for a swatch measured on a day.</summary>
    public static SwatchInput New(DateOnly today) => new() { MeasuredOn = Write(today) };

    /// <summary>A kept swatch to be corrected.</summary>
    public static SwatchInput Of(SwatchDetails kept) => new()
    {
        Counted = kept.Counted,
        Stitches = kept.Counted == Counting.Rounds ? "" : Numbers.Write(kept.Stitches),
        StitchesEach = Numbers.Write(kept.StitchesEach),
        Rows = Numbers.Write(kept.Rows),
        WidthCm = Numbers.Write(kept.WidthCm),
        HeightCm = Numbers.Write(kept.HeightCm),
        WidthBeforeCm = Numbers.Write(kept.WidthBeforeCm),
        HeightBeforeCm = Numbers.Write(kept.HeightBeforeCm),
        WeightGrams = Numbers.Write(kept.WeightGrams),
        HookMm = Numbers.Write(kept.HookMm),
        Minutes = Numbers.Write(kept.Minutes),
        Note = kept.Note,
        MeasuredOn = Write(kept.MeasuredOn),
        YarnId = kept.YarnId,
        WorkedIn = kept.FromRow is not null ? SomeRows : kept.Pattern.Length > 0 ? Named : kept.Stitch,
        FromRow = Numbers.Write(kept.FromRow),
        ToRow = Numbers.Write(kept.ToRow),
        Pattern = kept.Pattern,
    };

    /// <summary>Puts other words into every field.</summary>
    public void TakeFrom(SwatchInput other)
    {
        (Counted, Stitches, StitchesEach, Rows) = (other.Counted, other.Stitches, other.StitchesEach, other.Rows);
        (WidthCm, HeightCm, WidthBeforeCm, HeightBeforeCm) = (other.WidthCm, other.HeightCm, other.WidthBeforeCm, other.HeightBeforeCm);
        (WeightGrams, HookMm, YarnId, Note, MeasuredOn) = (other.WeightGrams, other.HookMm, other.YarnId, other.Note, other.MeasuredOn);
        (WorkedIn, FromRow, ToRow, Pattern, Minutes) = (other.WorkedIn, other.FromRow, other.ToRow, other.Pattern, other.Minutes);
    }

    /// <summary>Reads the form.</summary>
    /// <returns>The swatch; or what is wrong with which field.</returns>
    public Outcome<SwatchDetails> Read(IStringLocalizer<SwatchWords> words)
    {
        var form = new TypedForm();
        bool rounds = Counted == Counting.Rounds;
        double stitches = rounds ? 0 : form.Needed(nameof(Stitches), Stitches, Typed.Count, words["CountMissing"]);
        double rows = form.Needed(nameof(Rows), Rows, Typed.Count, words["CountMissing"]);
        double width = form.Needed(nameof(WidthCm), WidthCm, Typed.Centimetres, words["LengthMissing"]);
        double height = rounds ? width : form.Needed(nameof(HeightCm), HeightCm, Typed.Centimetres, words["LengthMissing"]);
        double? weight = form.Optional(nameof(WeightGrams), WeightGrams, Typed.Grams), hook = form.Optional(nameof(HookMm), HookMm, Typed.HookMillimetres);
        if (!DateOnly.TryParseExact(MeasuredOn, "yyyy-MM-dd", out DateOnly day)) form.Refuse(nameof(MeasuredOn), words["NoDay"]);
        var swatch = new SwatchDetails(stitches, rows, width, height, weight, hook, YarnId, Note.Trim(), day)
        {
            Counted = Counted,
            Stitch = WorkedIn is SomeRows or Named ? "" : WorkedIn,
            Pattern = WorkedIn == Named ? Pattern.Trim() : "",
            StitchesEach = Counted == Counting.Repeats ? form.Optional(nameof(StitchesEach), StitchesEach, Typed.Count) : null,
            WidthBeforeCm = form.Optional(nameof(WidthBeforeCm), WidthBeforeCm, Typed.Centimetres),
            HeightBeforeCm = form.Optional(nameof(HeightBeforeCm), HeightBeforeCm, Typed.Centimetres),
            Minutes = form.Optional(nameof(Minutes), Minutes, Typed.Minutes),
            FromRow = WorkedIn == SomeRows ? (int)form.Needed(nameof(FromRow), FromRow, Typed.Whole, words["RowMissing"]) : null,
            ToRow = WorkedIn == SomeRows ? (int)form.Needed(nameof(ToRow), ToRow, Typed.Whole, words["RowMissing"]) : null,
        };
        if (WorkedIn == Named && swatch.Pattern.Length == 0) form.Refuse(nameof(Pattern), words["PatternMissing"]);
        return form.Wrong.Count > 0 ? Outcome.Refused(form.Wrong) : swatch;
    }

    private static string Write(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
