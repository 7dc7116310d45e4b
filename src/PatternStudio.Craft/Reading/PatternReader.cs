using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading;

/// <summary>Reads the written pattern into an instruction tree.</summary>
public static class PatternReader
{
    /// <summary>Reads a text. Never throws on any text: what can't be read is a node of the tree.</summary>
    /// <param name="text">The pattern as written; at most <see cref="ReadingLimits.Characters"/> are read.</param>
    /// <param name="told">The terminology, where the caller knows it; null to find it from the text.</param>
    public static Pattern Read(string text, Terminology? told = null)
    {
        var source = new SourceText(text);
        return new Pattern(
            source,
            new TermsDecision(told ?? Terminology.Us, told is null ? TermsOrigin.Assumed : TermsOrigin.Told, told is null ? 0.5 : 1, []),
            [""], [], [], [], []);
    }
}
