using System.Globalization;
using System.Text.RegularExpressions;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Measuring;

/// <summary>What swatches refer to in a design: its stitches, its rows by number, its multiple.</summary>
internal sealed partial class DesignRows(CheckedPattern pattern, int size, StitchForms forms)
{
    private readonly Dictionary<RowRange, IReadOnlyList<RowTally>> found = [];

    public StitchForms Forms => forms;

    /// <summary>Stitches of one repeat, as the design states its multiple ('multiple of 6 sts + 4'); null where it states none.</summary>
    public int? Multiple { get; } = StatedMultiple(pattern);

    /// <summary>The rows of these numbers, of the first piece that has them all checked; empty where there is none.</summary>
    public IReadOnlyList<RowTally> Rows(RowRange range)
    {
        if (!found.TryGetValue(range, out IReadOnlyList<RowTally>? rows)) found[range] = rows = Find(range);
        return rows;
    }

    private IReadOnlyList<RowTally> Find(RowRange range)
    {
        foreach (WorkedPiece piece in pattern.Sizes[size].Fabric.Pieces)
        {
            List<WorkedRow> named = [.. piece.Rows.Where(row => row is { Status: RowStatus.Checked, Kind: not RowKind.Foundation } && row.Number >= range.First && row.Number <= range.Last)];
            if (named.Count == range.Last - range.First + 1) return [.. named.Select(row => RowTally.Of(row, forms))];
        }

        return [];
    }

    private static int? StatedMultiple(CheckedPattern pattern) =>
        pattern.Pattern.Statements.FirstOrDefault(statement => statement.Kind == StatementKind.Multiple) is { } stated && Multiples().Match(stated.Text) is { Success: true } match
            ? int.Parse(match.Groups["n"].Value, CultureInfo.InvariantCulture)
            : null;

    [GeneratedRegex(@"(?:multiple|mult)\D{0,12}(?<n>[0-9]{1,4})|^\s*(?<n>[0-9]{1,4})\b", RegexOptions.IgnoreCase)]
    private static partial Regex Multiples();
}
