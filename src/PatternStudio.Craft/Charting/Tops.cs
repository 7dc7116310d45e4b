using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>Finds how high the top of each cell of a row is.</summary>
internal sealed class Tops(Ground ground, Placer placer, Spread spread)
{
    /// <summary>How far a top may be from the mean of its row: the fabric holds neighbours together, in rounds more than in rows.</summary>
    private const double Give = 0.9;
    private const double Elastic = 0.7;
    private const double ElasticInRounds = 0.45;

    /// <summary>A layer worked behind other rounds is drawn outside them.</summary>
    private const double LeastStep = 0.5;

    /// <summary>Stitches round a circle closer than this share of their width could not be told apart.</summary>
    private const double Crowded = 0.85;

    /// <summary>A fanned stitch leans, and ends lower; but never lower than this share of its height.</summary>
    private const double LeastOfFan = 0.5;

    public double[] Of(WorkedRow row, Cell[] cells, PlacedRow? below)
    {
        double?[] own = [.. Enumerable.Range(0, cells.Length).Select(i => Own(cells, i, below))];
        double[] known = [.. own.OfType<double>()];
        double mean = known.Length == 0 ? below?.MeanTop ?? 0 : known.Average();
        double least = ground.Span is not null ? Crowded / (2 * Math.PI * spread.Unit) : double.MinValue;
        double elastic = ground.Span is null ? Elastic : ElasticInRounds;
        double outside = ground.Wraps && row.Kind == RowKind.Round ? placer.Outermost + LeastStep : double.MinValue;
        double lift = Math.Max(0, Math.Max(least, outside) - mean);
        var tops = new double[cells.Length];
        for (int i = 0; i < tops.Length; i++)
            tops[i] = lift + mean + (own[i] is { } top ? Math.Clamp((top - mean) * elastic, -Give, Give) : 0);
        Hang(cells, own, tops);
        return ground is PolygonGround ? Levelled(cells, tops) : row is { Joined: false } && ground.Wraps && Centred(below) ? Ramp(cells, tops, below!) : tops;
    }

    private static bool Centred(PlacedRow? below) => below is { Low: < 0 };

    /// <summary>The height that the cell's own feet give it; null for what has none, such as chains.</summary>
    private double? Own(Cell[] cells, int at, PlacedRow? below)
    {
        Cell cell = cells[at];
        if (cell.Kind == CellKind.TurningChain) return (below is null ? 0 : Near(below, spread.U[at])) + ChainHeight(cell);
        if (cell.Kind != CellKind.Stitch) return null;
        Spot[] feet = [.. cell.Feet.Select(placer.FindSpot).OfType<Spot>()];
        double low = feet.Length == 0 ? below?.MeanTop ?? 0 : feet.Average(foot => foot.T);
        return low + Leaning(cells, at, feet, HeightOf(cell));
    }

    private double HeightOf(Cell cell)
    {
        StitchForm form = placer.FormOf(cell);
        return form.Kind == FormKind.Unknown ? 1 : Math.Max(0.5, form.Height);
    }

    private double ChainHeight(Cell cell) => cell.Counts ? HeightOf(cell) : Math.Max(0.6, cell.Chains * 0.6);

    /// <summary>Stitches fanned out from one foot keep their length, so the outer ones end lower.</summary>
    private double Leaning(Cell[] cells, int at, Spot[] feet, double height)
    {
        if (feet.Length != 1 || ground is PolygonGround || feet[0].Centre) return height;
        double aside = ground.Difference(FanMiddle(cells, at), spread.U[at]) / spread.Unit;
        double upright = Math.Sqrt(Math.Max(0, (height * height) - (aside * aside)));
        return Math.Max(upright, height * LeastOfFan);
    }

    private double FanMiddle(Cell[] cells, int at)
    {
        int first = at;
        int last = at;
        while (first > 0 && Fans.SameFoot(cells[first - 1], cells[at])) first--;
        while (last + 1 < cells.Length && Fans.SameFoot(cells[last + 1], cells[at])) last++;
        return spread.U[first] + (ground.Difference(spread.U[first], spread.U[last]) / 2);
    }

    private double Near(PlacedRow below, double u) =>
        below.Cells.Length == 0 ? below.High : below.Cells.MinBy(cell => Math.Abs(ground.Difference(cell.U, u))).T;

    /// <summary>Chains hang between their neighbours.</summary>
    private static void Hang(Cell[] cells, double?[] own, double[] tops)
    {
        for (int i = 0; i < cells.Length; i++)
        {
            if (own[i] is not null || cells[i].Kind is not (CellKind.Chains or CellKind.Picot)) continue;
            int before = Array.FindLastIndex(own, i, top => top is not null);
            int after = Array.FindIndex(own, i, top => top is not null);
            if (before < 0) before = after;
            if (after < 0) after = before;
            if (before >= 0) tops[i] = (tops[before] + tops[after]) / 2;
        }
    }

    /// <summary>Sides of a square are straight: all tops of a round are level.</summary>
    private static double[] Levelled(Cell[] cells, double[] tops)
    {
        double level = Enumerable.Range(0, cells.Length).Where(i => cells[i].Kind is CellKind.Stitch or CellKind.TurningChain).Select(i => tops[i]).DefaultIfEmpty(tops.DefaultIfEmpty(0).Max()).Average();
        return [.. tops.Select(_ => level)];
    }

    /// <summary>A spiral rises through its first round, so that the last stitch leads over the first.</summary>
    private static double[] Ramp(Cell[] cells, double[] tops, PlacedRow below) =>
        [.. tops.Select((top, i) => below.High + ((top - below.High) * (0.4 + (0.6 * i / Math.Max(1, cells.Length - 1)))))];
}
