using PatternStudio.Craft.Anatomy;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Measuring;

/// <summary>Finds the build of a special stitch from its hook motions.</summary>
internal static class MotionForm
{
    /// <summary>The form; null where the motions hold no place to insert the hook.</summary>
    public static StitchForm? Read(StitchId id, IEnumerable<Motion> motions)
    {
        List<Motion> all = [.. motions.Where(motion => motion is not StatedLoops)];
        int legs = all.Count(motion => motion is Insert);
        WholeStitch? whole = all.OfType<WholeStitch>().FirstOrDefault();
        if (whole is not null && all.Any(motion => motion is DrawDroppedLoop)) return Popcorn(id, whole);
        if (legs == 0) return null;
        int yarnOvers = all.TakeWhile(motion => motion is not Insert).OfType<YarnOver>().Sum(motion => motion.Times);
        int closings = all.Count(motion => motion is DrawThrough);
        return Build(id, KindOf(all, legs, closings), yarnOvers, legs, closings) with { Loops = all.Sum(Loops) };
    }

    private static FormKind KindOf(List<Motion> all, int legs, int closings)
    {
        if (legs == 1) return FormKind.Plain;
        if (all.OfType<Insert>().Any(insert => insert.NextPlace)) return FormKind.Together;
        return closings > legs ? FormKind.Cluster : FormKind.Puff;
    }

    private static StitchForm Build(StitchId id, FormKind kind, int yarnOvers, int legs, int closings)
    {
        StitchForm leg = Leg(yarnOvers, closedAtOnce: closings == 1 && yarnOvers == 1);
        return leg with { Id = id, Kind = kind, Legs = legs, YarnOvers = yarnOvers };
    }

    private static StitchForm Leg(int yarnOvers, bool closedAtOnce) => yarnOvers switch
    {
        0 => PlainStitches.Find("sc")!,
        1 => PlainStitches.Find(closedAtOnce ? "hdc" : "dc")!,
        2 => PlainStitches.Find("tr")!,
        3 => PlainStitches.Find("dtr")!,
        _ => PlainStitches.Find("trtr")!,
    };

    private static StitchForm? Popcorn(StitchId id, WholeStitch whole) =>
        StitchForms.FromName(whole.Stitch.Value) is { } leg
            ? leg with { Id = id, Kind = FormKind.Popcorn, Base = leg.Id, Legs = whole.Times, Loops = (leg.Loops * whole.Times) + 1 }
            : null;

    private static int Loops(Motion motion) => motion switch
    {
        YarnOver yarnOver => yarnOver.Times,
        DrawUpLoop or DrawThrough or DrawDroppedLoop => 1,
        LockingChain chain => chain.Chains,
        WholeStitch whole => (StitchForms.FromName(whole.Stitch.Value)?.Loops ?? 0) * whole.Times,
        _ => 0,
    };
}
