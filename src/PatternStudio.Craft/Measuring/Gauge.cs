using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Measuring;

/// <summary>What one swatch says about one piece: the width of a stitch and the height of a row of given stitches.</summary>
/// <param name="StitchWidth">Width of one stitch.</param>
/// <param name="PerHeight">Height of fabric for one unit of <see cref="StitchForm.Height"/>.</param>
/// <param name="Trace">The swatch and how it was applied.</param>
internal sealed record Gauge(Length StitchWidth, Length PerHeight, string Trace)
{
    /// <summary>A row height is a share of the others' when at least so many rows are like it.</summary>
    private const double MostRows = 0.6;

    /// <summary>Hands differ by a quarter either way; more than this is another stitch.</summary>
    private const double Unlikely = 1.5;

    public Length HeightOf(RowTally row) => PerHeight * row.Height;

    /// <summary>Applies a swatch to the rows of a piece.</summary>
    public static Measured<Gauge> From(Swatch? swatch, IReadOnlyList<RowTally> rows, StitchForms forms)
    {
        if (swatch is null) return Measured.NotKnown<Gauge>("Not known: there is no swatch. Add one, such as '16 sts, 18 rows = 10 x 10 cm'.");
        (double height, string worked) = swatch.Stitch is { } stitch
            ? (forms.Of(stitch).Height, $"worked in {stitch}")
            : (OwnHeight(rows), "taken to be worked in this piece's own stitches");
        if (height <= 0) return Measured.NotKnown<Gauge>($"Not known: how tall the swatch's stitch{Named(swatch.Stitch)} is can't be told; the pattern does not define it.");
        string trace = $"swatch {swatch}, {worked}{Doubt(swatch, height)}";
        return Measured.Known(new Gauge(swatch.StitchWidth, swatch.RowHeight / height, trace), trace);
    }

    /// <summary>
    /// A swatch whose rows are much lower or higher than such stitches usually are was most likely worked in another stitch. The maker is asked; nothing is changed.
    /// </summary>
    private static string Doubt(Swatch swatch, double height)
    {
        double shown = swatch.RowHeight / swatch.StitchWidth;
        return shown > height * Unlikely || shown * Unlikely < height
            ? $" — but its rows are {shown:0.0} stitch widths high, and rows of these stitches are usually about {height:0.0}: if it was worked in another stitch, name that one, such as '16 sc, 18 rows = 10 cm'"
            : "";
    }

    /// <summary>
    /// The height of the piece's own rows: of the commonest sort where most rows are of one sort (an edging does not change the gauge),
    /// else the mean (rows of two sorts in turn).
    /// </summary>
    private static double OwnHeight(IReadOnlyList<RowTally> rows)
    {
        List<double> heights = [.. rows.Select(row => row.Height).Where(height => height > 0)];
        if (heights.Count == 0) return 0;
        IGrouping<double, double> commonest = heights.GroupBy(height => Math.Round(height, 1)).MaxBy(group => group.Count())!;
        return commonest.Count() >= MostRows * heights.Count ? commonest.Average() : heights.Average();
    }

    private static string Named(StitchId? stitch) => stitch is { } id ? $" '{id}'" : "";
}
