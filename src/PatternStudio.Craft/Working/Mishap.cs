using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>What can go wrong while a row is worked.</summary>
public enum MishapKind
{
    /// <summary>More places are asked for than the row below has.</summary>
    PastTheEnd,

    /// <summary>Places are left over at the end.</summary>
    LeftOver,

    /// <summary>The repeat does not come out even: some places are left that one more repeat does not fit into.</summary>
    RepeatUneven,

    /// <summary>The next place is not of the kind named.</summary>
    OtherKind,

    /// <summary>The row below has no place of the kind named at all.</summary>
    NoSuchPlace,

    /// <summary>The worked count differs from the stated one.</summary>
    CountDiffers,

    /// <summary>A turning chain is treated as a stitch here and not there.</summary>
    TurningChainDisagrees,

    /// <summary>A join names a stitch that the round does not have.</summary>
    JoinToNothing,

    /// <summary>A row is referred to that does not exist (yet).</summary>
    NoSuchRow,

    /// <summary>A row number comes twice, or goes backwards.</summary>
    RowNumberRepeated,

    /// <summary>A row number is missing before this one.</summary>
    RowNumberMissing,

    /// <summary>There is nothing to work into: no foundation, no ring.</summary>
    NoFoundation,

    /// <summary>The row asks for more stitches than can be worked in reasonable memory.</summary>
    TooLarge,

    /// <summary>The words are read, but this way of working is not known: the row stays unchecked and nothing is claimed.</summary>
    CannotWork,
}

/// <summary>Something that went wrong at one place, with the facts that a sentence needs.</summary>
/// <param name="Kind">What went wrong.</param>
/// <param name="Span">The words at fault.</param>
public sealed record Mishap(MishapKind Kind, TextSpan Span)
{
    /// <summary>How many places were wanted, or the number stated.</summary>
    public long Wanted { get; init; }

    /// <summary>How many there are, or the number worked.</summary>
    public long Found { get; init; }

    /// <summary>What was named, in the pattern's own words for stitches.</summary>
    public string Named { get; init; } = "";

    /// <summary>What is there instead.</summary>
    public string Met { get; init; } = "";

    /// <summary>The row it happened in: 'Row 3'.</summary>
    public string Row { get; init; } = "";

    /// <summary>For a row that repeats another: that other row, as in 'Row 2'; the words at fault are then those that call for the repeat.</summary>
    public string Repeats { get; init; } = "";

    /// <summary>The size; empty for all.</summary>
    public string Size { get; init; } = "";

    /// <summary>For a stated count: true where the rows after it agree with the worked number, so that the stated one is the slip.</summary>
    public bool NextRowAgreesWithWorked { get; init; }

    /// <summary>True where the row was worked to its end all the same.</summary>
    public bool StopsNothing { get; init; }

    /// <summary>True where the row can't go on after it; false where only a number disagrees.</summary>
    public bool StopsRow => !StopsNothing && Kind is not (MishapKind.CountDiffers or MishapKind.LeftOver or MishapKind.RepeatUneven
        or MishapKind.JoinToNothing or MishapKind.RowNumberMissing or MishapKind.RowNumberRepeated);
}
