using PatternStudio.Craft.Checking.Fixes;
using PatternStudio.Craft.Checking.Sentences;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Checking;

/// <summary>Terms mixed, or other than stated: one finding for the pattern, at the first word.</summary>
internal static class TermsFindings
{
    public static IEnumerable<Finding> Of(Pattern pattern)
    {
        IReadOnlyList<TextSpan> foreign = ForeignTerms.In(pattern);
        if (foreign.Count == 0) yield break;
        Terminology own = pattern.Terms.Terminology, other = ForeignTerms.Other(own);
        string word = pattern.Source.Slice(foreign[0]);
        if (pattern.Terms.Origin is TermsOrigin.Stated && !ForeignTerms.HasOwn(pattern))
        {
            yield return Finding.Of(FindingCodes.OtherTerms, foreign[0], ReadingSentences.StatedTermsContradicted(word, Name(own), Name(other)));
            yield break;
        }
        string meant = Vocabulary.Standard.Find(Vocabulary.Standard.Meaning(word.ToLowerInvariant(), other)!.Value)!.Abbreviation(own);
        TextEdit? fix = foreign.Count == 1 ? Wording.Replace(foreign[0], word, meant) : null;
        yield return Finding.Of(FindingCodes.OtherTerms, foreign[0], ReadingSentences.OtherTerms(word, Name(own), Name(other), meant), fix);
    }

    private static string Name(Terminology terminology) => terminology == Terminology.Us ? "US" : "UK";
}
