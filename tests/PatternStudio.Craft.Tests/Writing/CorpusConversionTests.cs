using System.Runtime.CompilerServices;
using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Writing;

namespace PatternStudio.Craft.Tests.Writing;

/// <summary>Conversion of real instructions of 1854 to 1953 (public domain), which stay in their folder beside the repository.</summary>
public sealed class CorpusConversionTests
{
    /// <summary>
    /// Old booklets call stitches 'a double', 'long' and 'double knot stitch' in ways that the other terminology reads differently; all but a few
    /// files still come back as the same work.
    /// </summary>
    [Fact]
    public void Old_instructions_go_there_and_back()
    {
        string[] files = Corpus();
        string[] lost = [.. files.Where(file => !ComesBack(File.ReadAllText(file))).Select(file => Path.GetFileName(file))];
        Assert.True(lost.Length <= files.Length / 10, $"{lost.Length} of {files.Length} files do not come back the same: {string.Join(", ", lost)}");
    }

    private static bool ComesBack(string text)
    {
        Pattern pattern = PatternReader.Read(text);
        Terminology own = pattern.Terms.Terminology, other = own == Terminology.Us ? Terminology.Uk : Terminology.Us;
        string there = TermsConverter.Convert(pattern, other);
        return TreeShape.FirstDifference(pattern, PatternReader.Read(TermsConverter.Convert(there, own, other), own), workOnly: true) is null;
    }

    private static string[] Corpus([CallerFilePath] string here = "")
    {
        string folder = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "..", "shared", "corpus"));
        if (!Directory.Exists(folder)) Assert.Skip("SKIPPED: the corpus of old instructions is not in the folder 'shared/corpus' beside the repository; nothing was tested here.");
        return Directory.GetFiles(folder, "*.txt");
    }
}
