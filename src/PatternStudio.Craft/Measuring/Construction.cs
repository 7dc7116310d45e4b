namespace PatternStudio.Craft.Measuring;

/// <summary>How a piece is put together, which decides how it is measured and drawn.</summary>
public enum ConstructionKind
{
    /// <summary>Nothing is measured by it: see <see cref="Construction.Reason"/>.</summary>
    NotKnown,

    /// <summary>Blocks worked one beside the other from corner to corner; their size is known from a swatch in tiles, not from one in rows.</summary>
    Tiles,

    /// <summary>Rounds along both sides of a chain.</summary>
    Oval,

    /// <summary>Rows of (nearly) the same width.</summary>
    StraightRows,

    /// <summary>Rows that widen or narrow at their edges.</summary>
    ShapedRows,

    /// <summary>Rows on the bias from one corner of a square to the opposite one.</summary>
    CornerToCorner,

    /// <summary>Rows back and forth round a centre: a half circle.</summary>
    HalfCircle,

    /// <summary>Rounds that grow evenly.</summary>
    Circle,

    /// <summary>Rounds with the same number of corners each: a granny square, a hexagon.</summary>
    Polygon,

    /// <summary>Rounds of the same count above each other.</summary>
    Tube,

    /// <summary>Lace, shells or arches held by plain rows of one width: an edging on its base row.</summary>
    RowsOnPlain,

    /// <summary>Rounds that grow from a centre and then go straight up: a hat, a basket.</summary>
    CrownAndTube,

    /// <summary>Rows with rounds all about them: a cloth with its border.</summary>
    Bordered,
}

/// <summary>What a finished size of a construction can be told from.</summary>
public enum SizeSource
{
    /// <summary>From no swatch: lace, stuffed shapes, rows that bend. Measure a worked piece.</summary>
    WorkedPiece,

    /// <summary>From stitches and rows.</summary>
    Gauge,

    /// <summary>From stitches and rows, or from the piece's own first rounds measured across.</summary>
    GaugeOrRounds,

    /// <summary>From a swatch counted in tiles.</summary>
    TileSwatch,
}

/// <summary>The construction of a piece.</summary>
/// <param name="Kind">Which sort.</param>
/// <param name="Reason">The rule that found it, or why it is not known, in a sentence.</param>
public sealed record Construction(ConstructionKind Kind, string Reason)
{
    /// <summary>What its finished size can be told from.</summary>
    public SizeSource SizeFrom => Kind switch
    {
        ConstructionKind.NotKnown => SizeSource.WorkedPiece,
        ConstructionKind.Tiles => Grid is null ? SizeSource.WorkedPiece : SizeSource.TileSwatch,
        _ when IsLace => SizeSource.WorkedPiece,
        ConstructionKind.Circle or ConstructionKind.Polygon or ConstructionKind.HalfCircle => SizeSource.GaugeOrRounds,
        _ => SizeSource.Gauge,
    };

    /// <summary>Corners of each round, for <see cref="ConstructionKind.Polygon"/>; else 0.</summary>
    public int Corners { get; init; }

    /// <summary>Stitches across the plain rows, for <see cref="ConstructionKind.RowsOnPlain"/>; chains that an oval goes round; else 0.</summary>
    public long Places { get; init; }

    /// <summary>True for a hat worked from its band up: the crown's rounds come last.</summary>
    public bool CrownLast { get; init; }

    /// <summary>Rows of the crown (of the tube, where the crown comes last), or of the body that the border goes round; else 0.</summary>
    public int FirstRows { get; init; }

    /// <summary>True for a tube that rises from the edge of a flat base (worked into one loop there): a basket, and no hat.</summary>
    public bool HasBase { get; init; }

    /// <summary>True where chain arches carry so much of the fabric that its size can't follow from stitches: lace.</summary>
    public bool IsLace { get; init; }

    /// <summary>Why a border can't be what was worked of it; null where it can. Then neither size nor yarn is known from its first round on.</summary>
    public string? WhyNotWhole { get; init; }

    /// <summary>How the body is put together, for <see cref="ConstructionKind.Bordered"/>; else null.</summary>
    public Construction? Body { get; init; }

    /// <summary>The tiles, where they come out as a square or rectangle; else null.</summary>
    public TileGrid? Grid { get; init; }

    /// <summary>True where the piece is worked in rounds.</summary>
    public bool InRounds => Kind is ConstructionKind.Circle or ConstructionKind.Polygon or ConstructionKind.Tube or ConstructionKind.CrownAndTube or ConstructionKind.Oval;
}
