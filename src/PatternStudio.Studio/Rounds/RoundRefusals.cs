using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Rounds;

/// <summary>Why an operation on test rounds is refused, in sentences.</summary>
internal static class RoundRefusals
{
    public static readonly FieldMessage NoRound = new("", "This test round is not in your studio. Look at the design's rounds again.");

    public static readonly FieldMessage NoLink = new("", "This link is not in your studio. Look at the round's links again.");

    public static readonly FieldMessage NoRemark = new("", "This remark is not in your studio. Look at the round's remarks again.");

    public static readonly FieldMessage NoCorrection = new("", "This correction is not in your studio. Look at the design's corrections again.");

    public static readonly FieldMessage Withdrawn = new("", "This correction was withdrawn. Publish a new one instead.");

    public static readonly FieldMessage NoVersion = new(nameof(RoundPlan.Version), "The design has no such version. Choose one from the list.");

    public static readonly FieldMessage NotPublished = new("", "Corrections are for published designs. Move the design to 'published' first.");

    public static readonly FieldMessage Closed = new("", "This link does not open any more. Ask the designer for another.");

    public static readonly FieldMessage AllSent = new("", "All reports that this link may send have been sent. Ask the designer for another link.");

    public static readonly FieldMessage NothingReported = new("", "The report is empty. Fill in what you measured, or say something about a row.");

    /// <summary>What is wrong with a plan; empty where nothing is.</summary>
    public static FieldMessage[] OfPlan(RoundPlan plan) =>
    [
        .. Dates(plan),
        .. plan.Testers is >= 1 and <= TestRound.MostTesters ? Array.Empty<FieldMessage>()
            : [new(nameof(plan.Testers), $"The number of testers must be 1 to {TestRound.MostTesters}.")],
        .. plan.Sizes.Count > 0 ? Array.Empty<FieldMessage>() : [new(nameof(plan.Sizes), "Choose at least one size to be tested.")],
        .. plan.Asked == AskedFor.None ? [new(nameof(plan.Asked), "Choose at least one thing that testers are asked for.")] : Array.Empty<FieldMessage>(),
        .. Wording.ShortFaults(nameof(plan.Note), "The note", plan.Note, TestRound.NoteLength),
    ];

    /// <summary>What is wrong with the last day of a link; null where nothing is.</summary>
    public static FieldMessage? OfLastDay(DateOnly day, TestRound round, DateTimeOffset now) =>
        day > round.Ends ? new("lastDay", $"The round ends before, on {LongDay.Of(round.Ends)}. Choose that day or an earlier one, or leave it empty.")
        : day < round.Opens ? new("lastDay", $"The round begins on {LongDay.Of(round.Opens)}. Choose that day or a later one, or leave it empty.")
        : RoundPlan.EndOf(day) <= now ? new("lastDay", "That day is over. Choose a later one, or leave it empty.")
        : null;

    /// <summary>A size that a version does not have.</summary>
    /// <param name="sizes">The sizes' names; one empty name where there is one.</param>
    public static FieldMessage NoSize(int version, IReadOnlyList<string> sizes) => new(
        nameof(ReportDetails.Size), sizes.Count < 2 ? $"Version {version} has one size only." : $"Choose the size that you made. Version {version} has {string.Join(", ", sizes)}.");

    /// <summary>What is wrong with a report's numbers and words; empty where nothing is.</summary>
    public static FieldMessage[] OfReport(ReportDetails report) =>
    [
        .. MaterialRefusals.Range(nameof(report.Stitches), "The stitches", report.Stitches, 0, 10_000, ""),
        .. MaterialRefusals.Range(nameof(report.Rows), "The rows", report.Rows, 0, 10_000, ""),
        .. MaterialRefusals.Range(nameof(report.OverCm), "The length that was counted over", report.OverCm, 0, 1_000, " cm"),
        .. MaterialRefusals.Range(nameof(report.StitchesBefore), "The stitches before blocking", report.StitchesBefore, 0, 10_000, ""),
        .. MaterialRefusals.Range(nameof(report.RowsBefore), "The rows before blocking", report.RowsBefore, 0, 10_000, ""),
        .. OverFaults(report),
        .. MaterialRefusals.Range(nameof(report.HookMm), "The hook size", report.HookMm, 0.29, 50, " mm"),
        .. MaterialRefusals.Range(nameof(report.YarnGrams), "The yarn used", report.YarnGrams, 0, 100_000, " g"),
        .. MaterialRefusals.Range(nameof(report.BallMetres), "The length of a ball", report.BallMetres, 0, 10_000, " m"),
        .. MaterialRefusals.Range(nameof(report.BallGrams), "The weight of a ball", report.BallGrams, 0, 10_000, " g"),
        .. MaterialRefusals.Range(nameof(report.WidthCm), "The width", report.WidthCm, 0, 10_000, " cm"),
        .. MaterialRefusals.Range(nameof(report.HeightCm), "The height", report.HeightCm, 0, 10_000, " cm"),
        .. MaterialRefusals.Range(nameof(report.Minutes), "The time", report.Minutes, 0, 100_000, " minutes"),
        .. Wording.ShortFaults(nameof(report.Yarn), "The name of the yarn", report.Yarn, TesterReport.YarnLength),
        .. Wording.ShortFaults(nameof(report.Words), "What you say about the whole", report.Words, TesterReport.WordsLength),
    ];

    /// <summary>What is wrong with a remark; empty where nothing is.</summary>
    public static FieldMessage[] OfRemark(RemarkDetails remark) =>
    [
        .. string.IsNullOrWhiteSpace(remark.Text) ? [new FieldMessage(nameof(remark.Text), "Say what is not clear or not right there, or leave the row out.")] : Array.Empty<FieldMessage>(),
        .. Wording.ShortFaults(nameof(remark.Row), "The row", remark.Row, Remark.PlaceLength),
        .. Wording.ShortFaults(nameof(remark.Word), "The word", remark.Word, Remark.PlaceLength),
        .. Wording.ShortFaults(nameof(remark.Text), "The remark", remark.Text, Remark.TextLength),
    ];

    private static IEnumerable<FieldMessage> Dates(RoundPlan plan)
    {
        if (plan.Ends < plan.Opens) yield return new(nameof(plan.Ends), "The round ends before it begins. Choose a later day.");
        else if (plan.Ends.DayNumber - plan.Opens.DayNumber > 731) yield return new(nameof(plan.Ends), "The round is longer than two years. Choose an earlier day.");
    }

    private static IEnumerable<FieldMessage> OverFaults(ReportDetails report)
    {
        if (report.OverCm is null && (report.Stitches ?? report.Rows ?? report.StitchesBefore ?? report.RowsBefore) is not null)
            yield return new(nameof(report.OverCm), "Say over what length you counted, such as 10 cm or 4 in.");
    }
}
