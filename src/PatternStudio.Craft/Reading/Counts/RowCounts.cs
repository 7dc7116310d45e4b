using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Counts;

/// <summary>'Rows 3–5: … (7, 9, 11 sc)' states a count for each row in turn.</summary>
internal static class RowCounts
{
    /// <summary>The count with its numbers told apart by row, where the heading has as many rows as it has numbers.</summary>
    public static StatedCount? InTurn(StatedCount? stated, RowHeading heading)
    {
        if (stated is null || stated.Items.Count < 2 || stated.Items.Count != RowsOf(heading)) return stated;
        StatedItem last = stated.Items[^1];
        for (int i = 0; i < stated.Items.Count - 1; i++)
            if (stated.Items[i] is not { Kind: null, Thing: CountedThing.Stitches }) return stated;
        return stated with
        {
            PerRow = true,
            Items = stated.Items.Select(item => item with { Thing = CountedThing.Other, Kind = last.Kind }).ToEquatableArray(),
        };
    }

    private static int RowsOf(RowHeading heading) => heading.Numbering switch
    {
        RowNumbering.Listed => heading.Numbers.Count,
        RowNumbering.Range => heading is { First.IsPlain: true, Last.IsPlain: true } ? heading.Last.Values[0]!.Value - heading.First.Values[0]!.Value + 1 : 0,
        _ => 0,
    };
}
