using PatternStudio.Craft.Measuring;

namespace PatternStudio.Studio.Designs;

/// <summary>Writes a row schedule as results: plain numbers in the units of the tape measure and the scales, each with its reason.</summary>
/// <param name="schedule">The schedule of one size.</param>
/// <param name="label">The ball band that it was computed with; null for none.</param>
internal sealed class ScheduleResults(RowSchedule schedule, YarnLabel? label)
{
    private const double MostBalls = 100_000;

    public SizeResults AddTo(SizeResults bare)
    {
        // A chain alone (a hanging loop, a tie) has yarn, but no size to speak of.
        PieceResults[] pieces = [.. schedule.Pieces.Where(piece => piece.Rows.Any(row => row.Number > 0)).Select(OfPiece)];
        return bare with
        {
            Schedule = [.. schedule.Pieces.SelectMany(Lines)],
            Pieces = pieces,
            Size = pieces.Length == 1 ? pieces[0].Size : null,
            WhyNoSize = pieces.Length switch
            {
                0 => "There is no size yet: no row was found after the foundation.",
                1 => pieces[0].WhyNoSize,
                _ => "There are several pieces; each has a size of its own.",
            },
            Yarn = schedule.Yarn.IsKnown ? Need(schedule.Yarn) : null,
            WhyNoYarn = schedule.Yarn.IsKnown ? "" : schedule.Yarn.Trace,
        };
    }

    private static PieceResults OfPiece(PieceSchedule piece)
    {
        bool known = piece.Width.IsKnown && piece.Height.IsKnown;
        string why = piece.Width.IsKnown ? piece.Height.Trace : piece.Width.Trace;
        return new PieceResults(
            piece.Name,
            piece.Made,
            piece.Construction.Reason,
            known ? new FinishedSize(piece.Width.Value.Centimetres, piece.Height.Value.Centimetres, Basis(piece)) : null,
            known ? "" : why);
    }

    private static string Basis(PieceSchedule piece) =>
        piece.Width.Trace == piece.Height.Trace ? piece.Width.Trace : $"Width: {piece.Width.Trace}. Height: {piece.Height.Trace}.";

    private IEnumerable<ScheduleLine> Lines(PieceSchedule piece)
    {
        YarnLength? whole = piece.Yarn.IsKnown ? piece.Yarn.Value : null;
        YarnLength before = YarnLength.Zero;
        foreach (ScheduledRow row in piece.Rows)
        {
            yield return new ScheduleLine(
                piece.Name, row.Heading, row.Stitches,
                Grams(row.Yarn), row.Yarn?.Metres, Grams(row.Total),
                row.Total is { } total && whole is { Metres: > 0 } all ? total / all : null,
                row.Width?.Centimetres,
                BallEnding(piece, before, row.Total));
            before = row.Total ?? before;
        }
    }

    private double? Grams(YarnLength? length) => length is { } known ? label?.WeightOf(known).Grams : null;

    /// <summary>Balls can be counted along the rows only where there is nothing but this piece, made once, in one colour.</summary>
    private int? BallEnding(PieceSchedule piece, YarnLength before, YarnLength? soFar)
    {
        if (label is null || soFar is not { } after || schedule.Pieces.Count(it => !it.Rows.IsEmpty) != 1 || piece.Made != 1 || piece.Colours.Count > 1) return null;
        double ball = Math.Floor(after / label.BallLength);
        return ball <= MostBalls && ball > Math.Floor(before / label.BallLength) ? (int)ball : null;
    }

    private YarnNeed Need(Measured<PatternStudio.Craft.Measuring.YarnNeed> need) =>
        new(need.Value.Weight.Grams, need.Value.Used.Metres, need.Value.Balls, $"{need.Trace}. {need.Value.Assumption}")
        {
            BuyMetres = need.Value.Buy.Metres,
            Colours =
            [
                .. need.Value.Colours.Select(colour =>
                    new ColourShare(colour.Colour, Grams(colour.Used) ?? 0, colour.Used.Metres, colour.Balls)),
            ],
        };
}
