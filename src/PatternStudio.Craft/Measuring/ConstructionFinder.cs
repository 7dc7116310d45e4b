using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Measuring;

/// <summary>Finds from the worked rows how a piece is put together.</summary>
public static class ConstructionFinder
{
    /// <summary>A tube of fewer stitches that varies is a toy's limb, which has a closed end.</summary>
    private const int Fewest = 12;

    /// <summary>Rounds longer than this are not unrolled to look for the chain they go round.</summary>
    private const long Longest = 200_000;

    /// <summary>The construction of a piece; rows that were not checked are left out.</summary>
    public static Construction Find(WorkedPiece piece, StitchForms forms)
    {
        List<WorkedRow> rows = [.. piece.Rows.Where(row => row is { Status: RowStatus.Checked, Kind: not RowKind.Foundation })];
        if (rows.Count == 0) return NotKnown("No row of this piece could be checked, so there is nothing to measure.");
        List<RowTally> tallies = [.. rows.Select(row => RowTally.Of(row, forms))];
        int body = rows.TakeWhile(row => row.Kind == rows[0].Kind).Count();
        if (body < rows.Count) return Mixed(rows, tallies, body);
        Construction found = rows[0].Kind != RowKind.Round ? Rows(rows, tallies) : OvalChains(piece, rows[0]) is { } chains ? Oval(chains) : Rounds(rows, tallies);
        return found with { IsLace = found.Kind != ConstructionKind.RowsOnPlain && IsLace(tallies) };
    }

    /// <summary>Rows first and then rounds are a body and its border; anything else together is not worked out.</summary>
    private static Construction Mixed(List<WorkedRow> rows, List<RowTally> tallies, int bodyRows)
    {
        const string Why = "The piece has rows and rounds together; their size together is not worked out yet.";
        if (rows[0].Kind == RowKind.Round || rows.Skip(bodyRows).Any(row => row.Kind != RowKind.Round)) return NotKnown(Why);
        Construction body = Rows(rows[..bodyRows], tallies[..bodyRows]);
        return body.Kind is ConstructionKind.StraightRows or ConstructionKind.RowsOnPlain or ConstructionKind.CornerToCorner
            ? new Construction(ConstructionKind.Bordered, $"A body with {rows.Count - bodyRows} rounds all about it. {body.Reason}") { FirstRows = bodyRows, Body = body, IsLace = IsLace(tallies), WhyNotWhole = TooShort(tallies, bodyRows) }
            : NotKnown(body.Kind == ConstructionKind.NotKnown ? body.Reason : Why);
    }

    /// <summary>
    /// 'Work evenly all around' leaves the number of stitches to the maker. A first round of less than half of what the edge takes was not worked all around.
    /// </summary>
    private static string? TooShort(List<RowTally> tallies, int bodyRows)
    {
        double edge = 2 * (tallies.Take(bodyRows).Max(tally => tally.Places) + tallies.Take(bodyRows).Sum(tally => tally.Height));
        long first = tallies[bodyRows].Places;
        return first * 2 < edge ? $"the border's first round was worked with {first} stitches, and the edge that it goes round takes about {edge:0}. State how many it has." : null;
    }

    /// <summary>A third of the width in arches, and the fabric is as large as it is pinned.</summary>
    private static bool IsLace(List<RowTally> tallies) => tallies.Sum(tally => tally.InArches) * 3 > tallies.Sum(tally => tally.Places);

    private static Construction Rounds(List<WorkedRow> rows, List<RowTally> tallies)
    {
        List<int> corners = [.. rows.Select(row => Corners.Of(row).Count)];
        if (corners[^1] is >= 3 and <= 8 && corners.Skip(1).All(count => count == corners[^1]))
            return new Construction(ConstructionKind.Polygon, $"Every round has {corners[^1]} corners.") { Corners = corners[^1] };
        List<long> places = [.. tallies.Select(tally => tally.Places)];
        if (rows.Count > 2 && (places.TrueForAll(count => count == places[0]) || (HasFoot(rows[0], FootKind.Chain) && places.Max() * 4 <= places.Min() * 5 && places.Min() >= Fewest)))
            return new Construction(ConstructionKind.Tube, $"Every round has {Spread(places)} stitches, so the piece is a tube.");
        return CrownFinder.Find(rows, tallies) ?? new Construction(ConstructionKind.Circle, "The rounds grow round a centre without corner spaces.");
    }

    private static Construction Oval(long chains) =>
        new(ConstructionKind.Oval, $"The rounds go along both sides of a chain and round its ends: an oval about {chains} chains.") { Places = chains };

    /// <summary>
    /// Chains that the first round works into on both sides; null where it does not. Rounds into a chain that is not joined to a ring go round it; two or three
    /// chains are only the start of a centre.
    /// </summary>
    private static long? OvalChains(WorkedPiece piece, WorkedRow first)
    {
        bool flat = first.Into >= 0 && piece.Rows[first.Into] is { Kind: RowKind.Foundation, Joined: false } foundation && foundation.Chains() > 3 && HasFoot(first, FootKind.Chain);
        if ((!flat && !HasFoot(first, FootKind.OtherSide)) || first.Length > Longest) return null;
        long chains = first.Cells().Where(cell => cell.Kind == CellKind.Stitch).SelectMany(cell => cell.Feet).Where(foot => foot.Kind is FootKind.Chain or FootKind.OtherSide).Select(foot => foot.Place).Distinct().LongCount();
        // One stitch in each chain is the first round of a tube, whenever the chain is joined; an oval has more at its ends.
        return HasFoot(first, FootKind.OtherSide) || first.Cells().LongCount(cell => cell.Kind == CellKind.Stitch) > chains + 1 ? chains : null;
    }

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
        if (IsTiled(rows)) return Tiled(rows);
        if (Diagonal.Fits(places, tallies.Average(tally => tally.Height), (from, to) => Slant.Leans(rows, from, to)))
            return new Construction(ConstructionKind.CornerToCorner, "The rows grow evenly from a corner and fall evenly to the opposite one.");
        if (PlainRows.Across(rows, tallies) is { } plain)
            return new Construction(ConstructionKind.RowsOnPlain, $"Plain rows of {plain} stitches hold the others, which reach over the same width.") { Places = plain };
        return (Uneven(places) ?? Bending.Reason(rows, tallies)) is { } reason ? NotKnown(reason) : new Construction(ConstructionKind.ShapedRows, $"The rows widen and narrow: {places.Min()} to {widest} stitches.");
    }

    private static string Spread(List<long> places) =>
        places.Min() == places.Max() ? $"{places.Max()}" : $"{places.Min()} to {places.Max()}";

    /// <summary>Tiles: rows that move by slip stitches again and again on their way and stand in spaces of the row below.</summary>
    private static bool IsTiled(List<WorkedRow> rows) =>
        rows.Count > 2 && rows.Skip(1).Count(row => row.Runs.Sum(run => run.Unit.Count(cell => cell.Kind == CellKind.Join) * run.Times) > 1) * 2 > rows.Count;

    private static Construction Tiled(List<WorkedRow> rows)
    {
        TileGrid? grid = TileGrid.From([.. rows.Select(row => row.Runs.Sum(run => run.Unit.Count(IsTile) * run.Times))]);
        return new Construction(ConstructionKind.Tiles, grid is { } known
            ? $"The piece is worked in tiles, {known.Short} by {known.Long}. Their size can't be told from a swatch in rows: count a swatch in tiles, such as '5 x 5 tiles = 12 x 12 cm'."
            : "The piece is worked in tiles; their size can't be told from a swatch in rows. Measure one tile and multiply.") { Grid = grid };
    }

    /// <summary>Every tile has one chain that stands for its upright.</summary>
    private static bool IsTile(Cell cell) => cell is { Kind: CellKind.Chains, Chains: > 1 } or { Kind: CellKind.TurningChain, Chains: > 1 };

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
