using System.Globalization;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>The counts that a person derived by hand for a right pattern: see RightPatterns/README.md.</summary>
internal sealed record CountsFile(string Terms, IReadOnlyList<ExpectedRow> Rows)
{
    public static CountsFile Read(string path)
    {
        string[] lines = File.ReadAllLines(path);
        string terms = lines.Where(line => line.StartsWith("# terms:", StringComparison.Ordinal)).Select(line => line[8..].Trim()).FirstOrDefault("us");
        return new CountsFile(terms, [.. lines.Where(line => line.Length > 0 && line[0] != '#').SelectMany(ExpectedRow.Parse)]);
    }
}

/// <summary>One row as worked: its totals (one for all sizes, or one for each), its kinds and spaces where they are asserted.</summary>
internal sealed record ExpectedRow(string Section, int Number, IReadOnlyList<long> Totals, IReadOnlyDictionary<string, long> Kinds, IReadOnlyDictionary<string, long> Spaces)
{
    public long Total(int size) => Totals.Count == 1 ? Totals[0] : Totals[size];

    public static IEnumerable<ExpectedRow> Parse(string line)
    {
        string[] parts = [.. line.Split('|').Select(part => part.Trim())];
        int colon = parts[0].LastIndexOf(':');
        string section = colon < 0 ? "" : parts[0][..colon].Trim(), label = parts[0][(colon + 1)..].Trim();
        if (label == "Foundation") yield break;
        if (label == "Set-up") label = "1";
        int[] range = [.. label.Split("..").Select(number => int.Parse(number, CultureInfo.InvariantCulture))];
        long[] totals = [.. parts[1].Split(',').Select(total => total.Trim() is "-" or "" ? -1 : long.Parse(total, CultureInfo.InvariantCulture))];
        for (int number = range[0]; number <= range[^1]; number++)
            yield return new ExpectedRow(section, number, totals, Pairs(parts, 2), Pairs(parts, 3));
    }

    private static Dictionary<string, long> Pairs(string[] parts, int index) =>
        parts.Length <= index || parts[index].Length == 0
            ? []
            : parts[index].Split(',').Select(pair => pair.Split('=')).ToDictionary(pair => pair[0].Trim(), pair => long.Parse(pair[1], CultureInfo.InvariantCulture));
}
