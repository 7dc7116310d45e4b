using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Measuring;

/// <summary>
/// The plain stitches: yarn overs and real heights. A stitch's height in chains (sc 1, hdc 2, dc 3, tr 4) says how its turning chain is
/// made, not how tall the fabric grows: worked double crochet is about twice as tall as single, not three times.
/// </summary>
/// <remarks>
/// Heights in stitch widths follow from the first rounds that make flat circles: sc 6, hdc 8, dc 12, tr 16–18 stitches (published rules for
/// flat circles), since a flat circle needs 2π × height ÷ width more each round: 6/2π = 0.95, 8/2π = 1.27, 12/2π = 1.91, 17/2π = 2.7.
/// Taller stitches go on by the last step (0.8); slip stitch 0.3 is common practice, no source.
/// </remarks>
internal static class PlainStitches
{
    private static readonly Dictionary<string, StitchForm> Known = new()
    {
        ["ch"] = new(StitchId.Chain, FormKind.Chain, StitchId.Chain, 0, 1, 0, 1),
        ["slst"] = new(StitchId.SlipStitch, FormKind.SlipStitch, StitchId.SlipStitch, 0, 1, 0.3, 1),
        ["sc"] = Plain("sc", 0, 0.95),
        ["hdc"] = Plain("hdc", 1, 1.27) with { Loops = 3 },
        ["dc"] = Plain("dc", 1, 1.91),
        ["tr"] = Plain("tr", 2, 2.7),
        ["dtr"] = Plain("dtr", 3, 3.5),
        ["trtr"] = Plain("trtr", 4, 4.3),
        ["qtr"] = Plain("qtr", 5, 5.1),
    };

    /// <summary>The form of a plain stitch; null for any other.</summary>
    public static StitchForm? Find(string id) => Known.GetValueOrDefault(id);

    /// <summary>One loop drawn up, then k + 1 times through two: 2k + 2 yarn overs in all.</summary>
    private static StitchForm Plain(string id, int yarnOvers, double height) =>
        new(new StitchId(id), FormKind.Plain, new StitchId(id), yarnOvers, 1, height, (2 * yarnOvers) + 2);
}
