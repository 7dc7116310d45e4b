using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>Yarn of one section of a piece.</summary>
/// <param name="Name">As headed; empty for what stands before the first heading.</param>
/// <param name="From">Its first row: 'Rnd 1'.</param>
/// <param name="Yarn">Yarn of it.</param>
/// <param name="Colours">The same by colour.</param>
public sealed record SectionYarn(string Name, string From, YarnLength Yarn, EquatableArray<ColourYarn> Colours);

/// <summary>A piece, row by row.</summary>
/// <param name="Name">As headed; empty where there is no heading.</param>
/// <param name="Made">How many of it are made; at least 1.</param>
/// <param name="Construction">What it was measured by.</param>
/// <param name="Width">Finished width: side to side, across a round, or a tube laid flat.</param>
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
    /// <summary>Once round, for tubes and hats; null for other pieces.</summary>
    public Measured<Length>? Around { get; init; }

    /// <summary>From which row on nothing is known, and why; null where every row was checked.</summary>
    public string? NotKnownFrom { get; init; }

    /// <summary>Yarn for one by colour; empty where not known.</summary>
    public EquatableArray<ColourYarn> Colours { get; init; }

    /// <summary>Yarn section by section; empty where not known, or where there is one section only.</summary>
    public EquatableArray<SectionYarn> Sections { get; init; }

    /// <summary>The first row by whose end half of the piece's yarn is used; null where not known.</summary>
    public string? HalfUsedAfter { get; init; }

    /// <summary>Working time of one; null where speed or rows are not known.</summary>
    public TimeSpan? Time { get; init; }

    /// <summary>What makers will use of each colour for one, in metres; empty where not known.</summary>
    internal EquatableArray<ColourPrediction> Predicted { get; init; }

    /// <summary>The scale behind it; null where yarn is not known.</summary>
    internal YarnScale? Scale { get; init; }
}
