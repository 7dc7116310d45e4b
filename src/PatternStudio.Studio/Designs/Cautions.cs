using System.Text.RegularExpressions;

namespace PatternStudio.Studio.Designs;

/// <summary>What a piece may be to somebody who can come to harm by it.</summary>
public enum CautionKind
{
    /// <summary>Blankets, hats, soft things near a baby.</summary>
    Baby,

    /// <summary>Cords, ties and drawstrings on children's clothes.</summary>
    Cords,

    /// <summary>Toys and their small parts.</summary>
    Toy,

    /// <summary>Pot holders, trivets: heat.</summary>
    Heat,
}

/// <summary>
/// Finds from the words of a title and a text which usual cautions a pattern should pass on. It reads words, it knows nothing of the work:
/// what it names is to be thought about, and local rules go first.
/// </summary>
/// <remarks>The facts and their sources: the safety notes beside the project's design; what they mark as from memory is not printed.</remarks>
public static partial class Cautions
{
    /// <summary>The cautions that fit, in the order of <see cref="CautionKind"/>.</summary>
    public static IReadOnlyList<CautionKind> For(string title, string text)
    {
        string words = $"{title}\n{text}";
        bool child = ForChild().IsMatch(words), baby = ForBaby().IsMatch(words), toy = Toy().IsMatch(words);
        return
        [
            .. baby ? [CautionKind.Baby] : Array.Empty<CautionKind>(),
            .. (child || baby) && Cord().IsMatch(words) ? [CautionKind.Cords] : Array.Empty<CautionKind>(),
            .. toy ? [CautionKind.Toy] : Array.Empty<CautionKind>(),
            .. Heat().IsMatch(words) ? [CautionKind.Heat] : Array.Empty<CautionKind>(),
        ];
    }

    /// <summary>'Baby yarn' and 'fingering or baby weight' are yarns, not babies.</summary>
    [GeneratedRegex(@"\b(bab(y|ies|y's)(?!\s+(yarn|weight|wool|hook))|newborns?|preemies?|infants?('s)?|cot blanket|crib|pram|stroller|lovey|loveys|comforter blanket|bassinet|layette)\b", RegexOptions.IgnoreCase)]
    private static partial Regex ForBaby();

    [GeneratedRegex(@"\b(child(ren)?('s)?|kids?('s)?(?!\s+mohair)|toddlers?('s)?|boys?'|girls?')(?![\p{L}])", RegexOptions.IgnoreCase)]
    private static partial Regex ForChild();

    /// <summary>Things that can catch or strangle; 'tie off' and 'tie a knot' are ends of yarn.</summary>
    [GeneratedRegex(@"\b(cords?|drawstrings?|ties?(?!\s+(off|in|up|ends?|knots?|the|a|it|them|together))|ribbons?|hood|hooded|i-cord)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Cord();

    [GeneratedRegex(@"\b(toys?|amigurumi|plush(ie)?s?|teddy|rattles?|soft doll|dolls?|stuffed (animal|bear|rabbit|bunny|cat|dog|elephant)s?|safety eyes|cot mobile|baby mobile)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Toy();

    [GeneratedRegex(@"\b(pot\s?-?holders?|hot\s?-?pads?|trivets?|oven (mitts?|gloves?|cloths?)|pan[- ]handle|casserole (cosy|cozy)|hot mats?|kettle holders?)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Heat();
}
