namespace PatternStudio.Craft.Anatomy;

/// <summary>
/// How tall a stitch stands, in chains, from its motions. Every draw through stacks one loop, about a chain high, on the one before;
/// wraps held on the hook make the loop drawn up reach over them, one chain more. That gives sc 1, hdc 2, dc 3, tr 4,
/// dtr 5, as the tables of the trade have it; and 2 for an extended sc.
/// </summary>
internal static class StitchHeight
{
    public static double Of(IReadOnlyList<Motion> motions)
    {
        IReadOnlyList<Leg> legs = Legs(motions);
        double worked = legs.Count == 0 ? 0 : Tallest(legs);
        double named = motions.OfType<WholeStitch>().Select(whole => PlainStitch.HeightOf(whole.Stitch)).DefaultIfEmpty(0).Max();
        double stood = motions.TakeWhile(motion => motion is LockingChain).OfType<LockingChain>().Sum(chain => chain.Chains);
        double drawnUp = motions.OfType<DrawUpLoop>().Select(loop => loop.Chains ?? 0).DefaultIfEmpty(0).Max();
        return Math.Max(Math.Max(worked, named), Math.Max(stood, drawnUp));
    }

    /// <summary>Every leg but the last is closed by one more draw through, which the last leg's own stages already hold.</summary>
    private static double Tallest(IReadOnlyList<Leg> legs) =>
        legs.Select((leg, index) => leg.Height + (index < legs.Count - 1 ? 1 : 0)).Max();

    private static List<Leg> Legs(IReadOnlyList<Motion> motions)
    {
        var legs = new List<Leg>();
        bool wrapped = false;
        foreach (Motion motion in motions)
        {
            if (motion is YarnOver) wrapped = true;
            if (motion is Insert)
            {
                legs.Add(new Leg(wrapped, 0));
                wrapped = false;
            }

            if (legs.Count > 0) legs[^1] = legs[^1] with { Stages = legs[^1].Stages + Stages(motion, legs[^1]) };
        }

        return legs;
    }

    private static int Stages(Motion motion, Leg leg) => motion switch
    {
        DrawThrough => 1,
        WorkOffByTwos => leg.Wrapped ? 2 : 1,
        _ => 0,
    };

    private readonly record struct Leg(bool Wrapped, int Stages)
    {
        public double Height => Stages + (Wrapped ? 1 : 0);
    }
}
