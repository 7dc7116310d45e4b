using System.Text.RegularExpressions;
using PatternStudio.Craft.Reading.Tokens;

namespace PatternStudio.Craft.Reading.Statements;

/// <summary>
/// Reads for which sizes rows are told: 'Sizes Child and Adult only:', 'For size L only –', '2nd and 3rd sizes only:', 'L and XL only', 'All sizes:'. What names no size that
/// the pattern has is not taken: who works the rows would be guessed.
/// </summary>
internal static partial class SizesOnly
{
    private const int MostTokens = 24;

    /// <summary>Takes the words at the start of a line, with the mark behind them.</summary>
    /// <returns>The 0-based sizes in order, all of them for 'All sizes:'; null where the words say no such thing.</returns>
    public static IReadOnlyList<int>? TakeLine(Cursor cursor)
    {
        int from = cursor.At, end = from;
        if (cursor.Context.Sizes < 2) return null;
        while (end < cursor.End && end - from < MostTokens && !Ends(cursor, from, end)) end++;
        bool only = end > from && cursor.Context.Tokens[end - 1].Word == "only";
        bool marked = end < cursor.End && cursor.Context.Tokens[end].Kind is TokenKind.Colon or TokenKind.Dash;
        if (end == from || !(marked || end >= cursor.End || only && cursor.Context.Tokens[end].Kind == TokenKind.Dot)) return null;
        if (In(cursor.Slice(from, end), cursor.Context) is not { } sizes) return null;
        cursor.At = end;
        cursor.SkipSeparators();
        return sizes;
    }

    private static bool Ends(Cursor cursor, int from, int at) =>
        cursor.Context.Tokens[at].Kind is TokenKind.Colon or TokenKind.Dot || at > from && cursor.Context.Tokens[at - 1].Word == "only";

    /// <summary>Takes the words in brackets behind a row's number: 'Row 8 (size L only):'.</summary>
    public static IReadOnlyList<int>? TakeAside(Cursor cursor)
    {
        int partner = cursor.Partner();
        if (cursor.Context.Sizes < 2 || partner < 0 || In(cursor.Slice(cursor.At + 1, partner), cursor.Context) is not { } sizes) return null;
        cursor.At = partner + 1;
        return sizes;
    }

    private static IReadOnlyList<int>? In(string words, ReadingContext context)
    {
        string said = words.Trim(' ', '*', '_');
        if (AllSizes().IsMatch(said)) return [.. Enumerable.Range(0, context.Sizes)];
        if (Restricted().Match(said) is not { Success: true } match) return null;
        var found = new SortedSet<int>();
        foreach (string name in Parting().Split(match.Groups[1].Success ? match.Groups[1].Value : match.Groups[2].Success ? match.Groups[2].Value : match.Groups[3].Value))
        {
            if (name.Trim().Length == 0) continue;
            if (Range(name.Trim(), context) is not var (first, last) || first > last) return null;
            for (int size = first; size <= last; size++) found.Add(size);
        }
        return found.Count > 0 ? [.. found] : null;
    }

    /// <summary>'L', '2nd', 'largest', 'M–XL', '2nd to 4th'.</summary>
    private static (int First, int Last)? Range(string name, ReadingContext context)
    {
        if (Index(name, context) is { } one) return (one, one);
        string[] ends = Through().Split(name);
        return ends.Length == 2 && Index(ends[0], context) is { } first && Index(ends[1], context) is { } last ? (first, last) : null;
    }

    private static int? Index(string name, ReadingContext context)
    {
        string wanted = Key(name);
        for (int i = 0; i < context.SizeNames.Count; i++)
            if (Key(context.SizeNames[i]) == wanted) return i;
        int? ordinal = wanted switch
        {
            "smallest" => 1,
            "largest" => context.Sizes,
            _ => Nth().Match(wanted) is { Success: true } nth ? int.Parse(nth.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture) : Terms.Synonyms.Ordinal(wanted),
        };
        return ordinal is >= 1 && ordinal <= context.Sizes ? ordinal - 1 : null;
    }

    /// <summary>'Small', 'small' and 'S' are one size.</summary>
    private static string Key(string name)
    {
        string key = name.Trim(' ', '.', ',', '*').ToLowerInvariant();
        return key switch { "small" => "s", "medium" or "med" => "m", "large" => "l", "x-small" or "extra small" => "xs", "x-large" or "extra large" or "1x" => "xl", "xxl" or "2xl" => "2x", "xxxl" or "3xl" => "3x", _ => key };
    }

    [GeneratedRegex(@"^(?:continue |work |for )*(?:all|both) (?:the )?sizes(?: again)?(?: (?:continue|work|cont)(?: as follows)?)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex AllSizes();

    [GeneratedRegex(@"^(?:work )?(?:for )?(?:the )?(?:sizes? (.+?) only|(.+?) (?:sizes? )?only|(?<=for (?:the )?)sizes? (.+?))$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Restricted();

    [GeneratedRegex(@",\s*(?:and\s+)?|\s+(?:and|or|&)\s+|\s*&\s*", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Parting();

    [GeneratedRegex(@"\s+(?:to|through)\s+|\s*[–—-]\s*", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Through();

    [GeneratedRegex(@"^([0-9]{1,2})(?:st|nd|rd|th)$", RegexOptions.CultureInvariant)]
    private static partial Regex Nth();
}
