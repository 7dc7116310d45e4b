using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>
/// Lays out an edging worked sideways as makers draw it: the strip by itself, straight, and each scallop as a fan beside it, its rows in arcs about the loop that it stands in.
/// </summary>
internal sealed class Scallops
{
    /// <summary>Length of a chain, and of a stitch, along an arc that has little room.</summary>
    private const double OfChain = 0.55;
    private const double Narrowest = 0.72;

    /// <summary>How far the edge is from the middle of its last stitch, and scallops from each other.</summary>
    private const double BesideEdge = 0.9;
    private const double Between = 0.7;

    /// <summary>Along the edge rows of a scallop lie closer than at its tip.</summary>
    private const double AlongEdge = 0.6;
    private const double LeastStep = 0.85;

    /// <summary>How close cells may come so that each stands over what it is worked into, as a share of what they have when spread evenly.</summary>
    private const double Closest = 0.8;
    private const int FewestPlaces = 3;
    private const double SmallestLoop = 0.9;

    /// <summary>Rows of the strip are drawn taller until scallops keep this share of the room that they want below their loops.</summary>
    private const double Least = 0.4;
    private const double Roomy = 0.8;
    private const double Taller = 0.1;
    private const double Tallest = 1.3;

    private readonly WorkedPiece piece;
    private readonly StitchForms forms;
    private readonly Dictionary<int, SideRun> runs;
    private readonly Cell[][] cells;
    private readonly LaidCell[][] laid;
    private readonly Dictionary<(int Row, int Cell), double> angleOf = [];
    private double tightest = 1;

    private Scallops(WorkedPiece piece, StitchForms forms, Dictionary<int, SideRun> runs)
    {
        (this.piece, this.forms, this.runs) = (piece, forms, runs);
        cells = [.. piece.Rows.Select(row => row.Cells().ToArray())];
        laid = [.. cells.Select(row => new LaidCell[row.Length])];
    }

    /// <summary>The rows; null for a piece without scallops at its side.</summary>
    public static List<LaidRow>? Lay(WorkedPiece piece, StitchForms forms)
    {
        if (SideParts.Of(piece, forms) is not { Count: > 0 } runs) return null;
        for (double tall = 1; ; tall += Taller)
        {
            var scallops = new Scallops(piece, forms, runs);
            List<LaidRow> rows = scallops.Lay(tall);
            if (scallops.tightest >= Roomy || tall >= Tallest) return rows;
        }
    }

    private List<LaidRow> Lay(double tall)
    {
        LaidRow[] strip = new Strip(piece, runs, cells).Lay(forms, laid, tall);
        var rows = new List<LaidRow>(piece.Rows.Count);
        foreach (LaidRow row in strip) rows.Add(row with { Row = piece.Rows[row.Index], Cells = laid[row.Index] });
        double above = double.MaxValue;
        foreach (SideRun[] scallop in runs.Values.GroupBy(run => run.Scallop).OrderBy(group => group.Key).Select(group => group.OrderBy(run => run.Row).ToArray()))
            above = Fan(scallop, rows, above);
        foreach (SideRun run in runs.Values)
        {
            for (int i = run.First; i <= run.Last; i++)
                if (laid[run.Row][i].Width <= 0) laid[run.Row][i] = Uprights.Attached(rows[run.Row], i);
            if (run.AtStart) rows[run.Row] = Labels.On(rows[run.Row]);
        }
        return rows;
    }

    /// <summary>Lays a scallop's rows in arcs; gives how high up the edge it reaches.</summary>
    private double Fan(SideRun[] scallop, List<LaidRow> rows, double above)
    {
        Point middle = StripMiddle();
        LaidCell beside = laid[scallop[^1].Row][scallop[^1].Beside];
        int side = beside.Top.X < middle.X ? -1 : 1;
        (int from, int to) = (Math.Max(1, scallop[0].Row - 2), scallop[^1].Row);
        double edge = rows.Where(row => row.Index >= from && row.Index <= to).SelectMany(row => row.Cells.Where((cell, i) => InStrip(row.Index, i))).Max(cell => side * cell.Top.X);
        var standing = new Standing(rows);
        Point loop = LoopOf(scallop, standing);
        var centre = new Point((side * edge) + (side * BesideEdge), loop.Y);
        HalfOval[] arcs = Arcs(scallop, standing, centre, side, above);
        for (int k = 0; k < scallop.Length; k++) On(arcs[k], scallop[k], standing);
        return centre.Y - arcs[^1].Above;
    }

    private bool InStrip(int row, int cell) => !runs.TryGetValue(row, out SideRun? run) || !run.Has(cell);

    private Point StripMiddle()
    {
        Box box = laid.Skip(1).SelectMany((row, i) => row.Where((_, k) => InStrip(i + 1, k))).Aggregate(Box.Empty, (all, cell) => all.With(cell.Top));
        return new Point((box.Left + box.Right) / 2, (box.Top + box.Bottom) / 2);
    }

    /// <summary>The middle of the loop that a scallop stands in: of the chains between their two ends, or of the turning chain at the strip's side.</summary>
    private Point LoopOf(SideRun[] scallop, Standing standing)
    {
        SideRun first = scallop[0];
        if (IsLoop(first)) return UpperEnd(first, standing).Toward(LowerEnd(first, standing) ?? UpperEnd(first, standing), 0.5);
        Foot foot = Enumerable.Range(first.First, first.Last - first.First + 1).SelectMany(i => cells[first.Row][i].Feet).GroupBy(foot => (foot.Row, foot.Place)).MaxBy(group => group.Count())!.First();
        return InLoop(foot, standing) ?? standing.Host(foot)!.Value.Top;
    }

    /// <summary>The middle of a turning chain at the strip's side that stitches are worked round; null for another place.</summary>
    private Point? InLoop(Foot foot, Standing standing) =>
        foot.Kind == FootKind.Space && standing.Host(foot) is { Cell: { Kind: CellKind.TurningChain, Feet: [{ } under] } } chain && InStrip(foot.Row, (int)foot.Place) && standing.Host(under) is { } host ? chain.Top.Toward(host.Top, 0.5) : null;

    private bool IsLoop(SideRun run) => run.Last - run.First == 1 && cells[run.Row][run.First].Kind is CellKind.Chains or CellKind.TurningChain && cells[run.Row][run.Last].Kind is CellKind.Chains or CellKind.Join;

    /// <summary>Where a row of a scallop meets the strip.</summary>
    private Point UpperEnd(SideRun run, Standing standing)
    {
        Cell last = cells[run.Row][run.AtStart ? run.Last : run.First];
        return last is { Kind: CellKind.Stitch, Feet: [{ } foot] } && InStrip(foot.Row, (int)foot.Place) && run.AtStart ? standing.Host(foot)!.Value.Top : laid[run.Row][run.Beside].Top;
    }

    /// <summary>Where its other end stands on the strip; null where it stands on the scallop.</summary>
    private Point? LowerEnd(SideRun run, Standing standing)
    {
        Cell end = cells[run.Row][run.AtStart ? run.First : run.Last];
        return end.Feet is [{ } foot] && foot.Place >= 0 && foot.Row < run.Row && (InStrip(foot.Row, (int)foot.Place) || IsLoop(run)) ? InLoop(foot, standing) ?? standing.Host(foot)?.Top : null;
    }

    private HalfOval[] Arcs(SideRun[] scallop, Standing standing, Point centre, int side, double above)
    {
        var arcs = new HalfOval[scallop.Length];
        (double outward, double down, double up) = (0, 0, 0);
        for (int k = 0; k < scallop.Length; k++)
        {
            SideRun run = scallop[k];
            double height = HeightOf(run), step = Math.Max(Math.Min(LeastStep, height), height * AlongEdge);
            up = Math.Max(centre.Y - UpperEnd(run, standing).Y, up + step);
            down = IsLoop(run) || k == 0 ? Math.Max(LowerEnd(run, standing)?.Y - centre.Y ?? 0, SmallestLoop) : Math.Max(down + step, LowerEnd(run, standing)?.Y - centre.Y ?? 0);
            outward += IsLoop(run) ? SmallestLoop : height + (k == 0 ? BesideEdge : 0);
            arcs[k] = new HalfOval(centre, side, outward, down, up);
        }
        double room = above == double.MaxValue ? down : above - Between - centre.Y;
        double narrow = Math.Clamp(room / down, Least, 1);
        tightest = Math.Min(tightest, narrow);
        outward = 0;
        for (int k = 0; k < arcs.Length; k++)
        {
            double before = k == 0 ? 0 : arcs[k - 1].Out - outward;
            arcs[k] = arcs[k] with { Below = arcs[k].Below * narrow, Out = arcs[k].Out + before };
            outward = arcs[k].Out - before;
            double wanted = WidthsOf(scallop[k]).Sum() * Narrowest;
            for (double length = arcs[k].Length; length < wanted; length = arcs[k].Length) arcs[k] = arcs[k] with { Out = arcs[k].Out + Math.Max(0.05, (wanted - length) / 2) };
        }
        return arcs;
    }

    private double HeightOf(SideRun run)
    {
        double[] heights = [.. run.FromFreeEnd.Select(i => cells[run.Row][i]).Where(cell => cell.Kind == CellKind.Stitch).Select(cell => Math.Max(0.5, forms.Of(cell.Stitch).Height)).Order()];
        return heights.Length == 0 ? 0.5 : heights[heights.Length / 2];
    }

    private double[] WidthsOf(SideRun run) => [.. run.FromFreeEnd.Select(i => cells[run.Row][i].Kind == CellKind.Chains ? cells[run.Row][i].Chains * OfChain / Narrowest : RowTally.Width(cells[run.Row][i]))];

    /// <summary>Spreads a row's cells over its arc, each as near over what it is worked into as its neighbours allow.</summary>
    private void On(HalfOval arc, SideRun run, Standing standing)
    {
        int[] order = [.. run.FromFreeEnd];
        double[] widths = WidthsOf(run);
        double total = Math.Max(0.1, widths.Sum()), length = arc.Length, at = 0;
        var even = new double[widths.Length];
        for (int k = 0; k < widths.Length; k++)
        {
            even[k] = (at + (widths[k] / 2)) / total;
            at += widths[k];
        }
        double?[] over = [.. order.Select(i => Over(cells[run.Row][i], arc, run))];
        double[] shares = over.OfType<double>().Distinct().Count() < FewestPlaces ? even : Apart.Of(even, [.. even.Zip(over, (own, host) => host ?? own)], [.. over.Select(host => host is null ? 0.1 : 1.0)], Closest);
        for (int k = 0; k < order.Length; k++)
        {
            (Point place, Point outward) = arc.At(shares[k]);
            Cell cell = cells[run.Row][order[k]];
            double width = widths[k] * length / total;
            if (cell.Kind == CellKind.Chains && k > 0 && !IsLoop(run))
            {
                // Chains reach from the stitch before them to the one after, which at the arc's upper end is the strip's.
                bool ends = k + 1 == order.Length;
                (Point from, double room) = (laid[run.Row][order[k - 1]].Top, laid[run.Row][order[k - 1]].Width);
                Point to = ends ? laid[run.Row][run.Beside].Top : arc.At(shares[k + 1]).Place;
                if (ends) place = from.Toward(to, 0.5);
                width = Math.Max(width, (to - from).Length - ((room + (ends ? laid[run.Row][run.Beside].Width : widths[k + 1] * length / total)) / 2));
            }
            laid[run.Row][order[k]] = new LaidCell(cell, forms.Of(cell.Stitch), place - (outward * ChainPath.Rise(cell)), outward, width) { Ground = cell is { Kind: CellKind.Stitch, Feet: [{ } foot] } ? InLoop(foot, standing) : null };
            angleOf[(run.Row, order[k])] = arc.AngleAt(shares[k]);
        }
    }

    /// <summary>Where on its own arc a cell would be right over the one that it is worked into; null where that is not in the scallop.</summary>
    private double? Over(Cell cell, HalfOval arc, SideRun run)
    {
        double[] angles = [.. cell.Feet.Where(foot => foot.Row < run.Row && angleOf.ContainsKey((foot.Row, (int)foot.Place))).Select(foot => angleOf[(foot.Row, (int)foot.Place)])];
        return angles.Length == 0 ? null : arc.ShareAt(angles.Average());
    }
}
