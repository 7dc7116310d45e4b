using PatternStudio.Craft.Charting.Layout;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>The repeat across a piece in rows: so many stitches, so many times.</summary>
/// <param name="Stitches">Stitch widths of one repeat.</param>
/// <param name="Times">How often it is worked across.</param>
/// <param name="Row">Index of the row that shows it best.</param>
/// <param name="First">Cell index of its first cell in that row.</param>
/// <param name="Cells">Cells in one repeat.</param>
internal sealed record AcrossRepeat(long Stitches, long Times, int Row, int First, int Cells);

/// <summary>The repeat up a piece: rows worked again and again.</summary>
/// <param name="First">Index of its first row.</param>
/// <param name="Rows">Rows in one repeat.</param>
/// <param name="Times">How often it is worked.</param>
internal sealed record UpRepeat(int First, int Rows, int Times);

/// <summary>Finds what repeats in a piece: across from the runs of its rows, or from their cells where no row is told as a repeat; up from rows worked alike.</summary>
internal static class Repeats
{
    /// <summary>One stitch again and again is no pattern repeat.</summary>
    private const int Fewest = 2;

    /// <summary>What repeats across goes up through all rows; so they are about as wide as each other: the narrowest at least this share of the widest.</summary>
    private const double Even = 0.8;

    private const int LongestCycle = 24;

    /// <summary>The widest repeat across that all rows share; null where none is or rows differ in width.</summary>
    public static AcrossRepeat? Across(PieceCells piece)
    {
        WorkedRow[] rows = [.. piece.Piece.Rows.Where(row => row.Kind == RowKind.Row && row.Status == RowStatus.Checked)];
        AcrossRepeat[] found = [.. rows.Select(row => Across(piece, row)).OfType<AcrossRepeat>()];
        if (found.Length == 0 && rows.Length > 0 && rows.Min(row => piece.Widths[row.Index].Sum()) >= Even * rows.Max(row => piece.Widths[row.Index].Sum())) found = [.. rows.DistinctBy(row => row.Runs).Select(row => FromCells(piece, row)).OfType<AcrossRepeat>()];
        if (found.Length == 0) return null;
        AcrossRepeat widest = found.MaxBy(repeat => (repeat.Stitches, -repeat.Row))!;
        return Array.TrueForAll(found, repeat => widest.Stitches % repeat.Stitches == 0) ? widest : null;
    }

    private static AcrossRepeat? FromCells(PieceCells piece, WorkedRow row)
    {
        if (Periods.Of(piece.Cells[row.Index]) is not var (first, cells, times)) return null;
        long width = (long)Math.Round(piece.Widths[row.Index].Skip(first).Take(cells).Sum());
        return width < Fewest ? null : new AcrossRepeat(width, times, row.Index, first, cells);
    }

    private static AcrossRepeat? Across(PieceCells piece, WorkedRow row)
    {
        int at = 0;
        AcrossRepeat? best = null;
        foreach (Run run in row.Runs)
        {
            long width = (long)Math.Round(piece.Widths[row.Index].Skip(at).Take(run.Unit.Count).Sum());
            if (run.Times >= 2 && run.Unit.Count >= Fewest && width >= Fewest && (best is null || run.Length > best.Times * best.Cells)) best = new AcrossRepeat(width, run.Times, row.Index, at, run.Unit.Count);
            at += (int)run.Length;
        }
        return best;
    }

    /// <summary>The first rows that the same words repeat; null where none are.</summary>
    public static UpRepeat? Up(WorkedPiece piece)
    {
        for (int first = 1; first < piece.Rows.Count; first++)
            for (int rows = 1; rows <= LongestCycle && first + (2 * rows) <= piece.Rows.Count; rows++)
            {
                int times = 1;
                while (Same(piece, first, first + (times * rows), rows)) times++;
                if (times >= 2 && (rows > 1 || times > 2)) return new UpRepeat(first, rows, times);
            }
        return null;
    }

    private static bool Same(WorkedPiece piece, int one, int other, int rows)
    {
        if (other + rows > piece.Rows.Count) return false;
        for (int i = 0; i < rows; i++)
            if (piece.Rows[one + i].Runs != piece.Rows[other + i].Runs || piece.Rows[one + i].Status != RowStatus.Checked || piece.Rows[other + i].Status != RowStatus.Checked)
                return false;
        return true;
    }
}
