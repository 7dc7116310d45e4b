using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Tests.Checking;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Charting;

/// <summary>
/// Every right pattern and every published instruction that works gets a chart that a maker can work from. The measures (symbols overlap by at most 15 % of the smaller, feet within 0.35
/// stitch of what they are worked into, neighbours in order, straight edges within 0.2 stitch) are common practice, no source.
/// </summary>
public sealed class ChartQualityTests
{
    private static string Corpus { get; } = Repository.Path("../shared/corpus");

    public static TheoryData<string> Right => [.. Directory.EnumerateFiles(RightPatterns.Folder, "*.txt").Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Right))]
    public void A_right_pattern_has_a_chart_to_work_from(string name) => Assert.Equal([], Troubles(PatternCheck.Check(RightPatterns.Load(name).Text)));

    /// <summary>Published instructions out of copyright, read from the folder beside the repository; nothing of their text is kept here.</summary>
    [Fact]
    public void Published_instructions_that_work_have_charts_to_work_from()
    {
        Assert.SkipUnless(Directory.Exists(Corpus), "The folder of published instructions is not beside the repository: nothing was tested.");
        var wrong = new List<string>();
        foreach (string path in Directory.EnumerateFiles(Corpus, "*.txt").Order(StringComparer.Ordinal))
        {
            CheckedPattern pattern = PatternCheck.Check(File.ReadAllText(path));
            if (pattern.HasErrors || pattern.Sizes[0].Rows.Any(row => row.Status != RowStatus.Checked)) continue;
            wrong.AddRange(Troubles(pattern).Take(1).Select(trouble => $"{Path.GetFileNameWithoutExtension(path)}: {trouble}"));
        }
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    private static string[] Troubles(CheckedPattern pattern)
    {
        Drawing drawing = Chart.Draw(pattern);
        var forms = new StitchForms(pattern.Pattern);
        if (drawing.IsOverview || drawing.Notes.Any(note => note.Contains("Only its first rows", StringComparison.Ordinal))) return [];
        return [.. pattern.Sizes[0].Fabric.Pieces.SelectMany((piece, i) => piece.Rows.IsEmpty ? [] : new ChartQuality(drawing, piece, i, forms).Troubles)];
    }
}
