using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;

namespace PatternStudio.Web.Features.Testing.Reporting;

/// <summary>What a tester's gauge makes of her size.</summary>
/// <param name="Width">Finished width with her gauge; null where not known.</param>
/// <param name="Height">Finished height with her gauge; null where she counted no rows, or it is not known.</param>
/// <param name="PrintedWidth">The width with the printed gauge; null where not known.</param>
/// <param name="PrintedHeight">The height with the printed gauge.</param>
public sealed record GaugeTelling(string? Width, string? Height, string? PrintedWidth, string? PrintedHeight)
{
    /// <summary>Null where nothing is known: the pattern has several pieces, or can't be measured.</summary>
    /// <param name="mine">The piece with her gauge.</param>
    /// <param name="printed">The piece with the printed gauge.</param>
    public static GaugeTelling? Of(PieceSchedule? mine, PieceSchedule? printed)
    {
        var told = new GaugeTelling(Say(mine?.Width), Say(mine?.Height), Say(printed?.Width), Say(printed?.Height));
        return told.Width is null && told.Height is null ? null : told;
    }

    /// <summary>A gauge as she counted it.</summary>
    public static MeasuringBasis Counted(double stitches, double? rows, double overCm)
    {
        Length over = Length.FromCentimetres(overCm);
        return new MeasuringBasis([new Swatch(stitches, rows ?? 0, over, over, null)], null);
    }

    /// <summary>The only piece; null where there are several or nothing can be measured.</summary>
    public static PieceSchedule? Piece(CheckedPattern pattern, MeasuringBasis basis, int size)
    {
        Measured<RowSchedule> schedule = RowSchedule.Compute(pattern, basis, size);
        if (!schedule.IsKnown) return null;
        PieceSchedule[] pieces = [.. schedule.Value.Pieces.Where(piece => piece.Rows.Any(row => row.Number > 0))];
        return pieces is [var only] ? only : null;
    }

    private static string? Say(Measured<Length>? length) => length is { IsKnown: true } known ? known.Value.ForPrint() : null;
}
