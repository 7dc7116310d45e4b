using CsCheck;
using PatternStudio.Craft.Reading;

namespace PatternStudio.Craft.Tests.Properties;

/// <summary>Working by runs is only a faster way: it comes to the very cells that working turn by turn comes to.</summary>
public sealed class WorkedByRunsTests
{
    public static TheoryData<string> Files =>
        [.. new[] { "tests/PatternStudio.Craft.Tests/RightPatterns", "samples" }
            .SelectMany(folder => Directory.EnumerateFiles(Repository.Path(folder), "*.txt").Order(StringComparer.Ordinal).Select(path => folder + "/" + Path.GetFileName(path)))];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_written_pattern_comes_to_the_same_cells_by_runs_and_turn_by_turn(string file) =>
        Same(File.ReadAllText(Repository.Path(file)));

    /// <summary>More patterns: set CsCheck_Iter. The one that failed: CsCheck_Seed.</summary>
    [Fact]
    public void Any_pattern_comes_to_the_same_cells_by_runs_and_turn_by_turn() =>
        Choices.Gen.Select(AnyPattern.Write).Sample(text => Same(text), iter: Math.Max(300, Check.Iter), threads: 1);

    private static void Same(string text)
    {
        string differences = WorkComparison.Differences(PatternReader.Read(text));
        if (differences.Length > 0) Assert.Fail(differences);
    }
}
