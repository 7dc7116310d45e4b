using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;
using PatternStudio.Studio.Rounds;

namespace PatternStudio.Web.Features.Testing.Reporting;

/// <summary>What a tester's gauge makes of her size.</summary>
/// <param name="Width">Finished width with her gauge; null where not known.</param>
/// <param name="Height">Finished height with her gauge; null where she counted no rows, or it is not known.</param>
/// <param name="PrintedWidth">The width with the printed gauge; null where not known.</param>
/// <param name="PrintedHeight">The height with the printed gauge.</param>
public sealed record GaugeTelling(string? Width, string? Height, string? PrintedWidth, string? PrintedHeight)
{
    /// <summary>Null where she counted nothing, or the pattern has several pieces or can't be measured.</summary>
    public static GaugeTelling? Of(CheckedPattern pattern, ReportDetails report)
    {
        if (report is not { Stitches: { } stitches, OverCm: { } over } || report.Size >= pattern.Sizes.Count) return null;
        Length counted = Length.FromCentimetres(over);
        PieceSchedule? mine = Piece(pattern, new MeasuringBasis([new Swatch(stitches, report.Rows ?? 0, counted, counted, null)], null), report.Size);
        PieceSchedule? printed = Piece(pattern, StatedMaterials.Of(pattern), report.Size);
        var told = new GaugeTelling(Say(mine?.Width), Say(mine?.Height), Say(printed?.Width), Say(printed?.Height));
        return told.Width is null && told.Height is null ? null : told;
    }

    private static PieceSchedule? Piece(CheckedPattern pattern, MeasuringBasis basis, int size)
    {
        Measured<RowSchedule> schedule = RowSchedule.Compute(pattern, basis, size);
        if (!schedule.IsKnown) return null;
        PieceSchedule[] pieces = [.. schedule.Value.Pieces.Where(piece => piece.Rows.Any(row => row.Number > 0))];
        return pieces is [var only] ? only : null;
    }

    private static string? Say(Measured<Length>? length) => length is { IsKnown: true } known ? known.Value.ForPrint() : null;
}
