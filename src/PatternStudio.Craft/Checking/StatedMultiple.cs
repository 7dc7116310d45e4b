using System.Globalization;
using System.Text.RegularExpressions;

namespace PatternStudio.Craft.Checking;

/// <summary>'Multiple of 6 + 2, plus 1 for the foundation chain': any whole number of a, plus b once; the extra chains apart.</summary>
/// <param name="Of">At least 2.</param>
/// <param name="Plus">Added once.</param>
/// <param name="Extra">Chains that are added for turning, where they are stated apart; else 0.</param>
internal sealed partial record StatedMultiple(long Of, long Plus, long Extra)
{
    /// <summary>Reads a statement; null where it says it in another form, or more than one multiple.</summary>
    public static StatedMultiple? Parse(string words)
    {
        if (Parity().Match(words) is { Success: true } parity) return new StatedMultiple(2, parity.Groups[1].Value.StartsWith('o') || parity.Groups[1].Value.StartsWith('O') ? 1 : 0, 0);
        if (MultipleWord().Count(words) > 1 || Form().Match(words) is not { Success: true } match) return null;
        long of = Number(match.Groups["of"]);
        return of < 2 ? null : new StatedMultiple(of, Number(match.Groups["plus"]), Number(match.Groups["extra"]));
    }

    /// <summary>True where a number is a whole number of <see cref="Of"/> and <see cref="Plus"/> more.</summary>
    public bool Holds(long number) => number > 0 && (number - Plus) % Of == 0;

    /// <inheritdoc/>
    public override string ToString() => Plus > 0 ? $"{Of} + {Plus}" : $"{Of}";

    private static long Number(Group group) => group.Success ? long.Parse(group.Value, CultureInfo.InvariantCulture) : 0;

    [GeneratedRegex(@"^\W*(?:any\s+)?(odd|even)\s+(?:number|count)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Parity();

    [GeneratedRegex("multiple", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex MultipleWord();

    private const string Unit = @"(?:\s*(?:sts?|stitch(?:es)?|chs?|chains?)\b\.?)?";

    private static Regex Form() => FormPattern;

    // Without backtracking: linear in the text, so that no text needs a time limit.
    private static readonly Regex FormPattern = new(@"^\W*(?:(?:a\s+)?multiples?\s+of\s+)?(?<of>[0-9]{1,4})" + Unit + @"(?:\s*(?:\+|plus)\s*(?<plus>[0-9]{1,4})" + Unit + @")?(?:[\s,;\(]*(?:and\s+)?(?:\+|plus|add)\s*(?<extra>[0-9]{1,3})" + Unit + @"(?:\s*(?:for|to)\b[^.]*)?)?[\s\).]*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.NonBacktracking);
}
