using System.Text.RegularExpressions;

namespace PatternStudio.Craft.Reading.Statements;

/// <summary>
/// Finds the names of a pattern's sizes wherever it lists them: 'Sizes: Small (Medium, Large)', 'Size S (M, L)', 'Sizes: S, M, L', 'Child [Teen, Adult]' alone on a line,
/// 'Directions are for size Small. Changes for sizes Medium and Large are in parentheses.'
/// </summary>
internal static partial class SizeNamesFinder
{
    /// <summary>The first list in the text with as many names as there are sizes; null where there is none.</summary>
    public static IReadOnlyList<string>? In(string text, int sizes)
    {
        if (sizes < 2) return null;
        foreach (string raw in text.Split('\n'))
        {
            string line = raw.Replace("**", "", StringComparison.Ordinal).Trim(' ', '\t', '\r', '#', '-', '•');
            if (Named(line) is { } names && names.Count == sizes) return names;
        }
        return null;
    }

    /// <summary>'Sizes: 4–5 [6–7]', 'Size: 0-3 months (3-6 months)': a line that names two sizes, and no measures.</summary>
    public static bool NamesTwo(string text)
    {
        foreach (string raw in text.Split('\n'))
            if (raw.StartsWith("size", StringComparison.OrdinalIgnoreCase) && Label().Match(raw.Trim()) is { Success: true } label && SizeNameList.Of(label.Groups[1].Value) is { Count: 2 } two
                && (two.All(name => SizeWord().IsMatch(name)) || raw.StartsWith("sizes", StringComparison.OrdinalIgnoreCase) && !Measured().IsMatch(raw))) return true;
        return false;
    }

    [GeneratedRegex(@"[0-9]\s*(?:cm|mm|in|ins|inch|inches|""|”)(?![\p{L}])", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Measured();

    private static IReadOnlyList<string>? Named(string line)
    {
        if (Changes().Match(line) is { Success: true } told) return [told.Groups[1].Value.Trim(), .. Parted(told.Groups[2].Value)];
        if (Label().Match(line) is { Success: true } label)
        {
            string list = label.Groups[1].Value;
            return SizeNameList.Of(list) ?? (Parted(list.TrimEnd('.')) is { Count: > 1 } parted ? parted : null);
        }
        return SizeNameList.Of(line) is { } alone && alone.All(name => SizeWord().IsMatch(name)) ? alone : null;
    }

    /// <summary>'Small, Medium and Large'.</summary>
    private static List<string> Parted(string list) => Parting().Split(list).Select(name => name.Trim()).Where(name => name.Length > 0).ToList();

    [GeneratedRegex(@"^(?:written (?:for|in) |to fit |available in |available )?sizes?\s*(?:are\s*)?:?\s+(.+)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Label();

    [GeneratedRegex(@"(?:written|given|are|is) for (?:the )?(?:sizes? )?([\p{L}0-9\-/ ]{1,25}?)(?: sizes?)?(?:[.;,]| with)\s*(?:the )?(?:changes for |larger |other )?(?:the )?(?:sizes? )?(?:for )?(?:sizes? )?([\p{L}0-9\-/ ,&]{1,80}?)(?: sizes?)? (?:are |is )?in (?:parenthes|bracket)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Changes();

    [GeneratedRegex(@",\s*(?:and\s+)?|\s+(?:and|or|&)\s+|\s*&\s*|\s/\s", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Parting();

    [GeneratedRegex(@"^(?:x{0,4}[sl]|m|[0-9]x[l]?|(?:x-|extra[ -])?(?:small|large)|medium|sml|med|lge|preemie|newborn|nb|infant|baby|toddler|child|children|kids?|teen|youth|adult|women|men|ladies|one size|[0-9]{1,2}\s*[-–]\s*[0-9]{1,2}\s*(?:months?|mos?|m|years?|yrs?|y)|[0-9]{1,2}\s*(?:months?|mos?|years?|yrs?))$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex SizeWord();
}
