using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Text;
using PatternStudio.Studio.Designs;
using Needed = PatternStudio.Craft.Measuring.YarnNeed;

namespace PatternStudio.Studio.Tests;

/// <summary>From the engine's schedule to plain numbers. The numbers are worked by hand: 100 m = 50 g, so a metre weighs half a gram.</summary>
public sealed class ScheduleResultsTests
{
    private static readonly YarnLabel Label = new(YarnLength.FromMetres(100), Mass.FromGrams(50));

    [Fact]
    public void Rows_tell_grams_share_width_and_where_a_ball_ends()
    {
        SizeResults results = Of(Piece("", 1, [60, 60, 90, 40], known: true));

        Assert.Equal([30, 60, 105, 125], results.Schedule.Select(line => line.GramsSoFar));
        Assert.Equal([60, 60, 90, 40], results.Schedule.Select(line => line.Metres));
        Assert.Equal([0.24, 0.48, 0.84, 1], results.Schedule.Select(line => Math.Round(line.ShareSoFar!.Value, 9)));
        Assert.Equal(["1", "2", "3", "3"], results.Schedule.Select(line => line.Balls));
        Assert.Equal([0, 1, 1, 0], results.Schedule.Select(line => line.Marks.Count));
        Assert.All(results.Schedule, line => Assert.Equal(20, line.WidthCm));
    }

    [Fact]
    public void The_size_of_the_only_piece_is_the_size()
    {
        SizeResults results = Of(Piece("", 1, [60], known: true));

        Assert.Equal(new FinishedSize(20, 30, "Width: so wide. Height: so high."), results.Size);
        Assert.Equal("", results.WhyNoSize);
        Assert.Equal((30, 60, 1), (results.Yarn!.Grams, results.Yarn.Metres, results.Yarn.Balls));
        Assert.Equal("by the swatch. With a margin.", results.Yarn.Basis);
        Assert.Empty(results.Missing);
    }

    [Fact]
    public void Several_pieces_have_no_common_size()
    {
        SizeResults results = Of(Piece("Square", 1, [60, 60], known: true), Piece("Border", 1, [150], known: true));

        Assert.Null(results.Size);
        Assert.Equal("There are several pieces; each has a size of its own.", results.WhyNoSize);
        Assert.Equal(["Square", "Border"], results.Pieces.Select(piece => piece.Name));
        Assert.All(results.Pieces, piece => Assert.NotNull(piece.Size));
    }

    [Fact]
    public void What_is_not_known_says_why_once()
    {
        SizeResults results = Of(Piece("", 1, [null], known: false));

        Assert.Null(results.Size);
        Assert.Null(results.Yarn);
        Assert.Equal(["no swatch"], results.Missing);
        Assert.Null(Assert.Single(results.Schedule).Grams);
    }

    private static SizeResults Of(params PieceSchedule[] pieces)
    {
        Measured<Needed> need = Array.TrueForAll(pieces, piece => piece.Yarn.IsKnown)
            ? Measured.Known(Need(pieces.Sum(piece => piece.Yarn.Value.Metres)), "by the swatch")
            : Measured.NotKnown<Needed>("no swatch");
        var bare = new SizeResults("", default, [], [], null, null);
        return new ScheduleResults(new RowSchedule(pieces.ToEquatableArray(), need), Label).AddTo(bare);
    }

    private static Needed Need(double metres)
    {
        YarnLength used = YarnLength.FromMetres(metres);
        return new Needed(used, Label.WeightOf(used), used, 1, [new ColourNeed("", used, used, 1) { Label = Label }], "With a margin.");
    }

    private static PieceSchedule Piece(string name, int made, double?[] metres, bool known)
    {
        double sum = 0, whole = metres.Sum() ?? 0;
        EquatableArray<ScheduledRow> rows = metres.Select((row, index) =>
        {
            double before = sum;
            sum += row ?? 0;
            int ball = (int)(sum / 100) + 1;
            return new ScheduledRow(
                index + 1, $"Row {index + 1}", "RS", 20, 0, Length.FromCentimetres(20),
                row is { } used ? YarnLength.FromMetres(used) : null, row is null ? null : YarnLength.FromMetres(sum))
            {
                Share = row is null ? null : sum / whole,
                Balls = [new BallInUse("", ball)],
                Marks = ball > (int)(before / 100) + 1 ? [new ScheduleMark(ScheduleMarkKind.BallEnds, $"Ball {ball - 1} ends in this row.")] : [],
            };
        }).ToEquatableArray();
        return new PieceSchedule(
            name, made, new Construction(ConstructionKind.StraightRows, "rows of one width"),
            known ? Measured.Known(Length.FromCentimetres(20), "so wide") : Measured.NotKnown<Length>("no swatch"),
            known ? Measured.Known(Length.FromCentimetres(30), "so high") : Measured.NotKnown<Length>("no swatch"),
            rows,
            known ? Measured.Known(YarnLength.FromMetres(sum), "by the swatch") : Measured.NotKnown<YarnLength>("no swatch"));
    }
}
