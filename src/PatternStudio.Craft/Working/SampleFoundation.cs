using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Working;

/// <summary>
/// Patterns of a stitch, edgings and laces leave the length of their foundation to the maker. They are worked over a sample: the third shortest chain over which
/// most of their rows come out, so that every repeat has room to be a repeat.
/// </summary>
internal static class SampleFoundation
{
    private const int Shortest = 4;
    private const int Longest = 130;
    private const int Repeats = 3;

    /// <summary>The foundation that leaves its length open; null where every length is told.</summary>
    public static OpenChainStep? Of(Pattern pattern) =>
        pattern.Pieces.SelectMany(piece => piece.Items).OfType<RowInstruction>().SelectMany(row => row.Steps).OfType<OpenChainStep>().FirstOrDefault();

    /// <summary>The lengths it may have, the shortest first.</summary>
    public static IEnumerable<int> Lengths(OpenChainStep open)
    {
        for (int times = 1; times * open.Of + open.Plus <= Longest; times++)
            if (times * open.Of + open.Plus is var chains && chains >= Shortest) yield return chains;
    }

    /// <summary>Finds the length to work over.</summary>
    /// <param name="lengths">What may be tried.</param>
    /// <param name="rowsRight">How many rows come out over a length.</param>
    /// <returns>Null where no row comes out over any.</returns>
    public static int? Find(IEnumerable<int> lengths, Func<int, int> rowsRight)
    {
        var tried = lengths.Select(chains => (Chains: chains, Right: rowsRight(chains))).ToList();
        int most = tried.Select(one => one.Right).DefaultIfEmpty(0).Max();
        return most <= 0 ? null : tried.Where(one => one.Right == most).Take(Repeats).Last().Chains;
    }
}
