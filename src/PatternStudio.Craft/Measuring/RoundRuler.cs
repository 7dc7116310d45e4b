namespace PatternStudio.Craft.Measuring;

/// <summary>Measures pieces that are worked round a centre, round a chain, or round and round.</summary>
/// <param name="construction">How the piece is put together.</param>
/// <param name="gauge">The swatch applied to it.</param>
/// <param name="rows">Its rounds, the foundation left out.</param>
/// <param name="ring">Radius of the ring at the centre.</param>
internal sealed class RoundRuler(Construction construction, Gauge gauge, IReadOnlyList<RowTally> rows, Length ring)
{
    /// <summary>
    /// A round's stitches over the edge they must reach round: below, the round draws in to a cup; above, it ruffles. Published first rounds
    /// differ as far (single crochet 6 to 8 for a circle that lies flat: factor 1.33).
    /// </summary>
    private const double Cups = 0.8;
    private const double Ruffles = 1.35;

    /// <summary>Width of the piece after each round: across a disc, or half round a tube laid flat.</summary>
    public IReadOnlyList<Length> Widths()
    {
        var widths = new Length[rows.Count];
        Length radius = ring;
        for (int i = 0; i < rows.Count; i++)
        {
            radius += gauge.HeightOf(rows[i]);
            bool tube = construction.Kind == ConstructionKind.Tube || construction.CrownLast || (construction.Kind == ConstructionKind.CrownAndTube && i >= construction.FirstRows);
            widths[i] = tube ? Along(rows[i]) / 2 : construction.Kind == ConstructionKind.Oval ? Spine + (radius * 2) : radius * 2;
        }

        return widths;
    }

    public PieceSize Measure() => construction.Kind switch
    {
        ConstructionKind.Circle => Round("circle", 2 * Math.PI),
        ConstructionKind.HalfCircle => Round("half circle", Math.PI),
        ConstructionKind.Oval => Oval(),
        ConstructionKind.Polygon => Polygon(),
        ConstructionKind.CrownAndTube => CrownAndTube(),
        _ => Tube(),
    };

    /// <param name="turn">Radians that the piece goes round its centre.</param>
    private PieceSize Round(string name, double turn)
    {
        Length radius = ring + Tall;
        bool isWhole = turn > 4;
        string edge = $"the last {(isWhole ? "round" : "row")}'s {rows[^1].Places} stitches make {Text(Along(rows[^1]))} of edge, and a flat {name} of this radius has {Text(radius * turn)}";
        if (NotFlat(Along(rows[^1]) / (radius * turn), edge) is { } not) return not;
        string trace = $"ring {Text(ring)} + heights of {rows.Count} {(isWhole ? "rounds" : "rows")}; {edge}; {gauge.Trace}";
        return isWhole
            ? PieceSize.Square(radius * 2, $"across = 2 × radius; radius = {trace}")
            : new PieceSize(Measured.Known(radius * 2, $"straight edge = 2 × radius; radius = {trace}"), Measured.Known(radius, $"radius = {trace}"));
    }

    /// <summary>Rounds that draw in or ruffle don't lie flat, and then neither radius nor count tells a size.</summary>
    private PieceSize? NotFlat(double fullness, string edge) => fullness switch
    {
        < Cups => PieceSize.NotKnown($"Not known: {edge}, so the piece draws in and does not lie flat at this gauge ({gauge.Trace}). Measure a worked piece."),
        > Ruffles => PieceSize.NotKnown($"Not known: {edge}, so the piece ruffles at this gauge ({gauge.Trace}). Measure a worked piece."),
        _ => null,
    };

    /// <summary>Two half circles round the ends of the chain, joined by its straight sides.</summary>
    private PieceSize Oval()
    {
        Length edge = (Spine * 2) + (Tall * 2 * Math.PI);
        string round = $"the last round's {rows[^1].Places} stitches make {Text(Along(rows[^1]))} of edge, and a flat oval of this size has {Text(edge)}";
        if (NotFlat(Along(rows[^1]) / edge, round) is { } not) return not;
        string trace = $"2 × heights of {rows.Count} rounds; {round}; {gauge.Trace}";
        return new PieceSize(Measured.Known(Spine + (Tall * 2), $"length = chain between its ends, {Text(Spine)}, + {trace}"), Measured.Known(Tall * 2, $"width = {trace}"));
    }

    /// <summary>The chain from the middle of one end stitch to that of the other.</summary>
    private Length Spine => gauge.StitchWidth * Math.Max(0, construction.Places - 1);

    /// <summary>
    /// Rounds with n corners: the heights make the radius r to the middle of a side, the corners lie r ÷ cos(π/n) from the centre. With an even number of sides the width is
    /// between two sides, 2 r; with an odd one, between the corners that lie farthest apart, and the height from a side to the corner across.
    /// </summary>
    private PieceSize Polygon()
    {
        Length radius = ring + Tall;
        int n = construction.Corners;
        Length corner = radius / Math.Cos(Math.PI / n);
        string trace = $"radius {Text(radius)} = ring {Text(ring)} + heights of {rows.Count} rounds, {n} corners; {gauge.Trace}";
        if (n == 4) return PieceSize.Square(radius * 2, $"side = 2 × {trace}");
        return n % 2 == 0
            ? new PieceSize(Measured.Known(radius * 2, $"between two sides = 2 × {trace}"), Measured.Known((n % 4 == 0 ? radius : corner) * 2, n % 4 == 0 ? $"between two sides = 2 × {trace}" : $"corner to corner = 2 ÷ cos(π/{n}) × {trace}"))
            : new PieceSize(Measured.Known(corner * (2 * Math.Cos(Math.PI / (2 * n))), $"between the farthest corners, {trace}"), Measured.Known(radius + corner, $"side to corner, {trace}"));
    }

    private PieceSize Tube() => new(
        Measured.Known(Along(Widest) / 2, $"laid flat: half of {Widest.Places} stitches × {Text(gauge.StitchWidth)}; {gauge.Trace}"),
        gauge.WhyNoHeight is { } why ? Measured.NotKnown<Length>(why) : Measured.Known(Tall, $"heights of {rows.Count} rows by the stitches of each; {gauge.Trace}"))
    {
        Around = Measured.Known(Along(Widest), $"once round: {Widest.Places} stitches × {Text(gauge.StitchWidth)}; {gauge.Trace}"),
    };

    /// <summary>
    /// A hat is as high as the way from the middle of its crown to its brim, along the fabric: the crown's radius and the rounds below it. A basket stands on its base, and is as
    /// high as its sides.
    /// </summary>
    private PieceSize CrownAndTube()
    {
        Length first = Heights(rows.Take(construction.FirstRows)), then = Heights(rows.Skip(construction.FirstRows));
        (Length crown, Length sides) = construction.CrownLast ? (then, first) : (ring + first, then);
        int below = construction.CrownLast ? construction.FirstRows : rows.Count - construction.FirstRows;
        Measured<Length> height = gauge.WhyNoHeight is { } why ? Measured.NotKnown<Length>(why)
            : construction.HasBase ? Measured.Known(sides, $"sides of {below} rounds on the base; {gauge.Trace}")
            : Measured.Known(crown + sides, $"from the middle of the crown to the edge: crown's radius {Text(crown)} ({rows.Count - below} rounds) + {below} rounds of {Text(sides)}; {gauge.Trace}");
        return new PieceSize(Measured.Known(Along(Widest) / 2, $"laid flat: half of the widest round, {Widest.Places} stitches × {Text(gauge.StitchWidth)}; {gauge.Trace}"), height)
        {
            Around = Measured.Known(Along(Widest), $"around = widest round, {Widest.Places} stitches × {Text(gauge.StitchWidth)}; {gauge.Trace}"),
        };
    }

    private RowTally Widest => rows.MaxBy(row => row.Places)!;

    private Length Tall => Heights(rows);

    private Length Heights(IEnumerable<RowTally> some) => some.Aggregate(Length.Zero, (sum, row) => sum + gauge.HeightOf(row));

    private Length Along(RowTally row) => gauge.StitchWidth * row.Places;

    private static string Text(Length length) => length.InCentimetres();
}
