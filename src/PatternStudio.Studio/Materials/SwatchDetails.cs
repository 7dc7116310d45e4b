namespace PatternStudio.Studio.Materials;

/// <summary>A swatch as measured with a tape and weighed.</summary>
/// <param name="Stitches">Stitches across <paramref name="WidthCm"/>; above 0, at most 10 000.</param>
/// <param name="Rows">Rows or rounds along <paramref name="HeightCm"/>; above 0, at most 10 000.</param>
/// <param name="WidthCm">Above 0, at most 1 000 cm.</param>
/// <param name="HeightCm">Above 0, at most 1 000 cm.</param>
/// <param name="WeightGrams">Weight of the measured piece, above 0, at most 10 000 g; null where not weighed.</param>
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
}

/// <summary>A swatch of a design.</summary>
/// <param name="Chosen">True where it calibrates the design.</param>
public sealed record KeptSwatch(Guid Id, SwatchDetails Details, bool Chosen);
