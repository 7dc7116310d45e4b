using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>Rows of one stitch in each place with shaping told in words: 'work in dc increasing 1 dc at beginning and end of row', 'increase in every 3rd sc'.</summary>
internal sealed partial class RowWorker
{
    /// <summary>The shaping that a step of one stitch in each place comes with, from its own words or the words behind it; null for none.</summary>
    private (StitchId Stitch, Placement Where, Shaping Shaping)? ShapedAt(StitchStep step, EquatableArray<Step> all, int index)
    {
        if (step.Where is not { Choice: PlaceChoice.Each, Count: null } where) return null;
        if (StitchOfShaping(step) is { } shaped && Shaping.Of(Words(step.Span)) is { Place: ShapingPlace.Every } alone) return (shaped, where, alone);
        if (where.Further is { } further && Shaping.Of(Words(further)) is { } own) return (step.Stitch, where with { Further = null }, own);
        return FollowingShaping(all, index) is { } behind ? (step.Stitch, where, behind) : null;
    }

    /// <summary>'Increase in every 4th sc': more of the stitch that the row below has there; null where it has several.</summary>
    private StitchId? StitchOfShaping(StitchStep step)
    {
        if (step.Where!.EveryNth is null || step.Stitch.Value is not ("inc" or "dec")) return null;
        return step.Where.Kind.Stitch ?? (course is null || new Tally(course.Row.Runs, context.Conventions).OnlyKind is not { } only ? null : new StitchId(only));
    }

    private Shaping? FollowingShaping(EquatableArray<Step> all, int index)
    {
        int behind = index + 1;
        while (behind < all.Count && all[behind] is RemarkStep) behind++;
        if (behind >= all.Count) return null;
        return all[behind] switch
        {
            UncountedStep { Reason: UncountedReason.Shaping } words => Shaping.Of(words.Text),
            StitchStep { Where.EveryNth: not null } every when every.Stitch.Value is "inc" or "dec" => Shaping.Of(Words(every.Span)),
            _ => null,
        };
    }

    /// <summary>'Decrease 1 st at beginning and end of row.' and nothing more: over the stitches that are there; null where the row has other words, or several kinds of stitch.</summary>
    private Func<Mishap?>? ShapedAlone(UncountedStep step)
    {
        if (!AtTop || course is null || builder.Has(cell => cell.Kind == CellKind.Stitch) || Shaping.Of(step.Text) is not { } shaping) return null;
        if (new Tally(course.Row.Runs, context.Conventions).OnlyBase is not { } only || Vocabulary.Standard.Find(new StitchId(only)) is null) return null;
        var plain = new StitchStep(new StitchId(only), SizedNumber.Of(1), null, null, step.Span);
        return () => WorkShaped(plain, plain.Stitch, new Placement(PlaceChoice.Each, PlaceKind.AnyStitch, step.Span), shaping);
    }

    /// <summary>'2 sc in each of the 3 sts at each end and 1 sc in each of the 28 sts on each side': an oval, worked end, side, end, side.</summary>
    private Mishap? AroundOval(StitchStep one, StitchStep other)
    {
        ovalDone = other;
        EquatableArray<Step> half = [WithoutFurther(one), WithoutFurther(other)];
        return Times(2, () => WorkAll(half));
    }

    private StitchStep? ovalDone;

    private static StitchStep WithoutFurther(StitchStep step) => step with { Where = step.Where! with { Further = null } };

    private StitchStep? OtherHalfOfOval(StitchStep step) =>
        GoesAround && SidesNamed(step) is { } here && next is StitchStep behind && SidesNamed(behind) is { } there && here != there ? behind : null;

    private string? SidesNamed(StitchStep step) => step.Where is { Choice: PlaceChoice.Each, Count: not null, Further: { } further }
        ? Words(further).Trim().ToLowerInvariant() switch { "at each end" or "on each end" => "ends", "on each side" or "at each side" or "along each side" => "sides", _ => null }
        : null;

    private string Words(TextSpan span) => context.Pattern.Source.Slice(span).ToString();

    /// <summary>True for the words of a shaping that is worked already, with the stitch before them; also where they only sum it up ('8 sts increased at each end').</summary>
    private bool IsWorkedShaping(Step step) =>
        shapedHere && (step is UncountedStep { Reason: UncountedReason.Shaping } || step is StitchStep { Where.EveryNth: not null } every && every.Stitch.Value is "inc" or "dec");

    private bool shapedHere;

    private Mishap? WorkShaped(StitchStep step, StitchId stitch, Placement where, Shaping shaping)
    {
        if (course is null) return new Mishap(MishapKind.NoFoundation, step.Span);
        shapedHere = true;
        Placement next = where with { Choice = PlaceChoice.Next, Extent = null, Count = null, And = null, EveryNth = null, Further = null };
        long places = course.Sum(at.Position, course.Length, (cell, i) => this.places!.Offers(cell, i, where.Kind));
        var plain = new StitchStep(stitch, SizedNumber.Of(1), null, next, step.Span);
        return shaping.Place switch
        {
            ShapingPlace.Ends => ShapedAtEnds(plain, places, shaping),
            ShapingPlace.Centres => ShapedAtCentres(plain, shaping.Number),
            ShapingPlace.Every when places % shaping.Number == 0 => ShapedRegularly(plain, places, places / shaping.Number, shaping.Decrease),
            ShapingPlace.Spread when places >= 2 * shaping.Number => ShapedRegularly(plain, places, shaping.Number, shaping.Decrease),
            _ => new Mishap(MishapKind.CannotWork, step.Span),
        };
    }

    /// <summary>The turning chain is the first stitch where it counts: then the first increase goes in beside it.</summary>
    private Mishap? ShapedAtEnds(StitchStep plain, long places, Shaping shaping)
    {
        bool begun = opened && at.Last >= 0;
        if (places < 4 || shaping.Number != 1) return new Mishap(MishapKind.CannotWork, plain.Span);
        if (shaping.Decrease) return OneOfTwo(plain) ?? Plainly(plain, places - 4) ?? OneOfTwo(plain);
        StitchStep two = plain with { PerPlace = SizedNumber.Of(2) };
        return begun
            ? AtEachHere(plain.Where! with { Choice = PlaceChoice.Same }, default, Into(plain)) ?? Plainly(plain, places - 1) ?? Plainly(two, 1)
            : Plainly(two, 1) ?? Plainly(plain, places - 2) ?? Plainly(two, 1);
    }

    /// <summary>'3 stitches in 1 in the centre of each loop', else one in each stitch and chain. Over a row without loops the centres are where several stand in one place already.</summary>
    private Mishap? ShapedAtCentres(StitchStep plain, int number)
    {
        Placement each = plain.Where! with { Kind = new PlaceKind(PlaceNoun.StitchOrChain) };
        bool loops = course!.Find(0, (cell, _) => cell.Kind == CellKind.Chains) >= 0;
        long centres = 0;
        while (course.Find(at.Position, (cell, i) => places!.Offers(cell, i, each.Kind) > 0) >= 0)
        {
            (Target target, Mishap? mishap) = TakeNext(each.Kind, each.Span, each);
            bool centre = IsCentre(course.At(target.Index), target.Foot.Chain, loops);
            if (centre) centres++;
            if (++steps > MostSteps) return new Mishap(MishapKind.TooLarge, plain.Span);
            if ((mishap ?? WorkInto(plain, context.Traits(plain.Stitch), centre ? number : 1, target)) is { } failed) return failed;
        }
        return centres > 0 ? null : new Mishap(MishapKind.CannotWork, plain.Span);
    }

    private static bool IsCentre(Cell cell, int chain, bool loops) => loops
        ? cell.Kind == CellKind.Chains && cell.Chains % 2 == 1 && chain == cell.Chains / 2
        : cell is { Kind: CellKind.Stitch, GroupSize: >= 3 } && cell.GroupSize % 2 == 1 && cell.GroupIndex == cell.GroupSize / 2;

    /// <summary>'36 stitches of double crochet' over a round of 30: one in each, and the six more spread evenly over it; their places are the maker's.</summary>
    private Mishap? WholeRoundTold(StitchStep step, long more) =>
        ShapedRegularly(step with { PerPlace = SizedNumber.Of(1), Count = null, Where = NextStitch(step.Span) }, Left().Stitches, more, decrease: false);

    /// <summary>How many more stitches a round that is told by its number alone has than the one below; null where the words are not of that sort.</summary>
    private long? MoreThanBelow(StitchStep step, EquatableArray<Step> all)
    {
        if (!GoesAround || !AtTop || step.Where is not null || course is null || InMagicRing || InChainRing || !context.Says(step.Span, "stitches of")) return null;
        if (all.Any(other => !ReferenceEquals(other, step) && other is not (RemarkStep or ColourStep or JoinStep)) || course.Find(0, (cell, _) => cell.Kind == CellKind.Chains) >= 0) return null;
        long more = (Number(step, 1) ?? 0) - Left().Stitches;
        return more > 0 && more <= Left().Stitches ? more : null;
    }

    private Mishap? ShapedRegularly(StitchStep plain, long places, long times, bool decrease)
    {
        if (times == 0) return Plainly(plain, places);
        long apart = places / times, left = places - apart * times;
        if (decrease && apart < 2) return new Mishap(MishapKind.CannotWork, plain.Span);
        Mishap? Unit() => decrease
            ? Plainly(plain, apart - 2) ?? OneOfTwo(plain)
            : Plainly(plain, apart - 1) ?? Plainly(plain with { PerPlace = SizedNumber.Of(2) }, 1);
        return Times(times, Unit) ?? Plainly(plain, left);
    }

    private Func<Target, Mishap?> Into(StitchStep step) => target => WorkInto(step, context.Traits(step.Stitch), Number(step, 1), target);

    private Mishap? Plainly(StitchStep step, long places) => Times(places, () => AtNext(step.Where!, Into(step)));

    private Mishap? OneOfTwo(StitchStep plain)
    {
        var together = new StitchId($"{plain.Stitch.Value}2tog");
        if (Vocabulary.Standard.Find(together) is null) return new Mishap(MishapKind.CannotWork, plain.Span);
        return WorkTogether(plain with { Stitch = together, PerPlace = null, Where = plain.Where }, context.Traits(together), [plain], 0);
    }
}
