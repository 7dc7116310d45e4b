using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>
/// Finds what a row works again and again from its cells, where its words don't say: a ripple written from edge to edge, or a row worked over the row below 'as it presents itself'.
/// </summary>
internal static class Periods
{
    /// <summary>Longer rows are not looked through.</summary>
    private const int MostCells = 2000;

    /// <summary>The repeat takes at least this share of the row: what comes twice somewhere is no repeat across.</summary>
    private const double LeastShare = 0.6;

    /// <summary>The shortest sequence of cells that fills most of the row when worked again and again; null where there is none, or where it is one cell.</summary>
    /// <returns>Index of its first cell, its cells, and how often they are worked.</returns>
    public static (int First, int Cells, int Times)? Of(Cell[] cells)
    {
        if (cells.Length > MostCells) return null;
        int[] like = Likes(cells);
        (int first, int period, int most) = (0, 0, 0);
        for (int cycle = 1; cycle <= cells.Length / 2; cycle++)
        {
            (int start, int length) = Longest(like, cycle);
            if (length < cycle || length + cycle <= most) continue;
            (first, period, most) = (start, cycle, length + cycle);
        }
        return period < 2 || most < LeastShare * cells.Length ? null : (first, period, most / period);
    }

    /// <summary>The longest stretch in which each cell is like the one a cycle later: where it starts and how long it is.</summary>
    private static (int Start, int Length) Longest(int[] like, int cycle)
    {
        (int best, int longest, int length) = (0, 0, 0);
        for (int i = 0; i + cycle < like.Length; i++)
        {
            length = like[i] == like[i + cycle] ? length + 1 : 0;
            if (length > longest) (best, longest) = (i + 1 - length, length);
        }
        return (best, longest);
    }

    /// <summary>A number for each cell; the same for cells that are worked alike, as far along from the cell before.</summary>
    private static int[] Likes(Cell[] cells)
    {
        var known = new Dictionary<(CellKind, string, int, string, EquatableArray<Foot>), int>();
        var like = new int[cells.Length];
        Foot? last = null;
        for (int i = 0; i < cells.Length; i++)
        {
            Cell cell = cells[i];
            Foot? from = last ?? (cell.Feet.IsEmpty ? null : cell.Feet[0]);
            EquatableArray<Foot> steps = cell.Feet.Select(foot => foot with { Row = foot.Row - from!.Value.Row, Place = foot.Place - from.Value.Place }).ToEquatableArray();
            (CellKind, string, int, string, EquatableArray<Foot>) worked = (cell.Kind, cell.Stitch.Value, cell.Chains, cell.Colour, steps);
            like[i] = known.TryGetValue(worked, out int number) ? number : known[worked] = known.Count;
            if (!cell.Feet.IsEmpty) last = cell.Feet[^1];
        }
        return like;
    }
}
