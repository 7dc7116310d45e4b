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
public sealed record ScheduledRow(int Number, string Heading, string Side, long? Stitches, long? Change, Length? Width, YarnLength? Yarn, YarnLength? Total);

/// <summary>Yarn of one colour.</summary>
/// <param name="Colour">As the pattern names it; empty where it names none.</param>
public sealed record ColourYarn(string Colour, YarnLength Length);

/// <summary>A piece, row by row.</summary>
/// <param name="Name">As headed; empty where there is no heading.</param>
/// <param name="Made">How many of it are made; at least 1.</param>
/// <param name="Construction">What it was measured by.</param>
/// <param name="Width">Finished width: side to side, or across a round.</param>
/// <param name="Height">Finished height.</param>
/// <param name="Rows">Foundation first.</param>
/// <param name="Yarn">Yarn for one.</param>
public sealed record PieceSchedule(
    string Name,
    int Made,
    Construction Construction,
    Measured<Length> Width,
    Measured<Length> Height,
    EquatableArray<ScheduledRow> Rows,
    Measured<YarnLength> Yarn)
{
    /// <summary>From which row on nothing is known, and why; null where every row was checked.</summary>
    public string? NotKnownFrom { get; init; }

    /// <summary>Yarn for one by colour; empty where not known.</summary>
    public EquatableArray<ColourYarn> Colours { get; init; }

    /// <summary>The first row by whose end half of the piece's yarn is used; null where not known.</summary>
    public string? HalfUsedAfter { get; init; }
}
