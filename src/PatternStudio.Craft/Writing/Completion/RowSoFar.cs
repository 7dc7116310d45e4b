using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Writing.Completion;

/// <summary>The row being written, worked as far as it goes.</summary>
/// <param name="Row">As worked.</param>
/// <param name="Next">The cells of the row below that it has not come to yet, in the order in which the hook meets them; empty where all are worked.</param>
internal sealed record RowSoFar(WorkedRow Row, IReadOnlyList<Cell> Next)
{
    /// <summary>Cells looked ahead: what comes next is soon met.</summary>
    private const int Ahead = 8;

    /// <summary>What makes of a row begun a whole instruction: nobody calls the rest a mistake.</summary>
    private const string AsFarAsItGoes = ", leaving remaining sts unworked.";

    /// <summary>Works the beginning of a row; null where it can't be read or worked.</summary>
    /// <param name="line">The line as far as its steps are whole.</param>
    public static RowSoFar? Of(RowsAbove above, string line)
    {
        string begun = line.TrimEnd(' ', ',', ';', '.', '*');
        if (begun.Length == 0 || above.Pattern.Sizes.Count > 1) return null;
        Pattern pattern = PatternReader.Read(above.Text + begun + AsFarAsItGoes, above.Terms);
        PatternWork work = PatternWorker.Work(pattern, 0);
        if (work.Mishaps.Any(mishap => mishap.Span.End > above.Text.Length)) return null;
        if (work.Fabric.Pieces is not { Count: > 0 } pieces || pieces[pieces.Count - 1].Rows is not { Count: > 0 } rows) return null;
        WorkedRow row = rows[^1];
        return row.Status == RowStatus.Checked && row.Kind != RowKind.Foundation && row.CalledBy.End > above.Text.Length
            ? new RowSoFar(row, row.Into < 0 ? [] : Left(rows[row.Into], row))
            : null;
    }

    private static List<Cell> Left(WorkedRow below, WorkedRow row)
    {
        var course = new Course(below, below.Index, row.Turned);
        var left = new List<Cell>();
        for (long at = row.StoppedAt; at < course.Length && left.Count < Ahead; at++) left.Add(course.At(at));
        return left;
    }
}
