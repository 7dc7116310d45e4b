using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Writing.Instructions;

namespace PatternStudio.Craft.Writing.Completion;

/// <summary>Numbers that were counted in each size, written as the trade does.</summary>
internal static class SizedWords
{
    /// <summary>'20 (24, 28)'; '20' where all sizes have as many.</summary>
    /// <param name="counts">One for each size; each fits a row, which has fewer than two thousand million cells.</param>
    public static string Of(IEnumerable<long> counts) => NumberWords.Of(Number(counts));

    /// <summary>The same as a number of the pattern.</summary>
    public static SizedNumber Number(IEnumerable<long> counts)
    {
        int?[] values = [.. counts.Select(count => (int?)Math.Min(count, int.MaxValue))];
        return values.Distinct().Count() == 1 ? SizedNumber.Of(values[0]!.Value) : new SizedNumber(values.ToEquatableArray(), default);
    }
}
