using System.Globalization;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Terms;

/// <summary>Reads <c>stitches.txt</c>: one stitch to a block, the id first, then <c>key: value</c> lines.</summary>
internal static class StitchFile
{
    public static IEnumerable<StitchTerm> Read() => Blocks().Select(ToTerm);

    private static IEnumerable<List<string>> Blocks()
    {
        var block = new List<string>();
        foreach (string line in TermFiles.Lines("stitches.txt").Append(""))
        {
            if (line.Length > 0) block.Add(line);
            else if (block.Count > 0)
            {
                yield return block;
                block = [];
            }
        }
    }

    private static StitchTerm ToTerm(List<string> block)
    {
        var id = new StitchId(block[0]);
        var values = block.Skip(1).Select(TermFiles.Split).ToDictionary(pair => pair.Key, pair => pair.Value);
        string Value(string key, string otherwise = "") => values.GetValueOrDefault(key, otherwise);
        return new StitchTerm(
            id,
            TermFiles.List(Value("us")).ToEquatableArray(),
            TermFiles.List(Value("uk")).ToEquatableArray(),
            Value("motions"),
            double.Parse(Value("height", "1"), CultureInfo.InvariantCulture),
            Number(Value("makes", "1")),
            Number(Value("takes", "1")),
            values.TryGetValue("base", out string? plain) ? new StitchId(plain) : id)
        {
            IsGroup = Value("group") == "yes",
        };
    }

    private static int Number(string digits) => int.Parse(digits, CultureInfo.InvariantCulture);
}
