using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Measuring;

/// <summary>Applies swatches to one piece.</summary>
/// <param name="basis">The swatches.</param>
/// <param name="design">What the design knows: its stitches, its numbered rows, its multiple.</param>
internal sealed class GaugeFinder(MeasuringBasis basis, DesignRows design)
{
    /// <summary>A row height is a share of the others' when at least so many rows are like it.</summary>
    private const double MostRows = 0.6;

    /// <summary>Hands differ by a quarter either way; more than this is another stitch.</summary>
    private const double Unlikely = 1.5;

    /// <param name="rows">The piece's rows, without its foundation.</param>
    /// <param name="ringChains">Chains of the ring at its centre; 0 for none.</param>
    public Measured<Gauge> Find(IReadOnlyList<RowTally> rows, long ringChains)
    {
        if (basis.Gauge is not { } chosen) return Measured.NotKnown<Gauge>("Not known: there is no swatch. Add one, such as '16 sts, 18 rows = 10 x 10 cm'.");
        string trace = basis.IsStated ? $"gauge as the pattern states it, {chosen}" : $"swatch {chosen}";
        return chosen.Kind switch
        {
            SwatchKind.Rounds => OfRounds(chosen, rows, ringChains, trace),
            SwatchKind.Tiles => OfTiles(chosen, trace),
            _ when chosen.InStitches(design.Multiple) is { } counted => OfStitches(counted, rows, trace),
            _ => Measured.NotKnown<Gauge>($"Not known: how many stitches a repeat of the swatch ({chosen}) has can't be told. Write it in brackets, such as '4 repeats (24 sts)', or state the design's multiple."),
        };
    }

    private Measured<Gauge> OfStitches(Swatch swatch, IReadOnlyList<RowTally> rows, string trace)
    {
        if (swatch.Rows <= 0)
            return Measured.Known(new Gauge(swatch.StitchWidth, Length.Zero, trace) { WhyNoHeight = $"Not known: the {trace} does not count rows. Add them, such as '16 sts, 18 rows = 10 x 10 cm'." }, trace);
        (double height, string worked) = Mix(swatch, rows);
        if (height <= 0) return Measured.NotKnown<Gauge>($"Not known: how tall the swatch's stitch{Named(swatch.Stitch)} is can't be told; the pattern does not define it.");
        RowHeights? solved = RowHeights.From(Observed(rows));
        string told = $"{trace}, {worked}{solved?.Trace}{Doubt(swatch, height)}";
        return Measured.Known(new Gauge(swatch.StitchWidth, swatch.RowHeight / height, told) { Kinds = solved?.Kinds ?? new Dictionary<double, Length>() }, told);
    }

    /// <summary>
    /// Rounds measured across say how far a row's height takes the edge from the centre. A stitch's width follows by the usual proportion of its height: in widths, heights
    /// are counted.
    /// </summary>
    private static Measured<Gauge> OfRounds(Swatch swatch, IReadOnlyList<RowTally> rows, long ringChains, string trace)
    {
        int last = swatch.Over?.Last ?? (int)swatch.Rows;
        if (rows.Count < last) return Measured.NotKnown<Gauge>($"Not known: the gauge measures {last} rounds, and this piece has {rows.Count}.");
        double radius = (ringChains / (2 * Math.PI)) + rows.Take(last).Sum(row => row.Height);
        if (radius <= 0) return Measured.NotKnown<Gauge>("Not known: how tall the stitches of the gauge's rounds are can't be told.");
        Length unit = swatch.Width / (2 * radius);
        string told = $"{trace}: the radius of {last} rounds shared by the heights of their stitches (a stitch's width is taken by the usual proportion)";
        return Measured.Known(new Gauge(unit, unit, told) { IsWidthAssumed = true }, told);
    }

    private static Measured<Gauge> OfTiles(Swatch swatch, string trace)
    {
        string why = $"Not known: the {trace} is counted in tiles, and this piece has none. Count stitches and rows.";
        var tile = new FabricSize(swatch.Width / swatch.Stitches, swatch.Height / swatch.Rows);
        return Measured.Known(new Gauge(Length.Zero, Length.Zero, trace) { Tile = tile, WhyNoHeight = why }, trace);
    }

    /// <summary>What the swatch is worked in: its named stitch, the rows it names, or the piece's own.</summary>
    private (double Height, string Worked) Mix(Swatch swatch, IReadOnlyList<RowTally> rows)
    {
        if (swatch.Stitch is { } stitch) return (design.Forms.Of(stitch).Height, $"worked in {stitch}");
        if (swatch.Over is { } over && design.Rows(over) is { Count: > 0 } named) return (named.Average(row => row.Height), $"worked in {over} of the design");
        return (OwnHeight(rows), "taken to be worked in this piece's own stitches");
    }

    /// <summary>Every swatch with rows, as what its row is made of and how high it is.</summary>
    private IEnumerable<RowHeights.Observation> Observed(IReadOnlyList<RowTally> rows)
    {
        foreach (Swatch swatch in basis.Swatches)
        {
            if (swatch.InStitches(design.Multiple) is not { Rows: > 0 } counted) continue;
            IReadOnlyDictionary<double, double>? shares = counted.Stitch is { } stitch ? Whole(design.Forms.Of(stitch).Height)
                : counted.Over is { } over && design.Rows(over) is { Count: > 0 } named ? RowHeights.Mean(named)
                : RowHeights.Mean(OwnRows(rows));
            if (shares is { Count: > 0 }) yield return new RowHeights.Observation(shares, counted.RowHeight);
        }
    }

    private static Dictionary<double, double>? Whole(double height) => height > 0 ? new Dictionary<double, double> { [height] = 1 } : null;

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

    /// <summary>The height of the piece's own rows: the mean of <see cref="OwnRows"/>.</summary>
    private static double OwnHeight(IReadOnlyList<RowTally> rows) => OwnRows(rows) is { Count: > 0 } own ? own.Average(row => row.Height) : 0;

    /// <summary>The commonest sort of row where most rows are of one sort (an edging does not change the gauge), else all (rows of two sorts in turn).</summary>
    private static List<RowTally> OwnRows(IReadOnlyList<RowTally> rows)
    {
        List<RowTally> high = [.. rows.Where(row => row.Height > 0)];
        if (high.Count == 0) return high;
        List<RowTally> commonest = [.. high.GroupBy(row => Math.Round(row.Height, 1)).MaxBy(group => group.Count())!];
        return commonest.Count >= MostRows * high.Count ? commonest : high;
    }

    private static string Named(StitchId? stitch) => stitch is { } id ? $" '{id}'" : "";
}
