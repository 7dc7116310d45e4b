namespace PatternStudio.Studio.Materials;

/// <summary>A worked sample of a design's fabric, as measured. Kept in SI base units.</summary>
public sealed class Swatch
{
    /// <summary>Longest note.</summary>
    public const int NoteLength = 2_000;

    /// <summary>Longest name of a stitch.</summary>
    public const int StitchLength = 40;

    private Swatch() { }

    internal Swatch(Guid id, Guid designId, SwatchDetails details)
    {
        (Id, DesignId) = (id, designId);
        Change(details);
    }

    public Guid Id { get; private set; }

    public Guid DesignId { get; private set; }

    /// <summary>Stitches (or repeats) counted across the measured width; may be a half.</summary>
    public double Stitches { get; private set; }

    /// <summary>Rows or rounds counted along the measured height.</summary>
    public double Rows { get; private set; }

    public double WidthMetres { get; private set; }

    public double HeightMetres { get; private set; }

    /// <summary>Weight of the whole measured piece; null where it was not weighed.</summary>
    public double? WeightKilograms { get; private set; }

    public double? HookMetres { get; private set; }

    public Guid? YarnId { get; private set; }

    /// <summary>The plain stitch it is worked in; empty for the design's own stitches.</summary>
    public string Stitch { get; private set; } = "";

    public string Note { get; private set; } = "";

    public DateOnly MeasuredOn { get; private set; }

    internal SwatchDetails Details => new(
        Stitches, Rows, Si.Centimetres(WidthMetres), Si.Centimetres(HeightMetres),
        Si.Grams(WeightKilograms), Si.Millimetres(HookMetres), YarnId, Note, MeasuredOn)
    {
        Stitch = Stitch,
    };

    internal void Change(SwatchDetails details)
    {
        (Stitches, Rows) = (details.Stitches, details.Rows);
        (WidthMetres, HeightMetres) = (details.WidthCm / 100, details.HeightCm / 100);
        (WeightKilograms, HookMetres) = (details.WeightGrams / 1000, details.HookMm / 1000);
        (YarnId, Stitch, Note, MeasuredOn) = (details.YarnId, details.Stitch, details.Note, details.MeasuredOn);
    }
}
