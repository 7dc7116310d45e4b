using Markdig;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Benchmarks;

/// <summary>The benchmarks: ratios first, since machines differ and are busy; see docs/benchmarks.md.</summary>
internal static class Table
{
    public static int Print()
    {
        Console.WriteLine($"{Environment.ProcessorCount} cores, medians");
        Check("design of 300 rows", Texts.Design(300));
        Grow("straight blanket, 10 times wider", Texts.Blanket(30, 200), Texts.Blanket(300, 200), 2);
        Grow("straight blanket, 10 times longer", Texts.Blanket(30, 200), Texts.Blanket(30, 2000), 2);
        Grow("lace blanket, 10 times wider", Texts.Lace(40, 200), Texts.Lace(400, 200), 2);
        Grow("lace blanket, 10 times longer", Texts.Lace(40, 200), Texts.Lace(40, 2000), 2);
        Grow("triangle, 10 times longer", Texts.Triangle(100), Texts.Triangle(1000), double.NaN);
        Read(Texts.Design(300));
        Unrolled(Texts.Blanket(800, 60));
        return 0;
    }

    private static void Check(string name, string text) => Line($"check of a {name}", $"{Timing.Median(() => PatternCheck.Check(text)):F1} ms", "");

    private static void Grow(string name, string small, string large, double aim)
    {
        double[] ms = Timing.Medians(15, () => PatternCheck.Check(small), () => PatternCheck.Check(large));
        Line(name, $"{ms[1] / ms[0]:F2} times ({ms[0]:F2} → {ms[1]:F2} ms)", double.IsNaN(aim) ? "" : $"at most {aim}");
    }

    private static void Read(string text)
    {
        double[] ms = Timing.Medians(15, () => Markdown.Parse(text), () => PatternReader.Read(text));
        Line("reading, against a Markdown parser on the same text", $"{ms[1] / ms[0]:F2} times ({ms[0]:F2} → {ms[1]:F2} ms)", "at most 5");
    }

    private static void Unrolled(string text)
    {
        Pattern pattern = PatternReader.Read(text);
        long stitches = PatternWorker.Work(pattern, 0).Fabric.Pieces.Sum(piece => piece.Rows.Sum(row => row.Length));
        double ms = Timing.Median(() => PatternWorker.Work(pattern, 0, unroll: true), 7);
        Line("stitches worked turn by turn", $"{stitches / ms / 1000:F2} million a second", "20");
    }

    private static void Line(string name, string value, string aim) => Console.WriteLine($"{name,-55} {value,-40} {aim}");
}
