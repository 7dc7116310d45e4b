namespace PatternStudio.Craft.Measuring;

/// <summary>
/// Rows on the bias: each row lies across the corner and adds its height along the diagonal. A square corner opens by one row height
/// on each side of the diagonal, so it takes 2 × row height ÷ stitch width more stitches every row.
/// </summary>
internal static class Diagonal
{
    /// <summary>How far the growth may be from a square corner's before the piece is taken for something else.</summary>
    private const double NominalTolerance = 0.35;

    /// <summary>So many more rows of the full length are a rectangle's middle, not a square's rounded corner.</summary>
    private const int Middle = 3;

    /// <summary>
    /// True where counts grow evenly from a few stitches and fall evenly to a few again, at about a square corner's pace; between, they may hold as
    /// long as the rows lean.
    /// </summary>
    /// <param name="places">Stitches of each row.</param>
    /// <param name="height">Mean row height in stitch widths.</param>
    /// <param name="leans">Tells whether the rows from one index to another wander sideways.</param>
    public static bool Fits(IReadOnlyList<long> places, double height, Func<int, int, bool> leans)
    {
        int longest = Longest(places);
        double growth = Growth(places);
        double few = Math.Max(6, 1.5 * growth);
        if (places.Count < 5 || places[0] > few || places[^1] > few || Math.Abs((growth / (2 * height)) - 1) > NominalTolerance) return false;
        int last = LastLong(places);
        return IsEven(places, 0, longest, growth) && IsEven(places, places.Count - 1, last, growth)
            && (last - longest < Middle ? Math.Abs(longest - (places.Count - 1 - last)) <= Math.Max(2, places.Count / 10) : leans(longest + 1, last));
    }

    /// <summary>True where the rows fall as soon as they are longest: a square, not a rectangle.</summary>
    public static bool IsSquare(IReadOnlyList<long> places) => LastLong(places) - Longest(places) < Middle;

    private static int LastLong(IReadOnlyList<long> places)
    {
        int longest = Longest(places);
        int last = longest;
        while (last + 1 < places.Count && places[longest] - places[last + 1] < Growth(places) / 2) last++;
        return last;
    }

    /// <summary>0-based index of the (first) longest row.</summary>
    public static int Longest(IReadOnlyList<long> places)
    {
        int longest = 0;
        for (int i = 1; i < places.Count; i++)
            if (places[i] > places[longest])
                longest = i;
        return longest;
    }

    /// <summary>Stitches that each row adds, on average up to the longest.</summary>
    public static double Growth(IReadOnlyList<long> places)
    {
        int longest = Longest(places);
        return longest == 0 ? 0 : (double)(places[longest] - places[0]) / longest;
    }

    /// <summary>No row strays from the straight line between the end and the longest by more than one row's growth.</summary>
    private static bool IsEven(IReadOnlyList<long> places, int end, int longest, double growth)
    {
        int step = Math.Sign(longest - end);
        double slope = step == 0 ? 0 : (double)(places[longest] - places[end]) / Math.Abs(longest - end);
        for (int i = end; i != longest; i += step)
            if (Math.Abs(places[i] - (places[end] + (slope * Math.Abs(i - end)))) > Math.Max(growth, 2))
                return false;
        return true;
    }
}
