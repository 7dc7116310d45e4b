using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>A row of the schedule.</summary>
/// <param name="Number">Its number; 0 for a foundation.</param>
/// <param name="Heading">'Row 3'.</param>
/// <param name="Side">'RS' or 'WS'.</param>
/// <param name="Stitches">The total by the pattern's own convention; null where not checked.</param>
/// <param name="Change">Stitches more (or less, below 0) than the row before; null where either is not known.</param>
/// <param name="Width">How wide the piece is there: the row's length, or across the round; null where not known.</param>
/// <param name="Yarn">Yarn of this row; null where not known.</param>
/// <param name="Total">Yarn of the piece up to and with this row; null where not known.</param>
public sealed record ScheduledRow(int Number, string Heading, string Side, long? Stitches, long? Change, Length? Width, YarnLength? Yarn, YarnLength? Total)
{
    /// <summary>The words that call for it, as the pattern writes them.</summary>
    public string Instruction { get; init; } = "";

    /// <summary>The section it stands in: 'Border'; empty where there is none.</summary>
    public string Section { get; init; } = "";

    /// <summary>Stitches by kind, and chain spaces by length; empty where not checked.</summary>
    public EquatableArray<KeyValuePair<string, long>> Counts { get; init; }

    public EquatableArray<KeyValuePair<string, long>> Spaces { get; init; }

    /// <summary>Yarn of this row by colour; empty where not known.</summary>
    public EquatableArray<ColourYarn> Colours { get; init; }

    /// <summary>Yarn of the piece so far by colour; empty where not known.</summary>
    public EquatableArray<ColourYarn> ColourTotals { get; init; }

    /// <summary>The balls on the hook at its end, by colour, counted over all pieces; empty where not known.</summary>
    public EquatableArray<BallInUse> Balls { get; init; }

    /// <summary>The part of the piece's yarn that is used up to and with it, 0 to 1. Needs no scale; null where not known.</summary>
    public double? Share { get; init; }

    /// <summary>Working time of this row and of the piece so far; null where the speed is not known.</summary>
    public TimeSpan? Time { get; init; }

    public TimeSpan? TimeSoFar { get; init; }

    /// <summary>What happens in this row that a maker wants to know beforehand.</summary>
    public EquatableArray<ScheduleMark> Marks { get; init; }
}

/// <summary>The ball that is worked from.</summary>
/// <param name="Colour">As the pattern names it.</param>
/// <param name="Number">1 for the first of this colour.</param>
public readonly record struct BallInUse(string Colour, int Number);

/// <summary>What a mark is about.</summary>
public enum ScheduleMarkKind
{
    /// <summary>A ball ends in this row.</summary>
    BallEnds,

    /// <summary>Half of the piece's yarn is used by its end.</summary>
    HalfUsed,

    /// <summary>The longest row: the shape turns here.</summary>
    LongestRow,

    /// <summary>The last row before a border: so much yarn must be left.</summary>
    LeaveForBorder,
}

/// <summary>A mark at a row, with its sentence.</summary>
public sealed record ScheduleMark(ScheduleMarkKind Kind, string Text);

/// <summary>Yarn of one colour.</summary>
/// <param name="Colour">As the pattern names it; empty where it names none.</param>
public sealed record ColourYarn(string Colour, YarnLength Length);
