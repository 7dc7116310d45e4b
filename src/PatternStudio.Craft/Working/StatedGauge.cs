using System.Globalization;
using System.Text.RegularExpressions;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>The row gauge that a text states in its front matter: '16 sts and 18 rows = 10 cm'.</summary>
internal static partial class StatedGauge
{
    /// <summary>Height of a row in millimetres; null where no gauge in rows is stated.</summary>
    public static double? MillimetresPerRow(EquatableArray<Statement> statements)
    {
        foreach (Statement statement in statements)
            if (statement.Kind == StatementKind.Gauge && Rows().Match(statement.Text) is { Success: true } rows && Over().Match(statement.Text) is { Success: true } over)
            {
                double perUnit = over.Groups["unit"].Value.StartsWith('c') ? 10 : 25.4;
                double count = Parse(rows.Groups["n"].Value), length = Parse(over.Groups["n"].Value) * perUnit;
                if (count > 0 && length > 0) return length / count;
            }
        return null;
    }

    private static double Parse(string number) => double.Parse(number.Replace(',', '.'), CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?<n>[0-9]+(?:[.,][0-9]+)?)\s*(?:rows|rnds|rounds)", RegexOptions.IgnoreCase)]
    private static partial Regex Rows();

    [GeneratedRegex(@"(?:=|to|over|per|in|is|measures?)\s*(?:[0-9]+(?:[.,][0-9]+)?\s*(?:cm|in|""|”)?\s*[x×]\s*)?(?<n>[0-9]+(?:[.,][0-9]+)?)\s*(?<unit>cm|in\b|inch|""|”)", RegexOptions.IgnoreCase)]
    private static partial Regex Over();
}
