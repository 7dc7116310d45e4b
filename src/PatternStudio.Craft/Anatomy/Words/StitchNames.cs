using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>The plain stitches by name, as definitions tell others with them; old booklets write 'd c', 'tr c', 's d c'.</summary>
internal static class StitchNames
{
    private static readonly string[][] Singles = [["single", "crochet"], ["s", "c"], ["sc"]];
    private static readonly string[][] HalfDoubles = [["half", "double", "crochet"], ["short", "double", "crochet"], ["h", "d", "c"], ["s", "d", "c"], ["hdc"]];
    private static readonly string[][] Doubles = [["double", "crochet"], ["d", "c"], ["dc"]];
    private static readonly string[][] Trebles = [["treble", "crochet"], ["triple", "crochet"], ["tr", "c"], ["treble"], ["tr"], ["trc"]];
    private static readonly string[][] DoubleTrebles = [["double", "treble", "crochet"], ["double", "treble"], ["d", "tr", "c"], ["dtr"], ["d", "tr"]];
    private static readonly string[][] TripleTrebles = [["triple", "treble", "crochet"], ["triple", "treble"], ["tr", "tr", "c"], ["tr", "tr"], ["trtr"]];
    private static readonly string[][] SlipStitches = [["slip", "stitch"], ["sl", "st"], ["ss"], ["slst"]];

    private static readonly (string[] Words, StitchId Id)[] Us = Longest(
        (Singles, StitchId.Single), (HalfDoubles, StitchId.HalfDouble), (Doubles, StitchId.Double), (Trebles, StitchId.Treble),
        (DoubleTrebles, StitchId.DoubleTreble), (TripleTrebles, new StitchId("trtr")), (SlipStitches, StitchId.SlipStitch));

    private static readonly (string[] Words, StitchId Id)[] Uk = Longest(
        (Doubles, StitchId.Single), ([["half", "treble", "crochet"], ["half", "treble"], ["h", "tr"], ["htr"]], StitchId.HalfDouble), (Trebles, StitchId.Double),
        (DoubleTrebles, StitchId.Treble), ([.. TripleTrebles, ["ttr"]], StitchId.DoubleTreble),
        ([["quadruple", "treble"], ["quad", "treble"], ["qtr"]], new StitchId("trtr")), (SlipStitches, StitchId.SlipStitch));

    /// <summary>Passes over the name of a stitch; null where none stands here.</summary>
    public static StitchId? Take(WordCursor words, Terminology terminology)
    {
        foreach ((string[] name, StitchId id) in terminology == Terminology.Us ? Us : Uk)
        {
            int at = words.At;
            if (words.TakeAll(name.AsSpan(0, name.Length - 1)) && TakeLast(words, name[^1])) return id;
            words.At = at;
        }

        return null;
    }

    /// <summary>'5 double crochets', '2 dcs'.</summary>
    private static bool TakeLast(WordCursor words, string last) => words.Take(last, last + "s");

    private static (string[] Words, StitchId Id)[] Longest(params (string[][] Names, StitchId Id)[] names) =>
        [.. names.SelectMany(entry => entry.Names.Select(name => (name, entry.Id))).OrderByDescending(entry => entry.name.Length)];
}
