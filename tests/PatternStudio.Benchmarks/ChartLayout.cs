using System.Diagnostics;
using System.Globalization;
using System.Text;
using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Charting.Layout;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Working;

namespace PatternStudio.Benchmarks;

/// <summary>Laying out 40 000 stitches, beside Graphviz's layout for large graphs (sfdp) on the same graph. Stress is how far distances on paper are from distances in the graph, at the scale that fits best.</summary>
internal static class ChartLayout
{
    private const int Sources = 40;

    public static int Print()
    {
        CheckedPattern pattern = PatternCheck.Check(Texts.Cloth(200, 200));
        WorkedPiece piece = pattern.Sizes[0].Fabric.Pieces[0];
        var forms = new StitchForms(pattern.Pattern);
        IReadOnlyList<LaidRow> rows = [];
        double ours = Enumerable.Range(0, 5).Select(_ => Taken(() => rows = new Layouts(piece, forms).Lay())).Order().ElementAt(2);
        var builder = new NetBuilder(rows);
        (int From, int To)[] edges = [.. Edges(builder.Net)];
        int[][] beside = Beside(edges, builder.Net.Nodes);
        Console.WriteLine($"{"layout of " + builder.Net.Nodes + " stitches",-55} {ours,8:F0} ms, stress {Stress(builder.Places, beside):F4}   at most 1500 ms");
        CheckedPattern million = PatternCheck.Check(Texts.Cloth(1000, 1000));
        Console.WriteLine($"{"overview of 1 000 000 stitches",-55} {Enumerable.Range(0, 5).Select(_ => Taken(() => Chart.Draw(million))).Order().ElementAt(2),8:F0} ms");
        if (Sfdp(edges, builder.Net.Nodes) is not { } other)
        {
            Console.WriteLine("SKIPPED: sfdp (Debian package graphviz) is not installed, so nothing was compared.");
            return 0;
        }
        Console.WriteLine($"{"the same graph by sfdp",-55} {other.Milliseconds,8:F0} ms, stress {Stress(other.Places, beside):F4}");
        Console.WriteLine($"{"ours is faster by",-55} {other.Milliseconds / ours,8:F0} times                     at least 20");
        return 0;
    }

    private static double Taken(Action work)
    {
        var clock = Stopwatch.StartNew();
        work();
        return clock.Elapsed.TotalMilliseconds;
    }

    /// <summary>Bars between two nodes, each once.</summary>
    private static IEnumerable<(int, int)> Edges(FabricNet net)
    {
        (int[] starts, int[] nodes, _) = net.Arrays();
        return Enumerable.Range(0, net.Bars).Where(bar => starts[bar + 1] - starts[bar] == 2 && nodes[starts[bar]] != nodes[starts[bar] + 1] && net.Rest[bar].Length > 0.1)
            .Select(bar => (Math.Min(nodes[starts[bar]], nodes[starts[bar] + 1]), Math.Max(nodes[starts[bar]], nodes[starts[bar] + 1]))).Distinct();
    }

    private static int[][] Beside((int From, int To)[] edges, int count)
    {
        var beside = new List<int>[count];
        for (int i = 0; i < count; i++) beside[i] = [];
        foreach ((int from, int to) in edges)
        {
            beside[from].Add(to);
            beside[to].Add(from);
        }
        return [.. beside.Select(list => list.ToArray())];
    }

    /// <summary>Mean of (s × distance on paper ÷ distance in the graph - 1)² over all places from some, s chosen best.</summary>
    private static double Stress(Point[] places, int[][] beside)
    {
        double sum = 0;
        double squares = 0;
        long count = 0;
        for (int k = 0; k < Sources; k++)
        {
            int source = (int)((long)k * places.Length / Sources);
            int[] steps = Steps(source, beside);
            for (int i = 0; i < places.Length; i++)
            {
                if (steps[i] <= 0) continue;
                double share = (places[i] - places[source]).Length / steps[i];
                sum += share;
                squares += share * share;
                count++;
            }
        }
        return squares == 0 ? 1 : 1 - (sum * sum / squares / count);
    }

    private static int[] Steps(int source, int[][] beside)
    {
        var steps = new int[beside.Length];
        Array.Fill(steps, -1);
        steps[source] = 0;
        var queue = new Queue<int>([source]);
        while (queue.TryDequeue(out int at))
            foreach (int next in beside[at])
                if (steps[next] < 0)
                {
                    steps[next] = steps[at] + 1;
                    queue.Enqueue(next);
                }
        return steps;
    }

    private static (double Milliseconds, Point[] Places)? Sfdp((int From, int To)[] edges, int count)
    {
        string folder = Directory.CreateTempSubdirectory("layout").FullName;
        try
        {
            string graph = Path.Combine(folder, "fabric.gv");
            var text = new StringBuilder("graph {\n");
            foreach ((int from, int to) in edges) text.Append(CultureInfo.InvariantCulture, $"{from}--{to};\n");
            File.WriteAllText(graph, text.Append("}\n").ToString());
            string laid = Path.Combine(folder, "fabric.txt");
            double taken = Taken(() =>
            {
                using Process run = Process.Start(new ProcessStartInfo("sfdp", ["-Tplain", "-Gsplines=none", "-o", laid, graph]))!;
                run.WaitForExit();
            });
            return (taken, Read(laid, count));
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return null;
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    private static Point[] Read(string laid, int count)
    {
        var places = new Point[count];
        foreach (string line in File.ReadLines(laid).Where(line => line.StartsWith("node ", StringComparison.Ordinal)))
        {
            string[] words = line.Split(' ');
            places[int.Parse(words[1], CultureInfo.InvariantCulture)] = new Point(double.Parse(words[2], CultureInfo.InvariantCulture), double.Parse(words[3], CultureInfo.InvariantCulture));
        }
        return places;
    }
}
