using PatternStudio.Craft.Checking;

namespace PatternStudio.Studio.Designs;

/// <summary>What was computed for one size.</summary>
/// <param name="Name">The size's name; empty where there is one only.</param>
/// <param name="Read">How much was read and checked.</param>
/// <param name="Rows">Every row as worked.</param>
/// <param name="Schedule">Every row with its width and its share of the yarn; empty where there are no rows.</param>
/// <param name="Size">Finished size of the only piece; null where it can't be known, or where there are several pieces.</param>
/// <param name="Yarn">Yarn needed for all pieces; null where it can't be known.</param>
public sealed record SizeResults(
    string Name,
    ReadSummary Read,
    IReadOnlyList<RowReport> Rows,
    IReadOnlyList<ScheduleLine> Schedule,
    FinishedSize? Size,
    YarnNeed? Yarn)
{
    /// <summary>How counts go on over repeated rows, in sentences: 'Rows 3 to 25: each row adds 2 stitches; row n has 2n − 1 stitches.'</summary>
    public IReadOnlyList<string> Laws { get; init; } = [];

    /// <summary>Each piece with its own size.</summary>
    public IReadOnlyList<PieceResults> Pieces { get; init; } = [];

    /// <summary>Working time of everything made; null where not known.</summary>
    public double? Minutes { get; init; }

    /// <summary>How far other makers' sizes will differ, in a sentence; empty with fewer than two swatches.</summary>
    public string Spread { get; init; } = "";

    /// <summary>Questions about the swatches, in sentences.</summary>
    public IReadOnlyList<string> Doubts { get; init; } = [];

    /// <summary>Why <see cref="Size"/> is not known, in a sentence; empty where it is.</summary>
    public string WhyNoSize { get; init; } = "";

    /// <summary>Why <see cref="Yarn"/> is not known, in a sentence; empty where it is.</summary>
    public string WhyNoYarn { get; init; } = "";

    /// <summary>Both reasons, without saying one twice.</summary>
    public IReadOnlyList<string> Missing => [.. new[] { WhyNoSize, WhyNoYarn }.Where(why => why.Length > 0).Distinct()];
}

/// <summary>A piece and its size.</summary>
/// <param name="Name">As headed; empty where there is no heading.</param>
/// <param name="Made">How many of it are made.</param>
/// <param name="Construction">The rule by which it is measured, or why there is none, in a sentence.</param>
/// <param name="Size">Null where not known.</param>
/// <param name="WhyNoSize">Why not; empty where it is known.</param>
public sealed record PieceResults(string Name, int Made, string Construction, FinishedSize? Size, string WhyNoSize)
{
    /// <summary>Once round, for tubes and hats; null for other pieces and where not known.</summary>
    public double? AroundCm { get; init; }
}

/// <summary>A row of the schedule. What is not known is null.</summary>
/// <param name="Piece">The piece; empty where there is one.</param>
/// <param name="Heading">'Row 3'.</param>
/// <param name="Stitches">Stitches of the row.</param>
/// <param name="Grams">Yarn of the row.</param>
/// <param name="Metres">Yarn of the row.</param>
/// <param name="GramsSoFar">Yarn of the piece up to and with this row.</param>
/// <param name="ShareSoFar">Share of the piece's yarn used up to and with this row, 0 to 1.</param>
/// <param name="WidthCm">How wide the piece is at this row: its length, or across the round.</param>
public sealed record ScheduleLine(
    string Piece,
    string Heading,
    long? Stitches,
    double? Grams,
    double? Metres,
    double? GramsSoFar,
    double? ShareSoFar,
    double? WidthCm)
{
    /// <summary>The section it stands in: 'Border'; empty where there is none.</summary>
    public string Section { get; init; } = "";

    /// <summary>The balls on the hook at its end: '2', 'A 1, B 3'; empty where not known.</summary>
    public string Balls { get; init; } = "";

    /// <summary>Working time of the piece up to and with this row; null where the speed is not known.</summary>
    public double? MinutesSoFar { get; init; }

    /// <summary>What a maker wants to know beforehand, in sentences: a ball ends, half of the yarn is used, so much to be left for the border.</summary>
    public IReadOnlyList<string> Marks { get; init; } = [];
}

/// <summary>The finished size, and where the number comes from.</summary>
/// <param name="Basis">The swatch and the rule it was found by.</param>
public sealed record FinishedSize(double WidthCm, double HeightCm, string Basis);

/// <summary>The yarn needed, and where the number comes from.</summary>
/// <param name="Grams">What the pattern is expected to use; null where the yarn's weight for its length is not known.</param>
/// <param name="Metres">The same as a length; null where the yarn's length for its weight is not known.</param>
/// <param name="Balls">Whole balls to buy; null where no yarn is chosen.</param>
/// <param name="Basis">The swatch and the yarn it was found by, and the margin in what to buy.</param>
public sealed record YarnNeed(double? Grams, double? Metres, int? Balls, string Basis)
{
    /// <summary>What nine makers in ten will not run out of; the balls are counted from it.</summary>
    public double? BuyMetres { get; init; }

    /// <summary>The ends of the interval in which 90 of 100 makers lie, in metres.</summary>
    public double? LowMetres { get; init; }

    public double? HighMetres { get; init; }

    /// <summary>True where no weighed swatch stands behind it: a guess from the yarn's weight class.</summary>
    public bool IsRough { get; init; }

    /// <summary>Colour by colour; one line with an empty name where the pattern names none.</summary>
    public IReadOnlyList<ColourShare> Colours { get; init; } = [];
}

/// <summary>Yarn of one colour.</summary>
/// <param name="Colour">As the pattern names it; empty where it names none.</param>
public sealed record ColourShare(string Colour, double? Grams, double Metres, int? Balls);
