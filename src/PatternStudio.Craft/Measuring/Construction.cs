namespace PatternStudio.Craft.Measuring;

/// <summary>How a piece is put together, which decides how it is measured and drawn.</summary>
public enum ConstructionKind
{
    /// <summary>Nothing is measured by it: see <see cref="Construction.Reason"/>.</summary>
    NotKnown,

    /// <summary>Blocks worked one beside the other from corner to corner; their size is not known from a swatch in rows.</summary>
    Tiles,

    /// <summary>Rounds along both sides of a chain; their size is not worked out yet.</summary>
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
}

/// <summary>The construction of a piece.</summary>
/// <param name="Kind">Which sort.</param>
/// <param name="Reason">The rule that found it, or why it is not known, in a sentence.</param>
public sealed record Construction(ConstructionKind Kind, string Reason)
{
    /// <summary>Corners of each round, for <see cref="ConstructionKind.Polygon"/>; else 0.</summary>
    public int Corners { get; init; }

    /// <summary>True where the piece is worked in rounds.</summary>
    public bool InRounds => Kind is ConstructionKind.Circle or ConstructionKind.Polygon or ConstructionKind.Tube;
}
