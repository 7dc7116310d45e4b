namespace PatternStudio.Studio.Materials;

/// <summary>A swatch as measured with a tape and weighed.</summary>
/// <param name="Stitches">Stitches (or repeats, or tiles: <see cref="Counted"/>) across <paramref name="WidthCm"/>; above 0, at most 10 000. 0 for rounds.</param>
/// <param name="Rows">Rows (or tiles) along <paramref name="HeightCm"/>; for rounds the number of the last one measured. Above 0, at most 10 000.</param>
/// <param name="WidthCm">As the finished piece will be: after blocking where that is blocked. Above 0, at most 1 000 cm.</param>
/// <param name="HeightCm">Likewise. Above 0, at most 1 000 cm.</param>
/// <param name="WeightGrams">Weight of a piece of exactly that width and height, above 0, at most 10 000 g; null where not weighed.</param>
/// <param name="HookMm">Hook size, 0.4 to 50 mm; null where not noted.</param>
/// <param name="YarnId">A yarn of the studio; null where not noted.</param>
/// <param name="Note">At most <see cref="Swatch.NoteLength"/> characters.</param>
/// <param name="MeasuredOn">The day it was measured.</param>
public sealed record SwatchDetails(
    double Stitches,
    double Rows,
    double WidthCm,
    double HeightCm,
    double? WeightGrams,
    double? HookMm,
    Guid? YarnId,
    string Note,
    DateOnly MeasuredOn)
{
    /// <summary>
    /// The stitch it is worked in, where that is a plain one and not the design's own stitches: the key of the vocabulary ('sc', 'dc', in
    /// US abbreviations whatever the pattern's terms). Empty for the design's own stitches.
    /// </summary>
    public string Stitch { get; init; } = "";

    /// <summary>The stitch pattern by the designer's own name ('border', 'moss stitch'); empty for the design as a whole.</summary>
    public string Pattern { get; init; } = "";

    /// <summary>The first row of the design that it is worked in, over and over; null for the whole design.</summary>
    public int? FromRow { get; init; }

    /// <summary>The last of those rows; null for the whole design.</summary>
    public int? ToRow { get; init; }

    /// <summary>What <see cref="Stitches"/> and <see cref="Rows"/> count.</summary>
    public Counting Counted { get; init; } = Counting.Stitches;

    /// <summary>Stitches in one repeat; above 0, at most 10 000. Null for the multiple that the design states, or where no repeats were counted.</summary>
    public double? StitchesEach { get; init; }

    /// <summary>Minutes that the measured stitches took; above 0, at most 100 000. Null where nobody looked at the clock.</summary>
    public double? Minutes { get; init; }

    /// <summary>The same stitches before blocking; above 0, at most 1 000 cm. Null where not measured.</summary>
    public double? WidthBeforeCm { get; init; }

    /// <summary>The same rows before blocking; above 0, at most 1 000 cm. Null where not measured.</summary>
    public double? HeightBeforeCm { get; init; }

    /// <summary>True where another swatch samples the same fabric, so that the two tell how much a hand varies.</summary>
    public bool SamplesTheSameAs(SwatchDetails other) =>
        (Stitch, FromRow, ToRow) == (other.Stitch, other.FromRow, other.ToRow) && Pattern.Equals(other.Pattern, StringComparison.OrdinalIgnoreCase);
}

/// <summary>What was counted in a swatch.</summary>
public enum Counting
{
    /// <summary>Stitches across, rows (or rounds, one above the other) up.</summary>
    Stitches,

    /// <summary>Repeats of the stitch pattern across, rows up.</summary>
    Repeats,

    /// <summary>Tiles (blocks of corner to corner, motifs) across and up.</summary>
    Tiles,

    /// <summary>The first rounds of the design itself, measured across.</summary>
    Rounds,
}

/// <summary>A swatch of a design.</summary>
/// <param name="Chosen">True where it calibrates the design.</param>
public sealed record KeptSwatch(Guid Id, SwatchDetails Details, bool Chosen)
{
    /// <summary>Its photo; null for none.</summary>
    public Guid? PhotoId { get; init; }
}

/// <summary>A swatch that was removed, with all that it takes to put it back.</summary>
/// <param name="Photo">Its photo; null for none.</param>
/// <param name="Chosen">True where it calibrated the design.</param>
public sealed record RemovedSwatch(Guid DesignId, SwatchDetails Details, PreparedPhoto? Photo, bool Chosen);

/// <summary>A design and its swatches, the newest first.</summary>
public sealed record DesignSwatches(Guid DesignId, string Title, IReadOnlyList<KeptSwatch> Swatches);
