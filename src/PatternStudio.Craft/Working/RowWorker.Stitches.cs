using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>Working stitches and groups of stitches into places.</summary>
internal sealed partial class RowWorker
{
    private Mishap? WorkStitches(StitchStep step, EquatableArray<Step> all, int index)
    {
        inHand = (step.Stitch, context.Traits(step.Stitch).Height >= 2);
        if (AtTop && index < opening) return WorkMove(step, all, index);
        if (IsWorkedShaping(step) || ReferenceEquals(step, ovalDone)) return null;
        if (OtherHalfOfOval(step) is { } half) return AroundOval(step, half);
        if (ShapedAt(step, all, index) is var (shapedStitch, where, shaping)) return WorkShaped(step, shapedStitch, where, shaping);
        if (IsClosingSlipStitch(step, all, index)) return Join(new JoinStep(step.Stitch, step.Where, false, step.Span));
        if (IsSlipStitchToFirst(step)) return Join(new JoinStep(step.Stitch, null, false, step.Span));
        if (IsOpeningMove(step, all, index))
        {
            Emit(new Cell(CellKind.Join, StitchId.SlipStitch, 0, [], false, step.Span));
            return null;
        }
        if (IsFastening(step)) return Fasten(step.Span);
        if (IsPicotClose(step)) return ClosePicot(step);
        if (step.Stitch.Value == "picot" && context.Traits(step.Stitch).Definition is not { Steps.IsEmpty: false }) return Picot(3, step.Span);
        if (IsFoundationStitch(step)) return WorkFoundationStitches(step);
        step = InRowStitch(step);
        StitchTraits traits = context.Traits(step.Stitch);
        if (step.Stitch.Value == "inc" && traits.Definition is null && rowStitch is { } increased) traits = traits with { Base = increased };
        if (traits.Definition is { Steps.IsEmpty: false } definition) return WorkDefined(step, definition, all, index);
        if (ambient is { } place && step.Where is null or { Choice: PlaceChoice.Same })
            return WorkInto(step, traits, Number(step, 1), place);
        if (ClusterOver(step) is { } over) return over();
        if (MoreThanBelow(step, all) is { } more) return WholeRoundTold(step, more);
        if (UnplacedInLace(step)) return new Mishap(MishapKind.CannotWork, step.Span);
        if (IsAlongChain(step)) return WorkAlongChain(step, traits);
        if (traits.Takes > 1) return WorkTogether(step, traits, all, index);
        if (step.Where is { Choice: PlaceChoice.OtherPiece } || IsOfOtherPiece(step.Where)) return JoinToOtherPiece(step, traits);
        if (step is { PerPlace: null, Count: not null, Where.Choice: PlaceChoice.OtherSide }) return AlongOtherSide(step, traits);
        if (step.Where is null && alongEdge && Left().Stitches == 0) return WorkEvenly(step with { Where = new Placement(PlaceChoice.RowEnds, PlaceKind.AnyStitch, step.Span) }, traits);
        if (step.Where is null && (InMagicRing || InChainRing)) return AtEach(InRing(step.Span), default, target => WorkInto(step, traits, Number(step, 1), target));
        if (step.Where is null) return Times(Number(step, 1), () => AtNext(NextStitch(step.Span), target => WorkInto(step, traits, 1, target)));
        if (IsAlongTop(step)) return WorkEvenly(step, traits);
        if (step.Where.Choice == PlaceChoice.RowEnds || step.Where.Kind.Noun == PlaceNoun.RowEnd) return WorkEvenly(step, traits);
        if (IsCloseOverLoops(step, all)) return AtEach(step.Where with { Kind = new PlaceKind(PlaceNoun.StitchOrChain) }, default, target => WorkInto(step, traits, Number(step, 1), target));
        return AtEach(step.Where, Reserve(all, index), target => WorkInto(step, traits, Number(step, 1), target)) ?? CloseChainsBetween(step, all, index);
    }

    /// <summary>'1 double in each stitch of the preceding row' over loops of chain, as a whole row of lace: its chains are stitches to work into as well.</summary>
    private bool IsCloseOverLoops(StitchStep step, EquatableArray<Step> all) =>
        OnSample && AtTop && step is { ChainsBetween: null, Where: { Choice: PlaceChoice.Each, Count: null, Kind.Noun: PlaceNoun.AnyStitch } } && places is { HasSpaces: true } && all.All(other => ReferenceEquals(other, step) || other is RemarkStep or TurnStep);

    /// <summary>'1 double in each loop, 5 chain between' all round: between the last and the first as well, where nothing else closes the round.</summary>
    private Mishap? CloseChainsBetween(StitchStep step, EquatableArray<Step> all, int index)
    {
        if (!GoesAround || !AtTop || step.Where is not { Choice: PlaceChoice.Each, Count: null } || context.Number(step.ChainsBetween) is not ({ } chains and > 0)) return null;
        bool whole = all.Where((other, i) => i != index).All(other => other is RemarkStep or ColourStep or JoinStep);
        if (whole && builder.Last?.Kind == CellKind.Stitch) Emit(new Cell(CellKind.Chains, StitchId.Chain, chains, [], false, step.Span));
        return null;
    }

    /// <summary>'*(2 dc, ch 2, sl st) in same st, sl st in next st; rep from * around': the last of them goes into the first stitch again and closes the round.</summary>
    private bool IsSlipStitchToFirst(StitchStep step) =>
        GoesAround && step.Stitch == StitchId.SlipStitch && !builder.IsEmpty && step.Where is { Choice: PlaceChoice.Next, Count: null, And: null, Further: null, Kind.Noun: PlaceNoun.AnyStitch or PlaceNoun.Stitch } && course is not null && Left().Stitches == 0;

    /// <summary>'(hdc, dec) around': a decrease is of the stitch that the row is made of, unless the pattern says of which.</summary>
    private StitchStep InRowStitch(StitchStep step)
    {
        if (step.Stitch.Value != "dec" || rowStitch is not { } kind || kind == StitchId.Single) return step;
        var together = new StitchId($"{kind.Value}2tog");
        return Terms.Vocabulary.Standard.Find(together) is null ? step : step with { Stitch = together };
    }

    /// <summary>The plain stitch that the row is made of, where it has increases or decreases that don't name theirs; null for none.</summary>
    private StitchId? rowStitch;

    private StitchId? FindRowStitch(EquatableArray<Step> all) =>
        AllSteps(all).Any(step => step.Stitch.Value is "inc" or "dec")
            ? AllSteps(all).Select(step => (StitchId?)step.Stitch).FirstOrDefault(stitch => stitch!.Value.Value is "sc" or "hdc" or "dc" or "tr")
                ?? (course is { Row.Kind: not RowKind.Foundation } && new Tally(course.Row.Runs, context.Conventions).OnlyBase is { } only and ("sc" or "hdc" or "dc" or "tr") ? new StitchId(only) : null)
            : null;

    private static IEnumerable<StitchStep> AllSteps(IEnumerable<Step> steps) => steps.SelectMany(step => step switch
    {
        StitchStep stitch => [stitch],
        GroupStep group => AllSteps(group.Steps),
        RepeatStep repeat => AllSteps(repeat.Steps.Concat(repeat.Ending)),
        _ => Enumerable.Empty<StitchStep>(),
    });

    /// <summary>How many stitches: per place where places are named, in all where they are not; null where this size skips the step.</summary>
    private int? Number(StitchStep step, int usual) =>
        step.PerPlace is not null ? context.Number(step.PerPlace) : step.Count is not null ? context.Number(step.Count) : usual;

    /// <summary>'Magic ring. Rnd 1: 6 sc': with a ring below, where else.</summary>
    private bool InMagicRing => course is { Length: 1 } && course.At(0).Kind == CellKind.Ring;

    /// <summary>'2-tr cluster over next 2 tr', '4-tr cluster over next tr group': one stitch, a leg in each; null where the words are not of that sort.</summary>
    private Func<Mishap?>? ClusterOver(StitchStep step)
    {
        if (!Places.IsCluster(step.Stitch) || step.Where is not { Kind.Noun: PlaceNoun.Stitch or PlaceNoun.AnyStitch } where) return null;
        bool group = Words(where.Span).TrimEnd().EndsWith("group", StringComparison.OrdinalIgnoreCase);
        int legs = int.TryParse(string.Concat(step.Stitch.Value.Where(char.IsAsciiDigit)), out int told) ? told : 0;
        int places = group ? legs : where.Choice == PlaceChoice.Over ? context.Number(where.Count) ?? 0 : 0;
        if (!group && places < 2) return null;
        if (places < 2) return () => new Mishap(MishapKind.CannotWork, where.Span);
        return () => OneOver(step, where with { Choice = PlaceChoice.Next, Count = SizedNumber.Of(places), Kind = group ? PlaceKind.AnyStitch : where.Kind });
    }

    private Mishap? OneOver(StitchStep step, Placement where)
    {
        var feet = new List<Foot>();
        Mishap? mishap = AtEachHere(where, default, target =>
        {
            feet.Add(target.Foot);
            return null;
        });
        if (mishap is null) Emit(new Cell(CellKind.Stitch, step.Stitch, 0, feet.ToEquatableArray(), true, step.Span));
        return mishap;
    }

    /// <summary>
    /// '4 plain, 1 picot' over loops, '36 stitches of double crochet' over 30: a number with no place, of which more are asked for than there are stitches. In lace, and
    /// where old books count a whole round so, it is the maker who places them.
    /// </summary>
    private bool UnplacedInLace(StitchStep step)
    {
        if (step.Where is not null || course is null || ambient is not null || (Number(step, 1) ?? 0) <= Left().Stitches) return false;
        const int LoopOfLace = 3;
        return context.Says(step.Span, "stitches of") || course.Find(0, (cell, _) => cell.Kind == CellKind.Chains && cell.Chains >= LoopOfLace) >= 0;
    }

    /// <summary>'Chain 10, join. 1st round: 16 doubles': what has no place named goes into the ring.</summary>
    private bool InChainRing => course is { Row: { Kind: RowKind.Foundation, Joined: true } } && (at.Last < 0 || at.InSpace) && at.Position is 0 or >= 1 && (at.Position == 0 || at.Position == course.Length);

    /// <summary>'124 sc on ch' along a chain of 125: one in each, the first chain only turning.</summary>
    private bool IsAlongChain(StitchStep step) =>
        course is { Row: { Kind: RowKind.Foundation, Joined: false } } && at.Position == 0 && step.Where is { Choice: PlaceChoice.Next, Kind.Noun: PlaceNoun.Chain, Count: null }
        && context.Number(step.PerPlace) is > 8 and var told && (told == course.Length || told == course.Length - 1);

    private Mishap? WorkAlongChain(StitchStep step, StitchTraits traits)
    {
        long told = context.Number(step.PerPlace)!.Value;
        at = at with { Position = course!.Length - told };
        return Times(told, () => AtNext(NextStitch(step.Span), target => WorkInto(step, traits, 1, target)));
    }

    private static Placement InRing(TextSpan span) => new(PlaceChoice.InRing, PlaceKind.Ring, span);

    /// <summary>'20 sc along the foundation chain'.</summary>
    private Mishap? AlongOtherSide(StitchStep step, StitchTraits traits) =>
        GoToOtherSide(step.Span) ?? Times(context.Number(step.Count), () => AtNext(NextStitch(step.Span), target => WorkInto(step, traits, 1, target)));

    /// <summary>A stitch into another piece joins the two; its place there is not followed.</summary>
    private Mishap? JoinToOtherPiece(StitchStep step, StitchTraits traits)
    {
        bool slip = step.Stitch == StitchId.SlipStitch;
        for (int i = 0; i < (Number(step, 1) ?? 0) * traits.Makes; i++)
            Emit(new Cell(slip ? CellKind.Join : CellKind.Stitch, step.Stitch, 0, [], !slip, step.Span));
        return null;
    }

    private static Placement NextStitch(TextSpan span) => new(PlaceChoice.Next, PlaceKind.AnyStitch, span);

    private Mishap? WorkInto(StitchStep step, StitchTraits traits, int? times, Target target)
    {
        if (times is null or 0) return null;
        long made = (long)times * traits.Makes;
        StitchId stitch = traits.Makes > 1 ? traits.Base : context.Counterpart(step.Stitch);
        // A slip stitch into a space only fastens the work there.
        bool fastens = stitch == StitchId.SlipStitch && target.Foot.Kind == FootKind.Space;
        var cell = new Cell(fastens ? CellKind.Join : CellKind.Stitch, stitch, 0, [target.Foot], !fastens, step.Span) { Colour = at.Colour };
        if (made == 1 && context.NamesPicotLoops) NamePicotLoop(target.Foot);
        if (made > 50) builder.Add(new Run([cell], made, 0));
        else if (context.Number(step.ChainsBetween) is { } between and > 0) WorkWithChainsBetween(cell, (int)made, between, step);
        else if (ambientGroup is not null || made == 1) for (int i = 0; i < made; i++) builder.Add(cell);
        else for (int i = 0; i < made; i++) builder.Add(cell with { GroupIndex = i, GroupSize = (int)made });
        return null;
    }

    /// <summary>'2 dc with ch 1 between in next st': chains between two of them in one place, or from one place to the next.</summary>
    private void WorkWithChainsBetween(Cell cell, int made, int between, StitchStep step)
    {
        var chains = new Cell(CellKind.Chains, StitchId.Chain, between, [], false, step.Span) { Colour = at.Colour };
        bool goesOn = made == 1 && builder.Last is { } before && before.Source == step.Span && before.Kind == CellKind.Stitch;
        int mark = builder.Mark;
        for (int i = 0; i < made; i++)
        {
            if (i > 0 || goesOn) builder.Add(chains);
            builder.Add(cell);
        }
        if (made > 1) builder.MarkGroup(mark, null);
    }

    /// <summary>'sc2tog over next 2 sts', 'dc3tog', 'dec 6 times': one stitch takes several places.</summary>
    private Mishap? WorkTogether(StitchStep step, StitchTraits traits, EquatableArray<Step> all, int index)
    {
        var feet = new List<Foot>(traits.Takes);
        Mishap? Gather(Target target)
        {
            feet.Add(target.Foot);
            return feet.Count < traits.Takes ? null : Close();
        }
        Mishap? Close()
        {
            Emit(new Cell(CellKind.Stitch, step.Stitch, 0, feet.ToEquatableArray(), true, step.Span));
            feet.Clear();
            return null;
        }
        if (step.Where is { Choice: PlaceChoice.Next, Count: null, And: null } one && legsInOnePlace) return Times(Number(step, 1), () => AtEachHere(one, default, Gather) ?? Close());
        if (step.Where is null or { Choice: PlaceChoice.Next, Count: null, And: null })
        {
            Placement next = (step.Where ?? NextStitch(step.Span)) with { Count = SizedNumber.Of(traits.Takes) };
            return Times(Number(step, 1), () => AtEachHere(next, default, Gather));
        }
        // '[3 sc, 1 dec] BLO': the number is of the stitches, the words name no places.
        if (step.Where is { Choice: PlaceChoice.Next, Count: { } stitches, And: null, Loop: not LoopChoice.Both } loop && (stitches.Span.Start < loop.Span.Start || stitches.Span.Start >= loop.Span.End))
            return Times(context.Number(stitches), () => AtEachHere(loop with { Count = SizedNumber.Of(traits.Takes) }, default, Gather));
        Mishap? mishap = step.Where is { Choice: PlaceChoice.Each, Count: null }
            ? ToEnd(step.Where.Span, Reserve(all, index), () => AtEachHere(step.Where with { Choice = PlaceChoice.Next, Extent = null, Count = SizedNumber.Of(traits.Takes) }, default, Gather))
            : AtEach(step.Where, Reserve(all, index), Gather);
        if (mishap is not null || feet.Count == 0) return mishap;
        // 'dc2tog in same st': all legs in one place.
        if (step.Where.And is null && feet.Count == 1 && step.Where.Choice != PlaceChoice.Over)
        {
            legsInOnePlace = true;
            return Close();
        }
        return feet.Count >= 2 && step.Where.Choice == PlaceChoice.Over ? Close()
            : new Mishap(MishapKind.PastTheEnd, step.Span) { Named = "st", Wanted = traits.Takes, Found = feet.Count, Met = course?.Row.Label ?? "" };
    }

    /// <summary>'Ch 3, dc2tog in same st, *dc3tog in next st; …': a row that has begun with a cluster in one place goes on with such.</summary>
    private bool legsInOnePlace;

    /// <summary>A special stitch told in stitches: 'shell: 5 dc in same st' is worked as those stitches, in its place.</summary>
    private Mishap? WorkDefined(StitchStep step, StitchDefinition definition, EquatableArray<Step> all, int index)
    {
        if (++depth > 16)
        {
            depth = 0;
            return new Mishap(MishapKind.CannotWork, step.Span);
        }
        bool moves = step.Where is null && ambient is null && MovesItself(definition);
        EquatableArray<Step> inner = definition.Steps.Select(own => AtSpan(own, step.Span, inOnePlace: !moves)).ToEquatableArray();
        Mishap? mishap = NeedsNoPlace(definition) || step.Where is null && ambient is null && at.Last >= 0 && GoesOnHere(definition) ? Times(Number(step, 1), () => WorkAll(inner))
            : moves
            ? Times(Number(step, 1), () => Grouped(step.Stitch, () => WorkAll(inner)))
            : WorkGroupSteps(inner, step.Where ?? NextStitch(step.Span), Number(step, 1), step.Stitch, all, index);
        depth--;
        return mishap;
    }

    /// <summary>'(Sl st, ch 1, sc, …) in first sp' opening a round: the slip stitch only brings the hook there.</summary>
    private bool IsOpeningMove(StitchStep step, EquatableArray<Step> all, int index) =>
        ambient is not null && step.Stitch == StitchId.SlipStitch && index == 0 && all.Count > 1 && all[1] is ChainStep && !builder.Has(cell => cell.Kind != CellKind.Join);

    /// <summary>A picot and the like: chains closed on themselves, worked wherever the hook is.</summary>
    private static bool NeedsNoPlace(StitchDefinition definition) =>
        definition.Steps.Any(step => step is ChainStep)
        && definition.Steps.All(step => step is ChainStep or RemarkStep or StitchStep { Where.Choice: PlaceChoice.FromHook }
            || step is StitchStep { Where.Choice: PlaceChoice.Same or PlaceChoice.Nth or PlaceChoice.First or PlaceChoice.Last } slip && slip.Stitch == StitchId.SlipStitch);

    /// <summary>'Tile: ch 3, 3 dc in same ch-3 sp': worked where the hook has just been.</summary>
    private static bool GoesOnHere(StitchDefinition definition) =>
        definition.Steps.Count > 1 && definition.Steps[0] is ChainStep
        && definition.Steps.Skip(1).All(step => step is ChainStep or StitchStep { Where.Choice: PlaceChoice.Same } or GroupStep { Where.Choice: PlaceChoice.Same });

    /// <summary>True where the definition names places of its own ('sk 1 st, dc in next st, dc in skipped st'), beyond one.</summary>
    private static bool MovesItself(StitchDefinition definition) =>
        definition.Steps.Any(step => step is SkipStep or EitherStep)
        || definition.Steps.Count(step => step is StitchStep { Where.Choice: PlaceChoice.Next } or GroupStep { Where.Choice: PlaceChoice.Next }) > 1
        || definition.Steps.All(step => step is StitchStep { Where: null } or StitchStep { Where.Choice: PlaceChoice.Over });

    /// <summary>The defining step as if it stood where its name is used; 'in next st' of a stitch in one place is that place.</summary>
    private static Step AtSpan(Step step, TextSpan span, bool inOnePlace) => step is not StitchStep stitch ? step
        : inOnePlace && stitch.Where is { Choice: PlaceChoice.Next, Count: null, And: null } ? stitch with { Span = span, Where = null }
        : stitch with { Span = span };

    private Mishap? WorkGroup(GroupStep step, EquatableArray<Step> all, int index) =>
        WorkGroupSteps(step.Steps, step.Where, 1, step.Named, all, index);

    private Mishap? WorkGroupSteps(EquatableArray<Step> inner, Placement where, int? times, StitchId? name, EquatableArray<Step> all, int index)
    {
        if (times is null or 0) return null;
        Mishap? InPlace(Target target)
        {
            Target? outer = ambient;
            ambient = target;
            Mishap? mishap = null;
            for (int i = 0; i < times && mishap is null; i++) mishap = Grouped(name, () => WorkAll(inner));
            ambient = outer;
            return mishap;
        }
        if (ambient is { } place && where.Choice is PlaceChoice.Next && where.Count is null && ambientGroup is not null) return InPlace(place);
        if (where.Choice == PlaceChoice.RowEnds) return new Mishap(MishapKind.CannotWork, where.Span);
        name ??= context.NameOf(inner);
        // 'Into the 4 chain 1 dc, 4 tr, 1 dc, repeat': the repeat is the round's, not the group's.
        if (inner is [RepeatStep { Extent.Kind: ExtentKind.Unstated, Mark: RepeatMark.Words } whole]) inner = whole.Steps;
        return AtEach(where, Reserve(all, index), InPlace);
    }

    /// <summary>Works steps and marks the cells they make as one group.</summary>
    private Mishap? Grouped(StitchId? name, Func<Mishap?> work)
    {
        StitchId? outer = ambientGroup;
        ambientGroup = name ?? new StitchId("group");
        int mark = builder.Mark;
        Mishap? mishap = work();
        ambientGroup = outer;
        if (mishap is null && outer is null) builder.MarkGroup(mark, name);
        // '(CL, ch 2) in next st', where a CL is one stitch of the pattern's own: it is counted by its own name.
        else if (mishap is null && name is { } own && builder.Mark == mark + 1 && builder.Last is { Kind: CellKind.Stitch } single)
        {
            builder.RemoveLast();
            builder.Add(single with { Stitch = context.Counterpart(own) });
        }
        return mishap;
    }

    private static bool IsFoundationStitch(StitchStep step) => step.Stitch.Value is "fsc" or "fhdc" or "fdc" or "ftr";

    private Mishap? WorkFoundationStitches(StitchStep step)
    {
        int times = Number(step, 1) ?? 0;
        if (times > 0) builder.Add(new Run([new Cell(CellKind.Stitch, step.Stitch, 0, [], true, step.Span) { Colour = at.Colour }], times, 0));
        at = at with { InSpace = true };
        return null;
    }

    /// <summary>'work 20 sc evenly along the side': the number is stated, the places are the row ends.</summary>
    private Mishap? WorkEvenly(StitchStep step, StitchTraits traits)
    {
        int each = step.Where!.Kind.Noun == PlaceNoun.RowEnd && step.Where.Choice != PlaceChoice.RowEnds ? context.Number(step.PerPlace) ?? 1 : 1;
        int? told = step.Where.Count is not null ? context.Number(step.Where.Count) * each
            : step.Where is { Choice: PlaceChoice.Each, Kind.Noun: PlaceNoun.RowEnd } ? rows.Count(row => row.Kind == RowKind.Row) * each
            : context.Number(step.Count);
        if (told is not { } number) return new Mishap(MishapKind.CannotWork, step.Span);
        if (!alongEdge && at.Position == 0 && !GoesAlongFoundation) topEdge = course;
        else alongTop |= onOtherSide && topEdge is not null;
        var foot = new Foot(1, 0, -1, FootKind.RowEnd);
        if (number > 0) builder.Add(new Run([new Cell(CellKind.Stitch, step.Stitch, 0, [foot], true, step.Span) { Colour = at.Colour }], (long)number * traits.Makes, 0));
        alongEdge = true;
        return null;
    }

    /// <summary>
    /// 'Do not turn. Work 19 sc down the side, …, up other side, sc in next 18 sts': a border that begins down the side comes to the last row at its end, and goes along
    /// that edge as along the others.
    /// </summary>
    private bool IsAlongTop(StitchStep step) =>
        alongTop && step.Where is { Choice: PlaceChoice.Next or PlaceChoice.Each, Count: not null, And: null, Further: null, InRow: null, Kind.Noun: PlaceNoun.AnyStitch or PlaceNoun.Stitch } && Number(step, 1) == 1;

    private bool alongTop;

    /// <summary>The row that a border has left for later by going down its side first.</summary>
    private Course? topEdge;

    private bool GoesAlongFoundation => course is null || course.Row.Kind == RowKind.Foundation;

    private bool IsPicotClose(StitchStep step) =>
        step.Completes?.Value == "picot" && step.Where is { Choice: PlaceChoice.FromHook } && (builder.Last is { Kind: CellKind.Chains } && previous is ChainStep || EndsFoundation)
        || step.Stitch == StitchId.SlipStitch && builder.Last is { Kind: CellKind.Chains } && previous is ChainStep && !GoesBackDownChain(step)
        && (step.Completes?.Value == "picot" || step.Where is { Choice: PlaceChoice.FromHook }
            || step.Where is { Choice: PlaceChoice.Nth or PlaceChoice.First, Kind.Noun: PlaceNoun.Chain, Within: null }
            || step.Where is { Choice: PlaceChoice.Same or PlaceChoice.Last or PlaceChoice.JustMade, Kind.Noun: PlaceNoun.Stitch or PlaceNoun.AnyStitch } && builder.Last.Chains <= 5 && builder.Mark > 1 && ambient is null);

    /// <summary>'Ch 4, sl st in 2nd ch from hook, sc in next ch, hdc in next ch': the hook works back along the chain, and closes no picot.</summary>
    private bool GoesBackDownChain(StitchStep step) =>
        step is { Completes: null, Where: { Choice: PlaceChoice.FromHook, Ordinal: var nth } } && builder.Last!.Chains > (nth ?? 1) && next is StitchStep { Where: { Choice: PlaceChoice.Next or PlaceChoice.Each, Kind.Noun: PlaceNoun.Chain } };

    /// <summary>'Ch 227, sc in 3rd st from hook for picot': the picot closes the end of the foundation chain itself.</summary>
    private bool EndsFoundation => builder.IsEmpty && course is { Row: { Kind: RowKind.Foundation, Joined: false } };

    private Mishap? ClosePicot(StitchStep step)
    {
        if (EndsFoundation)
        {
            at = at with { Position = Math.Min(course!.Length, step.Where!.Ordinal ?? 1) };
            return Picot(step.Where.Ordinal ?? 1, step.Span);
        }
        Cell chains = builder.Last!;
        int used = step.Where!.Choice == PlaceChoice.FromHook ? step.Where.Ordinal ?? chains.Chains : chains.Chains;
        if (used > chains.Chains)
            return new Mishap(MishapKind.PastTheEnd, step.Span) { Named = "ch", Wanted = used, Found = chains.Chains, Met = "" };
        builder.RemoveLast();
        if (chains.Chains > used) Emit(chains with { Chains = chains.Chains - used });
        return Picot(used, step.Span);
    }

    private Mishap? Picot(int chains, TextSpan span)
    {
        Emit(new Cell(CellKind.Picot, new StitchId("picot"), chains, [], false, span));
        return null;
    }
}
