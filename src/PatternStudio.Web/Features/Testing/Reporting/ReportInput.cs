using System.Globalization;
using PatternStudio.Studio.Rounds;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.Testing.Reporting;

/// <summary>A remark as typed.</summary>
public sealed record RemarkInput(string Row, string Word, string Text)
{
    /// <summary>A photo that was read already, as a data field of the form: a form that comes back because of another field keeps it.</summary>
    public KeptUpload? Photo { get; init; }

    public bool IsEmpty => Word.Length == 0 && Text.Length == 0 && Photo is null;
}

/// <summary>What a tester typed into the form, word for word: whatever is wrong with it, nothing is lost.</summary>
/// <param name="Fields">By the names of <see cref="ReportDetails"/>' properties, and 'Name'.</param>
/// <param name="Remarks">Always <see cref="RemarkPlaces"/> of them.</param>
public sealed record ReportInput(IReadOnlyDictionary<string, string> Fields, IReadOnlyList<RemarkInput> Remarks)
{
    /// <summary>Remarks that the form has room for at once; more are added by sending it again.</summary>
    public const int RemarkPlaces = 4;

    public static readonly IReadOnlyList<string> Names =
    [
        "Name", nameof(ReportDetails.Size), nameof(ReportDetails.Stitches), nameof(ReportDetails.Rows), nameof(ReportDetails.OverCm), nameof(ReportDetails.StitchesBefore),
        nameof(ReportDetails.RowsBefore), nameof(ReportDetails.HookMm), nameof(ReportDetails.Yarn), nameof(ReportDetails.YarnGrams), nameof(ReportDetails.BallMetres),
        nameof(ReportDetails.BallGrams), nameof(ReportDetails.WidthCm), nameof(ReportDetails.HeightCm), nameof(ReportDetails.Minutes), nameof(ReportDetails.Words),
    ];

    /// <summary>The report that this adds to; null for a new one.</summary>
    public Guid? AddsTo { get; init; }

    /// <summary>The version that was on the page; null where it does not say.</summary>
    public int? Version { get; init; }

    public KeptUpload? Photo { get; init; }

    public string this[string name] => Fields.TryGetValue(name, out string? typed) ? typed : "";

    /// <summary>A form to begin with.</summary>
    /// <param name="size">0-based; null where she has yet to choose.</param>
    /// <param name="version">The version that she began with.</param>
    public static ReportInput Empty(int? size, int version) => new(
        new Dictionary<string, string> { [nameof(ReportDetails.Size)] = size?.ToString(CultureInfo.InvariantCulture) ?? "", [nameof(ReportDetails.OverCm)] = "10 cm" }, NoRemarks)
        {
            Version = version,
        };

    /// <summary>A form that shows what was sent before.</summary>
    public static ReportInput From(KeptReport report)
    {
        ReportDetails told = report.Details;
        return new(new Dictionary<string, string>
        {
            [nameof(told.Size)] = told.Size.ToString(CultureInfo.InvariantCulture),
            [nameof(told.Stitches)] = Numbers.Write(told.Stitches),
            [nameof(told.Rows)] = Numbers.Write(told.Rows),
            [nameof(told.OverCm)] = told.OverCm is { } over ? $"{Numbers.Write(over)} cm" : "10 cm",
            [nameof(told.StitchesBefore)] = Numbers.Write(told.StitchesBefore),
            [nameof(told.RowsBefore)] = Numbers.Write(told.RowsBefore),
            [nameof(told.HookMm)] = Numbers.Write(told.HookMm),
            [nameof(told.Yarn)] = told.Yarn,
            [nameof(told.YarnGrams)] = Numbers.Write(told.YarnGrams),
            [nameof(told.BallMetres)] = Numbers.Write(told.BallMetres),
            [nameof(told.BallGrams)] = Numbers.Write(told.BallGrams),
            [nameof(told.WidthCm)] = Numbers.Write(told.WidthCm),
            [nameof(told.HeightCm)] = Numbers.Write(told.HeightCm),
            [nameof(told.Minutes)] = Numbers.Write(told.Minutes),
            [nameof(told.Words)] = told.Words,
        }, NoRemarks) { AddsTo = report.Id, Version = report.Version };
    }

    /// <summary>Reads numbers with their units; what can't be read is told field by field.</summary>
    public ReportDetails Read(TypedForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        if (!int.TryParse(this[nameof(ReportDetails.Size)], NumberStyles.None, CultureInfo.InvariantCulture, out int size))
            form.Refuse(nameof(ReportDetails.Size), "Choose the size that you made.");
        var read = new ReportDetails(size)
        {
            Stitches = Number(nameof(ReportDetails.Stitches), Typed.Count),
            Rows = Number(nameof(ReportDetails.Rows), Typed.Count),
            OverCm = Number(nameof(ReportDetails.OverCm), Typed.Centimetres),
            StitchesBefore = Number(nameof(ReportDetails.StitchesBefore), Typed.Count),
            RowsBefore = Number(nameof(ReportDetails.RowsBefore), Typed.Count),
            HookMm = Number(nameof(ReportDetails.HookMm), Typed.HookMillimetres),
            Yarn = this[nameof(ReportDetails.Yarn)],
            YarnGrams = Number(nameof(ReportDetails.YarnGrams), Typed.Grams),
            BallMetres = Number(nameof(ReportDetails.BallMetres), Typed.Metres),
            BallGrams = Number(nameof(ReportDetails.BallGrams), Typed.Grams),
            WidthCm = Number(nameof(ReportDetails.WidthCm), Typed.Centimetres),
            HeightCm = Number(nameof(ReportDetails.HeightCm), Typed.Centimetres),
            Minutes = Number(nameof(ReportDetails.Minutes), Typed.Minutes),
            Words = this[nameof(ReportDetails.Words)],
        };
        return read with { OverCm = (read.Stitches ?? read.Rows ?? read.StitchesBefore ?? read.RowsBefore) is null ? null : read.OverCm };

        double? Number(string name, Func<string, TypedNumber> how) => form.Optional(name, this[name], how);
    }

    private static RemarkInput[] NoRemarks => [.. Enumerable.Repeat(new RemarkInput("", "", ""), RemarkPlaces)];
}
