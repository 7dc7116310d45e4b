using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>
/// A text that begins a second motif without a heading of its own gives one piece with two foundations. Nothing of the second stands on the first, so they are drawn one under the
/// other.
/// </summary>
internal static class Parts
{
    private const double Between = 3;

    /// <summary>The rows of all parts; null for a piece that hangs together.</summary>
    public static List<LaidRow>? Lay(WorkedPiece piece, StitchForms forms)
    {
        int[] starts = [.. piece.Rows.Where(row => row.Kind == RowKind.Foundation).Select(row => row.Index)];
        if (starts.Length < 2 || starts[0] != 0 || !starts.Skip(1).All(start => StandsAlone(piece, start))) return null;
        var all = new List<LaidRow>();
        for (int part = 0; part < starts.Length; part++)
        {
            int end = part + 1 < starts.Length ? starts[part + 1] : piece.Rows.Count;
            if (end - starts[part] < 2) return null;
            all.AddRange(Under(all, Lay(piece, forms, starts[part], end)));
        }
        return all;
    }

    private static bool StandsAlone(WorkedPiece piece, int start) =>
        piece.Rows.Skip(start).All(row => row.Into < 0 || row.Into >= start) && piece.Rows.Skip(start).All(row => row.Runs.All(run => run.Unit.All(cell => cell.Feet.All(foot => foot.Row <= row.Index - start))));

    /// <summary>A part alone, its rows and feet then counted from the piece's first row again.</summary>
    private static IEnumerable<LaidRow> Lay(WorkedPiece piece, StitchForms forms, int start, int end)
    {
        WorkedPiece part = piece with { Rows = piece.Rows.Take(end).Skip(start).Select(row => row with { Index = row.Index - start, Into = row.Into < 0 ? -1 : row.Into - start }).ToEquatableArray() };
        foreach (LaidRow laid in new Layouts(part, forms).Lay())
        {
            WorkedRow row = piece.Rows[laid.Index + start];
            Cell[] cells = [.. row.Cells()];
            yield return laid with { Row = row, Index = row.Index, Cells = [.. laid.Cells.Select((cell, i) => cell with { Cell = cells[i] })] };
        }
    }

    private static IEnumerable<LaidRow> Under(List<LaidRow> above, IEnumerable<LaidRow> part)
    {
        if (above.Count == 0) return part;
        LaidRow[] rows = [.. part];
        (Box upper, Box lower) = (BoxOf(above), BoxOf(rows));
        var by = new Point(((upper.Left + upper.Right) / 2) - ((lower.Left + lower.Right) / 2), upper.Bottom + Between - lower.Top);
        return rows.Select(row => row with { Centre = row.Centre + by, Label = row.Label + by, Cells = [.. row.Cells.Select(cell => cell with { Top = cell.Top + by, Ground = cell.Ground + by })] });
    }

    private static Box BoxOf(IEnumerable<LaidRow> rows) => rows.SelectMany(row => row.Cells).Aggregate(Box.Empty, (box, cell) => box.With(cell.Top));
}
