namespace PatternStudio.Studio.Materials;

/// <summary>A worked sample of a design's fabric, as measured. Kept in SI base units.</summary>
public sealed class Swatch
{
    /// <summary>Longest note.</summary>
    public const int NoteLength = 2_000;

    /// <summary>Longest name of a stitch.</summary>
    public const int StitchLength = 40;

    /// <summary>Longest name of a stitch pattern.</summary>
    public const int PatternLength = 80;

    private Swatch() { }

    internal Swatch(Guid id, Guid designId, SwatchDetails details)
    {
        (Id, DesignId) = (id, designId);
        Change(details);
    }

    public Guid Id { get; private set; }

    public Guid DesignId { get; private set; }

    /// <summary>What was counted across the measured width; may be a half.</summary>
    public double Stitches { get; private set; }

    /// <summary>What was counted along the measured height.</summary>
    public double Rows { get; private set; }

    public Counting Counted { get; private set; }

    /// <summary>Of one repeat; null for the design's own multiple.</summary>
    public double? StitchesEach { get; private set; }

    public int? FromRow { get; private set; }

    public int? ToRow { get; private set; }

    public double WidthMetres { get; private set; }

    public double HeightMetres { get; private set; }

    public double? WidthBeforeMetres { get; private set; }

    public double? HeightBeforeMetres { get; private set; }

    /// <summary>Weight of the measured piece; null where it was not weighed.</summary>
    public double? WeightKilograms { get; private set; }

    /// <summary>How long the measured stitches took; null where nobody looked at the clock.</summary>
    public double? Minutes { get; private set; }

    public double? HookMetres { get; private set; }

    public Guid? YarnId { get; private set; }

    /// <summary>The plain stitch it is worked in; empty for the design's own stitches.</summary>
    public string Stitch { get; private set; } = "";

    /// <summary>The designer's name of the stitch pattern; empty for the design as a whole.</summary>
    public string Pattern { get; private set; } = "";

    public string Note { get; private set; } = "";

    public DateOnly MeasuredOn { get; private set; }

    public Guid? PhotoId { get; private set; }

    /// <summary>Goes up with every change, so that of two changes at the same time one is noticed and done again.</summary>
    public int RowVersion { get; private set; }

    internal SwatchDetails Details => new(
        Stitches, Rows, Si.Centimetres(WidthMetres), Si.Centimetres(HeightMetres),
        Si.Grams(WeightKilograms), Si.Millimetres(HookMetres), YarnId, Note, MeasuredOn)
    {
        Stitch = Stitch,
        Pattern = Pattern,
        FromRow = FromRow,
        ToRow = ToRow,
        Counted = Counted,
        StitchesEach = StitchesEach,
        Minutes = Minutes,
        WidthBeforeCm = Si.Centimetres(WidthBeforeMetres),
        HeightBeforeCm = Si.Centimetres(HeightBeforeMetres),
    };

    internal void Change(SwatchDetails details)
    {
        (Stitches, Rows) = (details.Stitches, details.Rows);
        (Counted, StitchesEach, FromRow, ToRow) = (details.Counted, details.StitchesEach, details.FromRow, details.ToRow);
        (WidthMetres, HeightMetres) = (details.WidthCm / 100, details.HeightCm / 100);
        (WidthBeforeMetres, HeightBeforeMetres) = (details.WidthBeforeCm / 100, details.HeightBeforeCm / 100);
        (WeightKilograms, HookMetres) = (details.WeightGrams / 1000, details.HookMm / 1000);
        (YarnId, Stitch, Pattern, Note, MeasuredOn) = (details.YarnId, details.Stitch, details.Pattern, details.Note, details.MeasuredOn);
        Minutes = details.Minutes;
        RowVersion++;
    }

    internal void Show(Guid? photoId)
    {
        PhotoId = photoId;
        RowVersion++;
    }
}
