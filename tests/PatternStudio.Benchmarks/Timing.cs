using System.Diagnostics;

namespace PatternStudio.Benchmarks;

/// <summary>Medians of repeated measurements; two things to be compared are measured in turn, so that a busy machine slows both alike.</summary>
internal static class Timing
{
    /// <summary>Median time of one call, in milliseconds.</summary>
    public static double Median(Action work, int times = 15) => Medians(times, work)[0];

    /// <summary>Median times of several pieces of work, in milliseconds, after a warm-up of each.</summary>
    public static double[] Medians(int times, params Action[] works)
    {
        int[] calls = [.. works.Select(Calls)];
        double[][] taken = [.. works.Select(_ => new double[times])];
        for (int i = 0; i < times; i++)
            for (int w = 0; w < works.Length; w++) taken[w][i] = Once(works[w], calls[w]);
        return [.. taken.Select(all => all.Order().ElementAt(times / 2))];
    }

    /// <summary>Warms up, and finds how many calls take about 20 ms.</summary>
    private static int Calls(Action work)
    {
        var warm = Stopwatch.StartNew();
        int calls = 0;
        for (; calls < 30 && warm.ElapsedMilliseconds < 3_000; calls++) work();
        double each = Once(work, Math.Min(calls, 5));
        return Math.Clamp((int)(20 / Math.Max(each, 0.001)), 1, 10_000);
    }

    private static double Once(Action work, int calls)
    {
        var clock = Stopwatch.StartNew();
        for (int i = 0; i < calls; i++) work();
        return clock.Elapsed.TotalMilliseconds / calls;
    }
}
