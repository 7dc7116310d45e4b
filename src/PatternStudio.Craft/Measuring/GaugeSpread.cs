using System.Globalization;

namespace PatternStudio.Craft.Measuring;

/// <summary>How far other hands' pieces will differ in size, from several swatches in the gauge's own stitch.</summary>
/// <param name="Gauge">The design's gauge, by which sizes are printed.</param>
/// <param name="StitchMillimetres">Stitch width of the next maker.</param>
/// <param name="RowMillimetres">Row height of the next maker; null where too few swatches count rows.</param>
/// <param name="Swatches">How many swatches it rests on.</param>
public sealed record GaugeSpread(Swatch Gauge, Prediction StitchMillimetres, Prediction? RowMillimetres, int Swatches)
{
    /// <summary>A tape is read to the half centimetre: a standard deviation of 0.14 cm on the swatch.</summary>
    private static readonly double CentimetreError = 0.5 / Math.Sqrt(12);

    /// <summary>Null where fewer than two swatches count stitches as the gauge does.</summary>
    public static GaugeSpread? From(MeasuringBasis basis)
    {
        ArgumentNullException.ThrowIfNull(basis);
        if (basis.Gauge is not { Kind: SwatchKind.Stitches } gauge) return null;
        Swatch[] alike = [.. basis.Swatches.Where(swatch => swatch.Kind == SwatchKind.Stitches && swatch.Stitch == gauge.Stitch && swatch.Over == gauge.Over)];
        if (alike.Length < 2) return null;
        Swatch[] withRows = [.. alike.Where(swatch => swatch.Rows > 0)];
        return new GaugeSpread(
            gauge,
            Predict(alike, swatch => swatch.StitchWidth.Millimetres, swatch => swatch.Width),
            withRows.Length > 1 && gauge.Rows > 0 ? Predict(withRows, swatch => swatch.RowHeight.Millimetres, swatch => swatch.Height) : null,
            alike.Length);
    }

    /// <summary>Between which widths 90 of 100 makers' pieces lie.</summary>
    /// <param name="width">The width by the gauge.</param>
    public (Length Low, Length High) Widths(Length width) => Scale(width, StitchMillimetres, Gauge.StitchWidth);

    /// <summary>Between which heights 90 of 100 makers' pieces lie; null where that is not known.</summary>
    /// <param name="height">The height by the gauge.</param>
    public (Length Low, Length High)? Heights(Length height) => RowMillimetres is { } rows ? Scale(height, rows, Gauge.RowHeight) : null;

    private static (Length Low, Length High) Scale(Length length, Prediction millimetres, Length by) =>
        (length * (millimetres.Low / by.Millimetres), length * (millimetres.High / by.Millimetres));

    /// <summary>Each maker speaks once where several are named; else each swatch.</summary>
    private static Prediction Predict(Swatch[] swatches, Func<Swatch, double> measure, Func<Swatch, Length> over)
    {
        double[] makers = [.. swatches.GroupBy(swatch => swatch.Maker, StringComparer.OrdinalIgnoreCase).Select(maker => maker.Average(measure))];
        return Prediction.From(makers.Length > 1 ? makers : [.. swatches.Select(measure)], swatches.Average(swatch => CentimetreError / over(swatch).Centimetres));
    }

    /// <summary>'90 of 100 makers' pieces are 94 to 108 % as wide and 95 to 105 % as high (3 swatches)'.</summary>
    public override string ToString()
    {
        string high = RowMillimetres is { } rows ? $" and {Percent(rows.Low, Gauge.RowHeight)} to {Percent(rows.High, Gauge.RowHeight)} % as high" : "";
        return $"90 of 100 makers' pieces are {Percent(StitchMillimetres.Low, Gauge.StitchWidth)} to {Percent(StitchMillimetres.High, Gauge.StitchWidth)} % as wide{high} ({Swatches} swatches)";
    }

    private static string Percent(double millimetres, Length by) => (millimetres / by.Millimetres * 100).ToString("0", CultureInfo.InvariantCulture);
}
