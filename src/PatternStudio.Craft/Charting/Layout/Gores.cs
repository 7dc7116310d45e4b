using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>
/// A ball: rounds that grow to a disc, stay, and fall again. Its disc is drawn as one; what closes over it is cut open where the decreases stand above each other and laid outward in gores, as the
/// peel of an orange is. So every decrease is as wide as the two stitches that it takes in.
/// </summary>
/// <param name="disc">The rounds drawn as a disc, all of them.</param>
internal sealed class Gores(PieceCells piece, StitchForms forms, IReadOnlyList<LaidRow> disc)
{
    private const int Fewest = 3;
    private const int Most = 16;

    /// <summary>The gore of each cell of a row; null for rows of the disc.</summary>
    private readonly int[]?[] goreOf = new int[disc.Count][];

    /// <summary>The rows laid out; null for a piece that does not close in that way.</summary>
    public List<LaidRow>? Lay()
    {
        int widest = Widest(), last = disc.Count - 1;
        int falls = Enumerable.Range(widest + 1, last - widest).FirstOrDefault(Decreases);
        if (falls == 0 || !Enumerable.Range(widest + 1, last - widest).All(InRound)) return null;
        int gores = DivideAt(falls);
        if (gores is < Fewest or > Most) return null;
        for (int row = falls + 1; row <= last; row++)
            if (!DivideAsBelow(row)) return null;
        for (int row = falls - 1; row >= widest; row--)
            if (!DivideAsAbove(row)) return null;
        return Outward(widest, gores);
    }

    private Cell[] Cells(int row) => piece.Cells[row];

    private int Count(int row) => Cells(row).Count(Stands);

    private static bool Stands(Cell cell) => RowTally.Width(cell) > 0;

    /// <summary>The first of the rounds with the most stitches.</summary>
    private int Widest() => Enumerable.Range(0, disc.Count).MaxBy(Count);

    private bool Decreases(int row) => Count(row) < Count(row - 1) && Cells(row).Any(cell => cell.Feet.Count > 1);

    private bool InRound(int row) => disc[row].Closed && piece.Piece.Rows[row].Into == row - 1 && Array.TrueForAll(Cells(row), cell => cell.Kind != CellKind.Chains);

    /// <summary>A gore ends with its decrease.</summary>
    private int DivideAt(int row)
    {
        Cell[] cells = Cells(row);
        var gores = new int[cells.Length];
        int gore = 0, ends = cells.Count(cell => cell.Feet.Count > 1);
        for (int i = 0; i < cells.Length; i++)
        {
            gores[i] = Math.Min(gore, Math.Max(0, ends - 1));
            if (cells[i].Feet.Count > 1) gore++;
        }
        goreOf[row] = gores;
        return ends;
    }

    /// <summary>A stitch is in the gore of what it stands on; false where it stands on two.</summary>
    private bool DivideAsBelow(int row)
    {
        Cell[] cells = Cells(row);
        var gores = new int[cells.Length];
        for (int i = 0; i < cells.Length; i++)
        {
            int[] under = [.. cells[i].Feet.Where(foot => foot.Row == row - 1 && foot.Place < goreOf[row - 1]!.Length).Select(foot => goreOf[row - 1]![foot.Place]).Distinct()];
            if (under.Length > 1 || (under.Length == 0 && Stands(cells[i]))) return false;
            gores[i] = under.Length == 1 ? under[0] : i == 0 ? 0 : gores[i - 1];
        }
        goreOf[row] = gores;
        return IsInOrder(gores);
    }

    /// <summary>What a gore's stitches stand on is in that gore; false where a place bears none, or stitches of two.</summary>
    private bool DivideAsAbove(int row)
    {
        var gores = new int[Cells(row).Length];
        Array.Fill(gores, -1);
        Cell[] above = Cells(row + 1);
        for (int i = 0; i < above.Length; i++)
            foreach (Foot foot in above[i].Feet.Where(foot => foot.Row == row && foot.Place < gores.Length && Stands(above[i])))
            {
                if (gores[foot.Place] >= 0 && gores[foot.Place] != goreOf[row + 1]![i]) return false;
                gores[foot.Place] = goreOf[row + 1]![i];
            }
        for (int i = 0; i < gores.Length; i++)
        {
            if (gores[i] < 0 && Stands(Cells(row)[i])) return false;
            if (gores[i] < 0) gores[i] = i == 0 ? Math.Max(0, gores.FirstOrDefault(gore => gore >= 0)) : gores[i - 1];
        }
        goreOf[row] = gores;
        return IsInOrder(gores);
    }

    /// <summary>Round the piece each gore comes once; a round may begin and end inside one.</summary>
    private static bool IsInOrder(int[] gores) => Enumerable.Range(1, gores.Length - 1).Count(i => gores[i] != gores[i - 1]) <= gores.Distinct().Count();

    private List<LaidRow> Outward(int widest, int gores)
    {
        LaidRow ground = disc[widest];
        var axes = new (Point Foot, Point Up, Point Along)[gores];
        for (int gore = 0; gore < gores; gore++)
        {
            Point[] feet = [.. Enumerable.Range(0, ground.Cells.Length).Where(i => goreOf[widest]![i] == gore && ground.Cells[i].Width > 0).Select(i => ground.Cells[i].Top)];
            Point middle = feet.Aggregate((sum, at) => sum + at) * (1.0 / feet.Length);
            Point up = (middle - disc[0].Centre).Unit();
            double radius = feet.Average(foot => (foot - disc[0].Centre).Length);
            Point way = ground.Beside(0, 1) is { } next ? next.Top - ground.Cells[0].Top : up.Right();
            Point right = ground.Cells[0].Up.Right();
            axes[gore] = (disc[0].Centre + (up * radius), up, (way.X * right.X) + (way.Y * right.Y) < 0 ? up.Right() * -1 : up.Right());
        }
        var laid = new List<LaidRow>(disc.Take(widest + 1));
        double height = 0;
        for (int row = widest + 1; row < disc.Count; row++)
        {
            height += Math.Max(1, Cells(row).Where(Stands).Average(cell => forms.Of(cell.Stitch).Height));
            laid.Add(InGores(row, axes, height));
        }
        return laid;
    }

    private LaidRow InGores(int row, (Point Foot, Point Up, Point Along)[] axes, double height)
    {
        Cell[] cells = Cells(row);
        int[] gores = goreOf[row]!;
        int[] size = new int[axes.Length], at = new int[axes.Length];
        for (int i = 0; i < cells.Length; i++)
            if (Stands(cells[i])) size[gores[i]]++;
        // A round that begins inside a gore comes back to the rest of it at its end.
        int late = gores[0] == gores[^1] ? Enumerable.Range(0, cells.Length).Reverse().TakeWhile(i => gores[i] == gores[0]).Count(i => Stands(cells[i])) : 0;
        if (late < size[gores[0]]) at[gores[0]] = late;
        LaidCell[] laid = [.. cells.Select((cell, i) =>
        {
            (Point foot, Point up, Point along) = axes[gores[i]];
            int place = Stands(cell) ? at[gores[i]]++ % size[gores[i]] : at[gores[i]];
            return disc[row].Cells[i] with { Top = foot + (up * height) + (along * (place - ((size[gores[i]] - 1) / 2.0))), Up = up, Width = Stands(cell) ? 1 : 0 };
        })];
        for (int i = 0; i < laid.Length; i++)
            if (laid[i].Width <= 0) laid[i] = Uprights.Attached(disc[row] with { Cells = laid }, i);
        return Labels.On(disc[row] with { Cells = laid, Taller = 1 });
    }
}
