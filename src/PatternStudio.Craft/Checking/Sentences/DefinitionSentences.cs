using PatternStudio.Craft.Anatomy;
using PatternStudio.Craft.Terms;
using static PatternStudio.Craft.Checking.Sentences.English;

namespace PatternStudio.Craft.Checking.Sentences;

/// <summary>What is said of a special stitch: loops that do not add up, a name without a definition, a definition without a use.</summary>
internal static class DefinitionSentences
{
    public static string Loops(LoopTrouble trouble, string stitch) => trouble.Kind switch
    {
        LoopTroubleKind.StatedDiffers => $"In '{stitch}' the words here count {Count(trouble.Stated, "loop", "loops")} on the hook, but worked motion by motion there {Are(trouble.OnHook)} {trouble.OnHook}. Correct the number, or the motions before it.",
        LoopTroubleKind.TooFewOnHook => $"In '{stitch}' the hook is to draw through {Count(trouble.Stated, "loop", "loops")} here, but only {trouble.OnHook} {Are(trouble.OnHook)} on it. Correct the number, or the motions before it.",
        _ => $"'{stitch}' ends with {trouble.OnHook} loops on the hook, and a finished stitch leaves 1. Say how the others are worked off.",
    };

    public static string Unused(string stitch) => $"'{stitch}' is defined here, but no row uses it. Use it, or take the definition out.";

    public static string Undefined(string stitch, Terminology terms) =>
        $"'{stitch}' is not defined in this pattern, and designers make different stitches under that name. Say once how it is worked, such as: {Example(stitch, terms)}";

    private static string Are(int number) => number == 1 ? "is" : "are";

    private static string Example(string stitch, Terminology terms) => terms == Terminology.Us
        ? $"{stitch}: [Yo, insert hook in st, yo and draw up a loop] 3 times in same st, yo and draw through all 7 loops on hook."
        : $"{stitch}: [Yrh, insert hook in st, yrh and draw up a loop] 3 times in same st, yrh and draw through all 7 loops on hook.";
}
