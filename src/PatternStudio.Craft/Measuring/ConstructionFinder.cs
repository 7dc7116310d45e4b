using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Measuring;

/// <summary>Finds from the worked rows how a piece is put together.</summary>
public static class ConstructionFinder
{
    /// <summary>A tube of fewer stitches that varies is a toy's limb, which has a closed end.</summary>
    private const int Fewest = 12;

    /// <summary>The construction of a piece; rows that were not checked are left out.</summary>
    public static Construction Find(WorkedPiece piece, StitchForms forms)
    {
        List<WorkedRow> rows = [.. piece.Rows.Where(row => row is { Status: RowStatus.Checked, Kind: not RowKind.Foundation })];
        if (rows.Count == 0) return NotKnown("No row of this piece could be checked, so there is nothing to measure.");
        if (rows.Exists(row => row.Kind != rows[0].Kind)) return NotKnown("The piece has rows and rounds together; their size together is not worked out yet.");
        List<RowTally> tallies = [.. rows.Select(row => RowTally.Of(row, forms))];
        if (rows[0].Kind != RowKind.Round) return Rows(rows, tallies);
        return IsOval(piece, rows[0]) ? new Construction(ConstructionKind.Oval, "The rounds begin along both sides of a chain; the size of such an oval is not worked out yet.") : Rounds(rows, tallies);
    }

    private static Construction Rounds(List<WorkedRow> rows, List<RowTally> tallies)
    {
        List<int> corners = [.. rows.Select(row => Corners.Of(row).Count)];
        if (corners[^1] is >= 3 and <= 8 && corners.Skip(1).All(count => count == corners[^1]))
            return new Construction(ConstructionKind.Polygon, $"Every round has {corners[^1]} corners.") { Corners = corners[^1] };
        List<long> places = [.. tallies.Select(tally => tally.Places)];
        if (rows.Count > 2 && (places.TrueForAll(count => count == places[0]) || (HasFoot(rows[0], FootKind.Chain) && places.Max() * 4 <= places.Min() * 5 && places.Min() >= Fewest)))
            return new Construction(ConstructionKind.Tube, $"Every round has {Spread(places)} stitches, so the piece is a tube.");
        return new Construction(ConstructionKind.Circle, "The rounds grow round a centre without corner spaces.");
    }

    /// <summary>Rounds into a chain that is not joined to a ring go round it; two or three chains are only the start of a centre.</summary>
    private static bool IsOval(WorkedPiece piece, WorkedRow first) =>
        HasFoot(first, FootKind.OtherSide)
        || (first.Into >= 0 && piece.Rows[first.Into] is { Kind: RowKind.Foundation, Joined: false } foundation && foundation.Chains() > 3 && HasFoot(first, FootKind.Chain));

    private static bool HasFoot(WorkedRow row, FootKind kind) =>
        row.Runs.Any(run => run.Unit.Any(cell => cell.Feet.Any(foot => foot.Kind == kind)));

    private static Construction Rows(List<WorkedRow> rows, List<RowTally> tallies)
    {
        if (HasFoot(rows[0], FootKind.Ring) && rows.Count > 1 && tallies[^1].Places > tallies[0].Places)
            return new Construction(ConstructionKind.HalfCircle, "Rows go back and forth round a ring and grow.");
        List<long> places = [.. tallies.Select(tally => tally.Places)];
        long widest = places.Max();
        if (widest - places.Min() <= Math.Max(1, widest / 20))
            return new Construction(ConstructionKind.StraightRows, $"Rows of {Spread(places)} stitches, chains of spaces counted one each.");
        if (IsTiled(rows)) return new Construction(ConstructionKind.Tiles, "The piece is worked in tiles; their size can't be told from a swatch in rows. Measure one tile and multiply.");
        if (Diagonal.Fits(places, tallies.Average(tally => tally.Height), (from, to) => Slant.Leans(rows, from, to)))
            return new Construction(ConstructionKind.CornerToCorner, "The rows grow evenly from a corner and fall evenly to the opposite one.");
        return (Uneven(places) ?? Bending.Reason(rows, tallies)) is { } reason ? NotKnown(reason) : new Construction(ConstructionKind.ShapedRows, $"The rows widen and narrow: {places.Min()} to {widest} stitches.");
    }

    private static string Spread(List<long> places) =>
        places.Min() == places.Max() ? $"{places.Max()}" : $"{places.Min()} to {places.Max()}";

    /// <summary>Tiles: rows that move by slip stitches again and again on their way and stand in spaces of the row below.</summary>
    private static bool IsTiled(List<WorkedRow> rows) =>
        rows.Count > 2 && rows.Skip(1).Count(row => row.Runs.Sum(run => run.Unit.Count(cell => cell.Kind == CellKind.Join) * run.Times) > 1) * 2 > rows.Count;

    /// <summary>
    /// Why the counts alone can't tell a width: a row that half as many stitches more are worked into ruffles or fans out, and counts that go up and
    /// down are loops and arches, which don't lie flat.
    /// </summary>
    private static string? Uneven(List<long> places)
    {
        for (int i = 1; i < places.Count; i++)
            if (places[i - 1] >= 8 && places[i] * 2 > places[i - 1] * 3)
                return $"A row of {places[i - 1]} stitches is followed by one of {places[i]}: the fabric ruffles or fans out, and its width is not stitches × stitch width. Measure a worked piece.";
        return Turns(places) > 2
            ? "The counts go up and down from row to row, as arches and shells do; their width is not stitches × stitch width. Measure one repeat of the pattern."
            : null;
    }

    /// <summary>How often the counts change direction by more than a tenth.</summary>
    private static int Turns(List<long> places)
    {
        int turns = 0;
        int last = 0;
        for (int i = 1; i < places.Count; i++)
        {
            long change = places[i] - places[i - 1];
            if (Math.Abs(change) * 10 <= places[i]) continue;
            if (last != 0 && Math.Sign(change) != last) turns++;
            last = Math.Sign(change);
        }
        return turns;
    }

    private static Construction NotKnown(string reason) => new(ConstructionKind.NotKnown, reason);
}
