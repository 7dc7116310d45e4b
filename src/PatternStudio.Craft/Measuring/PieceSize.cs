namespace PatternStudio.Craft.Measuring;

/// <summary>Finished width and height of a piece, each with its trace.</summary>
internal sealed record PieceSize(Measured<Length> Width, Measured<Length> Height)
{
    public static PieceSize NotKnown(string reason) => new(Measured.NotKnown<Length>(reason), Measured.NotKnown<Length>(reason));

    public static PieceSize Square(Length side, string trace) => new(Measured.Known(side, trace), Measured.Known(side, trace));
}

/// <summary>Measures a piece by its construction. All rules hold for flat, blocked fabric.</summary>
/// <param name="construction">How it is put together.</param>
/// <param name="gauge">The swatch applied to it.</param>
/// <param name="rows">Its rows, the foundation left out; all checked.</param>
/// <param name="ring">Radius of the ring at the centre of rounds.</param>
internal sealed class PieceRuler(Construction construction, Gauge gauge, IReadOnlyList<RowTally> rows, Length ring)
{
    /// <summary>How far two ways to the same length may differ before neither is believed.</summary>
    private const double CrossCheckTolerance = 0.15;

    /// <summary>
    /// A round's stitches over the edge they must reach round: below, the round draws in to a cup; above, it ruffles. Published first rounds
    /// differ as far (single crochet 6 to 8 for a circle that lies flat: factor 1.33).
    /// </summary>
    private const double Cups = 0.8;
    private const double Ruffles = 1.35;

    /// <summary>Width of the piece at each row.</summary>
    public IReadOnlyList<Length> Widths()
    {
        var widths = new Length[rows.Count];
        Length radius = ring;
        for (int i = 0; i < rows.Count; i++)
        {
            radius += gauge.HeightOf(rows[i]);
            widths[i] = construction.Kind switch
            {
                ConstructionKind.Circle or ConstructionKind.Polygon or ConstructionKind.HalfCircle => radius * 2,
                ConstructionKind.Tube => Along(rows[i]) / 2,
                _ => Along(rows[i]),
            };
        }
        return widths;
    }

    public PieceSize Measure()
    {
        if (rows.FirstOrDefault(row => row.Unknown is not null) is { Unknown: { } stitch })
            return PieceSize.NotKnown($"Not known: how tall '{stitch}' is can't be told; define it as a special stitch.");
        return construction.Kind switch
        {
            ConstructionKind.StraightRows or ConstructionKind.ShapedRows => ByRows(),
            ConstructionKind.CornerToCorner => CornerToCorner(),
            ConstructionKind.Circle => Round("circle", 2 * Math.PI),
            ConstructionKind.HalfCircle => Round("half circle", Math.PI),
            ConstructionKind.Polygon => Polygon(),
            ConstructionKind.Tube => Tube(),
            _ => PieceSize.NotKnown("Not known: " + construction.Reason),
        };
    }

    private PieceSize ByRows() => new(Measured.Known(Along(Widest), $"widest row: {Widest.Places} stitches (chains of spaces counted one each) × {Text(gauge.StitchWidth)}; {gauge.Trace}"), Heights());

    private Measured<Length> Heights() => Measured.Known(Tall, $"heights of {rows.Count} rows by the stitches of each; {gauge.Trace}");

    /// <summary>
    /// Rows lie at 45° to the sides. The longest row joins two sides at the short side's length: short side = longest row ÷ √2. Across the rows, from corner to corner, both
    /// sides together measure (short + long) ÷ √2, which is the sum of all row heights. For a square both diagonals are equal: the cross-check.
    /// </summary>
    private PieceSize CornerToCorner()
    {
        Length byStitches = Along(Widest);
        string both = $"the longest row of {Widest.Places} stitches is {Text(byStitches)} long, {rows.Count} row heights from corner to corner make {Text(Tall)}";
        Length opens = gauge.StitchWidth * (Diagonal.Growth(Places) / 2);
        Length high = Tall / rows.Count;
        if (Math.Abs((opens / high) - 1) > CrossCheckTolerance)
            return PieceSize.NotKnown($"Not known: a square corner opens by a row height on either side each row, but at this gauge the rows open by {opens.Millimetres:0.0} mm and are {high.Millimetres:0.0} mm high; {both}. The corners are not square ({gauge.Trace}).");
        Length side = byStitches / Math.Sqrt(2);
        Length other = (Tall * Math.Sqrt(2)) - side;
        return Diagonal.IsSquare(Places)
            ? PieceSize.Square(side, $"side = longest row ÷ √2, corner to corner; cross-check: {both}; {gauge.Trace}")
            : new PieceSize(Measured.Known(side, $"short side = longest row ÷ √2; {both}; {gauge.Trace}"), Measured.Known(other, $"long side = √2 × all row heights − short side; {both}; {gauge.Trace}"));
    }

    /// <param name="turn">Radians that the piece goes round its centre.</param>
    private PieceSize Round(string name, double turn)
    {
        Length radius = ring + Tall;
        double fullness = Along(rows[^1]) / (radius * turn);
        string edge = $"the last {(turn > 4 ? "round" : "row")}'s {rows[^1].Places} stitches make {Text(Along(rows[^1]))} of edge, and a flat {name} of this radius has {Text(radius * turn)}";
        return fullness switch
        {
            < Cups => PieceSize.NotKnown($"Not known: {edge}, so the piece draws in and does not lie flat at this gauge ({gauge.Trace}). Measure a worked piece."),
            > Ruffles => PieceSize.NotKnown($"Not known: {edge}, so the piece ruffles at this gauge ({gauge.Trace}). Measure a worked piece."),
            _ => Flat(radius, turn, $"ring {Text(ring)} + heights of {rows.Count} {(turn > 4 ? "rounds" : "rows")}; {edge}; {gauge.Trace}"),
        };
    }

    private static PieceSize Flat(Length radius, double turn, string trace) => turn > 4
        ? PieceSize.Square(radius * 2, $"across = 2 × radius; radius = {trace}")
        : new PieceSize(Measured.Known(radius * 2, $"straight edge = 2 × radius; radius = {trace}"), Measured.Known(radius, $"radius = {trace}"));

    private PieceSize Polygon()
    {
        Length across = (ring + Tall) * 2;
        string trace = $"2 × (ring {Text(ring)} + heights of {rows.Count} rounds), {construction.Corners} corners; {gauge.Trace}";
        return construction.Corners switch
        {
            4 => PieceSize.Square(across, $"side = {trace}"),
            6 => new PieceSize(Measured.Known(across, $"between two sides = {trace}"), Measured.Known(across * (2 / Math.Sqrt(3)), $"corner to corner = 2 ÷ √3 × width; {trace}")),
            _ => PieceSize.NotKnown($"Not known: the size of a motif with {construction.Corners} corners is not worked out yet."),
        };
    }

    private PieceSize Tube() => new(
        Measured.Known(Along(Widest) / 2, $"laid flat: half of {Widest.Places} stitches × {Text(gauge.StitchWidth)}; {gauge.Trace}"),
        Heights());

    private long[] Places => [.. rows.Select(row => row.Places)];

    private RowTally Widest => rows.MaxBy(row => row.Places)!;

    private Length Tall => rows.Aggregate(Length.Zero, (sum, row) => sum + gauge.HeightOf(row));

    private Length Along(RowTally row) => gauge.StitchWidth * row.Places;

    private static string Text(Length length) => length.InCentimetres();
}
