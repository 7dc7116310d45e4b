namespace PatternStudio.Craft.Charting.Layout;

/// <summary>How far a layout is from the fabric at rest.</summary>
internal static class Strain
{
    /// <summary>Neighbours nearer than this share of their distance can't be told apart.</summary>
    private const double Crowded = 0.72;

    /// <summary>What a crowded stitch weighs beside one that only leans.</summary>
    private const double Weight = 2;

    /// <summary>Strain of the net and the share of its stitches that crowd.</summary>
    public static double Of(IReadOnlyList<LaidRow> rows)
    {
        var builder = new NetBuilder(rows);
        return new Relaxation(builder.Net, builder.Places).Strain() + (Weight * Crowding(rows));
    }

    private static double Crowding(IReadOnlyList<LaidRow> rows)
    {
        int crowded = 0;
        int all = 0;
        foreach (LaidRow row in rows.Where(row => !row.IsCentre))
            for (int i = 0; i < row.Cells.Length; i++)
            {
                if (row.Cells[i].Width <= 0 || row.Beside(i, 1) is not { } next) continue;
                all++;
                if ((next.Top - row.Cells[i].Top).Length < Crowded * (row.Cells[i].Width + next.Width) / 2) crowded++;
            }
        return all == 0 ? 0 : (double)crowded / all;
    }
}
