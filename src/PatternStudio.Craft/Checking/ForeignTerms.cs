using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Checking;

/// <summary>
/// Words in rows and definitions that name a stitch in the other terminology and none in the pattern's own: 'htr' in US terms, 'sc' in UK terms. Habits of
/// spelling ('skip', 'colour') speak for a terminology, but are at home in both.
/// </summary>
internal static class ForeignTerms
{
    /// <summary>Their spans, in the order of the text.</summary>
    public static IReadOnlyList<TextSpan> In(Pattern pattern)
    {
        if (pattern.Terms.Against.IsEmpty) return [];
        TextSpan[] worked = [.. pattern.Pieces.SelectMany(piece => piece.Items).OfType<RowInstruction>().Select(row => row.Span), .. pattern.Definitions.Where(IsInOwnWords).Select(definition => definition.Body)];
        return [.. pattern.Terms.Against.Where(span => NamesOnlyIn(pattern, span, Other(pattern.Terms.Terminology)) && worked.Any(words => words.Contains(span))).OrderBy(span => span.Start)];
    }

    /// <summary>True where a row has a word that names a stitch in the pattern's own terminology alone.</summary>
    public static bool HasOwn(Pattern pattern)
    {
        var rows = new RowsOfText(pattern);
        return pattern.Terms.Evidence.Any(span => rows.At(span.Start) is not null && NamesOnlyIn(pattern, span, pattern.Terms.Terminology));
    }

    /// <summary>The terminology that is not the given one.</summary>
    public static Terminology Other(Terminology terminology) => terminology == Terminology.Us ? Terminology.Uk : Terminology.Us;

    private static bool NamesOnlyIn(Pattern pattern, TextSpan span, Terminology terminology)
    {
        string word = pattern.Source.Slice(span).ToLowerInvariant();
        return Vocabulary.Standard.Meaning(word, terminology) is { } stitch && stitch != StitchId.SlipStitch && Vocabulary.Standard.Meaning(word, Other(terminology)) is null;
    }

    /// <summary>'Htr: US hdc' explains a stitch in the other terms on purpose.</summary>
    private static bool IsInOwnWords(StitchDefinition definition) => definition.Motions is not null || !definition.Steps.IsEmpty;
}
