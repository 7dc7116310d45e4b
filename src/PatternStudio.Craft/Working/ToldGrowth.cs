using System.Globalization;
using System.Text.RegularExpressions;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Working;

/// <summary>'Repeat Row 3, increasing by 8 dc each row': words that may only say again what the row named does by itself.</summary>
internal static partial class ToldGrowth
{
    /// <summary>How many stitches more each row is said to have, below 0 for fewer; null where the words say anything else, as where the increases go.</summary>
    public static int? Of(string words)
    {
        if (Each().Match(words) is not { Success: true } told) return null;
        int? number = int.TryParse(told.Groups[2].Value, CultureInfo.InvariantCulture, out int digits) ? digits : Synonyms.Number(told.Groups[2].Value.ToLowerInvariant());
        return told.Groups[1].Value.StartsWith("dec", StringComparison.OrdinalIgnoreCase) ? -number : number;
    }

    [GeneratedRegex(@",\s+(inc|dec)reasing (?:by )?([0-9]{1,3}|[a-z]+)(?: [a-z]+)? (?:each|every|per|in each|on each|in every) (?:row|round|rnd)\s*(?:[.(\[–—-]|$)", RegexOptions.IgnoreCase)]
    private static partial Regex Each();
}
