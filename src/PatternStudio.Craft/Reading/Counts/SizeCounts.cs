using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Counts;

/// <summary>'(20, 30, 40 sts)' in a pattern of three sizes is one count with a number for each size.</summary>
internal static class SizeCounts
{
    public static IReadOnlyList<StatedItem> Merge(List<StatedItem> items, int sizes)
    {
        if (sizes < 2 || items.Count != sizes || !items.All(item => item.Number.IsPlain)) return items;
        if (!items.Take(sizes - 1).All(item => item.Kind is null && item.Thing == CountedThing.Stitches)) return items;
        StatedItem last = items[^1];
        var span = items[0].Span.Through(last.Span);
        return [last with { Number = new SizedNumber(items.Select(item => item.Number.Values[0]).ToEquatableArray(), span), Span = span }];
    }
}
