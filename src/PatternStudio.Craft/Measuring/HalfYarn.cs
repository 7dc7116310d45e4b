namespace PatternStudio.Craft.Measuring;

/// <summary>
/// When to stop growing a square that is worked from a corner, so that the yarn lasts to the opposite one. Border and joining yarn is set aside before it is asked.
/// 'Stop at half' is safe and a little cautious: through the longest row (n + 1) ÷ 2n of the yarn is used, so about one longest row is left over.
/// </summary>
public static class HalfYarn
{
    /// <summary>The share of all yarn that is used through the longest row of n × n tiles: (n + 1) ÷ 2n.</summary>
    /// <param name="tiles">Tiles along a side; at least 1.</param>
    public static double ShareThroughLongestRow(int tiles)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(tiles, 1);
        return (tiles + 1) / (2.0 * tiles);
    }

    /// <summary>True where, after growing row n, yarn for another growing row and all that must fall after it is left: n + 1 tiles and n (n + 1) ÷ 2.</summary>
    /// <param name="row">The row just finished, which has as many tiles; at least 1.</param>
    /// <param name="tilesLeft">How many tiles the yarn left would make.</param>
    public static bool MayGrow(int row, double tilesLeft) => tilesLeft >= row + 1 + TilesToClose(row + 1);

    /// <summary>Tiles that close a square after its longest row of n: n (n − 1) ÷ 2.</summary>
    public static double TilesToClose(int longest) => longest * (longest - 1.0) / 2;
}
