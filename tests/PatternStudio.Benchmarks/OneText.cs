using System.Diagnostics;
using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Benchmarks;

/// <summary>Times one text, and shows in how many runs its rows are kept: where a text is slow, this is where to look.</summary>
internal static class OneText
{
    public static int Work(string path)
    {
        var clock = Stopwatch.StartNew();
        Pattern pattern = PatternReader.Read(File.ReadAllText(path));
        Console.WriteLine($"read in {clock.Elapsed.TotalMilliseconds:F1} ms");
        clock.Restart();
        PatternWork work = PatternWorker.Work(pattern, 0);
        Console.WriteLine($"worked in {clock.Elapsed.TotalMilliseconds:F1} ms");
        foreach (WorkedRow row in work.Fabric.Pieces.SelectMany(piece => piece.Rows).Take(60))
            Console.WriteLine($"{row.Label,-12} {row.Status,-10} {row.Length,9} cells in {row.Runs.Count} runs: {string.Join(' ', row.Runs.Take(8).Select(run => $"{run.Unit.Count}×{run.Times}"))}");
        foreach (Mishap mishap in work.Mishaps) Console.WriteLine(mishap);
        return 0;
    }
}
