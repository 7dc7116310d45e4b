using System.Globalization;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;

namespace PatternStudio.Cli.Printing;

/// <summary>Writes a schedule for a reader: every piece with its size and rows, then the yarn to buy and where the numbers come from.</summary>
internal static class SchedulePrinter
{
    public static void Print(Measured<RowSchedule> schedule, CheckedPattern pattern, int size, TextWriter output)
    {
        if (pattern.HasSizes) output.WriteLine($"Size {pattern.Sizes[size].Name}");
        foreach (PieceSchedule piece in schedule.Value.Pieces) Print(piece, output);
        output.WriteLine();
        output.WriteLine(Yarn(schedule.Value.Yarn));
        output.WriteLine($"From {schedule.Trace}.");
        if (pattern.HasErrors) output.WriteLine("The pattern has errors, so these numbers deserve doubt; 'check' tells them.");
    }

    private static void Print(PieceSchedule piece, TextWriter output)
    {
        if (piece.Name.Length > 0) output.WriteLine(piece.Made > 1 ? $"{piece.Name} (make {piece.Made})" : piece.Name);
        output.WriteLine(Size(piece));
        string[][] lines = [["Row", "Stitches", "Width", "Yarn", "In all"], .. piece.Rows.Select(Line)];
        int[] widths = [.. Enumerable.Range(0, 5).Select(column => lines.Max(line => line[column].Length))];
        foreach (string[] line in lines)
        {
            IEnumerable<string> numbers = Enumerable.Range(1, 4).Select(column => line[column].PadLeft(widths[column]));
            output.WriteLine($"  {line[0].PadRight(widths[0])}  {string.Join("  ", numbers)}");
        }

        if (piece.NotKnownFrom is { } gap) output.WriteLine("  " + gap);
    }

    private static string Size(PieceSchedule piece) =>
        piece.Width.IsKnown && piece.Height.IsKnown
            ? $"Finished size {piece.Width.Value} wide, {piece.Height.Value} high."
            : piece.Width.IsKnown ? piece.Height.Trace : piece.Width.Trace;

    private static string[] Line(ScheduledRow row) =>
        [row.Heading, row.Stitches?.ToString() ?? "–", row.Width?.InCentimetres() ?? "–", Metres(row.Yarn), Metres(row.Total)];

    private static string Metres(YarnLength? yarn) => yarn is { } known ? known.Metres.ToString("0.0", CultureInfo.InvariantCulture) + " m" : "–";

    private static string Yarn(Measured<YarnNeed> yarn)
    {
        if (!yarn.IsKnown) return yarn.Trace;
        YarnNeed need = yarn.Value;
        string balls = need.Balls == 1 ? "1 ball" : $"{need.Balls} balls";
        return $"Yarn: {Metres(need.Used)} ({need.Weight}). Buy {Metres(need.Buy)}, {balls}. {need.Assumption}";
    }
}
