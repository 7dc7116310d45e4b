namespace PatternStudio.Craft.Charting.Layout;

/// <summary>Rows after their net has come to rest.</summary>
internal static class Relaxed
{
    /// <summary>The same rows, relaxed for at most so many turns, lying as they lay before.</summary>
    public static List<LaidRow> Of(IReadOnlyList<LaidRow> rows, int turns, int steps, int[]? senses = null, Effort? effort = null)
    {
        var builder = new NetBuilder(rows, senses);
        var relaxation = new Relaxation(builder.Net, builder.Places);
        int taken = relaxation.Run(turns, steps);
        if (effort is not null) effort.Turns += taken;
        return Placed(rows, builder, Fitted(builder.Places, relaxation.Places));
    }

    /// <summary>The same rows, relaxed where they are free to: each row stays where it lies as firmly as is told.</summary>
    public static List<LaidRow> Staying(IReadOnlyList<LaidRow> rows, double[] stay, int turns, int steps, Effort? effort = null)
    {
        var builder = new NetBuilder(rows);
        var firm = new double[builder.Net.Nodes];
        foreach (LaidRow row in rows)
            foreach (int node in builder.NodeOf[row.Index].Where(node => node >= 0)) firm[node] = stay[row.Index];
        var relaxation = new Relaxation(builder.Net, builder.Places, firm);
        int taken = relaxation.Run(turns, steps);
        if (effort is not null) effort.Turns += taken;
        return Placed(rows, builder, relaxation.Places);
    }

    /// <summary>The places turned and shifted back to where the piece lay: resting does not care which way is up.</summary>
    private static Point[] Fitted(Point[] before, Point[] after)
    {
        if (before.Length == 0) return after;
        Point from = Middle(before);
        Point to = Middle(after);
        double cos = 0;
        double sin = 0;
        for (int i = 0; i < before.Length; i++)
        {
            Point was = before[i] - from;
            Point now = after[i] - to;
            cos += (was.X * now.X) + (was.Y * now.Y);
            sin += (now.X * was.Y) - (now.Y * was.X);
        }
        double length = Math.Sqrt((cos * cos) + (sin * sin));
        (cos, sin) = length < 1e-9 ? (1, 0) : (cos / length, sin / length);
        return [.. after.Select(at => Turned(at - to) + from)];

        Point Turned(Point at) => new((at.X * cos) - (at.Y * sin), (at.X * sin) + (at.Y * cos));
    }

    private static Point Middle(Point[] places) => places.Aggregate((sum, at) => sum + at) * (1.0 / places.Length);

    /// <summary>The same rows with their nodes elsewhere.</summary>
    /// <param name="turnUp">True to set every cell upright on its row's new line, numbers beside them.</param>
    public static List<LaidRow> Placed(IReadOnlyList<LaidRow> rows, NetBuilder builder, Point[] places, bool turnUp = true)
    {
        var moved = new List<LaidRow>(rows.Count);
        foreach (LaidRow row in rows)
        {
            int[] nodes = builder.NodeOf[row.Index];
            if (row.IsCentre)
            {
                Point by = nodes.Length == 0 ? default : places[nodes[0]] - row.Centre;
                moved.Add(row with { Centre = row.Centre + by, Cells = [.. row.Cells.Select(cell => cell with { Top = cell.Top + by })] });
                continue;
            }
            LaidCell[] cells = [.. row.Cells.Select((cell, i) => nodes[i] < 0 ? cell : cell with { Top = places[nodes[i]] })];
            moved.Add(turnUp ? Labels.On(Uprights.Of(row with { Cells = cells })) : row with { Cells = cells });
        }
        return moved;
    }
}
