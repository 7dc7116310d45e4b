using System.Text.RegularExpressions;

namespace PatternStudio.Craft.Reading.Statements;

/// <summary>Reads the names of sizes: 'Small (Medium, Large)', 'S (M, L), around the hand …', 'XS (S, M) (L, XL)'.</summary>
internal static partial class SizeNameList
{
    /// <summary>The names at the start of a statement; null where it lists none.</summary>
    public static IReadOnlyList<string>? Of(string words)
    {
        Match match = Names().Match(words);
        if (!match.Success) return null;
        return [match.Groups[1].Value.Trim(), .. match.Groups[2].Captures.SelectMany(list => list.Value.Split([',', '/', ':', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))];
    }

    [GeneratedRegex(@"^\s*([\p{L}0-9][\p{L}0-9 \-–/]{0,40}?)\s*(?:[\(\[\{]([^\)\]\}]{1,200})[\)\]\}]\s*)+", RegexOptions.CultureInvariant)]
    private static partial Regex Names();
}
