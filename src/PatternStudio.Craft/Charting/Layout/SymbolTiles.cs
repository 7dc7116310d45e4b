namespace PatternStudio.Craft.Charting.Layout;

/// <summary>The plane in square tiles: who lies on whom is looked for among those that share a tile.</summary>
internal static class SymbolTiles
{
    /// <summary>What is wider or higher is no symbol but something gone wrong, or a strap; looking for it in its tiles would take longer than it is worth.</summary>
    public const double Largest = 60;

    private const double Side = 3;

    /// <summary>The tile of a point.</summary>
    public static (int X, int Y) Of(double x, double y) => ((int)Math.Floor(x / Side), (int)Math.Floor(y / Side));

    /// <summary>All tiles that a box has part in.</summary>
    public static IEnumerable<(int X, int Y)> Of(Box box)
    {
        ((int left, int top), (int right, int bottom)) = (Of(box.Left, box.Top), Of(box.Right, box.Bottom));
        for (int x = left; x <= right; x++)
            for (int y = top; y <= bottom; y++)
                yield return (x, y);
    }
}
