using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>Working one row: what it is worked into, from which side, and what became of it.</summary>
internal sealed partial class PieceWorker
{
    /// <summary>What one try at a row came to.</summary>
    private sealed record Attempt(WorkedRow Row, Mishap? Mishap, string Colour, bool FastenedOff);

    private void WorkRow(int number, RowInstruction instruction, TextSpan calledBy)
    {
        EquatableArray<Step>? resolved = Resolve(instruction.Steps, number, 0);
        int before = lastNumber;
        lastNumber = number;
        byNumber.Set(number, instruction);
        RowKind kind = instruction.Heading.Kind == RowKind.Foundation ? RowKind.Row : instruction.Heading.Kind;
        if (resolved is not { } steps)
        {
            AddUnworked(number, instruction, kind, calledBy, RowStatus.NotChecked);
            if (instruction.Steps.OfType<AsRowStep>().FirstOrDefault()?.Making is { } making && AsTold([making]) is { } groups) ground = new Ground(rows[^1] with { Runs = groups }, Doubtful: true);
            return;
        }
        if (InSameManner(steps, number) is { } same) byNumber.Set(number, (instruction with { Steps = steps = same }));
        steps = memo.Inline(steps, context);
        (steps, int even, EquatableArray<Step> behind, TextSpan evenWords) = EvenRows.Split(steps);
        if (steps.All(step => step is RemarkStep) && even > 0 && EvenRows.Steps(OnlyStitchBelow(), evenWords) is { } alone) (steps, even) = (alone, even - 1);
        else if (steps.IsEmpty && even > 0) even--;
        if (TurnedRows.Split(steps, context) is { } parts)
        {
            WorkTurnedRows(number, instruction, parts, calledBy);
            return;
        }
        (steps, EquatableArray<Step> roundBehind) = SecondRound(steps);
        RowSteps split = memo.Split(steps);
        EquatableArray<Step> own = memo.Join(carried, split.Own);
        // A line that can't be read, or rows turned on the way, may hide the foundation: then 'ch 2' at a row's start is none.
        bool hidden = (afterUnread || afterTurnedRows && number > 1) && !MakesFoundation(own);
        if (ground is null && !hidden && !BeginsWithTurningChain(instruction with { Steps = own }) && BeginsWithFoundation(own) && (number <= 1 || rows.Count > 0 || MakesFoundation(own)) && (carried.IsEmpty && IsFoundationRow(instruction with { Steps = own }) && (number <= 1 || MakesFoundation(own)) || !rows.Any(row => row.Status != RowStatus.Checked)))
        {
            own = LayFoundation(instruction, own);
            if (!own.Any(step => step is StitchStep or GroupStep or RepeatStep))
            {
                // 'Row 1: Ch 21.' is no more than the foundation.
                carried = split.ForNext;
                lastNumber = before;
                return;
            }
        }
        bool around = kind == RowKind.Round || own.Any(step => step is JoinStep { FormsRing: false }) || ClosesOnRing(own) || ground?.Row.Joined == true && ground.Row.Kind != RowKind.Foundation;
        bool turned = Turned(kind, own, around);
        RowStatus? hopeless = steps.Any(HoldsUnread) ? RowStatus.NotRead : own.Any(step => step is StitchStep { Stitch.Value: "fsc" or "fhdc" or "fdc" or "ftr" }) ? null : ground is null ? RowStatus.NotChecked : null;
        FabricSide side = instruction.Heading is { Side: { } told, Numbering: not RowNumbering.Range } ? told : NextSide(turned);
        turnsAfter = split.TurnsAfter;
        if (hopeless is RowStatus.NotChecked && AsTold(own) is { } asTold)
        {
            AddUnworked(number, instruction, kind, calledBy, RowStatus.NotChecked, side);
            ground = new Ground(rows[^1] with { Runs = asTold }, Doubtful: true);
        }
        else if (hopeless is { } status)
        {
            WorkMemo.Made? likely = WithLostStar(own, around, turned);
            AddUnworked(number, instruction, kind, calledBy, status, side);
            if (likely is { } made) ground = new Ground(rows[^1] with { Runs = made.Runs, Joined = made.Joined, EndsInLoop = made.EndsInLoop, Spiral = kind == RowKind.Round && !turned && !made.Joined }, Doubtful: true);
        }
        else
        {
            WorkedRow? below = ground?.Row;
            Attempt attempt = Try(number, instruction, own, kind, side, around, turned, calledBy);
            // Before the row itself is kept: as likely meant it stands on the same row, just below.
            EquatableArray<Run>? meant = attempt.Mishap is { StopsRow: false } slip ? Mended(slip, own, around, turned, below) : null;
            Keep(attempt);
            if (meant is { } runs && ground is { AsStated: null } worked) ground = new Ground(worked.Row with { Runs = runs }, Doubtful: true, AsStated: worked.Row);
        }
        startAt = 0;
        (carried, turnsNext, staysNext) = (split.ForNext, split.TurnsAfter, split.StaysAfter);
        WorkEven(even, instruction, evenWords, behind);
        if (!roundBehind.IsEmpty) WorkRow(number, instruction with { Steps = roundBehind, Heading = instruction.Heading with { Numbering = RowNumbering.Next, Numbers = [], First = null, Last = null } }, calledBy);
    }

    /// <summary>'9 chain, 1 double treble, …, 1 single on the 5th of the 9 chain' over a ring: a round, though it is called a row.</summary>
    private bool ClosesOnRing(EquatableArray<Step> own) =>
        ground is { Row: { Kind: RowKind.Foundation, Joined: true } } && own.LastOrDefault(IsWork) is StitchStep { Where.Choice: PlaceChoice.TurningChainTop or PlaceChoice.Nth or PlaceChoice.First } last
        && last.Stitch == StitchId.SlipStitch && own.FirstOrDefault(IsWork) is ChainStep;
    /// <summary>A row of squares or of groups tells what it is, whatever it is worked into: a ground for the row above. Null for any other row.</summary>
    private EquatableArray<Run>? AsTold(EquatableArray<Step> steps) =>
        Filet.Squares(steps, context.Number) is { } squares ? Filet.AsTold(squares, context.Number) : ToldGroups.Of(steps, context)?.AsTold(context);

    /// <summary>'Ch 5, join to form a ring, ch 3, 15 dc in ring, join, cut thread. Attach Red, * ch 6, …': a second round in the words of the first.</summary>
    private static (EquatableArray<Step> First, EquatableArray<Step> Second) SecondRound(EquatableArray<Step> steps)
    {
        for (int i = 1; i + 2 < steps.Count; i++)
            if (steps[i] is JoinStep { FormsRing: false, Where: null } && steps[i + 1] is FastenOffStep && steps[i + 2] is AttachStep && steps.Skip(i + 2).Any(step => step is RepeatStep or StitchStep))
                return (steps.Take(i + 2).ToEquatableArray(), steps.Skip(i + 2).ToEquatableArray());
        return (steps, []);
    }

    /// <summary>Rows back and forth told in the words of one: each is worked into the one before; what lies under the next row told is then not known.</summary>
    private void WorkTurnedRows(int number, RowInstruction told, IReadOnlyList<EquatableArray<Step>> parts, TextSpan calledBy)
    {
        for (int i = 0; i < parts.Count && rows.Count <= MostRows; i++)
            WorkRow(number, told with
            {
                Steps = parts[i],
                Stated = i == parts.Count - 1 ? told.Stated : null,
                Heading = i == 0 ? told.Heading : told.Heading with { Numbering = RowNumbering.Next, Numbers = [], First = null, Last = null, Side = null },
            }, calledBy);
        byNumber.Set(number, told);
        (ground, carried, afterTurnedRows) = (null, [], true);
    }

    private bool afterTurnedRows;

    /// <summary>'…, then work 4 rows even': rows of their own, numbered on.</summary>
    private void WorkEven(int times, RowInstruction told, TextSpan words, EquatableArray<Step> behind)
    {
        for (int i = 0; i < times && !IsFull(words); i++)
            if (EvenRows.Steps(OnlyStitchBelow(), words) is { } steps)
                WorkRow(lastNumber + 1, told with { Steps = steps, Stated = null, Heading = told.Heading with { Numbering = RowNumbering.Next, Numbers = [], First = null, Last = null } }, words);
            else AddUnworked(++lastNumber, told, told.Heading.Kind, words, RowStatus.NotChecked);
        if (times > 0 && behind.All(step => step is RemarkStep || step is StitchStep slip && slip.Stitch == StitchId.SlipStitch)) carried = behind.Where(step => step is StitchStep).ToEquatableArray();
    }

    private StitchId? OnlyStitchBelow() =>
        ground is { Row.Status: RowStatus.Checked } below && new Tally(below.Row.Runs, context.Conventions).OnlyKind is { } only ? new StitchId(only) : null;

    private static bool HoldsUnread(Step step) => step switch
    {
        UnreadStep => true,
        GroupStep group => group.Steps.Any(HoldsUnread),
        RepeatStep repeat => repeat.Steps.Any(HoldsUnread) || repeat.Ending.Any(HoldsUnread),
        _ => false,
    };

    private FabricSide NextSide(bool turned)
    {
        int last = rows.FindLastIndex(row => row.Kind != RowKind.Foundation);
        if (last < 0) return FabricSide.Right;
        WorkedRow below = rows[last];
        return turned ? below.Side == FabricSide.Right ? FabricSide.Wrong : FabricSide.Right : below.Side;
    }

    /// <summary>
    /// Whether the work is turned before the row. Where no word says it: rows are turned, rounds and joined rows are not; the first row
    /// goes back along its chain, unless the chain is a ring.
    /// </summary>
    private bool Turned(RowKind kind, EquatableArray<Step> own, bool around)
    {
        if (ground?.Row.Kind == RowKind.Foundation) return !ground.Row.Joined;
        if (turnsNext || RowSteps.TurnsAtStart(own)) return true;
        if (staysNext) return false;
        return kind == RowKind.Row && !around;
    }

    private Attempt Work(int number, RowInstruction instruction, EquatableArray<Step> own, RowKind kind, FabricSide side, bool around, bool turned, TextSpan calledBy, WorkedRow? below)
    {
        WorkMemo.Made made = Make(own, around, turned, below);
        (Mishap? mishap, Tally tally) = (made.Mishap, made.Tally);
        if (GroupsNamed(instruction.Stated, tally) is { Length: > 0 } whole) tally = tally.Counting(whole);
        var row = new WorkedRow(number, instruction, kind, side, RowStatus.Checked, made.Runs)
        {
            Index = rows.Count,
            Label = WorkedRow.LabelOf(kind, number),
            Section = section,
            CalledBy = calledBy,
            Into = below?.Index ?? -1,
            Turned = turned,
            StoppedAt = made.StoppedAt,
            Joined = made.Joined || around && !turned && (kind == RowKind.Round || made.StoppedAt == 0 && !instruction.Steps.Any(step => step is TurnStep)),
            EndsInLoop = made.EndsInLoop,
            Spiral = kind == RowKind.Round && !turned && !made.Joined,
            Total = tally.Total,
            Counts = tally.Counts,
            Spaces = tally.Spaces,
            Stated = instruction.Stated,
            SampleChains = onSample ? context.SampleChains : null,
        };
        if (mishap is null && instruction.Stated is { } stated)
        {
            (bool? agrees, StatedItem? item, long worked) = StatedComparison.Compare(stated, tally, context.Size, RowInHeading(instruction.Heading, number));
            bool holdsForLastOnly = agrees == false && !stated.PerRow && !IsLastOf(instruction.Heading, number);
            row = holdsForLastOnly ? row with { Stated = null } : row with { CountAgrees = agrees };
            if (agrees == false && !holdsForLastOnly) mishap = new Mishap(MishapKind.CountDiffers, item!.Span) { Wanted = item.Number.For(context.Size) ?? 0, Found = worked, Named = Name(item) };
            // A count that is off in a row that passed over places without a word: there lies the cause.
            if (mishap is not null && made.Passed is { } passed) mishap = passed with { StopsNothing = true };
        }
        // Without a stated count nobody vouches for places left behind.
        if (mishap is null && instruction.Stated is null && made.Passed is { Kind: MishapKind.LeftOver or MishapKind.RepeatUneven } left) mishap = left with { StopsNothing = true };
        return new Attempt(row, mishap is null ? null : AtCaller(mishap, instruction, calledBy) with { Row = row.Label }, made.Colour, made.FastenedOff);
    }

    /// <summary>
    /// A row that went well where it stands and fails where it is repeated: the repeat is at fault, not the row.
    /// </summary>
    private static Mishap AtCaller(Mishap mishap, RowInstruction instruction, TextSpan calledBy)
    {
        if (instruction.Stated is { } stated && stated.Span.Contains(mishap.Span)) return mishap;
        if (calledBy != instruction.Span && !calledBy.Contains(mishap.Span)) return mishap with { Span = calledBy, Repeats = instruction.Heading.Text };
        return instruction.Steps.FirstOrDefault(step => step is AsRowStep) is AsRowStep same && !instruction.Span.Contains(mishap.Span)
            ? mishap with { Span = same.Span, Repeats = same.Rows.IsEmpty ? "" : $"Row {same.Rows[0]}" }
            : mishap;
    }

    private WorkMemo.Made Make(EquatableArray<Step> own, bool around, bool turned, WorkedRow? below)
    {
        var key = new WorkMemo.Key(own.Identity ?? this, below?.Runs.Identity, rows.Count - (below?.Index ?? 0), below?.Joined ?? false, below?.Spiral ?? false, below?.EndsInLoop ?? false, turned, around, colour, startAt, turnsAfter);
        bool deeper = memo.ReachesDeeper(own);
        if (!deeper && !context.Unroll && memo.Find(key) is { } known) return known;
        Course? course = below is null or { Length: 0 } ? null : new Course(below, below.Index, turned, turned && below.Joined && below.Kind != RowKind.Foundation && below.Length > 0 ? below.Length - 1 : 0);
        RowWorker worker = Begin(onSample);
        worker.StartAt(startAt);
        Mishap? mishap = worker.Work(own);
        if (around && UnderstoodRepeat(own) is { } all && (mishap is null && worker.LeavesPlaces || mishap?.Kind == MishapKind.LeftOver))
        {
            RowWorker again = Begin(onSample: false);
            if (again.Work(all) is null && !again.LeavesPlaces) (worker, mishap) = (again, null);
            else mishap = new Mishap(MishapKind.CannotWork, own[0].Span);
        }
        if (around && mishap?.Kind == MishapKind.CannotWork && RowWorker.LotsIntoLoops(own) is { } lots)
        {
            RowWorker again = Begin(onSample: false);
            if (again.Work(lots) is null && !again.LeavesSpaces) (worker, mishap) = (again, null);
        }
        // Over a sample nobody can tell a wrong number from a wrong length: only what comes out without a rest is taken.
        if (onSample && !around && (mishap is not null || worker.LeavesPlaces || worker.Built.Last is { Kind: CellKind.Chains })) mishap = new Mishap(MishapKind.CannotWork, mishap?.Span ?? own[0].Span);
        EquatableArray<Run> runs = worker.Built.Build();
        var made = new WorkMemo.Made(runs, new Tally(runs, context.Conventions), mishap, worker.Colour, worker.FastenedOff, worker.Joined, worker.Passed, worker.StoppedAt, worker.EndsInLoop);
        return deeper ? made : memo.Keep(key, made);

        RowWorker Begin(bool onSample) => new(context, rows, course, colour) { GoesAround = around, TurnsAfter = turnsAfter, Section = section, OnSample = onSample };
    }

    /// <summary>
    /// '3rd round: 1 double, 5 chain, miss 1.': old books tell one turn of a round and leave 'repeat' to be understood. Null where the words are not of that sort: they
    /// must be no more than stitches in the next places, with chains between.
    /// </summary>
    private static EquatableArray<Step>? UnderstoodRepeat(EquatableArray<Step> own)
    {
        Step[] told = [.. own.Where(step => step is not (RemarkStep or ColourStep))];
        if (told.Length is < 2 or > 8 || told[0] is not (StitchStep or GroupStep) || !told.Any(step => step is ChainStep)) return null;
        bool plain = told.All(step => step is ChainStep { Role: ChainRole.Unstated } or SkipStep || InNextPlace(step));
        return plain ? [new RepeatStep(told.ToEquatableArray(), new Extent(ExtentKind.Unstated, told[^1].Span), RepeatMark.Words, TextSpan.FromTo(told[0].Span.Start, told[^1].Span.End))] : null;
    }

    private static bool InNextPlace(Step step) => step switch
    {
        StitchStep stitch => stitch.Stitch != StitchId.SlipStitch && IsNext(stitch.Where),
        GroupStep group => IsNext(group.Where),
        _ => false,
    };

    private static bool IsNext(Placement? where) =>
        where is null or { Choice: PlaceChoice.Next or PlaceChoice.Nth or PlaceChoice.Centre, Further: null, And: null, InRow: null };

    /// <summary>'(5 shells)': the groups that a row counts as one each.</summary>
    private string[] GroupsNamed(StatedCount? stated, Tally tally) =>
        stated is null
            ? [.. context.GroupsStated.Where(tally.IsGroup)]
            : [.. stated.Items.Where(item => item.Kind?.Stitch is { } named && tally.IsGroup(named.Value)).Select(item => item.Kind!.Stitch!.Value.Value)];

    /// <summary>A count behind several rows holds for the last of them; for the others where it fits.</summary>
    private bool IsLastOf(RowHeading heading, int number) => heading.Numbering switch
    {
        RowNumbering.Range => heading.Last?.For(context.Size) is not { } last || number >= last,
        RowNumbering.Listed => heading.Numbers.IsEmpty || number == heading.Numbers[heading.Numbers.Count - 1],
        _ => true,
    };

    private int RowInHeading(RowHeading heading, int number) => heading.Numbering switch
    {
        RowNumbering.Range => number - (heading.First?.For(context.Size) ?? number),
        RowNumbering.Listed => Math.Max(0, heading.Numbers.ToList().IndexOf(number)),
        _ => 0,
    };

    private string Name(StatedItem item) => item.Thing == CountedThing.Stitches || item.Kind is null ? "st" : context.Name(item.Kind);

    /// <summary>Works the row into the row below, and where that is in doubt also into what the row below claims to be.</summary>
    private Attempt Try(int number, RowInstruction instruction, EquatableArray<Step> own, RowKind kind, FabricSide side, bool around, bool turned, TextSpan calledBy)
    {
        Attempt first = Work(number, instruction, own, kind, side, around, turned, calledBy, ground?.Row);
        // Where the words leave open which stitches a place belongs to, what comes out decides.
        if (first.Mishap is not null && memo.InTurn(own) is { } inTurn && Work(number, instruction, inTurn, kind, side, around, turned, calledBy, ground?.Row) is { Mishap: null } other) return other;
        if (first.Mishap is { Kind: MishapKind.CountDiffers } && BehindTurningChain(first, own) is var skipped and > 0)
        {
            startAt = skipped;
            if (Work(number, instruction, own, kind, side, around, turned, calledBy, ground?.Row) is { Mishap: null } shorter) return shorter;
            startAt = 0;
        }
        if (ground is not { AsStated: { } claimed }) return first;
        Attempt second = Work(number, instruction, own, kind, side, around, turned, calledBy, claimed);
        if (first.Mishap is null && second.Mishap is not null) ConfirmWorked();
        return first.Mishap is not null && second.Mishap is null ? second : first;
    }

    /// <summary>'Ch 25. Row 1: Sc in each ch. (24)': the count says how many chains were for turning, up to the height of a treble; 0 where it says nothing of the kind.</summary>
    private long BehindTurningChain(Attempt attempt, EquatableArray<Step> own)
    {
        const int Tallest = 4;
        if (startAt > 0 || ground is not { Row: { Kind: RowKind.Foundation, Joined: false } } || own.Any(step => step is ChainStep or WorkAlongStep or StitchStep { Where.Choice: not PlaceChoice.Each } or GroupStep)) return 0;
        return attempt.Mishap!.Found - attempt.Mishap.Wanted is > 0 and <= Tallest and var more ? more : 0;
    }

    /// <summary>The row above fits the worked number and not the stated one: so the stated number was the slip.</summary>
    private void ConfirmWorked()
    {
        int last = mishaps.FindLastIndex(mishap => mishap.Kind == MishapKind.CountDiffers);
        if (last >= 0) mishaps[last] = mishaps[last] with { NextRowAgreesWithWorked = true };
    }

    private void Keep(Attempt attempt)
    {
        WorkedRow row = attempt.Row;
        Mishap? mishap = attempt.Mishap;
        RowInstruction origin = Origin(row.Instruction, row.Number);
        bool follows = mishap is not null && (ground is { } below && (below.Doubtful || below.AsStated is not null) || !ReferenceEquals(origin, row.Instruction) && failed.Contains(origin));
        if (mishap is not null) failed.Add(origin);
        if (mishap is { Kind: MishapKind.CannotWork })
        {
            Report(mishap);
            row = Unworked(row, RowStatus.NotChecked);
        }
        else if (follows)
        {
            context.Falter();
            row = Unworked(row, RowStatus.NotChecked);
        }
        else if (mishap is not null)
        {
            Report(mishap);
            if (mishap.StopsRow) row = Unworked(row, RowStatus.NotChecked);
        }
        rows.Add(row);
        colour = attempt.FastenedOff ? "" : attempt.Colour;
        ground = NextGround(attempt, row, mishap);
    }

    private Ground? NextGround(Attempt attempt, WorkedRow row, Mishap? mishap)
    {
        if (mishap is null) return new Ground(row);
        StitchId? usual = UsualStitch(attempt.Row);
        WorkedRow? claimed = Ground.Claimed(row, context, usual);
        if (mishap.Kind == MishapKind.CannotWork && claimed is null && AsTold(row.Instruction.Steps) is { } told) claimed = row with { Runs = told };
        // Filet keeps its width: where a row has lost a square, the next one may well be right over the row before it.
        if (Filet.Squares(row.Instruction.Steps, context.Number) is not null && ground is { Doubtful: false }) claimed = ground.Row with { Index = row.Index };
        if (mishap.StopsRow || row.Status != RowStatus.Checked) return claimed is null ? null : new Ground(claimed, Doubtful: true);
        return new Ground(row, mishap.Kind != MishapKind.CountDiffers || claimed is null, claimed);
    }

    private StitchId? UsualStitch(WorkedRow row)
    {
        WorkedRow known = row.Counts.IsEmpty ? rows.LastOrDefault(other => !other.Counts.IsEmpty) ?? row : row;
        return known.Counts.IsEmpty ? null : new StitchId(known.Counts.MaxBy(count => count.Value).Key);
    }

    private static WorkedRow Unworked(WorkedRow row, RowStatus status) =>
        row with { Status = status, Runs = [], Total = 0, Counts = [], Spaces = [], CountAgrees = null };

    private void AddUnworked(int number, RowInstruction instruction, RowKind kind, TextSpan calledBy, RowStatus status, FabricSide side = FabricSide.Right)
    {
        if (status == RowStatus.NotChecked) context.Falter();
        var row = new WorkedRow(number, instruction, kind, side, status, []) { Index = rows.Count, Label = WorkedRow.LabelOf(kind, number), Section = section, CalledBy = calledBy, Stated = instruction.Stated };
        rows.Add(row);
        WorkedRow? claimed = Ground.Claimed(row, context, UsualStitch(row));
        ground = claimed is null ? null : new Ground(claimed, Doubtful: true);
    }
}
