using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Tree;

/// <summary>Which place of its kind is meant.</summary>
public enum PlaceChoice
{
    /// <summary>'in next st', 'in next 3 dc': the next <see cref="Placement.Count"/> places, one after the other.</summary>
    Next,

    /// <summary>'in each st across', 'in each of next 3 sts', 'in each st to last 2 sts': see <see cref="Placement.Extent"/>.</summary>
    Each,

    /// <summary>'in same st', 'in same sp': the place worked into last.</summary>
    Same,

    /// <summary>'in first st': the first place of the row below; for a join, the first stitch of this round.</summary>
    First,

    /// <summary>'in last st'.</summary>
    Last,

    /// <summary>'in 3rd ch of ch-5', '3rd dc of shell', 'in 5th st': the <see cref="Placement.Ordinal"/>th, inside <see cref="Placement.Within"/> where it is named.</summary>
    Nth,

    /// <summary>
    /// 'in 2nd ch from hook': counted back from the hook along the chain just made. With <see cref="Placement.Count"/> 2, a stitch worked over two
    /// of them: 'sc2tog over 2nd and 3rd chs from hook'.
    /// </summary>
    FromHook,

    /// <summary>'in ring', 'in magic ring'.</summary>
    InRing,

    /// <summary>'in top of tch', 'in tch', 'in 3rd ch of beg ch-3', 'in top of beginning ch'.</summary>
    TurningChainTop,

    /// <summary>'in tch sp', 'over turning chain': the space under the turning chain.</summary>
    TurningChainSpace,

    /// <summary>'over next 2 sts', 'next 2 sts together': one stitch takes several places.</summary>
    Over,

    /// <summary>'between next 2 dc', 'in sp between shells': no loop of a stitch is caught.</summary>
    Between,

    /// <summary>'in centre dc of next shell', 'in center of loop', 'corner sp'.</summary>
    Centre,

    /// <summary>'in skipped st', 'in first skipped dc', 'in 2nd skipped st' (the <see cref="Placement.Ordinal"/>th of those skipped).</summary>
    Skipped,

    /// <summary>'in marked st'.</summary>
    Marked,

    /// <summary>'in ends of rows', 'along side': see <see cref="Placement.Count"/> where stated.</summary>
    RowEnds,

    /// <summary>'in other side of foundation ch', 'in free loops of beginning ch'.</summary>
    OtherSide,

    /// <summary>'in dc just made', 'in top of last sc for picot', 'around tr just made': the stitch of that kind worked last in this row.</summary>
    JustMade,

    /// <summary>'in a corresponding place of the first motif' and the like: a place in another piece.</summary>
    OtherPiece,
}

/// <summary>Which loops of the place are taken.</summary>
public enum LoopChoice { Both, Front, Back, Third }

/// <summary>Whether the hook goes round the post, and from which side.</summary>
public enum PostChoice { None, Front, Back }

/// <summary>Where the hook goes.</summary>
/// <param name="Choice">Which place of its kind.</param>
/// <param name="Kind">The kind of place named.</param>
/// <param name="Span">The words that say it.</param>
public sealed record Placement(PlaceChoice Choice, PlaceKind Kind, TextSpan Span)
{
    /// <summary>How many places, for <see cref="PlaceChoice.Next"/>, <see cref="PlaceChoice.Over"/>, 'each of next n'; null means one (or, for Each, all in <see cref="Extent"/>).</summary>
    public SizedNumber? Count { get; init; }

    /// <summary>How far 'each' goes; null where <see cref="Count"/> says it.</summary>
    public Extent? Extent { get; init; }

    /// <summary>The n of 'nth', 1-based; negative counts from the end (-1 is 'last').</summary>
    public int? Ordinal { get; init; }

    /// <summary>The thing that the place is part of: 'of next shell', 'of ch-5', 'of beg ch-3'.</summary>
    public PlaceKind? Within { get; init; }

    /// <summary>
    /// For <see cref="PlaceChoice.Each"/>: 2 in 'every other st', 3 in 'every 3rd sc'; null for every one. <see cref="Further"/> is set too, as the words don't say
    /// where the counting begins.
    /// </summary>
    public int? EveryNth { get; init; }

    public LoopChoice Loop { get; init; }

    public PostChoice Post { get; init; }

    /// <summary>0 for the row below (the usual case), 1 for 'one row below' that, and so on.</summary>
    public int RowsBelow { get; init; }

    /// <summary>'of Rnd 2', 'into Row 3': the number of the row that the place is in, where it is not the row below; null where the words don't say.</summary>
    public int? InRow { get; init; }

    /// <summary>
    /// Words that narrow the place further and that the tree does not model: 'of small motif', 'to right of corner', 'on either side of tr'. A placement that has
    /// them is read, but can't be worked from the tree alone. Null for none.
    /// </summary>
    public TextSpan? Further { get; init; }

    /// <summary>Another placement that the same words add: 'in next 3 sc and in ch-2 sp'. Worked after this one.</summary>
    public Placement? And { get; init; }

    /// <summary>'in each … to the end': what words that name no place ('work even', a lone stitch) mean.</summary>
    /// <param name="span">The words that say it, or the empty span behind them where it is understood.</param>
    public static Placement EachToEnd(PlaceKind kind, TextSpan span) => new(PlaceChoice.Each, kind, span) { Extent = new Extent(ExtentKind.ToEnd, span) };
}
