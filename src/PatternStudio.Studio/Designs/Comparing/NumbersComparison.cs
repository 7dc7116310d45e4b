using PatternStudio.Craft.Checking;

namespace PatternStudio.Studio.Designs.Comparing;

/// <summary>A row of two versions whose counts differ, or that one of them lacks.</summary>
/// <param name="Piece">The section it stands under; empty where there is none.</param>
/// <param name="Heading">'Row 3'.</param>
/// <param name="Before">Stitches before; null where the row was not there or was not checked.</param>
/// <param name="After">Stitches after; null likewise.</param>
public sealed record ComparedRow(string Piece, string Heading, long? Before, long? After);

/// <summary>Totals of a version, in the size compared.</summary>
/// <param name="Stitches">Stitches of all rows that were checked.</param>
public sealed record VersionTotals(int Rows, int RowsChecked, long Stitches, int Errors, int Warnings, FinishedSize? Size, YarnNeed? Yarn)
{
    internal static VersionTotals Of(Results results, SizeResults size) => new(
        size.Read.Rows, size.Read.Checked, size.Rows.Sum(row => row.Stitches ?? 0), results.Errors, results.Warnings, size.Size, size.Yarn);
}

/// <summary>Two versions in numbers.</summary>
/// <param name="Rows">Rows that differ, in the order of the later version; rows that it lacks at the end.</param>
public sealed record NumbersComparison(VersionTotals Before, VersionTotals After, IReadOnlyList<ComparedRow> Rows)
{
    /// <summary>Compares the first size of two results. Rows are the same where section and heading are, and those of a name in order.</summary>
    public static NumbersComparison Between(Results before, Results after)
    {
        (SizeResults was, SizeResults now) = (before.Sizes[0], after.Sizes[0]);
        Dictionary<(string, string, int), RowReport> old = Keyed(was.Rows), latest = Keyed(now.Rows);
        IEnumerable<ComparedRow> kept = latest.Select(row => new ComparedRow(row.Value.Piece, row.Value.Heading, old.GetValueOrDefault(row.Key)?.Stitches, row.Value.Stitches));
        IEnumerable<ComparedRow> gone = old.Where(row => !latest.ContainsKey(row.Key)).Select(row => new ComparedRow(row.Value.Piece, row.Value.Heading, row.Value.Stitches, null));
        return new(VersionTotals.Of(before, was), VersionTotals.Of(after, now), [.. kept.Concat(gone).Where(row => row.Before != row.After)]);
    }

    private static Dictionary<(string Piece, string Heading, int Again), RowReport> Keyed(IReadOnlyList<RowReport> rows)
    {
        var seen = new Dictionary<(string, string), int>();
        var keyed = new Dictionary<(string, string, int), RowReport>();
        foreach (RowReport row in rows)
        {
            int again = seen[(row.Piece, row.Heading)] = seen.GetValueOrDefault((row.Piece, row.Heading)) + 1;
            keyed.Add((row.Piece, row.Heading, again), row);
        }

        return keyed;
    }
}
