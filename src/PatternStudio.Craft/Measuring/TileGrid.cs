namespace PatternStudio.Craft.Measuring;

/// <summary>A square or rectangle of tiles worked in diagonal rows from one corner to the opposite one.</summary>
/// <param name="Short">Tiles along the shorter side; at least 1.</param>
/// <param name="Long">Tiles along the longer side; at least <paramref name="Short"/>.</param>
public readonly record struct TileGrid(int Short, int Long)
{
    /// <summary>All tiles.</summary>
    public long Tiles => (long)Short * Long;

    /// <summary>Diagonal rows: one for each tile round two sides.</summary>
    public int Rows => Short + Long - 1;

    /// <summary>Rows that grow, up to the one that first reaches from side to side.</summary>
    public int Increasing => Short;

    /// <summary>Rows of the full width after it.</summary>
    public int Straight => Long - Short;

    /// <summary>Rows that fall.</summary>
    public int Decreasing => Short - 1;

    /// <summary>Tiles in a diagonal row, counted from 1; 0 outside the piece.</summary>
    public int TilesIn(int row) => Math.Max(0, Math.Min(Math.Min(row, Short), Short + Long - row));

    /// <summary>Tiles worked by the end of a row.</summary>
    public long TilesThrough(int row)
    {
        long sum = 0;
        for (int n = 1; n <= Math.Min(row, Rows); n++) sum += TilesIn(n);
        return sum;
    }

    /// <summary>The grid of rows with so many tiles each; null where they come out as no rectangle.</summary>
    public static TileGrid? From(IReadOnlyList<long> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        if (rows.Count == 0 || rows.Max() is var across && (across < 1 || across > rows.Count)) return null;
        var grid = new TileGrid((int)across, rows.Count + 1 - (int)across);
        return grid.Long >= grid.Short && rows.Select((tiles, i) => tiles == grid.TilesIn(i + 1)).All(same => same) ? grid : null;
    }
}
