using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Checking;

/// <summary>Findings of the reading: words that could not be read, and what is wrong with the text before any stitch is worked.</summary>
internal static class ReadingFindings
{
    public static IEnumerable<Finding> Of(Pattern pattern) =>
        pattern.Troubles.Select(Trouble)
            .Concat(Steps(pattern).OfType<UnreadStep>().Select(Unread))
            .Concat(pattern.Pieces.SelectMany(piece => piece.Items).OfType<Passage>().Where(passage => !passage.IsRemark).Select(Unread))
            .Concat(OtherTerms(pattern.Terms, pattern.Source));

    private static Finding Unread(UnreadStep step) => Say(
        FindingCodes.NotRead, step.Span,
        $"These words could not be read: '{Shortened(step.Text)}'. The row is not checked." + (step.Nearest is null ? "" : $" The nearest wording that can be read is: {step.Nearest}."));

    private static Finding Unread(Passage passage) => Say(
        FindingCodes.NotRead, passage.Span, $"This line could not be read as a row: '{Shortened(passage.Text)}'. It is not checked.");

    private static Finding Trouble(ReadingTrouble trouble) => trouble.Kind switch
    {
        ReadingTroubleKind.SizeListLength => Say(FindingCodes.SizeListLength, trouble.Span, trouble.Detail.Length > 0 ? trouble.Detail : "This list has not as many numbers as the pattern has sizes."),
        ReadingTroubleKind.RepeatWithoutStar => Say(FindingCodes.RepeatWithoutStar, trouble.Span, "This repeats from a mark that does not stand before it in the row. Put the * where the repeat begins."),
        ReadingTroubleKind.StarWithoutRepeat => Say(FindingCodes.StarWithoutRepeat, trouble.Span, "Nothing in the row repeats from this *. Say how far it is repeated, or take the mark out."),
        ReadingTroubleKind.BracketOpen => Say(FindingCodes.BracketOpen, trouble.Span, "This bracket has no partner in the row."),
        ReadingTroubleKind.OtherTerminology => Say(FindingCodes.OtherTerms, trouble.Span, trouble.Detail),
        ReadingTroubleKind.NotText => Say(FindingCodes.NotText, trouble.Span, "This is not a text: it holds bytes that are no writing. Open the pattern as plain text and try again."),
        _ => Say(FindingCodes.TooLarge, trouble.Span, trouble.Detail.Length > 0 ? trouble.Detail : "This is larger than any pattern needs. Check the number."),
    };

    private static IEnumerable<Finding> OtherTerms(TermsDecision terms, SourceText source) =>
        terms.Against.Take(1).Select(span => Say(
            FindingCodes.OtherTerms, span,
            $"'{source.Slice(span)}' is a {(terms.Terminology == Craft.Terms.Terminology.Us ? "UK" : "US")} term, but the pattern is read in {(terms.Terminology == Craft.Terms.Terminology.Us ? "US" : "UK")} terms. Use one terminology throughout."));

    /// <summary>Every step of every row, and the steps inside groups and repeats.</summary>
    public static IEnumerable<Step> Steps(Pattern pattern) =>
        pattern.Pieces.SelectMany(piece => piece.Items).OfType<RowInstruction>().SelectMany(row => row.Steps).SelectMany(WithInner);

    private static IEnumerable<Step> WithInner(Step step) => step switch
    {
        GroupStep group => group.Steps.SelectMany(WithInner).Prepend(step),
        RepeatStep repeat => repeat.Steps.Concat(repeat.Ending).SelectMany(WithInner).Prepend(step),
        _ => [step],
    };

    private static Finding Say(string code, TextSpan span, string sentence) => new(code, FindingCodes.SeverityOf(code), span, sentence);

    private static string Shortened(string text) => text.Length <= 60 ? text.Trim() : text[..57].Trim() + "…";
}
