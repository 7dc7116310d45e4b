using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Tree;

/// <summary>One instruction of a row, with the words that give it.</summary>
public abstract record Step(TextSpan Span);

/// <summary>
/// 'sc in next st', '2 dc in next ch-1 sp', 'sc in each st across', 'sc2tog over next 2 sts', 'sc 3', '6 sc in ring', 'inc'.
/// </summary>
/// <param name="Stitch">Which stitch (or special stitch).</param>
/// <param name="PerPlace">How many go into each place; null where the words give one number only and no place ('3 sc', 'sc 3'): then <paramref name="Count"/> holds it.</param>
/// <param name="Count">A number with no place of its own: that many stitches, one in each next place, or all in the group's place inside a group.</param>
/// <param name="Where">The place; null where the words don't say (next place, or the group's).</param>
public sealed record StitchStep(StitchId Stitch, SizedNumber? PerPlace, SizedNumber? Count, Placement? Where, TextSpan Span) : Step(Span)
{
    /// <summary>'dc in 4th ch from hook (skipped 3 chs count as first dc)': what the skipped chains stand for; null where the words don't say.</summary>
    public SkippedChains? Skipped { get; init; }

    /// <summary>'sl st in 3rd ch from hook for picot': the stitch that this one completes; null for none.</summary>
    public StitchId? Completes { get; init; }

    /// <summary>'2 dc with ch 1 between', '1 dc in each of next 8 dc with ch 1 between each': the chains made between two of these stitches; null for none.</summary>
    public SizedNumber? ChainsBetween { get; init; }
}

/// <summary>What the chains passed over before the first stitch of a foundation stand for.</summary>
/// <param name="Role">Whether they count.</param>
/// <param name="CountsAs">The stitch they count as, when stated with a stitch.</param>
/// <param name="ThenChains">The chains left over beside that stitch: 1 in 'dc in 6th ch from hook (counts as dc, ch 1, dc)'.</param>
public sealed record SkippedChains(ChainRole Role, StitchId? CountsAs, int ThenChains, TextSpan Span)
{
    /// <summary>The chains of the foundation left unworked between that stitch and the next: 1 in 'skipped chs count as dc and 1 skipped ch'; null where the words don't say.</summary>
    public int? ThenSkips { get; init; }
}

/// <summary>What a chain stands for.</summary>
public enum ChainRole
{
    /// <summary>The words don't say.</summary>
    Unstated,

    /// <summary>'(counts as dc)': see <see cref="ChainStep.CountsAs"/>.</summary>
    Counts,

    /// <summary>'(does not count as st)'.</summary>
    DoesNotCount,
}

/// <summary>'ch 3', 'Ch 3 (counts as dc)', 'ch 5 (counts as dc and ch 2)', 'Ch 21 (31, 41)'.</summary>
/// <param name="Count">Number of chains.</param>
/// <param name="Role">What it stands for.</param>
/// <param name="CountsAs">The stitch it counts as, when stated with a stitch; null for plain 'counts as a st'.</param>
/// <param name="ThenChains">The chains left over beside that stitch: 2 in 'counts as dc and ch 2'.</param>
public sealed record ChainStep(SizedNumber Count, ChainRole Role, StitchId? CountsAs, int ThenChains, TextSpan Span) : Step(Span);

/// <summary>'skip next 2 sts', 'sk ch-1 sp', 'miss 1 tr'.</summary>
/// <param name="Count">How many places are passed over.</param>
/// <param name="Kind">The kind of place passed over.</param>
public sealed record SkipStep(SizedNumber Count, PlaceKind Kind, TextSpan Span) : Step(Span);

/// <summary>'(2 dc, ch 1, 2 dc) in next ch-1 sp': all the steps go into the same place, once for each place of <paramref name="Where"/>.</summary>
public sealed record GroupStep(EquatableArray<Step> Steps, Placement Where, TextSpan Span) : Step(Span)
{
    /// <summary>'(2 dc, ch 2, 3 dc) in 4th ch from hook (3 skipped chs count as dc)': what the skipped chains stand for; null where the words don't say.</summary>
    public SkippedChains? Skipped { get; init; }

    /// <summary>
    /// True for '1 sc, 2 hdc in next st' without brackets of its own: the place may be that of the last stitch only, and the others go into the stitches before it.
    /// What comes out decides.
    /// </summary>
    public bool MayBeInTurn { get; init; }

    /// <summary>A name given on the way: '3 dc, ch 1, 3 dc (shell) in next loop'.</summary>
    public StitchId? Named { get; init; }
}

/// <summary>How a repeat is written; kept so that it prints as it was.</summary>
public enum RepeatMark { Star, DoubleStar, Dagger, StarPair, Brackets, Parentheses, Braces, Words }

/// <summary>'*…; rep from * across', '[…] 4 times', '(sc 2, inc) x 6'.</summary>
/// <param name="Steps">What is repeated.</param>
/// <param name="Extent">How far.</param>
/// <param name="Mark">How it is written.</param>
public sealed record RepeatStep(EquatableArray<Step> Steps, Extent Extent, RepeatMark Mark, TextSpan Span) : Step(Span)
{
    /// <summary>'ending last rep at **': how many of <see cref="Steps"/> the last repeat works; null for all.</summary>
    public int? LastStopsAfter { get; init; }

    /// <summary>'ending with …': steps that close the row, in the place of the last repeat's tail where it does not fit whole.</summary>
    public EquatableArray<Step> Ending { get; init; }
}

/// <summary>'turn'.</summary>
public sealed record TurnStep(TextSpan Span) : Step(Span);

/// <summary>'do not turn'.</summary>
public sealed record DoNotTurnStep(TextSpan Span) : Step(Span);

/// <summary>'join with sl st to first sc', 'join', 'ch 1, join with sc to top of beg ch-3', 'ch 5, join … to form a ring'.</summary>
/// <param name="Stitch">The joining stitch; a slip stitch where the words don't say.</param>
/// <param name="Where">What it is joined to; null where the words don't say.</param>
/// <param name="FormsRing">'to form a ring', 'in a circle'.</param>
public sealed record JoinStep(StitchId Stitch, Placement? Where, bool FormsRing, TextSpan Span) : Step(Span)
{
    /// <summary>'ch 2, join with hdc in first sc (counts as last ch-4 sp)': the chains and the joining stitch together are a space of so many chains; null for none.</summary>
    public int? CountsAsSpace { get; init; }
}

/// <summary>'working along the other side of the foundation ch', 'working in ends of rows', 'down side': along what the places that follow are met.</summary>
/// <param name="Along">
/// A placement of choice <see cref="PlaceChoice.OtherSide"/> or <see cref="PlaceChoice.RowEnds"/>, or <see cref="PlaceChoice.FromHook"/> for 'starting in 2nd ch from
/// hook': where the first stitch goes.
/// </param>
public sealed record WorkAlongStep(Placement Along, TextSpan Span) : Step(Span);

/// <summary>'dc in next 2 dc or 2 dc in next ch-2 sp', 'sk next 2 sts or next ch-2 sp': whichever fits what comes next.</summary>
public sealed record EitherStep(Step First, Step Other, TextSpan Span) : Step(Span);

/// <summary>'5 sp', '3 open meshes', '2 solid meshes', '4 blocks': filet crochet told by its meshes.</summary>
/// <param name="Solid">True for a filled mesh.</param>
public sealed record MeshStep(SizedNumber Count, bool Solid, TextSpan Span) : Step(Span);

/// <summary>Why no count follows from words that are read.</summary>
public enum UncountedReason
{
    /// <summary>'continue all around in same manner', 'working all corners same as 1st corner', 'ending to correspond'.</summary>
    Likewise,

    /// <summary>'skip about ¼ inch', 'work 3 inches'.</summary>
    ByMeasure,

    /// <summary>'increasing 1 sc at beginning and end of row', 'widen in every 5th stitch', 'narrow at middle of toe'.</summary>
    Shaping,

    /// <summary>'Work 3 more leaves', 'Make another sole': a piece made again.</summary>
    MakeMore,

    /// <summary>'work 2 rows even', 'then 1 row of Red': rows told inside another row's words.</summary>
    Rows,
}

/// <summary>An instruction that is understood, but leaves its places or its number to the maker, or to another part of the work: the row can't be worked from it.</summary>
public sealed record UncountedStep(string Text, UncountedReason Reason, TextSpan Span) : Step(Span);

/// <summary>'leave remaining 4 hdc unworked': the row ends on purpose before the end of the row below.</summary>
/// <param name="Count">How many places stay unworked; null where the words don't say.</param>
public sealed record LeaveUnworkedStep(SizedNumber? Count, PlaceKind Kind, TextSpan Span) : Step(Span);

/// <summary>
/// Hook motions told in the row itself, of a stitch that gets no name: 'draw up a loop in next st, yo, draw through all loops on hook'. (Motions that are
/// named at once, '… (sc3tog made)', are a <see cref="StitchStep"/>.) How many places it takes and makes is not known from the tree alone.
/// </summary>
public sealed record MotionsStep(TextSpan Span) : Step(Span)
{
    /// <summary>The motions, where they could be read.</summary>
    public Anatomy.ReadMotions? Motions { get; init; }
}

/// <summary>'do not join': the round goes on as a spiral.</summary>
public sealed record DoNotJoinStep(TextSpan Span) : Step(Span);

/// <summary>'magic ring', 'make an adjustable ring'.</summary>
public sealed record MagicRingStep(TextSpan Span) : Step(Span);

/// <summary>'join yarn in any ch-2 sp', 'attach A in corner sp', 'with right side facing join B with sc in first st'.</summary>
/// <param name="Colour">The colour's name, where stated.</param>
/// <param name="Where">Where it is attached; null where not stated.</param>
/// <param name="Stitch">The stitch it is attached with: 'join with sc'; null for a plain join.</param>
public sealed record AttachStep(string? Colour, Placement? Where, StitchId? Stitch, TextSpan Span) : Step(Span);

/// <summary>'fasten off', 'cut yarn'.</summary>
public sealed record FastenOffStep(TextSpan Span) : Step(Span);

/// <summary>'change to B in last yo', 'with A'.</summary>
public sealed record ColourStep(string Colour, TextSpan Span) : Step(Span);

/// <summary>'place marker', 'move marker up'.</summary>
public sealed record MarkerStep(TextSpan Span) : Step(Span);

/// <summary>'work as Row 2', 'rep Row 3', 'same as 5th row' as a row's whole body or its beginning.</summary>
/// <param name="Rows">Which rows; more than one cycle through them.</param>
public sealed record AsRowStep(EquatableArray<int> Rows, TextSpan Span) : Step(Span)
{
    /// <summary>True where the words say 'the last row' or 'the previous row', not a number.</summary>
    public bool PreviousRow { get; init; }

    /// <summary>'Rows 9–14: Rep Rows 7 and 8 three times': how often the rows are said to be worked; null where the words don't say.</summary>
    public SizedNumber? Times { get; init; }

    /// <summary>'The same as the preceding, the 1 double always on the 3rd chain': where that stitch goes here; null where the words don't say.</summary>
    public StitchStep? Moved { get; init; }

    /// <summary>'Repeat row 2 making 3 shells': the groups that the row comes to, whatever it changes for them; null where the words don't say.</summary>
    public StitchStep? Making { get; init; }

    /// <summary>True where 'but', 'except' or 'having' changes it by words that follow: then the row can't be worked from this alone.</summary>
    public bool WithChanges { get; init; }

    /// <summary>'same as last row, ending with ch 4, tr in tr': the steps that close this row, in the place of those that close the row named; empty where it closes likewise.</summary>
    public EquatableArray<Step> Ending { get; init; }

    /// <summary>'same as last row but having 8 chs in each loop': the chains of each loop; null where they are as many.</summary>
    public SizedNumber? LoopChains { get; init; }

    /// <summary>'same as 3rd row, working a shell in each ch-8 loop': the length of the loops worked into, where it has changed; null where it has not.</summary>
    public int? LoopsBelow { get; init; }

    /// <summary>True where the row is the row named, with nothing changed.</summary>
    public bool IsUnchanged => !WithChanges && Ending.IsEmpty && LoopChains is null && LoopsBelow is null && Moved is null;
}

/// <summary>Words that instruct nothing countable: 'pull tight', 'RS is facing', 'mark this as the right side'.</summary>
public sealed record RemarkStep(string Text, TextSpan Span) : Step(Span);

/// <summary>Words that could not be read. Never guessed at: the row is 'not checked'.</summary>
/// <param name="Text">The words, verbatim.</param>
/// <param name="Nearest">The nearest phrase that can be read, as an example; null where none is near.</param>
public sealed record UnreadStep(string Text, string? Nearest, TextSpan Span) : Step(Span)
{
    /// <summary>'repeat from * twice' with no star before it: how often the passage is worked; null for other words.</summary>
    public Extent? LostStar { get; init; }
}
