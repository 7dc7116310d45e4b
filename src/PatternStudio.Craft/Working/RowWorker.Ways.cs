using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>Rarer ways of working: along an edge, either of two, by meshes, into a row further down.</summary>
internal sealed partial class RowWorker
{
    private static readonly PlaceKind TwoSides = new(PlaceNoun.StitchOrSpace);

    private readonly Dictionary<int, (Course Course, Places Places, State At)> elsewhere = [];

    private Mishap? WorkAlong(WorkAlongStep step)
    {
        if (step.Along.Choice == PlaceChoice.FromHook)
        {
            (Target? start, Mishap? mishap) = FromHook(step.Along);
            // The hook stands before that chain: the stitch that comes next takes it.
            if (start is not null) at = at with { Position = Math.Max(0, at.Position - 1), Chain = 0, Last = -1, LastChain = -1 };
            return mishap;
        }
        if (step.Along.Choice == PlaceChoice.OtherSide) return GoToOtherSide(step.Span);
        alongEdge = true;
        return null;
    }

    /// <summary>'dc in next 2 dc or 2 dc in next ch-2 sp': the one whose place comes first.</summary>
    private Mishap? WorkEither(EitherStep step, EquatableArray<Step> all, int index)
    {
        long first = PlaceAhead(step.First), other = PlaceAhead(step.Other);
        Step nearer = first >= 0 && (other < 0 || first <= other) ? step.First : step.Other;
        EquatableArray<Step> chosen = all.Select((given, i) => i == index ? nearer : given).ToEquatableArray();
        return WorkStep(chosen, index);
    }

    private long PlaceAhead(Step step)
    {
        if (step is EitherStep either)
        {
            long first = PlaceAhead(either.First), other = PlaceAhead(either.Other);
            return first < 0 || other >= 0 && other < first ? other : first;
        }
        PlaceKind? kind = step switch
        {
            StitchStep stitch => stitch.Where?.Kind ?? PlaceKind.AnyStitch,
            GroupStep group => group.Where.Kind,
            SkipStep skip => skip.Kind,
            _ => null,
        };
        return kind is null || course is null ? -1 : course.Find(at.Position, (cell, i) => places!.Offers(cell, i, kind) > 0);
    }

    /// <summary>Filet: an open mesh is ch 2, a skip over two stitches or a space, and a dc; a solid mesh has two dc in the chains' stead.</summary>
    private Mishap? WorkMeshes(MeshStep step) => Times(context.Number(step.Count), () => step.Solid ? SolidMesh(step.Span) : OpenMesh(step.Span));

    /// <summary>A row told in squares: the chain stands for the first dc, and every square takes the next one below.</summary>
    private Mishap? WorkFilet(IReadOnlyList<MeshStep> squares, Step chain)
    {
        Emit(new Cell(CellKind.TurningChain, StitchId.Double, 3, OpeningFoot() is { } foot ? [foot] : [], true, chain.Span));
        opened = true;
        TakeFirstPlace();
        foreach (MeshStep square in squares)
            if (WorkMeshes(square) is { } mishap) return mishap;
        return null;
    }

    /// <summary>'Row 9—6 shells': one in each of the row below; at the ends one more, or one left.</summary>
    private Mishap? WorkToldGroups(ToldGroups told, EquatableArray<Step> all)
    {
        var kind = new PlaceKind(PlaceNoun.Group, told.Group.Stitch);
        long there = course!.Sum(0, course.Length, (cell, i) => places!.Offers(cell, i, kind));
        if (Math.Abs(there - told.Count) > ToldGroups.MostShaped) return new Mishap(MishapKind.CannotWork, told.Group.Span);
        opened = true;
        StitchDefinition definition = context.Traits(told.Group.Stitch).Definition!;
        StitchStep one = told.Group with { PerPlace = SizedNumber.Of(1), Count = null };
        for (int i = 0; i < told.Count; i++)
            if (WorkDefined(one with { Where = new Placement(i < there ? PlaceChoice.Next : PlaceChoice.Same, kind, one.Span) }, definition, all, 0) is { } mishap) return mishap;
        leavesUnworked = true;
        return told.Behind is null ? null : AtOne(new Placement(PlaceChoice.Same, PlaceKind.AnyStitch, told.Behind.Span), target => WorkInto(told.Behind, context.Traits(told.Behind.Stitch), Number(told.Behind, 1), target));
    }

    private Mishap? OpenMesh(TextSpan span)
    {
        Emit(new Cell(CellKind.Chains, StitchId.Chain, 2, [], false, span));
        Mishap? skipped = OverSpace ? TakeNext(PlaceKind.Space, span).Mishap : TakeNext(PlaceKind.AnyStitch, span).Mishap ?? TakeNext(PlaceKind.AnyStitch, span).Mishap;
        return skipped ?? MeshPost(span);
    }

    private Mishap? SolidMesh(TextSpan span)
    {
        Mishap? Dc(Target target) => WorkInto(new StitchStep(StitchId.Double, null, null, null, span), context.Traits(StitchId.Double), 1, target);
        if (!OverSpace) return Times(2, () => AtNext(NextStitch(span), Dc)) ?? MeshPost(span);
        return AtNext(new Placement(PlaceChoice.Next, PlaceKind.Space, span), target => Dc(target) ?? Dc(target)) ?? MeshPost(span);
    }

    private Mishap? MeshPost(TextSpan span) =>
        AtNext(NextStitch(span), target => WorkInto(new StitchStep(StitchId.Double, null, null, null, span), context.Traits(StitchId.Double), 1, target));

    private bool OverSpace => course is not null && at.Position < course.Length && course.At(at.Position).Kind == CellKind.Chains;

    /// <summary>'around next sc of Rnd 2': the hook goes along that row, beside its way along the row below.</summary>
    private Mishap? InOtherRow(int number, TextSpan span, Func<Mishap?> work)
    {
        int index = -1;
        for (int i = rows.Count - 1; i >= 0 && index < 0; i--)
            if (rows[i].Number == number && rows[i].Kind != RowKind.Foundation && rows[i].Status == RowStatus.Checked) index = i;
        if (index < 0) return new Mishap(MishapKind.NoSuchRow, span) { Named = number.ToString(System.Globalization.CultureInfo.InvariantCulture) };
        if (course is null || index == course.RowIndex) return work();
        if (!elsewhere.TryGetValue(number, out var there))
        {
            var other = new Course(rows[index], index, course.Turned && (rows.Count - index) % 2 == 1);
            there = (other, new Places(other, context), State.Start with { Colour = at.Colour });
        }
        (Course? here, Places? herePlaces, State before) = (course, places, at);
        (course, places, at) = (there.Course, there.Places, there.At);
        Mishap? mishap = work();
        elsewhere[number] = (course!, places!, at);
        (course, places, at) = (here, herePlaces, before with { InSpace = true });
        return mishap;
    }

    /// <summary>The row further down that a repeat goes along; null for the row below.</summary>
    private static int? RowAlong(EquatableArray<Step> steps) =>
        steps.OfType<StitchStep>().FirstOrDefault(step => step.Where?.InRow is not null)?.Where!.InRow is { } row && steps.OfType<StitchStep>().All(step => step.Where?.InRow == row) ? row : null;

    /// <summary>'sc in sp just made', 'sl st in dc just made': what this row made last, or at its start what the round below ended with.</summary>
    private Target? JustMade()
    {
        if (!builder.IsEmpty && builder.Has(cell => cell.Kind is CellKind.Stitch or CellKind.Chains))
            return new Target(new Foot(0, -1, -1, FootKind.BothLoops), -1);
        if (course is null || course.Length == 0) return null;
        if (!course.Turned) return TargetAt(course.Length - 1, -1, course.At(course.Length - 1).Kind == CellKind.Chains, null);
        // Turned, the row below begins with what was made last.
        long made = Math.Max(0, course.Find(0, (cell, _) => cell.Kind != CellKind.Join));
        loopJustMade = TargetAt(made, -1, course.At(made).Kind == CellKind.Chains, null);
        return loopJustMade;
    }

    /// <summary>'8 dc over loop just made, picot, 4 dc over same loop' at the start of a row: that loop, until the hook comes to another place.</summary>
    private Target? loopJustMade;

    /// <summary>
    /// 'FPdc around next dc 2 rows below', 'dc in skipped sc 3 rows below': the foot is further down; the place in the row below that it covers is used
    /// up, unless the words skip it themselves.
    /// </summary>
    private Mishap? AtNextBelow(Placement where, Func<Target, Mishap?> work)
    {
        if (course is null) return new Mishap(MishapKind.NoFoundation, where.Span);
        if (where.Choice == PlaceChoice.Skipped && IsCrossing(where)) return SkippedPlace(where) is ({ } crossed, _) ? work(crossed) : new Mishap(MishapKind.CannotWork, where.Span);
        State before = at;
        PlaceKind cover = where.Choice == PlaceChoice.Skipped ? TwoSides : PlaceKind.AnyStitch;
        (Target target, Mishap? mishap) = TakeNext(cover, where.Span, where);
        if (mishap is not null) return mishap;
        if (next is SkipStep) at = before with { Last = at.Last, LastChain = at.LastChain };
        return work(target);
    }

    /// <summary>'sk next st, FPtr around next FPtr 2 rows below, FPtr around skipped FPtr 2 rows below': a cable goes back to what this row has skipped itself.</summary>
    private bool IsCrossing(Placement where) =>
        at.Skipped >= 0 && at.Skipped < at.Position && where.Kind.Stitch is { } post && StitchTraits.IsPost(post);

    /// <summary>'Skip next 12 sts of Rnd 10', behind an ear flap worked on that round: stitches of a row that is not the row below.</summary>
    private bool IsOfOtherRow(SkipStep step)
    {
        string words = Words(step.Span);
        int of = words.LastIndexOf(" of ", StringComparison.OrdinalIgnoreCase);
        string named = of < 0 ? "" : words[(of + 4)..];
        if (course is null || !int.TryParse(string.Concat(named.Where(char.IsAsciiDigit)), out int number)) return false;
        bool round = named.StartsWith("rn", StringComparison.OrdinalIgnoreCase) || named.StartsWith("rou", StringComparison.OrdinalIgnoreCase);
        return (round || named.StartsWith("row", StringComparison.OrdinalIgnoreCase)) && (course.Row.Number != number || round && course.Row.Kind == RowKind.Row);
    }
}
