using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Writing.Instructions;

/// <summary>What stitches are called in a pattern, and the pattern's own words where nothing else says it.</summary>
internal sealed class StitchWords
{
    private readonly Pattern pattern;
    private readonly Dictionary<StitchId, string> own;

    public StitchWords(Pattern pattern)
    {
        this.pattern = pattern;
        own = pattern.Definitions.Where(definition => !definition.Names.IsEmpty)
            .GroupBy(definition => definition.Id)
            .ToDictionary(same => same.Key, same => same.First().Names[0]);
    }

    public string Of(StitchId stitch) =>
        own.TryGetValue(stitch, out string? name) ? InARow(name)
        : Vocabulary.Standard.Find(stitch)?.Abbreviation(pattern.Terms.Terminology) ?? stitch.Value;

    /// <summary>True for stitches of the vocabulary and those that the pattern defines; other names are known from the text alone.</summary>
    public bool Know(StitchId stitch) => own.ContainsKey(stitch) || Vocabulary.Standard.Find(stitch) is not null;

    public string Several(StitchId stitch) => Plural(Of(stitch));

    /// <summary>'Shell', as a definition begins, is 'shell' in a row; 'V-st' and 'FPdc' keep their capitals.</summary>
    private static string InARow(string name) =>
        name.Length > 1 && char.IsUpper(name[0]) && char.IsLower(name[1]) ? char.ToLowerInvariant(name[0]) + name[1..] : name;

    /// <summary>'puffs', 'V-sts', but 'dc' and 'sc' as the trade leaves them.</summary>
    private static string Plural(string name)
    {
        if (name.EndsWith("-st", StringComparison.Ordinal)) return name + "s";
        bool abbreviated = name.Length <= 3 || !name.AsSpan().ContainsAny("aeiou") || name.AsSpan().ContainsAnyInRange('0', '9');
        return abbreviated || name.EndsWith('s') ? name : name + (name.EndsWith("ch", StringComparison.Ordinal) ? "es" : "s");
    }

    /// <summary>The words under a span, as written.</summary>
    public string AsWritten(TextSpan span) => pattern.Source.Slice(span).Trim();
}
