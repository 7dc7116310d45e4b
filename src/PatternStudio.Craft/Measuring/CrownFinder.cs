using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Measuring;

/// <summary>
/// Finds rounds that grow from a centre and then go on without growing: a hat from the crown down, a basket from its base up; and the same the other way: a hat from its band up.
/// </summary>
internal static class CrownFinder
{
    /// <summary>Fewer even rounds than this are the last rounds of a disc, or its edging.</summary>
    private const int FewestEven = 3;

    /// <summary>A brim or band may draw in by a fifth; what closes further is a stuffed shape.</summary>
    private const double Closes = 0.8;

    /// <summary>Below this share of a flat disc's edge the rounds have gone up and no longer out (by the usual proportions of the stitches).</summary>
    private const double Upright = 0.8;

    /// <summary>Null where the rounds are something else.</summary>
    public static Construction? Find(List<WorkedRow> rows, List<RowTally> tallies)
    {
        long widest = tallies.Max(tally => tally.Places);
        if (tallies[0].Places >= Closes * widest) return FromTheBand(tallies, widest);
        int grown = tallies.FindIndex(tally => tally.Places * 20 >= widest * 19);
        int even = rows.Count - grown - 1;
        if (even < FewestEven || grown == 0 || tallies[0].Places * 2 > widest) return null;
        double radius = tallies.Sum(tally => tally.Height);
        if (tallies[^1].Places >= Upright * 2 * Math.PI * radius) return null;
        if (tallies.Skip(grown).Any(tally => tally.Places < Closes * widest))
            return new Construction(ConstructionKind.NotKnown, $"The rounds grow to {widest} stitches and close again: a shape to be stuffed, whose size depends on the stuffing. Measure a worked piece.");
        bool hasBase = FromOneLoop(rows[grown + 1]);
        string shape = hasBase ? "a base with sides" : "a crown, then a tube";
        return new Construction(ConstructionKind.CrownAndTube, $"{grown + 1} rounds grow to {tallies[grown].Places} stitches and {even} go on from there: {shape}.") { FirstRows = grown + 1, HasBase = hasBase };
    }

    /// <summary>Rounds begun as a ring of their full width, which close to a few stitches at the top.</summary>
    private static Construction? FromTheBand(List<RowTally> tallies, long widest)
    {
        int even = tallies.FindLastIndex(tally => tally.Places * 20 >= widest * 19) + 1;
        int crown = tallies.Count - even;
        bool closes = crown >= FewestEven && tallies[^1].Places * 4 <= widest && tallies.Skip(even).Zip(tallies.Skip(even + 1)).All(pair => pair.Second.Places <= pair.First.Places);
        return closes && even >= FewestEven && tallies.Take(even).All(tally => tally.Places >= Closes * widest)
            ? new Construction(ConstructionKind.CrownAndTube, $"{even} rounds of up to {widest} stitches, then {crown} that close to {tallies[^1].Places}: a tube, then a crown.") { FirstRows = even, CrownLast = true }
            : null;
    }

    /// <summary>A round worked into one loop or round the posts folds there: the edge of a base.</summary>
    private static bool FromOneLoop(WorkedRow row)
    {
        List<Foot> feet = [.. row.Runs.SelectMany(run => run.Unit).Where(cell => cell.Kind == CellKind.Stitch).SelectMany(cell => cell.Feet)];
        return feet.Count > 0 && feet.Count(foot => foot.Kind is FootKind.BackLoop or FootKind.FrontLoop or FootKind.BackPost or FootKind.FrontPost) * 2 > feet.Count;
    }
}
