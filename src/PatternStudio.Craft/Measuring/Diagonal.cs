namespace PatternStudio.Craft.Measuring;

/// <summary>
/// Rows on the bias: each row lies across the corner and adds its height along the diagonal. A square corner opens by one row height
/// on each side of the diagonal, so it takes 2 × row height ÷ stitch width more stitches every row.
/// </summary>
internal static class Diagonal
{
    /// <summary>How far the growth may be from a square corner's before the piece is taken for something else.</summary>
    private const double NominalTolerance = 0.35;

    /// <summary>True where counts grow evenly from a few stitches to the middle and fall evenly to a few again, at about a square's pace.</summary>
    /// <param name="places">Stitches of each row.</param>
    /// <param name="height">Mean row height in stitch widths.</param>
    public static bool Fits(IReadOnlyList<long> places, double height)
    {
        int longest = Longest(places);
        if (places.Count < 5 || Math.Abs((2 * longest) + 1 - places.Count) > Math.Max(2, places.Count / 10)) return false;
        double growth = Growth(places);
        double few = Math.Max(6, 1.5 * growth);
        return places[0] <= few && places[^1] <= few
            && IsEven(places, 0, longest, growth) && IsEven(places, places.Count - 1, longest, growth)
            && Math.Abs((growth / (2 * height)) - 1) <= NominalTolerance;
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
