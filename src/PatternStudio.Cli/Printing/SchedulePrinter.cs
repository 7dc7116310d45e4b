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
        if (schedule.Value.Spread is { } spread) output.WriteLine($"{spread}.");
        if (schedule.Value.Time is { } time) output.WriteLine($"Working time: {Hours(time)}.");
        output.WriteLine($"From {schedule.Trace}.");
        foreach (string doubt in schedule.Value.Doubts) output.WriteLine("? " + doubt);
        if (pattern.HasErrors) output.WriteLine("The pattern has errors, so these numbers deserve doubt; 'check' tells them.");
    }

    private static void Print(PieceSchedule piece, TextWriter output)
    {
        if (piece.Name.Length > 0) output.WriteLine(piece.Made > 1 ? $"{piece.Name} (make {piece.Made})" : piece.Name);
        output.WriteLine(Size(piece));
        string[][] lines = [["Row", "Stitches", "Width", "Yarn", "In all", ""], .. piece.Rows.Select(Line)];
        int[] widths = [.. Enumerable.Range(0, 5).Select(column => lines.Max(line => line[column].Length))];
        foreach (string[] line in lines)
        {
            IEnumerable<string> numbers = Enumerable.Range(1, 4).Select(column => line[column].PadLeft(widths[column]));
            output.WriteLine($"  {line[0].PadRight(widths[0])}  {string.Join("  ", numbers)}{(line[5].Length > 0 ? "  " + line[5] : "")}");
        }

        if (piece.NotKnownFrom is { } gap) output.WriteLine("  " + gap);
    }

    private static string Size(PieceSchedule piece)
    {
        string around = piece.Around is { IsKnown: true } round ? $" {round.Value} around." : "";
        return piece.Width.IsKnown && piece.Height.IsKnown ? $"Finished size {piece.Width.Value} wide, {piece.Height.Value} high.{around}"
            : piece.Width.IsKnown ? $"Finished width {piece.Width.Value}.{around} Height: {piece.Height.Trace}"
            : piece.Width.Trace;
    }

    private static string[] Line(ScheduledRow row) =>
        [row.Heading, row.Stitches?.ToString() ?? "–", row.Width?.InCentimetres() ?? "–", Metres(row.Yarn), Metres(row.Total), string.Join(" ", row.Marks.Select(mark => mark.Text))];

    private static string Metres(YarnLength? yarn) => yarn is { } known ? known.Metres.ToString("0.0", CultureInfo.InvariantCulture) + " m" : "–";

    private static string Yarn(Measured<YarnNeed> yarn)
    {
        if (!yarn.IsKnown) return yarn.Trace;
        YarnNeed need = yarn.Value;
        string weight = need.Weight.Grams > 0 ? $" ({need.Weight})" : "";
        string text = $"Yarn: {Metres(need.Used)}{weight}; 90 of 100 makers use {Metres(need.Low)} to {Metres(need.High)}. Buy {Metres(need.Buy)}{Balls(need.Balls)}. {need.Assumption}";
        return need.Colours.Count > 1 ? text + string.Concat(need.Colours.Select(colour => $"\n  {Name(colour.Colour)}: {Metres(colour.Used)}, buy {Metres(colour.Buy)}{Balls(colour.Balls)}")) : text;
    }

    private static string Name(string colour) => colour.Length > 0 ? colour : "without a colour's name";

    private static string Balls(int balls) => balls switch { 0 => "", 1 => ", 1 ball", _ => $", {balls} balls" };

    private static string Hours(TimeSpan time) => time.TotalHours >= 1 ? $"{(int)time.TotalHours} h {time.Minutes} min" : $"{Math.Max(1, (int)Math.Round(time.TotalMinutes))} min";
}
