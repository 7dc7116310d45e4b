using System.Text;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>The folder of right patterns, and how a worked pattern differs from its counts.</summary>
internal static class RightPatterns
{
    public static string Folder { get; } = Repository.Path("tests/PatternStudio.Craft.Tests/RightPatterns");

    public static (string Text, CountsFile Counts) Load(string name) =>
        (File.ReadAllText(Path.Combine(Folder, name + ".txt")), CountsFile.Read(Path.Combine(Folder, name + ".counts")));

    /// <summary>A readable list of what is not as it should be; empty where all is right.</summary>
    public static string Differences(CheckedPattern result, CountsFile counts)
    {
        var wrong = new StringBuilder();
        foreach (Finding finding in result.Findings.Where(finding => finding.Severity != Severity.Note))
        {
            var at = result.Pattern.Source.Locate(finding.Span.Start);
            if (finding.Severity == Severity.Error || finding.Code == FindingCodes.NotRead)
                wrong.AppendLine($"{finding.Severity} {finding.Code} line {at.Line}: {finding.Message}");
        }
        for (int size = 0; size < result.Sizes.Count; size++) Compare(result, result.Sizes[size], counts.Rows.Where(row => row.Total(size) >= 0).ToList(), size, wrong);
        return wrong.ToString();
    }

    /// <summary>A special stitch goes by the pattern's own spelling in the counts: 'V-st', 'FPdc'.</summary>
    private static string Known(CheckedPattern result, RowReport row, string name) =>
        row.Counts.Keys.FirstOrDefault(key => Plain(key) == Plain(name))
        ?? result.Pattern.Definitions.Where(definition => definition.Names.Any(known => Plain(known) == Plain(name))).Select(definition => definition.Id.Value).FirstOrDefault(name);

    private static string Plain(string name) => string.Concat(name.Where(char.IsLetterOrDigit)).ToLowerInvariant();

    private static void Compare(CheckedPattern result, CheckedSize size, IReadOnlyList<ExpectedRow> expected, int index, StringBuilder wrong)
    {
        string of = size.Name.Length > 0 ? $" in size {size.Name}" : "";
        if (size.Rows.Count != expected.Count) wrong.AppendLine($"{size.Rows.Count} rows worked{of}, {expected.Count} expected");
        foreach ((RowReport row, ExpectedRow wanted) in size.Rows.Zip(expected))
        {
            string label = $"{row.Piece} {row.Heading}{of} (line {row.Line})".Trim();
            if (row.Number != wanted.Number) wrong.AppendLine($"{label}: expected number {wanted.Number}");
            if (row.Status != RowStatus.Checked) wrong.AppendLine($"{label}: {row.Status}");
            else if (row.Stitches != wanted.Total(index) && !(row.Stated is not null && row.CountAgrees is null)) wrong.AppendLine($"{label}: worked {row.Stitches}, expected {wanted.Total(index)}");
            else if (row.CountAgrees == false) wrong.AppendLine($"{label}: stated {row.Stated}, worked {row.Stitches}");
            if (row.Status != RowStatus.Checked) continue;
            foreach ((string kind, long number) in wanted.Kinds.Select(pair => KeyValuePair.Create(Known(result, row, pair.Key), pair.Value)))
                if (row.Counts.GetValueOrDefault(kind) != number) wrong.AppendLine($"{label}: {kind} {row.Counts.GetValueOrDefault(kind)}, expected {number}");
            foreach ((string space, long number) in wanted.Spaces)
                if (row.Spaces.GetValueOrDefault(space) != number) wrong.AppendLine($"{label}: {space} sps {row.Spaces.GetValueOrDefault(space)}, expected {number}");
        }
    }
}
