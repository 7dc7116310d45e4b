using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>
/// Works one row into the row below, step by step. This part holds the state and walks the steps; the other parts know places,
/// stitches, chains, repeats and the row's two ends.
/// </summary>
internal sealed partial class RowWorker
{
    /// <summary>More steps than the longest row of any pattern takes; beyond it the row is refused, not waited for.</summary>
    private const int MostSteps = 4_000_000;

    /// <summary>Far more stitches than hands can make; 'ten in each st' comes there within a few rows.</summary>
    private const long MostCells = 100_000_000;

    private const int MostExpected = 100_000;

    private readonly WorkContext context;
    private readonly IReadOnlyList<WorkedRow> rows;
    private readonly RowBuilder builder;
    private Course? course;
    private Places? places;
    private State at = State.Start;
    private Target? ambient;
    private Step? previous;
    private Step? next;
    private int steps;
    private int level;

    /// <summary>Where the hook is. Copied to come back to when a repeat does not fit once more.</summary>
    /// <param name="Position">Index in the course of the next cell to be met.</param>
    /// <param name="Chain">Single chains of that cell already used.</param>
    /// <param name="Last">Index of the place worked last, -1 for none.</param>
    /// <param name="Passed">The first place where 'next' passed over others that no word skips: fine where the row comes out, the cause where it does not.</param>
    /// <param name="InSpace">True where that place was a space: stitches beside it may stay unworked.</param>
    private readonly record struct State(long Position, int Chain, long Last, int LastChain, bool InSpace, int OwnChains, long Skipped, string Colour, Mishap? Passed)
    {
        public static readonly State Start = new(0, 0, -1, -1, false, 0, -1, "", null);
    }

    /// <summary>A place found: what a stitch's foot stands in, and its index in the course (-1 for places outside it).</summary>
    private readonly record struct Target(Foot Foot, long Index);

    /// <param name="context">What holds for the whole pattern.</param>
    /// <param name="rows">The piece's rows so far.</param>
    /// <param name="course">The row below; null where there is none.</param>
    /// <param name="colour">The colour in hand.</param>
    public RowWorker(WorkContext context, IReadOnlyList<WorkedRow> rows, Course? course, string colour)
    {
        (this.context, this.rows) = (context, rows);
        // Turn by turn, a row has about as many cells as the row below.
        builder = new RowBuilder(context.Unroll && course is not null ? (int)Math.Min(course.Length, MostExpected) : 0);
        at = at with { Colour = colour };
        Meet(course);
    }

    /// <summary>Begins further on in the row below: what lies before is worked by another section.</summary>
    public void StartAt(long position)
    {
        if (position > 0) at = at with { Position = position };
    }

    /// <summary>Where the row stopped, if it leaves the rest unworked; else 0.</summary>
    public long StoppedAt => leavesUnworked ? at.Position : 0;

    /// <summary>True where places of the row below are still to be met.</summary>
    public bool LeavesPlaces => course is not null && Left() is { Stitches: > 0 } or { Spaces: > 0 };

    /// <summary>True where spaces of the row below are still to be met.</summary>
    public bool LeavesSpaces => course is not null && Left().Spaces > 0;

    public RowBuilder Built => builder;

    /// <summary>The colour in hand when the row ends.</summary>
    public string Colour => at.Colour;

    /// <summary>True where the round was joined.</summary>
    public bool Joined { get; private set; }

    /// <summary>True where the row ends the yarn.</summary>
    public bool FastenedOff { get; private set; }

    /// <summary>Works all the steps.</summary>
    /// <returns>What went wrong; null where all went well.</returns>
    public Mishap? Work(EquatableArray<Step> all)
    {
        all = OpeningGroup.TakeOutChain(all);
        if (all.FirstOrDefault(step => step is UnreadStep) is { } unread) return new Mishap(MishapKind.CannotWork, unread.Span);
        if (all.Any(TurnsInside)) return new Mishap(MishapKind.CannotWork, all.First(TurnsInside).Span);
        joins = all.Any(step => step is JoinStep { FormsRing: false });
        // 'Fold, and sc through both sides 4 times': two stitches of the row below in one; how many stay open is the maker's affair.
        leavesUnworked = all.Any(step => step is StitchStep && (context.Says(step.Span, "through both") || context.Says(step.Span, "through all")));
        if (Filet.Squares(all, context.Number) is { } squares)
        {
            lastWorked = squares[^1];
            return WorkFilet(squares, all.First(step => step is ChainStep)) ?? CheckEnd();
        }
        if (ToldGroups.Of(all, context) is { } told && HasGroup(told.Group.Stitch))
        {
            lastWorked = told.Group;
            return WorkToldGroups(told, all) ?? CheckEnd();
        }
        if (AroundFabric(all) is { } sides) return new Mishap(MishapKind.CannotWork, sides.Span);
        FindOpening(all);
        BeginInLoop(all);
        Mishap? mishap = (EachOfSeveral(all) is { Length: > 0 } each ? WorkEachOfSeveral(each) : WorkAll(all)) ?? (steps > MostSteps || builder.Cells > MostCells ? new Mishap(MishapKind.TooLarge, all[all.Count - 1].Span) : CheckEnd());
        builder.NameOpening();
        context.Spend(steps + builder.Entries);
        return mishap is { Kind: MishapKind.PastTheEnd or MishapKind.LeftOver or MishapKind.RepeatUneven } ? at.Passed ?? mishap : mishap;
    }

    /// <summary>Where 'next' passed over places without a word: the likely cause of a count that is off.</summary>
    public Mishap? Passed => at.Passed;

    /// <summary>True where the round will be joined at its end.</summary>
    private bool joins;

    private void Meet(Course? met)
    {
        course = met;
        places = met is null ? null : new Places(met, context);
    }

    private Mishap? WorkAll(EquatableArray<Step> all)
    {
        level++;
        Mishap? mishap = null;
        for (int i = 0; i < all.Count && mishap is null; i++) mishap = WorkStep(all, i);
        level--;
        return mishap is null ? null : Unless(mishap);
    }

    /// <summary>True for the row's own steps, false inside its groups and repeats.</summary>
    private bool AtTop => level == 1;

    /// <summary>Where a repeat has stopped early, steps that fail behind it fail because of it: that is the cause to name.</summary>
    private Mishap Unless(Mishap mishap) =>
        stopped is { } stop && mishap.Kind is MishapKind.PastTheEnd or MishapKind.OtherKind or MishapKind.NoSuchPlace or MishapKind.LeftOver
            ? stop
            : mishap;

    private Mishap? WorkStep(EquatableArray<Step> all, int index)
    {
        // '1 in each of 31 stitches down other side and 3 in last': the words behind the stitch say where it goes, and more than can be followed.
        if (index + 1 < all.Count && all[index] is StitchStep && all[index + 1] is UncountedStep behind && MentionsOtherSide(behind.Text)) return new Mishap(MishapKind.CannotWork, behind.Span);
        if (ReferenceEquals(all[index], endingTold) && !ReferenceEquals(all[0], endingTold))
        {
            endingTold = null;
            return null;
        }
        if (++steps > MostSteps || builder.Entries > MostSteps / 8 || context.IsSpent(steps + builder.Entries)) return new Mishap(MishapKind.TooLarge, all[index].Span);
        Step step = all[index];
        next = index + 1 < all.Count ? all[index + 1] : null;
        Mishap? mishap = step switch
        {
            StitchStep stitch => WorkStitches(stitch, all, index),
            ChainStep chain => WorkChain(chain, all, index),
            SkipStep skip => Skip(skip),
            GroupStep group => WorkGroup(group, all, index),
            RepeatStep repeat => WorkRepeat(repeat, all, index),
            JoinStep join => Join(join),
            AttachStep attach => Attach(attach, all, index),
            ColourStep colour => Change(colour),
            FastenOffStep => FastenOff(),
            MagicRingStep => null,
            RemarkStep remark => Heed(remark),
            TurnStep => TurnInside(all, index),
            WorkAlongStep along => WorkAlong(along),
            EitherStep either => WorkEither(either, all, index),
            MeshStep mesh => WorkMeshes(mesh),
            LeaveUnworkedStep => LeaveUnworked(),
            UncountedStep when IsWorkedShaping(step) => null,
            UncountedStep { Reason: UncountedReason.Shaping } shaped when ShapedAlone(shaped) is { } alone => alone(),
            UncountedStep { Reason: UncountedReason.Likewise } like when index + 1 < all.Count && like.Text.StartsWith("and working same as", StringComparison.OrdinalIgnoreCase) => null,
            UncountedStep { Reason: UncountedReason.MakeMore } when AtTop && index > 0 => null,
            MotionsStep motions => WorkMotions(motions),
            AsRowStep or UncountedStep => new Mishap(MishapKind.CannotWork, step.Span),
            _ => null,
        };
        if (step is not (RemarkStep or MarkerStep)) previous = step;
        return mishap;
    }

    private Mishap? Change(ColourStep colour)
    {
        at = at with { Colour = colour.Colour };
        return null;
    }

    private Mishap? LeaveUnworked()
    {
        leavesUnworked = true;
        return null;
    }

    private Mishap? FastenOff()
    {
        FastenedOff = true;
        return null;
    }

    /// <summary>'turn' in the middle of a row: a short row. The row is read, its shape is not worked yet.</summary>
    private static Mishap? TurnInside(EquatableArray<Step> all, int index) =>
        all.Skip(index + 1).Any(step => step is StitchStep or GroupStep or RepeatStep) && all.Take(index).Any(step => step is StitchStep or GroupStep or RepeatStep)
            ? new Mishap(MishapKind.CannotWork, all[index].Span)
            : null;

    /// <summary>Rows worked back and forth inside a repeat of the row.</summary>
    private static bool TurnsInside(Step step) => step is RepeatStep repeat && repeat.Steps.Any(inner => inner is TurnStep || TurnsInside(inner));

    private Mishap? Heed(RemarkStep remark)
    {
        if (remark.Text.Contains("unworked", StringComparison.OrdinalIgnoreCase)) leavesUnworked = true;
        CountAsNamed(remark);
        if (MentionsOtherSide(remark.Text)) return GoToOtherSide(remark.Span);
        return null;
    }

    private static bool MentionsOtherSide(string text) =>
        (text.Contains("other side", StringComparison.OrdinalIgnoreCase) || text.Contains("opposite side", StringComparison.OrdinalIgnoreCase)
            || text.Contains("free loop", StringComparison.OrdinalIgnoreCase) || text.Contains("unused loop", StringComparison.OrdinalIgnoreCase))
        && !text.Contains("turn", StringComparison.OrdinalIgnoreCase);

    private void Emit(Cell cell) => builder.Add(cell with { Colour = at.Colour });
}
