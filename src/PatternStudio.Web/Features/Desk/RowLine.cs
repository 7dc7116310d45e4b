using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Working;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Web.Features.Desk;

/// <summary>A row of the schedule as shown: what was worked, and what it takes.</summary>
/// <param name="Row">The row.</param>
/// <param name="Change">Stitches more (or fewer) than the row before; null for a first row or where either is not known.</param>
/// <param name="Takes">Yarn and height; null without a swatch.</param>
public sealed record RowLine(RowReport Row, long? Change, ScheduleLine? Takes)
{
    /// <summary>'10 puff, 11 sc, 1 ch-2 sp'.</summary>
    public string MadeOf => string.Join(", ", Row.Counts.Select(Say).Concat(Row.Spaces.Select(space => Say(space) + " sp")));

    /// <summary>True where the row was read and worked whole.</summary>
    public bool IsChecked => Row.Status == RowStatus.Checked && Row.Stitches is not null;

    /// <summary>The rows of a size, each with its line of the schedule.</summary>
    public static IReadOnlyList<RowLine> Of(SizeResults size)
    {
        var takes = size.Schedule
            .GroupBy(line => (line.Piece, line.Heading))
            .ToDictionary(lines => lines.Key, lines => new Queue<ScheduleLine>(lines));
        return [.. size.Rows.Select((row, index) => new RowLine(row, ChangeAt(size.Rows, index), NextOf(takes, row)))];
    }

    private static ScheduleLine? NextOf(Dictionary<(string, string), Queue<ScheduleLine>> takes, RowReport row) =>
        takes.TryGetValue((row.Piece, row.Heading), out Queue<ScheduleLine>? lines) && lines.TryDequeue(out ScheduleLine? line) ? line : null;

    private static long? ChangeAt(IReadOnlyList<RowReport> rows, int index) =>
        index > 0 && rows[index - 1].Piece == rows[index].Piece ? rows[index].Stitches - rows[index - 1].Stitches : null;

    private static string Say(KeyValuePair<string, long> counted) => $"{Shell.Numbers.Count(counted.Value)} {counted.Key}";
}
