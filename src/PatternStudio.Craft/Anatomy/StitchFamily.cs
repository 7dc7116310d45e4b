namespace PatternStudio.Craft.Anatomy;

/// <summary>
/// The families that stitches are made in, as motions: so many yarn overs, so many legs. Charts and counts of a stitch nobody has
/// named yet come from here.
/// </summary>
public static class StitchFamily
{
    /// <summary>A plain stitch with k yarn overs: 0 sc, 1 dc, 2 tr, 3 dtr.</summary>
    public static IReadOnlyList<Motion> Plain(int yarnOvers) => Tall(yarnOvers).Motions();

    /// <summary>A half double: all three loops at once.</summary>
    public static IReadOnlyList<Motion> HalfDouble() => PlainStitch.HalfDouble.Motions();

    /// <summary>n legs of k yarn overs, each in a place of its own, closed together: 'dc3tog'.</summary>
    public static IReadOnlyList<Motion> Together(int yarnOvers, int legs) => Closed(Tall(yarnOvers), legs, true);

    /// <summary>n legs of k yarn overs in one place, closed together: a '3-dc cluster'.</summary>
    public static IReadOnlyList<Motion> Cluster(int yarnOvers, int legs) => Closed(Tall(yarnOvers), legs, false);

    /// <summary>n half doubles over as many places: 'hdc2tog'.</summary>
    public static IReadOnlyList<Motion> HalfDoublesTogether(int legs) => Closed(PlainStitch.HalfDouble, legs, true);

    /// <summary>A puff of n pulls: n half doubles in one place, closed together.</summary>
    public static IReadOnlyList<Motion> Puff(int pulls) => Closed(PlainStitch.HalfDouble, pulls, false);

    private static PlainStitch Tall(int yarnOvers)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(yarnOvers);
        return new PlainStitch(new Terms.StitchId("k" + yarnOvers), yarnOvers, false);
    }

    private static List<Motion> Closed(PlainStitch leg, int legs, bool apart)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(legs, 1);
        var motions = new List<Motion>();
        for (int i = 0; i < legs; i++) motions.AddRange(leg.OpenLeg(apart && i > 0));
        motions.Add(new DrawThrough(null, (leg.AtOnce ? 2 : 1) * legs + 1));
        return motions;
    }
}
