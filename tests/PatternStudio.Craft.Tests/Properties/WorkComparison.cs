using System.Text;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Properties;

/// <summary>Two ways of working one pattern, by runs and turn by turn, held against each other: what is not the same.</summary>
internal static class WorkComparison
{
    /// <summary>Rows longer than this are not worked turn by turn: a few rows of fives in every stitch come to millions.</summary>
    private const long LongestRow = 20_000;

    /// <summary>A readable list of differences over all sizes; empty where both ways come to the same.</summary>
    public static string Differences(Pattern pattern)
    {
        var wrong = new StringBuilder();
        for (int size = 0; size < pattern.Sizes.Count; size++)
        {
            PatternWork runs = PatternWorker.Work(pattern, size);
            if (runs.Fabric.Pieces.All(piece => piece.Rows.All(row => row.Length <= LongestRow))) Compare(runs, PatternWorker.Work(pattern, size, unroll: true), wrong);
        }
        return wrong.ToString();
    }

    private static void Compare(PatternWork runs, PatternWork turns, StringBuilder wrong)
    {
        if (runs.Mishaps != turns.Mishaps)
            wrong.AppendLine($"mishaps by runs: {string.Join("; ", runs.Mishaps)}").AppendLine($"turn by turn: {string.Join("; ", turns.Mishaps)}");
        if (runs.Conventions != turns.Conventions) wrong.AppendLine($"conventions {runs.Conventions} and {turns.Conventions}");
        if (runs.Fabric.Pieces.Count != turns.Fabric.Pieces.Count) wrong.AppendLine($"{runs.Fabric.Pieces.Count} and {turns.Fabric.Pieces.Count} pieces");
        foreach ((WorkedPiece piece, WorkedPiece other) in runs.Fabric.Pieces.Zip(turns.Fabric.Pieces))
        {
            if (piece.Rows.Count != other.Rows.Count) wrong.AppendLine($"{piece.Rows.Count} and {other.Rows.Count} rows");
            foreach ((WorkedRow row, WorkedRow same) in piece.Rows.Zip(other.Rows)) Compare(row, same, wrong);
        }
    }

    private static void Compare(WorkedRow row, WorkedRow same, StringBuilder wrong)
    {
        // Runs may be cut otherwise; everything else is the same, cell for cell.
        if (row with { Runs = [] } != same with { Runs = [] })
            wrong.AppendLine($"{row.Label}: {row.Status} {row.Total} ({Listed(row.Counts)}; {Listed(row.Spaces)}) by runs, {same.Status} {same.Total} ({Listed(same.Counts)}; {Listed(same.Spaces)}) turn by turn");
        if (row.Length != same.Length) wrong.AppendLine($"{row.Label}: {row.Length} and {same.Length} cells");
        long place = 0;
        foreach ((Cell cell, Cell other) in row.Cells().Zip(same.Cells()))
        {
            if (cell != other)
            {
                wrong.AppendLine($"{row.Label}, cell {place}: {Words(cell)} by runs, {Words(other)} turn by turn");
                return;
            }
            place++;
        }
    }

    private static string Words(Cell cell) => $"{cell} feet {string.Join(' ', cell.Feet)}";

    private static string Listed(IEnumerable<KeyValuePair<string, long>> counts) => string.Join(", ", counts.Select(count => $"{count.Key}={count.Value}"));
}
