using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>
/// Follows the balls through all pieces in the order of the pattern, colour by colour, as expected: which ball is on the hook at the end of each row, and in which row one ends. A piece
/// that is made several times shows the balls of its first.
/// </summary>
internal sealed class BallCount(MeasuringBasis basis)
{
    /// <summary>What is a ball to the billionth ends there.</summary>
    private const double Rounding = 1e-9;

    private readonly Dictionary<string, YarnLength> before = [];

    /// <summary>The pieces with their balls; pieces from one of unknown yarn on stay as they are.</summary>
    public PieceSchedule[] Follow(IEnumerable<PieceSchedule> pieces)
    {
        bool known = true;
        return [.. pieces.Select(piece => (known &= piece.Yarn.IsKnown) ? Follow(piece) : piece)];
    }

    private PieceSchedule Follow(PieceSchedule piece)
    {
        var rows = new List<ScheduledRow>(piece.Rows.Count);
        var reached = new Dictionary<string, int>();
        foreach (ColourYarn colour in piece.Colours)
            if (Ended(colour.Colour, YarnLength.Zero) is { } ended)
                reached[colour.Colour] = ended;
        foreach (ScheduledRow row in piece.Rows) rows.Add(Follow(row, reached));
        foreach (ColourYarn colour in piece.Colours) before[colour.Colour] = before.GetValueOrDefault(colour.Colour) + (colour.Length * piece.Made);
        return piece with { Rows = rows.ToEquatableArray() };
    }

    private ScheduledRow Follow(ScheduledRow row, Dictionary<string, int> reached)
    {
        var marks = new List<ScheduleMark>();
        var balls = new List<BallInUse>();
        foreach (ColourYarn colour in row.ColourTotals)
        {
            if (Ended(colour.Colour, colour.Length) is not { } ended) continue;
            int last = reached.GetValueOrDefault(colour.Colour);
            if (ended > last) marks.Add(new ScheduleMark(ScheduleMarkKind.BallEnds, Sentence(colour.Colour, last + 1, ended)));
            reached[colour.Colour] = ended;
            balls.Add(new BallInUse(colour.Colour, ended + 1));
        }

        return row with { Balls = balls.ToEquatableArray(), Marks = [.. row.Marks, .. marks] };
    }

    /// <summary>Whole balls used by then; null where the ball is not known.</summary>
    private int? Ended(string colour, YarnLength soFar) => basis.LabelOf(colour) is { } label
        ? (int)Math.Min(Math.Floor(((before.GetValueOrDefault(colour) + soFar) / label.BallLength) + Rounding), int.MaxValue / 1000)
        : null;

    private static string Sentence(string colour, int first, int last)
    {
        string of = colour.Length > 0 ? $" of {colour}" : "";
        return first == last ? $"Ball {first}{of} ends in this row." : $"Balls {first} to {last}{of} end in this row.";
    }
}
