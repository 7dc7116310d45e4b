namespace PatternStudio.Studio.Rounds;

/// <summary>A report as measured with a tape and scales. What was not measured is null.</summary>
/// <param name="Size">0-based size.</param>
public sealed record ReportDetails(int Size)
{
    /// <summary>Stitches across <see cref="OverCm"/>, as the piece will be: after blocking where it is blocked. Above 0, at most 10 000.</summary>
    public double? Stitches { get; init; }

    /// <summary>Rows along <see cref="OverCm"/>. Above 0, at most 10 000.</summary>
    public double? Rows { get; init; }

    /// <summary>What both were counted over; above 0, at most 1 000 cm. Needed where anything was counted.</summary>
    public double? OverCm { get; init; }

    /// <summary>Across the same length before blocking.</summary>
    public double? StitchesBefore { get; init; }

    public double? RowsBefore { get; init; }

    /// <summary>0.3 to 50 mm.</summary>
    public double? HookMm { get; init; }

    /// <summary>The yarn's name.</summary>
    public string Yarn { get; init; } = "";

    /// <summary>Yarn used; above 0, at most 100 000 g.</summary>
    public double? YarnGrams { get; init; }

    /// <summary>Length of her ball; above 0, at most 10 000 m.</summary>
    public double? BallMetres { get; init; }

    /// <summary>Weight of her ball; above 0, at most 10 000 g.</summary>
    public double? BallGrams { get; init; }

    /// <summary>Finished width; above 0, at most 10 000 cm.</summary>
    public double? WidthCm { get; init; }

    public double? HeightCm { get; init; }

    /// <summary>Working time; above 0, at most 100 000 minutes.</summary>
    public double? Minutes { get; init; }

    /// <summary>What she says about the whole; at most <see cref="TesterReport.WordsLength"/> characters.</summary>
    public string Words { get; init; } = "";

    /// <summary>True where nothing at all was reported.</summary>
    public bool IsEmpty => this == new ReportDetails(Size) { OverCm = OverCm };
}
