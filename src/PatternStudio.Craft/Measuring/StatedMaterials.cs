using System.Globalization;
using System.Text.RegularExpressions;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Measuring;

/// <summary>Gauge, ball, yarn weight and hook as the pattern itself states them: what sizes rest on until there is a swatch.</summary>
public static partial class StatedMaterials
{
    /// <summary>A basis from the pattern's own statements; what it does not state, or not in words that are read, is left out.</summary>
    public static MeasuringBasis Of(CheckedPattern pattern)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        Swatch? gauge = Texts(pattern, StatementKind.Gauge).Select(text => Swatch.ParseStated(text, pattern.Pattern.Terms.Terminology)).FirstOrDefault(read => read.IsRead)?.Value;
        string materials = string.Join('\n', Texts(pattern, StatementKind.Yarn, StatementKind.Hook));
        string source = materials.Length > 0 ? materials + "\n" + Materials().Match(pattern.Pattern.Source.Content).Value : Materials().Match(pattern.Pattern.Source.Content).Value;
        return new MeasuringBasis(gauge is null ? [] : [gauge], Ball(source)) { IsStated = gauge is not null, YarnWeight = Weight(source), Hook = Hook(source) };
    }

    private static IEnumerable<string> Texts(CheckedPattern pattern, params StatementKind[] kinds) =>
        pattern.Pattern.Statements.Where(statement => kinds.Contains(statement.Kind)).Select(statement => statement.Text.Trim().TrimEnd('.'));

    private static YarnLabel? Ball(string text) =>
        Balls().Match(text) is { Success: true } ball && YarnLabel.Parse(ball.Value) is { IsRead: true } read ? read.Value : null;

    private static int? Weight(string text) =>
        Weights().Match(text) is { Success: true } weight && YarnStandards.Of(int.Parse(weight.Groups["n"].Value, CultureInfo.InvariantCulture)) is { } known ? known.Number : null;

    private static HookSize? Hook(string text) =>
        Hooks().Match(text) is { Success: true } hook && HookSize.Parse(hook.Groups["n"].Value) is { IsRead: true } read ? read.Value : null;

    /// <summary>The lines of the materials, from their heading to the next.</summary>
    [GeneratedRegex(@"(?im)^[#*\s]*(?:materials|you need|you will need|yarn)\b[^\n]*\n(?:(?![#*\s]*(?:gauge|tension|abbreviations|instructions|notes|stitches)\b)[^\n]*\n){0,8}")]
    private static partial Regex Materials();

    /// <summary>'50 g = 85 m / 93 yd', '85 m = 50 g'.</summary>
    [GeneratedRegex(@"[0-9]+(?:\.[0-9]+)?\s*(?:g|oz)\s*[=/(]\s*[0-9]+(?:\.[0-9]+)?\s*(?:m|yd|yds)\b|[0-9]+(?:\.[0-9]+)?\s*(?:m|yd|yds)\s*[=/(]\s*[0-9]+(?:\.[0-9]+)?\s*(?:g|oz)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Balls();

    /// <summary>'(worsted, 4; …)', 'DK, 3', 'medium (4)'.</summary>
    [GeneratedRegex(@"\b(?:lace|thread|fingering|sock|baby|super fine|fine|sport|dk|light|light worsted|worsted|medium|aran|afghan|bulky|chunky|super bulky|roving|jumbo)\s*(?:weight)?\s*[,(\[#]+\s*(?:weight\s*|cyc\s*|no\.?\s*)?(?<n>[0-7])\b", RegexOptions.IgnoreCase)]
    private static partial Regex Weights();

    [GeneratedRegex(@"(?<n>[0-9]+(?:[.,][0-9]+)?)\s*mm\b(?=[^\n]{0,30}hook)|hook[^\n]{0,20}?(?<n>[0-9]+(?:[.,][0-9]+)?)\s*mm\b", RegexOptions.IgnoreCase)]
    private static partial Regex Hooks();
}
