using System.Globalization;
using System.Text.RegularExpressions;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Checking;

/// <summary>
/// Finds lengths stated twice, in centimetres and in inches: '20 cm (8 in)', '20 cm x 30 cm (8 in x 12 in)', '46 (51, 56) cm / 18 (20, 22) in'. Where it is not
/// plain which belongs to which, nothing is paired.
/// </summary>
internal static partial class PairsOfLengths
{
    public static IEnumerable<PairOfLengths> In(string text)
    {
        foreach (Match match in Twice().Matches(text))
        {
            Group first = match.Groups["first"], second = match.Groups["second"];
            if (Unit(first.Value) is not { } one || Unit(second.Value) is not { } two || one == two) continue;
            List<StatedLength> ones = Lengths(first.Value, one), twos = Lengths(second.Value, two);
            if (ones.Count != twos.Count || StartsWithinList(text, match.Index)) continue;
            bool rough = About().IsMatch(text[..match.Index]);
            for (int i = 0; i < ones.Count; i++)
                yield return new PairOfLengths(one == "cm" ? ones[i] : twos[i], one == "cm" ? twos[i] : ones[i], new TextSpan(match.Index, match.Length), rough);
        }
    }

    /// <summary>'…, 51, 56) cm (20, 22 in)': the list began earlier, so that the numbers can't be paired.</summary>
    private static bool StartsWithinList(string text, int at)
    {
        string before = text[..at].TrimEnd();
        return before.Length > 0 && (before[^1] is ',' or '(' or '/' or '-' or '–' or '.' && before.Length > 1 && char.IsDigit(before[^2]));
    }

    private static List<StatedLength> Lengths(string list, string unit) =>
        [.. Number().Matches(list).Select(match => Length(match, unit))];

    private static StatedLength Length(Match match, string unit)
    {
        string whole = match.Groups["whole"].Value.Replace(',', '.'), part = match.Groups["part"].Value;
        double number = (whole.Length > 0 ? double.Parse(whole, CultureInfo.InvariantCulture) : 0) + Fraction(part);
        double halfStep = unit == "cm"
            ? whole.Contains('.') || part.Length > 0 ? 0.25 : 0.5
            : part is "½" or "1/2" || whole.EndsWith(".5", StringComparison.Ordinal) ? 0.25 : part.Length > 0 || whole.Contains('.') ? 0.125 : 0.5;
        return new StatedLength(number, halfStep, $"{match.Value.Trim()} {unit}");
    }

    private static double Fraction(string part)
    {
        if (part.Length == 0) return 0;
        int slash = part.IndexOfAny(['/', '⁄']);
        if (slash < 0) return char.GetNumericValue(part[0]);
        double below = double.Parse(part[(slash + 1)..], CultureInfo.InvariantCulture);
        return below == 0 ? 0 : double.Parse(part[..slash], CultureInfo.InvariantCulture) / below;
    }

    /// <summary>'cm' or 'in'; null where a stretch has no unit of these, or several.</summary>
    private static string? Unit(string list)
    {
        bool metric = Centimetres().IsMatch(list), inches = Inches().IsMatch(list);
        return metric == inches ? null : metric ? "cm" : "in";
    }

    private const string N = @"(?:[0-9]{1,4}(?:[.,][0-9]{1,2})?(?:[ \u00a0]?[½¼¾⅛⅜⅝⅞]|[ -][0-9]{1,2}[/⁄][0-9]{1,2})?|[½¼¾⅛⅜⅝⅞]|[0-9]{1,2}[/⁄][0-9]{1,2})";
    private const string U = @"(?:cm|centimet(?:re|er)s?|inch(?:es)?|ins?\b\.?|""|″|”)";
    private const string Side = @"(?:\s*(?:wide|long|tall|high|deep|square))?";
    private const string Sizes = N + @"(?:\s*\(" + N + @"(?:\s*,\s*" + N + @")*\))?\s*" + U;
    private const string Sides = N + @"\s*" + U + "?" + Side + @"(?:\s*(?:x|×|by|,)\s*" + N + @"\s*" + U + "?" + Side + ")*";

    /// <summary>Lengths, then the same again in brackets or behind a slash.</summary>
    private static Regex Twice() => TwicePattern;

    // Without backtracking: linear in the text, so that no text needs a time limit.
    private static readonly Regex TwicePattern = new(@"(?<first>" + Sizes + @")\s*/\s*(?<second>" + Sizes + @")|(?<first>" + Sides + @")\s*[\(\[](?<second>" + Sides + @")[\)\]]", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.NonBacktracking);

    [GeneratedRegex(@"(?<whole>[0-9]{1,4}(?:[.,][0-9]{1,2})?)(?![/⁄])(?:[ \u00a0]?(?<part>[½¼¾⅛⅜⅝⅞])|[ -](?<part>[0-9]{1,2}[/⁄][0-9]{1,2}))?|(?<part>[½¼¾⅛⅜⅝⅞]|[0-9]{1,2}[/⁄][0-9]{1,2})", RegexOptions.CultureInvariant)]
    private static partial Regex Number();

    [GeneratedRegex("cm|centim", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Centimetres();

    [GeneratedRegex(@"\bin(?:s|ch|ches)?\b|(?<=[0-9]|\s|[½¼¾])(?:in|inch|inches|ins)\b|""|″|”", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Inches();

    private static Regex About() => AboutPattern;

    private static readonly Regex AboutPattern = new(@"\b(?:about|approx\w*|roughly|circa|ca)\b[^.;]*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.NonBacktracking);
}
