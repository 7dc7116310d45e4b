using PatternStudio.Craft.Measuring;

namespace PatternStudio.Studio.Designs;

/// <summary>Writes a row schedule as results: plain numbers in the units of the tape measure and the scales, each with its reason.</summary>
/// <param name="schedule">The schedule of one size.</param>
/// <param name="label">The ball band that it was computed with; null for none.</param>
internal sealed class ScheduleResults(RowSchedule schedule, YarnLabel? label)
{
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
            Minutes = schedule.Time?.TotalMinutes,
            Doubts = [.. schedule.Doubts],
            Spread = schedule.Spread is { } spread ? $"{spread}." : "",
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
            known ? "" : why)
        {
            AroundCm = piece.Around is { IsKnown: true } around ? around.Value.Centimetres : null,
        };
    }

    private static string Basis(PieceSchedule piece) =>
        piece.Width.Trace == piece.Height.Trace ? piece.Width.Trace : $"Width: {piece.Width.Trace}. Height: {piece.Height.Trace}.";

    private IEnumerable<ScheduleLine> Lines(PieceSchedule piece) => piece.Rows.Select(row => new ScheduleLine(
        piece.Name, row.Heading, row.Stitches, Grams(row.Yarn), row.Yarn?.Metres, Grams(row.Total), row.Share, row.Width?.Centimetres)
    {
        Section = row.Section,
        Balls = string.Join(", ", row.Balls.Select(ball => $"{ball.Colour} {ball.Number}".Trim())),
        MinutesSoFar = row.TimeSoFar?.TotalMinutes,
        Marks = [.. row.Marks.Select(mark => mark.Text)],
    });

    private double? Grams(YarnLength? length) => length is { } known ? label?.WeightOf(known).Grams : null;

    private static YarnNeed Need(Measured<PatternStudio.Craft.Measuring.YarnNeed> need)
    {
        PatternStudio.Craft.Measuring.YarnNeed found = need.Value;
        bool labelled = found.Colours.All(colour => colour.Label is not null);
        return new(labelled ? found.Weight.Grams : null, found.Used.Metres, labelled ? found.Balls : null, $"{need.Trace}. {found.Assumption}")
        {
            BuyMetres = found.Buy.Metres,
            LowMetres = found.Low.Metres,
            HighMetres = found.High.Metres,
            IsRough = found.IsRough,
            Colours =
            [
                .. found.Colours.Select(colour => new ColourShare(
                    colour.Colour, colour.Label?.WeightOf(colour.Used).Grams, colour.Used.Metres, colour.Label is null ? null : colour.Balls)),
            ],
        };
    }
}
