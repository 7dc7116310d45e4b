namespace PatternStudio.Craft.Measuring;

/// <summary>Measures a piece by its construction. All rules hold for flat, blocked fabric.</summary>
/// <param name="construction">How it is put together.</param>
/// <param name="gauge">The swatch applied to it.</param>
/// <param name="rows">Its rows, the foundation left out; all checked.</param>
/// <param name="ring">Radius of the ring at the centre of rounds.</param>
internal sealed class PieceRuler(Construction construction, Gauge gauge, IReadOnlyList<RowTally> rows, Length ring)
{
    /// <summary>How far two ways to the same length may differ before neither is believed.</summary>
    private const double CrossCheckTolerance = 0.15;

    private readonly RoundRuler rounds = new(construction, gauge, rows, ring);

    /// <summary>Width of the piece at each row; empty where that is not known of this construction.</summary>
    public IReadOnlyList<Length> Widths()
    {
        bool byHeight = construction.Kind is ConstructionKind.Circle or ConstructionKind.Polygon or ConstructionKind.HalfCircle or ConstructionKind.Oval or ConstructionKind.CrownAndTube or ConstructionKind.Bordered;
        if (construction.Kind is ConstructionKind.NotKnown or ConstructionKind.Tiles || gauge.Tile is not null || (gauge.IsWidthAssumed && !(construction.Kind is ConstructionKind.Circle or ConstructionKind.Polygon or ConstructionKind.HalfCircle)) || (byHeight && (gauge.WhyNoHeight is not null || construction.IsLace))) return [];
        if (construction.Kind == ConstructionKind.Bordered) return Bordered();
        if (construction.InRounds || construction.Kind == ConstructionKind.HalfCircle) return rounds.Widths();
        return [.. rows.Select(row => construction.Kind == ConstructionKind.RowsOnPlain ? gauge.StitchWidth * construction.Places : Along(row))];
    }

    public PieceSize Measure()
    {
        if (gauge.Tile is { } tile) return OfTiles(tile);
        if (rows.FirstOrDefault(row => row.Unknown is not null) is { Unknown: { } stitch })
            return PieceSize.NotKnown($"Not known: how tall '{stitch}' is can't be told; define it as a special stitch.");
        if (construction.IsLace && construction.Kind != ConstructionKind.NotKnown)
            return PieceSize.NotKnown("Not known: arches of chains carry this fabric, so it is as large as it is pinned. Measure a worked piece.");
        if (gauge.IsWidthAssumed && construction.Kind is not (ConstructionKind.Circle or ConstructionKind.Polygon or ConstructionKind.HalfCircle or ConstructionKind.NotKnown))
            return PieceSize.NotKnown("Not known: a gauge of rounds says how high they are and not how wide a stitch is, which this piece needs. Add a swatch in stitches and rows.");
        if (gauge.WhyNoHeight is { } why && construction.Kind is not (ConstructionKind.StraightRows or ConstructionKind.ShapedRows or ConstructionKind.RowsOnPlain or ConstructionKind.Tube or ConstructionKind.CrownAndTube))
            return PieceSize.NotKnown(why);
        return construction.Kind switch
        {
            ConstructionKind.StraightRows or ConstructionKind.ShapedRows => ByRows(),
            ConstructionKind.RowsOnPlain => OnPlain(),
            ConstructionKind.CornerToCorner => CornerToCorner(),
            ConstructionKind.Bordered => WithBorder(),
            ConstructionKind.Tiles or ConstructionKind.NotKnown => PieceSize.NotKnown("Not known: " + construction.Reason),
            _ => rounds.Measure(),
        };
    }

    private PieceSize OfTiles(FabricSize tile)
    {
        if (construction.Kind != ConstructionKind.Tiles) return PieceSize.NotKnown(gauge.WhyNoHeight!);
        if (construction.Grid is not { } grid) return PieceSize.NotKnown("Not known: " + construction.Reason);
        return new PieceSize(
            Measured.Known(tile.Width * grid.Short, $"{grid.Short} tiles × {Text(tile.Width)}; {gauge.Trace}"),
            Measured.Known(tile.Height * grid.Long, $"{grid.Long} tiles × {Text(tile.Height)}; {gauge.Trace}"));
    }

    private PieceSize ByRows() => new(Measured.Known(Along(Widest), $"widest row: {Widest.Places} stitches (chains of spaces counted one each) × {Text(gauge.StitchWidth)}; {gauge.Trace}"), Heights());

    /// <summary>An edging is as long as its plain rows. How far arches hang down is not known from rows.</summary>
    private PieceSize OnPlain() => new(
        Measured.Known(gauge.StitchWidth * construction.Places, $"plain row: {construction.Places} stitches × {Text(gauge.StitchWidth)}; the other rows reach over the same width; {gauge.Trace}"),
        rows.Any(row => row.InArches > 0) ? Measured.NotKnown<Length>("Not known: how far arches of chains hang down is not known from a swatch. Measure a worked piece.") : Heights());

    private Measured<Length> Heights() => gauge.WhyNoHeight is { } why
        ? Measured.NotKnown<Length>(why)
        : Measured.Known(Tall, $"heights of {rows.Count} rows by the stitches of each; {gauge.Trace}");

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

    /// <summary>How far a border's stitches may differ from the edge that they go round before it ruffles or draws in.</summary>
    private const double BorderLeast = 0.6;
    private const double BorderMost = 1.7;

    /// <summary>A border adds its rounds' heights on every side.</summary>
    private PieceSize WithBorder()
    {
        if (construction.WhyNotWhole is { } why) return PieceSize.NotKnown("Not known: " + why);
        PieceSize body = Body.Measure();
        if (!body.Width.IsKnown || !body.Height.IsKnown) return body;
        Length edge = (body.Width.Value + body.Height.Value) * 2;
        double fullness = Along(rows[construction.FirstRows]) / edge;
        if (fullness is < BorderLeast or > BorderMost)
            return PieceSize.NotKnown($"Not known: the border's first round of {rows[construction.FirstRows].Places} stitches makes {Text(Along(rows[construction.FirstRows]))}, and the edge it goes round is {Text(edge)}. Measure a worked piece.");
        Length border = Heights(rows.Skip(construction.FirstRows));
        string added = $" + 2 × border of {Text(border)} ({rows.Count - construction.FirstRows} rounds)";
        return new PieceSize(Measured.Known(body.Width.Value + (border * 2), $"body ({body.Width.Trace}){added}"), Measured.Known(body.Height.Value + (border * 2), $"body ({body.Height.Trace}){added}"));
    }

    private PieceRuler Body => new(construction.Body!, gauge, [.. rows.Take(construction.FirstRows)], Length.Zero);

    private List<Length> Bordered()
    {
        List<Length> widths = [.. Body.Widths()];
        if (construction.WhyNotWhole is not null || !Body.Measure().Width.IsKnown || widths.Count < construction.FirstRows) return widths;
        Length width = Body.Measure().Width.Value;
        foreach (RowTally row in rows.Skip(construction.FirstRows)) widths.Add(width += gauge.HeightOf(row) * 2);
        return widths;
    }

    private long[] Places => [.. rows.Select(row => row.Places)];

    private RowTally Widest => rows.MaxBy(row => row.Places)!;

    private Length Tall => Heights(rows);

    private Length Heights(IEnumerable<RowTally> some) => some.Aggregate(Length.Zero, (sum, row) => sum + gauge.HeightOf(row));

    private Length Along(RowTally row) => gauge.StitchWidth * row.Places;

    private static string Text(Length length) => length.InCentimetres();
}
