using System.Text.Json;
using System.Text.Json.Serialization;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;

namespace PatternStudio.Cli.Json;

/// <summary>What <c>schedule --json</c> writes. What is not known is null, and <see cref="NotKnown"/> says why.</summary>
/// <param name="Size">The size's name; absent where the pattern has one size.</param>
/// <param name="WidthCm">Finished width; null where there are several pieces, which have their own.</param>
/// <param name="YarnM">Yarn that the pattern is expected to use, all pieces made.</param>
/// <param name="BuyM">What nine makers in ten will not run out of.</param>
/// <param name="Balls">Whole balls of that.</param>
/// <param name="AroundCm">Once round, for one piece that is a tube or a hat.</param>
/// <param name="LowM">90 makers of 100 use between this and <paramref name="HighM"/>.</param>
/// <param name="Rough">True where yarn is a guess without a weighed swatch.</param>
/// <param name="Doubts">Questions about the swatches.</param>
/// <param name="Errors">Errors that <c>check</c> finds in the pattern; numbers of a faulty pattern deserve doubt.</param>
internal sealed record ScheduleJson(
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Size,
    double? WidthCm,
    double? HeightCm,
    double? YarnM,
    double? BuyM,
    int? Balls,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? AroundCm,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? LowM,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? HighM,
    bool Rough,
    IReadOnlyList<string> Doubts,
    int Errors,
    IReadOnlyList<string> NotKnown,
    IReadOnlyList<ScheduledRowJson> Rows,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] IReadOnlyList<ScheduledPieceJson>? Pieces)
{
    public static string Write(RowSchedule schedule, CheckedPattern pattern, int size) =>
        JsonSerializer.Serialize(From(schedule, pattern, size), CliJson.Readable.ScheduleJson);

    private static ScheduleJson From(RowSchedule schedule, CheckedPattern pattern, int size)
    {
        bool several = schedule.Pieces.Count > 1;
        ScheduledPieceJson[] pieces = [.. schedule.Pieces.Select(ScheduledPieceJson.From)];
        YarnNeed? need = schedule.Yarn.IsKnown ? schedule.Yarn.Value : null;
        return new ScheduleJson(
            pattern.HasSizes ? pattern.Sizes[size].Name : null,
            several ? null : pieces[0].WidthCm,
            several ? null : pieces[0].HeightCm,
            Rounded.Metres(need?.Used),
            Rounded.Metres(need?.Buy),
            need?.Balls is > 0 and { } balls ? balls : null,
            !several && pieces[0].AroundCm is { } around ? around : null,
            Rounded.Metres(need?.Low),
            Rounded.Metres(need?.High),
            need?.IsRough ?? false,
            [.. schedule.Doubts],
            pattern.Findings.Count(finding => finding.Severity == Severity.Error),
            [.. Reasons(schedule).Distinct()],
            [.. schedule.Pieces.SelectMany(piece => piece.Rows.Select(row => ScheduledRowJson.From(row, several ? piece.Name : null)))],
            several ? pieces : null);
    }

    private static IEnumerable<string> Reasons(RowSchedule schedule)
    {
        foreach (PieceSchedule piece in schedule.Pieces)
        {
            if (!piece.Width.IsKnown) yield return piece.Width.Trace;
            if (!piece.Height.IsKnown) yield return piece.Height.Trace;
        }

        if (!schedule.Yarn.IsKnown) yield return schedule.Yarn.Trace;
    }
}

/// <summary>A row of the schedule; 0 is the foundation.</summary>
/// <param name="YarnM">Yarn of this row.</param>
/// <param name="TotalM">Yarn of the piece up to and with this row.</param>
internal sealed record ScheduledRowJson(int Number, string Heading, long? Stitches, double? WidthCm, double? YarnM, double? TotalM, [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] IReadOnlyList<string>? Marks)
{
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Piece { get; init; }

    public static ScheduledRowJson From(ScheduledRow row, string? piece) => new(
        row.Number, row.Heading, row.Stitches, Rounded.Centimetres(row.Width), Rounded.Metres(row.Yarn), Rounded.Metres(row.Total), row.Marks.IsEmpty ? null : [.. row.Marks.Select(mark => mark.Text)]) { Piece = piece };
}

/// <summary>A piece of several.</summary>
/// <param name="Made">How many of it are made.</param>
internal sealed record ScheduledPieceJson(string Name, int Made, double? WidthCm, double? HeightCm, double? YarnM, [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? AroundCm)
{
    public static ScheduledPieceJson From(PieceSchedule piece) => new(
        piece.Name,
        piece.Made,
        piece.Width.IsKnown ? Rounded.Centimetres(piece.Width.Value) : null,
        piece.Height.IsKnown ? Rounded.Centimetres(piece.Height.Value) : null,
        piece.Yarn.IsKnown ? Rounded.Metres(piece.Yarn.Value) : null,
        piece.Around is { IsKnown: true } around ? Rounded.Centimetres(around.Value) : null);
}

/// <summary>Fabric to the millimetre, yarn to the centimetre: finer than anybody measures.</summary>
internal static class Rounded
{
    public static double? Centimetres(Length? length) => length is { } known ? Math.Round(known.Centimetres, 1) : null;

    public static double? Metres(YarnLength? length) => length is { } known ? Math.Round(known.Metres, 2) : null;
}
