using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>A row's two ends: how it opens (moves, attached yarn, turning chain), how it closes, and what it may leave.</summary>
internal sealed partial class RowWorker
{
    private int opening;
    private int turningChain = -1;
    private bool attached;
    private bool leavesUnworked;
    private bool alongEdge;
    private bool onOtherSide;
    private int depth;
    private long firstChainWorked;
    private StitchId? ambientGroup;
    private Step? lastWorked;

    /// <summary>True where the row goes around: it may start anywhere and meets all of the row below once.</summary>
    public bool GoesAround { get; init; }

    /// <summary>True over a foundation whose length the text leaves open: there a repeat may end inside its last turn, as the row below ends.</summary>
    public bool OnSample { get; init; }

    /// <summary>
    /// 'Sl st in next 2 dc and in corner sp, ch 3, …': slip stitches before the turning chain only move the hook. Finds that chain.
    /// </summary>
    private void FindOpening(EquatableArray<Step> all)
    {
        for (int i = 0; i < all.Count && IsOpeningMatter(all[i]); i++)
            if (all[i] is ChainStep) turningChain = i;
        opening = turningChain >= 0 ? turningChain : MovesBeforeLace(all);
        openingStitch = FirstStitch(all, 0);
        rowStitch = FindRowStitch(all);
        StandBehindTurningChain(all);
        skipped = all.OfType<StitchStep>().FirstOrDefault()?.Skipped ?? all.OfType<GroupStep>().FirstOrDefault()?.Skipped;
        skippedCount = skipped is { Role: not ChainRole.Unstated } ? skipped.Role == ChainRole.Counts : all.OfType<RemarkStep>().Select(remark => SaysOfSkippedChains(remark.Text)).FirstOrDefault(said => said is not null);
        lastWorked = all.LastOrDefault(step => step is StitchStep or GroupStep or RepeatStep);
    }

    /// <summary>'Ch 21. Row 1: Sc 20.': where the stitches told are the foundation's but for the chains that turn, those are at its start.</summary>
    private void StandBehindTurningChain(EquatableArray<Step> all)
    {
        if (course is not { Row: { Kind: RowKind.Foundation, Joined: false } } || course.Length < 4 || turningChain >= 0 || openingStitch is not { } first || all.Any(step => step is WorkAlongStep) || AllSteps(all).Any(step => step.Where?.Choice is PlaceChoice.FromHook or PlaceChoice.Each && step.Where.Count is null)) return;
        long spare = course.Length - NeedOf(all, 0).Stitches, tall = Math.Max(1, (long)Math.Round(context.Traits(first).Height));
        if (spare == tall) at = at with { Position = spare };
    }

    /// <summary>'Sl st in next 2 sc, * ch 6, skip 3 sc, …': slip stitches before a row of loops move the hook too.</summary>
    private static int MovesBeforeLace(EquatableArray<Step> all)
    {
        int moves = 0;
        while (moves < all.Count && IsOpeningMatter(all[moves])) moves++;
        return moves < all.Count && all[moves] is RepeatStep { Steps: [var first, ..] } && (first is ChainStep || IntoSpace(first)) ? moves : 0;
    }

    private static bool? SaysOfSkippedChains(string text)
    {
        if (!text.Contains("count", StringComparison.OrdinalIgnoreCase)) return null;
        return !text.Contains("not count", StringComparison.OrdinalIgnoreCase) && !text.Contains("n't count", StringComparison.OrdinalIgnoreCase);
    }

    private static bool IsOpeningMatter(Step step) => step switch
    {
        ChainStep or TurnStep or RemarkStep or ColourStep or AttachStep or MarkerStep or DoNotTurnStep or FastenOffStep => true,
        StitchStep stitch => stitch.Stitch == StitchId.SlipStitch && stitch.Where?.Choice != PlaceChoice.FromHook,
        _ => false,
    };

    private Mishap? WorkMove(StitchStep step, EquatableArray<Step> all, int index)
    {
        // The hook of a joined round stands on its first stitch already: 'next' is the second.
        if (GoesAround && at == State.Start with { Colour = at.Colour } && course is { Row.Joined: true, Turned: false } && step.Where?.Choice is null or PlaceChoice.Next && !BeginsWithGroup(step.Where) && !BeginsWithLoop(step.Where))
            at = at with { Position = 1 + Math.Max(0, course.Find(0, (cell, _) => places!.Stitches(cell) > 0 || cell.Kind == CellKind.Chains)) };
        Mishap? Move(Target target)
        {
            movedTo = target.Index;
            Emit(new Cell(CellKind.Join, StitchId.SlipStitch, 0, [target.Foot], false, step.Span));
            return null;
        }
        if (step.Where is null) return Times(Number(step, 1), () => AtNext(NextStitch(step.Span), Move));
        return AtEach(step.Where, default, Move) ?? (SpaceMovedTo(step, all, index) is { } space ? AtNext(space, Move) : null);
    }

    /// <summary>'Sl st across to corner ch-2 sp, ch 3, 2 dc in same sp', '… in corner': the same space shows that the hook has come not only up to it but into it.</summary>
    private Placement? SpaceMovedTo(StitchStep step, EquatableArray<Step> all, int index)
    {
        if (step.Where is not { Extent: { Kind: ExtentKind.ToPlace, Place: { Noun: PlaceNoun.Space or PlaceNoun.ChainSpace or PlaceNoun.Corner } space } }) return null;
        Placement? behind = all.Skip(index + 1).FirstOrDefault(other => other is StitchStep or GroupStep or RepeatStep) switch { StitchStep stitch => stitch.Where, GroupStep group => group.Where, _ => null };
        return behind is not null && (behind.Choice == PlaceChoice.Same || behind is { Choice: PlaceChoice.Next, Count: null } && !context.Says(behind.Span, "next")) && behind is { Kind.Noun: PlaceNoun.Space or PlaceNoun.ChainSpace or PlaceNoun.Corner } ? new Placement(PlaceChoice.Next, space, step.Span) : null;
    }

    /// <summary>'Sl st into shell' where the round below begins with a shell: the hook stands on it.</summary>
    private bool BeginsWithGroup(Placement? where) =>
        where is { Kind: { Stitch: { } named } kind } && course!.At(0).Group == named && places!.Offers(course.At(0), 0, kind) > 0;

    /// <summary>'Sl st to next loop' where the round below begins with a loop of chains: the hook stands before it.</summary>
    private bool BeginsWithLoop(Placement? where) =>
        where is { Kind.Noun: PlaceNoun.Space or PlaceNoun.ChainSpace } && course!.Find(0, (cell, _) => places!.Stitches(cell) > 0 || cell.Kind == CellKind.Chains) is var first and >= 0 && course.At(first).Kind == CellKind.Chains;

    private Mishap? WorkChain(ChainStep step, EquatableArray<Step> all, int index)
    {
        if (context.Number(step.Count) is not { } chains || chains <= 0) return null;
        if (AtTop && index == turningChain && !opened) return Open(step, chains, all, index);
        if (AtTop && index < turningChain && !opened) return null;
        at = at with { OwnChains = 0 };
        if (ambient is not null && index == 1 && builder.Last is { Kind: CellKind.Join } && !builder.Has(cell => cell.Kind != CellKind.Join))
        {
            Emit(new Cell(CellKind.TurningChain, StitchId.Chain, chains, [], false, step.Span));
            return null;
        }
        Emit(new Cell(CellKind.Chains, StitchId.Chain, chains, [], false, step.Span) { GoesOn = builder.IsInPicotLoop });
        return null;
    }

    /// <summary>The chains that the row begins with; 0 for none.</summary>
    private int beginningChains;

    /// <summary>True once the turning chain, or a first stitch in its stead, is worked.</summary>
    private bool opened;

    /// <summary>The row's first stitch: what a chain before it is compared with.</summary>
    private StitchId? openingStitch;

    /// <summary>'(skipped 3 chs count as dc)': what the text says of the chains skipped at the start.</summary>
    private bool? skippedCount;

    private SkippedChains? skipped;

    /// <summary>The turning chain: stands for a stitch, or only lifts the hook, or is the first loop of a lace row.</summary>
    private Mishap? Open(ChainStep step, int chains, EquatableArray<Step> all, int index)
    {
        opened = true;
        beginningChains = chains;
        StartRoundHere();
        StitchId next = FirstStitch(all, index + 1) ?? StitchId.Single;
        StitchTraits traits = context.Traits(next);
        bool low = traits.Height <= 1;
        bool told = step.Role != ChainRole.Unstated;
        if (!told && index + 1 < all.Count && FollowingWork(all, index) is StitchStep { Where: { Choice: PlaceChoice.FromHook } fromHook } && !IsNextFromHook(fromHook))
        {
            Emit(new Cell(CellKind.Chains, StitchId.Chain, chains, [], false, step.Span));
            return null;
        }
        if (told) context.Tell(chains, step.Role == ChainRole.Counts, step.CountsAs, step.ThenChains);
        bool counts = told ? step.Role == ChainRole.Counts
            : chains == 1 || low && context.Told(chains) is null ? context.Told(chains) ?? false
            : context.TurningChainCounts(chains, usual: chains >= 3);
        if (!told && low && JoinedAt(all) is { } top && chains > top)
        {
            // 'Ch 8, *sc in next loop, … join in 3rd st of ch': joined there, the chain is a dc and a loop.
            StitchId tall = top == 3 ? StitchId.Double : StitchId.Treble;
            Emit(new Cell(CellKind.TurningChain, tall, top, OpeningFoot() is { } under ? [under] : [], true, step.Span));
            Emit(new Cell(CellKind.Chains, StitchId.Chain, chains - top, [], false, step.Span));
            TakeFirstPlace();
            return null;
        }
        if (!counts && low && chains >= 3)
        {
            Emit(new Cell(CellKind.Chains, StitchId.Chain, chains, [], false, step.Span));
            return StepBack();
        }
        Foot? foot = OpeningFoot();
        EquatableArray<Foot> feet = foot is { } stands ? [stands] : [];
        if (!counts)
        {
            Emit(new Cell(CellKind.TurningChain, StitchId.Chain, chains, feet, false, step.Span));
            return StepBack();
        }
        if (!told && IsFirstLeg(all, index))
        {
            Emit(new Cell(CellKind.TurningChain, StitchId.Chain, chains, feet, false, step.Span));
            TakeFirstPlace();
            return null;
        }
        (StitchId Stitch, int Then)? before = told ? null : context.ToldStitch(chains);
        StitchId stitch = step.CountsAs ?? before?.Stitch ?? StandsFor(chains, traits);
        int then = before?.Then ?? step.ThenChains, over = then > 0 ? then : Math.Max(0, chains - (int)Math.Round(context.Traits(stitch).Height));
        Emit(new Cell(CellKind.TurningChain, stitch, chains - over, feet, true, step.Span));
        if (over > 0) Emit(new Cell(CellKind.Chains, StitchId.Chain, over, [], false, step.Span));
        TakeFirstPlace();
        return null;
    }

    /// <summary>The chain that the round is joined to, counted from its foot, where that is the height of a tall stitch; null for others.</summary>
    private int? JoinedAt(EquatableArray<Step> all) =>
        GoesAround && all.LastOrDefault(step => step is JoinStep) is JoinStep { Where: { Choice: PlaceChoice.TurningChainTop or PlaceChoice.Nth, Kind.Noun: PlaceNoun.Chain or PlaceNoun.AnyStitch, Within: not null, Ordinal: (3 or 4) and var top } } ? top : null;

    /// <summary>
    /// 'Ch 4, 3 tr together, * …, 4-tr cluster': the chain is the first leg of the first cluster, no stitch beside it; the clusters of the round, one leg more, show it.
    /// </summary>
    private bool IsFirstLeg(EquatableArray<Step> all, int index)
    {
        if (!GoesAround || FollowingWork(all, index) is not StitchStep first || Legs(first.Stitch) is not (var stitch, > 1 and var legs)) return false;
        return StitchesIn(all).Any(other => Legs(other.Stitch) == (stitch, legs + 1) || other.Stitch.Value is "cl" or "cluster");
    }

    private static IEnumerable<StitchStep> StitchesIn(IEnumerable<Step> steps) => steps.SelectMany(step => step switch
    {
        StitchStep stitch => [stitch],
        RepeatStep repeat => StitchesIn(repeat.Steps.Concat(repeat.Ending)),
        GroupStep group => StitchesIn(group.Steps),
        _ => Enumerable.Empty<StitchStep>(),
    });

    /// <summary>'tr4cl', 'tr4tog' → tr, 4.</summary>
    private static (string Stitch, int Legs)? Legs(StitchId stitch)
    {
        string plain = stitch.Value.Replace("tog", "", StringComparison.Ordinal).Replace("cl", "", StringComparison.Ordinal);
        string digits = string.Concat(plain.Where(char.IsAsciiDigit));
        return digits.Length == 1 && plain.EndsWith(digits, StringComparison.Ordinal) ? (plain[..^1], digits[0] - '0') : null;
    }

    private static Step? FollowingWork(EquatableArray<Step> all, int index) =>
        all.Skip(index + 1).FirstOrDefault(step => step is StitchStep or GroupStep or RepeatStep or SkipStep);

    /// <summary>A chain of three stands for the stitch that follows where that is no taller; else for the stitch of its own height.</summary>
    private static StitchId StandsFor(int chains, StitchTraits next) =>
        next.Height >= 2 && (chains >= next.Height || chains == 2) ? Plain(next) : chains switch
        {
            <= 1 => StitchId.Single,
            2 => StitchId.HalfDouble,
            3 => StitchId.Double,
            4 => StitchId.Treble,
            _ => StitchId.DoubleTreble,
        };

    private static StitchId Plain(StitchTraits traits) =>
        Vocabulary.Standard.Find(traits.Base) is { } known && known.Base == traits.Base && known.Takes == 1 && !known.IsGroup ? traits.Base
        : traits.Height <= 2 ? StitchId.HalfDouble : traits.Height <= 3 ? StitchId.Double : StitchId.Treble;

    /// <summary>The first stitch that the steps work; a named group counts by its own first stitch.</summary>
    private StitchId? FirstStitch(EquatableArray<Step> all, int from, int within = 0)
    {
        for (int i = from; i < all.Count; i++)
        {
            StitchId? first = all[i] switch
            {
                StitchStep { Stitch: var stitch } => within < 8 && context.Traits(stitch).Definition is { Steps.IsEmpty: false } own ? FirstStitch(own.Steps, 0, within + 1) ?? stitch : stitch,
                GroupStep group => FirstStitch(group.Steps, 0, within),
                RepeatStep repeat => FirstStitch(repeat.Steps, 0, within),
                _ => null,
            };
            if (first is not null) return first;
        }
        return null;
    }

    private Foot? OpeningFoot()
    {
        if (course is null) return null;
        if (at.Last >= 0) return TargetAt(at.Last, at.LastChain, course.At(at.Last).Kind == CellKind.Chains, null).Foot;
        if (course.Length > 0 && course.At(0).Kind == CellKind.Ring) return new Foot(Down, 0, -1, FootKind.Ring);
        long first = course.Find(0, (cell, _) => places!.Stitches(cell) > 0);
        return first < 0 ? null : TargetAt(first, -1, false, null).Foot;
    }

    /// <summary>A turning chain that counts takes the first place; a place moved to or attached in is taken already.</summary>
    private void TakeFirstPlace()
    {
        if (course is null || at.Last >= 0) return;
        long first = course.Find(0, (cell, _) => places!.Stitches(cell) > 0 || cell.Kind == CellKind.Chains);
        if (first < 0) return;
        Cell cell = course.At(first);
        at = at with { Position = first + 1, Last = first, InSpace = cell.Kind == CellKind.Chains };
    }

    /// <summary>Yarn attached in a place leaves that place free for the first stitch.</summary>
    private Mishap? StepBack()
    {
        if (attached && at.Last >= 0) at = at with { Position = at.Last };
        return null;
    }

    /// <summary>A round that starts elsewhere meets everything from there on, and last what lies before it.</summary>
    private void StartRoundHere()
    {
        if (!GoesAround || course is null || at.Last <= 0) return;
        Meet(course.StartingAt(at.Last));
        if (movedTo == at.Last) movedTo = 0;
        at = at with { Position = 1, Chain = 0, Last = 0 };
    }

    private Mishap? Join(JoinStep step)
    {
        if (step.FormsRing) return null;
        // A join to a place, with more of the round to come, fastens to another motif.
        if (step.Where?.Choice == PlaceChoice.OtherPiece || !AtTop || step.Where is not null && next is StitchStep or ChainStep or GroupStep or RepeatStep)
        {
            joinsMotif = true;
            return null;
        }
        Joined = true;
        if (context.Traits(step.Stitch).Height > 1 && builder.Last is { Kind: CellKind.Chains } chains)
        {
            // A tall stitch that closes the last loop stands in for chains of its height.
            builder.RemoveLast();
            Emit(chains with { Chains = step.CountsAsSpace ?? chains.Chains + (int)context.Traits(step.Stitch).Height });
        }
        if (step.Where is { Choice: PlaceChoice.TurningChainTop, Further: null, Ordinal: { } nth } && nth > beginningChains && beginningChains > 0)
            return new Mishap(MishapKind.JoinToNothing, step.Span) { Named = context.Name(PlaceKind.Chain), Wanted = nth, Found = beginningChains };
        return step.Where is { Further: null, Kind: { Noun: PlaceNoun.Stitch, Stitch: { } named } } && named != StitchId.Chain && !builder.Has(cell => cell.Counts && (Places.Matches(cell.Stitch, named) || IsCalled(cell, named)))
            && context.Traits(named).Definition is null
            ? new Mishap(MishapKind.JoinToNothing, step.Span) { Named = context.Name(named) }
            : null;
    }

    /// <summary>'Join to first cluster' where the round is of dc3tog: stitches closed together, which many call so.</summary>
    private bool IsCalled(Cell cell, StitchId named) => Places.IsCluster(named) && cell.Kind == CellKind.Stitch && context.Traits(cell.Stitch).Takes > 1;

    private bool IsClosingSlipStitch(StitchStep step, EquatableArray<Step> all, int index) =>
        GoesAround && AtTop && step.Stitch == StitchId.SlipStitch && !builder.IsEmpty && IsClosing(all, index);

    /// <summary>True for the step that closes a round: nothing is worked behind it.</summary>
    private bool IsClosing(EquatableArray<Step> all, int index)
    {
        bool closes = all[index] is JoinStep
            || GoesAround && all[index] is StitchStep { Where.Choice: PlaceChoice.First or PlaceChoice.TurningChainTop or PlaceChoice.Nth } slip && slip.Stitch == StitchId.SlipStitch;
        if (!closes) return false;
        for (int i = index + 1; i < all.Count; i++)
            if (all[i] is StitchStep or GroupStep or RepeatStep or SkipStep) return false;
        return true;
    }

    private Mishap? Skip(SkipStep step)
    {
        if (context.Number(step.Count) is not { } count || count == 0) return null;
        // 'Skip the sl st': the one that joined the round below is no place.
        if (step.Kind is { Noun: PlaceNoun.Stitch, Stitch: { } slip } && slip == StitchId.SlipStitch && course?.Find(0, (cell, _) => cell.Stitch == slip) < 0) return null;
        // 'Skip 4 dc of same scallop': the hook has left that group already.
        if (context.Says(step.Span, "of same") && course is not null && at.Last >= 0 && course.At(at.Last).GroupSize > count && at.Position > at.Last && (at.Position >= course.Length || course.At(at.Position).GroupIndex == 0)) return null;
        if (IsOfOtherRow(step)) return new Mishap(MishapKind.CannotWork, step.Span);
        if (IsLoopOfStitch(step)) return Skip(step with { Kind = PlaceKind.AnyStitch });
        State before = at;
        // 'Skip first st' names the first place whether or not the turning chain has taken it.
        if (course is not null && (context.Says(step.Span, "first") || IsUnderTurningChain(step, count))) at = at with { Position = 0, Chain = 0 };
        if (step.Kind.Noun is PlaceNoun.AnyStitch or PlaceNoun.Stitch) skippedLast = count;
        long first = -1;
        for (int i = 0; i < count; i++)
        {
            (Target target, Mishap? mishap) = TakeNext(step.Kind, step.Span);
            if (mishap is not null) return mishap with { Wanted = count };
            if (first < 0) first = target.Index;
        }
        at = at with { Last = before.Last, LastChain = before.LastChain, InSpace = before.InSpace && step.Kind.Noun != PlaceNoun.AnyStitch, Skipped = first };
        // 'Skip 3 ch (count as dc), dc in next ch' is 'dc in 4th ch from hook' in other words.
        if (builder.IsEmpty && before.Position == 0 && step.Kind.Noun is PlaceNoun.Chain or PlaceNoun.AnyStitch && course is { Row: { Kind: RowKind.Foundation, Joined: false } })
            StandOnSkippedChains(count, new Placement(PlaceChoice.Next, step.Kind, step.Span));
        return null;
    }

    /// <summary>'3 ch (counts as 1 tr), miss 1 tr, 1 tr into each tr to end': the one missed is the one that the turning chain stands on.</summary>
    private bool IsUnderTurningChain(SkipStep step, int count) =>
        count == 1 && step.Kind.Noun is PlaceNoun.AnyStitch or PlaceNoun.Stitch && course is { Row.Kind: not RowKind.Foundation } && builder.Last is { Kind: CellKind.TurningChain, Counts: true } && !context.Says(step.Span, "next");

    /// <summary>'Miss 1 loop' over a row of close stitches: old books call the top of a stitch a loop.</summary>
    private bool IsLoopOfStitch(SkipStep step) =>
        step.Kind.Noun == PlaceNoun.Space && places is { HasSpaces: false } && context.Says(step.Span, "loop");

    /// <summary>An oval: the same chain again, along its other side, from the chain just worked back to the first.</summary>
    private Mishap? GoToOtherSide(TextSpan span)
    {
        int foundation = course?.Row.Kind == RowKind.Foundation ? course.RowIndex : 0;
        if (rows.Count == 0 || rows[foundation].Kind != RowKind.Foundation || rows[foundation].Length == 0) return new Mishap(MishapKind.CannotWork, span);
        WorkedRow row = rows[foundation];
        bool oval = course?.RowIndex == foundation;
        if (oval)
        {
            Cell chain = row.Runs[0].Unit[0];
            row = row with { Runs = [new Run([chain], Math.Max(1, row.Length - firstChainWorked), 0)] };
        }
        else if (foundation + 1 < rows.Count && LastPlaceUsed(rows[foundation + 1]) is { } last && last + 1 < row.Length)
        {
            // The chains that turned to row 1 have no other side to work into.
            row = row with { Runs = [new Run([row.Runs[0].Unit[0]], last + 1, 0)] };
        }
        Meet(new Course(row, foundation, turned: false));
        at = at with { Position = oval ? 1 : 0, Chain = 0, Last = oval ? 0 : -1, LastChain = -1, InSpace = false };
        onOtherSide = true;
        return null;
    }

    private static long? LastPlaceUsed(WorkedRow row)
    {
        long last = -1;
        foreach (Run run in row.Runs)
            foreach (Cell cell in run.Unit)
                foreach (Foot foot in cell.Feet)
                    if (foot.Row == 1 && (cell.Kind == CellKind.Stitch || cell.Counts)) last = Math.Max(last, Math.Max(foot.Place, foot.Place + (run.Times - 1) * run.Stride));
        return last < 0 ? null : last;
    }
}
