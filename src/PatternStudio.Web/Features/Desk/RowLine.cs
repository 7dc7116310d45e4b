using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Working;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Web.Features.Desk;

/// <summary>A row of the schedule as shown: what was worked, and what it takes.</summary>
/// <param name="Row">The row.</param>
/// <param name="Change">Stitches more (or fewer) than the row before; null for a first row or where either is not known.</param>
/// <param name="Takes">Yarn and width; null without a swatch.</param>
/// <param name="Terms">The terms of the pattern, which its reader knows the stitches by.</param>
public sealed record RowLine(RowReport Row, long? Change, ScheduleLine? Takes, Terminology Terms)
{
    /// <summary>'10 puff, 11 sc, 1 ch-2 sp'.</summary>
    public string MadeOf => string.Join(
        ", ",
        Row.Counts.Select(kind => Say(kind.Value, NameOf(kind.Key))).Concat(Row.Spaces.Select(space => Say(space.Value, space.Key + " sp"))));

    /// <summary>True where the row was read and worked whole.</summary>
    public bool IsChecked => Row.Status == RowStatus.Checked && Row.Stitches is not null;

    /// <summary>The rows of a size, each with its line of the schedule.</summary>
    public static IReadOnlyList<RowLine> Of(SizeResults size, Terminology terms)
    {
        var takes = size.Schedule
            .GroupBy(line => (line.Piece, line.Heading))
            .ToDictionary(lines => lines.Key, lines => new Queue<ScheduleLine>(lines));
        return [.. size.Rows.Select((row, index) => new RowLine(row, ChangeAt(size.Rows, index), NextOf(takes, row), terms))];
    }

    private static ScheduleLine? NextOf(Dictionary<(string, string), Queue<ScheduleLine>> takes, RowReport row) =>
        takes.TryGetValue((row.Piece, row.Heading), out Queue<ScheduleLine>? lines) && lines.TryDequeue(out ScheduleLine? line) ? line : null;

    private static long? ChangeAt(IReadOnlyList<RowReport> rows, int index) =>
        index > 0 && rows[index - 1].Piece == rows[index].Piece ? rows[index].Stitches - rows[index - 1].Stitches : null;

    /// <summary>Reports name a stitch by the vocabulary's key; a designer's own abbreviation is no key and stays as it is.</summary>
    private string NameOf(string key) => Vocabulary.Standard.Find(new StitchId(key))?.Abbreviation(Terms) ?? key;

    private static string Say(long count, string name) => $"{Shell.Numbers.Count(count)} {name}";
}
