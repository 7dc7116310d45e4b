using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>
/// The ruler of the engine: patterns that are right, with counts derived by hand (common practice, no source; the arithmetic stands beside
/// each row). Every row must be read and worked whole, come to its count, and give no error.
/// </summary>
public sealed class RightPatternTests
{
    public static TheoryData<string> Names =>
        [.. Directory.EnumerateFiles(RightPatterns.Folder, "*.txt").Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_right_pattern_is_worked_whole_and_comes_to_its_counts(string name)
    {
        (string text, CountsFile counts) = RightPatterns.Load(name);
        CheckedPattern result = PatternCheck.Check(text);
        Assert.Equal("", RightPatterns.Differences(result, counts));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_terminology_of_a_right_pattern_is_found(string name)
    {
        (string text, CountsFile counts) = RightPatterns.Load(name);
        Terminology found = PatternCheck.Check(text).Pattern.Terms.Terminology;
        Assert.Equal(counts.Terms, found == Terminology.Us ? "us" : "uk");
    }
}
