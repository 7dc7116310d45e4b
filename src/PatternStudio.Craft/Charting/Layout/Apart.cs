namespace PatternStudio.Craft.Charting.Layout;

/// <summary>
/// Brings places along a line as near to where they are wanted as they can come while they stay in order and apart: least squares under order, by pooling neighbours that would pass each
/// other (Ayer and others 1955; from memory).
/// </summary>
internal static class Apart
{
    /// <param name="even">The places spread evenly, each with the room that it has, 0 to 1.</param>
    /// <param name="wanted">Where each would best be.</param>
    /// <param name="weights">How much that matters.</param>
    /// <param name="closest">How close neighbours may come, as a share of their distance when spread evenly.</param>
    public static double[] Of(double[] even, double[] wanted, double[] weights, double closest)
    {
        var pools = new List<(double Place, double Weight, int Count)>();
        for (int i = 0; i < even.Length; i++)
        {
            (double place, double weight, int count) = (wanted[i] - (even[i] * closest), weights[i], 1);
            while (pools.Count > 0 && pools[^1].Place > place)
            {
                (double Place, double Weight, int Count) last = pools[^1];
                pools.RemoveAt(pools.Count - 1);
                place = ((place * weight) + (last.Place * last.Weight)) / (weight + last.Weight);
                (weight, count) = (weight + last.Weight, count + last.Count);
            }
            pools.Add((place, weight, count));
        }
        double[] shifts = [.. pools.SelectMany(pool => Enumerable.Repeat(Math.Clamp(pool.Place, 0, 1 - closest), pool.Count))];
        return [.. even.Select((at, i) => (at * closest) + shifts[i])];
    }
}
