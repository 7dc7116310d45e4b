using PatternStudio.Cli.Json;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Working;

namespace PatternStudio.Cli.Printing;

/// <summary>A table of rows: heading, stitches, the stated count, what they are.</summary>
internal static class RowTable
{
    public static void Print(CheckedSize size, TextWriter output)
    {
        if (size.Rows.Count == 0)
        {
            output.WriteLine("No rows were found.");
            return;
        }

        string[][] lines = [["Row", "Stitches", "Stated", "Of these"], .. size.Rows.Select(Line)];
        int[] widths = [.. Enumerable.Range(0, 3).Select(column => lines.Max(line => line[column].Length))];
        string piece = "";
        for (int i = 0; i < lines.Length; i++)
        {
            if (i > 0 && size.Rows[i - 1].Piece != piece) output.WriteLine(piece = size.Rows[i - 1].Piece);
            string[] line = lines[i];
            output.WriteLine($"  {line[0].PadRight(widths[0])}  {line[1].PadLeft(widths[1])}  {line[2].PadRight(widths[2])}  {line[3]}".TrimEnd());
        }

        foreach (GrowthLaw law in size.Laws) output.WriteLine(law.Sentence);
        output.WriteLine($"{Rows(size.Read.Rows)}: {size.Read.Read} read, {size.Read.Checked} checked.");
    }

    private static string[] Line(RowReport row) =>
        [row.Heading, row.Stitches?.ToString() ?? "–", Stated(row), row.Status == RowStatus.Checked ? Kinds(row) : Status(row.Status)];

    private static string Stated(RowReport row) =>
        row.Stated is not { } stated ? "" : StatedWords.Bare(stated) + (row.CountAgrees == false ? ", differs" : "");

    private static string Status(RowStatus status) => status == RowStatus.NotRead ? "not read" : "not checked";

    private static string Kinds(RowReport row) =>
        string.Join(", ", row.Counts.Select(count => $"{count.Value} {count.Key}").Concat(row.Spaces.Select(space => $"{space.Value} {space.Key} sp")));

    private static string Rows(int count) => count == 1 ? "1 row" : $"{count} rows";
}
