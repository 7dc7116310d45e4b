using PatternStudio.Craft.Checking;

namespace PatternStudio.Studio.Designs;

/// <summary>Everything computed from a text, a swatch and a yarn: what the desk shows and what a save stores.</summary>
/// <param name="EngineVersion">The version of the engine that computed it.</param>
/// <param name="Terms">'US' or 'UK': the terms that the pattern was read in.</param>
/// <param name="Findings">In the order of the text.</param>
/// <param name="Sizes">One for each size of the pattern; never empty.</param>
public sealed record Results(
    string EngineVersion, string Terms, IReadOnlyList<LocatedFinding> Findings, IReadOnlyList<SizeResults> Sizes)
{
    /// <summary>Number of findings that are errors.</summary>
    public int Errors => Findings.Count(found => found.Finding.Severity == Severity.Error);

    /// <summary>Number of findings that are warnings.</summary>
    public int Warnings => Findings.Count(found => found.Finding.Severity == Severity.Warning);
}

/// <summary>A finding and where it stands as people count.</summary>
/// <param name="Line">1-based line.</param>
/// <param name="Column">1-based column.</param>
public sealed record LocatedFinding(Finding Finding, int Line, int Column);

/// <summary>What was computed for one size.</summary>
/// <param name="Name">The size's name; empty where there is one only.</param>
/// <param name="Read">How much was read and checked.</param>
/// <param name="Rows">Every row as worked.</param>
/// <param name="Schedule">Every row with its share of the yarn and the height so far; empty without a swatch.</param>
/// <param name="Size">Finished size; null where it can't be known.</param>
/// <param name="Yarn">Yarn needed; null where it can't be known.</param>
/// <param name="ChartSvg">The chart as a drawing; null where there is none.</param>
public sealed record SizeResults(
    string Name,
    ReadSummary Read,
    IReadOnlyList<RowReport> Rows,
    IReadOnlyList<ScheduleLine> Schedule,
    FinishedSize? Size,
    YarnNeed? Yarn,
    string? ChartSvg)
{
    /// <summary>Why there is no size, yarn, schedule or chart, in sentences; empty where all are there.</summary>
    public IReadOnlyList<string> Missing { get; init; } = [];
}

/// <summary>A row of the schedule. What is not known is null.</summary>
/// <param name="Piece">The piece; empty where there is one.</param>
/// <param name="Heading">'Row 3'.</param>
/// <param name="Stitches">Stitches of the row.</param>
/// <param name="Grams">Yarn of the row.</param>
/// <param name="Metres">Yarn of the row.</param>
/// <param name="GramsSoFar">Yarn up to and with this row.</param>
/// <param name="ShareSoFar">Share of all yarn used up to and with this row, 0 to 1.</param>
/// <param name="HeightCm">Height up to and with this row.</param>
/// <param name="BallEnds">Number of the ball that runs out in this row.</param>
public sealed record ScheduleLine(
    string Piece,
    string Heading,
    long? Stitches,
    double? Grams,
    double? Metres,
    double? GramsSoFar,
    double? ShareSoFar,
    double? HeightCm,
    int? BallEnds);

/// <summary>The finished size, and where the number comes from.</summary>
/// <param name="Basis">'from the swatch of 3 May: 16 sts and 20 rows = 10 × 10 cm'.</param>
public sealed record FinishedSize(double WidthCm, double HeightCm, string Basis);

/// <summary>The yarn needed, and where the number comes from.</summary>
/// <param name="Metres">Null where the yarn's length for its weight is not known.</param>
/// <param name="Balls">Whole balls to buy; null where no yarn is chosen.</param>
public sealed record YarnNeed(double Grams, double? Metres, int? Balls, string Basis);
