using PatternStudio.Craft.Anatomy;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Measuring;

/// <summary>Turns a stitch taken apart into its form: what size, yarn and symbol depend on.</summary>
internal static class AnatomyForm
{
    /// <summary>The form of a stitch with these motions.</summary>
    public static StitchForm Of(StitchId id, IReadOnlyList<Motion> motions)
    {
        StitchAnatomy anatomy = StitchAnatomy.Of(motions);
        FormKind kind = KindOf(anatomy, motions);
        bool closedAtOnce = anatomy.YarnOvers == 1 && kind is FormKind.Plain or FormKind.Together && !HasStages(motions);
        StitchId leg = kind == FormKind.Popcorn ? motions.OfType<WholeStitch>().Select(whole => whole.Stitch).FirstOrDefault(StitchId.Double) : Leg(anatomy.YarnOvers, closedAtOnce || kind == FormKind.Puff);
        int yarnOvers = kind == FormKind.Popcorn ? Vocabulary.Standard.Find(leg) is null ? 1 : YarnOvers(leg) : anatomy.YarnOvers;
        return new StitchForm(id, kind, leg, yarnOvers, Math.Max(1, anatomy.Legs), FabricHeight.OfChains(anatomy.HeightInChains), anatomy.YarnLength);
    }

    private static FormKind KindOf(StitchAnatomy anatomy, IReadOnlyList<Motion> motions) => anatomy.Top switch
    {
        TopKind.Slip => FormKind.SlipStitch,
        TopKind.Popcorn => FormKind.Popcorn,
        _ when anatomy.Feet > 1 => FormKind.Together,
        _ when anatomy.Legs < 2 => FormKind.Plain,
        _ => HasStages(motions) ? FormKind.Cluster : FormKind.Puff,
    };

    /// <summary>True where a leg is worked off step by step before the last closing: a cluster's legs are, a puff's are not.</summary>
    private static bool HasStages(IReadOnlyList<Motion> motions) =>
        motions.Count(motion => motion is DrawThrough) > 1 || motions.Any(motion => motion is WorkOffByTwos or WholeStitch);

    private static StitchId Leg(int yarnOvers, bool closedAtOnce) => yarnOvers switch
    {
        0 => StitchId.Single,
        1 => closedAtOnce ? StitchId.HalfDouble : StitchId.Double,
        2 => StitchId.Treble,
        _ => StitchId.DoubleTreble,
    };

    private static int YarnOvers(StitchId plain) => StitchForms.FromName(plain.Value)?.YarnOvers ?? 1;
}
