using System.Diagnostics;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Tests;
using PatternStudio.Craft.Tests.Properties;

namespace PatternStudio.Benchmarks;

/// <summary>The properties of the test suite, run for as long as one likes. Each fault is printed with the text that shows it.</summary>
internal static class LongRun
{
    /// <summary>A check that takes longer than this is a fault as well.</summary>
    private const double SlowSeconds = 4;

    private const long LargeBytes = 2L << 30;

    /// <summary>Checks spoiled texts: whatever is written, a check comes to its end.</summary>
    public static int Fuzz(TimeSpan time)
    {
        string[] texts = [.. new[] { "tests/PatternStudio.Craft.Tests/RightPatterns", "samples" }
            .SelectMany(folder => Directory.EnumerateFiles(Repository.Path(folder), "*.txt")).Order(StringComparer.Ordinal).Select(File.ReadAllText)];
        return Run(time, choices => Mutation.Spoil(choices.Once(4) ? AnyPattern.Write(choices) : choices.Of(texts), choices), text =>
        {
            _ = PatternCheck.Check(text);
            return "";
        });
    }

    /// <summary>Compares working by runs with working turn by turn.</summary>
    public static int Compare(TimeSpan time) => Run(time, AnyPattern.Write, text => WorkComparison.Differences(PatternReader.Read(text)));

    private static int Run(TimeSpan time, Func<Choices, string> write, Func<string, string> differences)
    {
        var clock = Stopwatch.StartNew();
        // A text that ends the process itself, or never ends, is found here.
        string inWork = Path.Combine(Path.GetTempPath(), $"text-in-work-{Environment.ProcessId}.txt");
        int faults = 0, cases = 0;
        var seeds = new Random();
        for (; clock.Elapsed < time; cases++)
        {
            int seed = seeds.Next();
            var random = new Random(seed);
            string text = write(new Choices([.. Enumerable.Range(0, random.Next(5, 200)).Select(_ => random.Next(1_000_000))]));
            File.WriteAllText(inWork, text);
            if (Fault(text, differences) is not { Length: > 0 } fault) continue;
            faults++;
            Console.WriteLine($"==== {fault}\n---- {seed}\n{text}\n");
            Console.Out.Flush();
        }
        Console.WriteLine($"{cases} texts in {clock.Elapsed.TotalMinutes:F1} minutes, {faults} faults");
        return faults == 0 ? 0 : 1;
    }

    private static string Fault(string text, Func<string, string> differences)
    {
        long bytes = GC.GetAllocatedBytesForCurrentThread();
        TimeSpan cpu = Process.GetCurrentProcess().TotalProcessorTime;
        try
        {
            string found = differences(text);
            if (found.Length > 0) return found;
        }
#pragma warning disable CA1031 // Any exception is the fault that is looked for.
        catch (Exception e)
#pragma warning restore CA1031
        {
            return e.ToString();
        }
        double seconds = (Process.GetCurrentProcess().TotalProcessorTime - cpu).TotalSeconds;
        bytes = GC.GetAllocatedBytesForCurrentThread() - bytes;
        return seconds > SlowSeconds || bytes > LargeBytes ? $"slow or large: {seconds:F1} s, {bytes >> 20} MB" : "";
    }
}
