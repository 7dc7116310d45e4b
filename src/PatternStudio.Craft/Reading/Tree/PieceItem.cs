using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Tree;

/// <summary>One entry of a piece: a row, a reference to rows, or words between rows.</summary>
public abstract record PieceItem(TextSpan Span)
{
    /// <summary>'Sizes M and L only': the 0-based sizes that work it, in order; empty for all.</summary>
    public EquatableArray<int> OnlySizes { get; init; }
}

/// <summary>A row, a round or a foundation, or several alike.</summary>
/// <param name="Heading">Its label.</param>
/// <param name="Steps">Its instruction, in order.</param>
/// <param name="Stated">The count it states; null where it states none.</param>
public sealed record RowInstruction(RowHeading Heading, EquatableArray<Step> Steps, StatedCount? Stated, TextSpan Span) : PieceItem(Span);

/// <summary>How long rows are repeated.</summary>
public enum RowsUntil
{
    /// <summary>'for 12 (20, 40) more rows': so many rows.</summary>
    MoreRows,

    /// <summary>'12 times', 'twice more': the rows as a whole, so often again.</summary>
    MoreTimes,

    /// <summary>'until Row 20', 'through Row 20'.</summary>
    RowNumber,

    /// <summary>'until piece measures 40 cm'.</summary>
    Measures,

    /// <summary>'until 3 sts remain', 'until there are 40 sts'.</summary>
    StitchesRemain,

    /// <summary>'for length desired', 'until desired length', or nothing said: known only to the maker.</summary>
    AsWished,
}

/// <summary>'Rep Rows 2 and 3 for 12 more rows', 'work even until piece measures 40 cm', as an entry of its own.</summary>
/// <param name="Rows">Which rows; empty for 'work even' and 'last row'.</param>
/// <param name="Until">How long.</param>
public sealed record RepeatRows(EquatableArray<int> Rows, RowsUntil Until, TextSpan Span) : PieceItem(Span)
{
    /// <summary>The number of rows, times, the row number or the stitches, as <see cref="Until"/> says.</summary>
    public SizedNumber? Count { get; init; }

    /// <summary>The length to reach, in millimetres for each size, for <see cref="RowsUntil.Measures"/>.</summary>
    public SizedNumber? Millimetres { get; init; }

    /// <summary>'Rep the last 2 rows': how many rows back the repeat begins; null where rows are named, 1 understood where <see cref="Rows"/> is empty too.</summary>
    public int? LastRows { get; init; }

    /// <summary>'ending with a Row 3': the row of the repeat that must come last.</summary>
    public int? EndingWith { get; init; }

    /// <summary>'ending with a RS row'.</summary>
    public FabricSide? EndingSide { get; init; }

    /// <summary>'Rep dec row': 'dec' or 'inc', the row meant being the last whose heading names it so; null where rows are named otherwise.</summary>
    public string? Shaping { get; init; }

    /// <summary>True for 'work even': rows without shaping, whatever the row before does.</summary>
    public bool IsEven { get; init; }

    /// <summary>The count stated after it.</summary>
    public StatedCount? Stated { get; init; }
}

/// <summary>
/// 'Continue in this way, adding 1 double between widenings each row, until you have 30 doubles between widenings': the rows above go on, one of their numbers
/// growing from row to row as it has grown.
/// </summary>
/// <param name="Last">What that number is in the last row.</param>
public sealed record ContinueInWay(SizedNumber Last, TextSpan Span) : PieceItem(Span);

/// <summary>'Work as for Back to end of Row 24', 'Work same as Front': rows of another piece worked again here.</summary>
/// <param name="Piece">The piece's name as written.</param>
/// <param name="ThroughRow">The last row to work; null for all.</param>
public sealed record WorkAsPiece(string Piece, int? ThroughRow, TextSpan Span) : PieceItem(Span);

/// <summary>A line among the rows that is no row: finishing, a remark, 'Sew motifs together as illustrated.'</summary>
/// <param name="IsRemark">True where it plainly instructs nothing countable; false where it may be a row that can't be read.</param>
public sealed record Passage(string Text, bool IsRemark, TextSpan Span) : PieceItem(Span);
