using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Tree;

/// <summary>Rows go back and forth; rounds go around.</summary>
public enum RowKind { Foundation, Row, Round }

/// <summary>The side that faces the maker.</summary>
public enum FabricSide { Right, Wrong }

/// <summary>How a heading numbers its rows.</summary>
public enum RowNumbering
{
    /// <summary>'Row 3', 'Rows 4 and 6', '5th, 6th and 7th rows': the listed numbers.</summary>
    Listed,

    /// <summary>'Rows 3–10', with sizes 'Rows 3–10 (12, 14)': from First to Last. 'Row 31 (33, 35)' is one row: First and Last are alike.</summary>
    Range,

    /// <summary>'Next row', 'Next 4 rounds', 'Set-up row': so many rows after the last.</summary>
    Next,

    /// <summary>'Row 2 and all even rows', 'all WS rows'.</summary>
    EveryOther,

    /// <summary>No heading at all: a foundation chain, or an old booklet's first row.</summary>
    None,
}

/// <summary>The label of a row, before its instruction.</summary>
/// <param name="Kind">Row, round or foundation.</param>
/// <param name="Numbering">How it is numbered.</param>
/// <param name="Text">The heading as written; empty where there is none.</param>
/// <param name="Span">Where it stands.</param>
public sealed record RowHeading(RowKind Kind, RowNumbering Numbering, string Text, TextSpan Span)
{
    /// <summary>For <see cref="RowNumbering.Listed"/>: the numbers; for EveryOther: the first of them, if given.</summary>
    public EquatableArray<int> Numbers { get; init; }

    /// <summary>For <see cref="RowNumbering.Range"/>.</summary>
    public SizedNumber? First { get; init; }

    /// <summary>For <see cref="RowNumbering.Range"/>: the last; for <see cref="RowNumbering.Next"/>: how many rows.</summary>
    public SizedNumber? Last { get; init; }

    /// <summary>'Row 8 (size L only)': the 0-based sizes that work it, in order; empty where the heading does not say.</summary>
    public EquatableArray<int> OnlySizes { get; init; }

    /// <summary>The side stated: '(RS)', '(WS)'.</summary>
    public FabricSide? Side { get; init; }
}
