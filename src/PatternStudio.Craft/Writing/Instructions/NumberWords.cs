using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Writing.Instructions;

/// <summary>Writes numbers as the trade does: '21 (31, 41)', '2nd', 'twice'.</summary>
internal static class NumberWords
{
    public static string Of(SizedNumber number) => Of(number, value => value);

    /// <summary>'3 times', 'twice', '3 (4, 5) times'.</summary>
    public static string Times(SizedNumber number) => number switch
    {
        { IsPlain: true } when number.Values[0] == 2 => "twice",
        { IsPlain: true } when number.Values[0] == 1 => "once",
        _ => Of(number) + " times",
    };

    /// <summary>A star's passage has been worked once when its 'rep from *' comes: one less.</summary>
    public static SizedNumber OneLess(SizedNumber number) => number with { Values = Text.EquatableArray.ToEquatableArray(number.Values.Select(value => value - 1)) };

    public static bool IsOne(SizedNumber? number) => number is null || (number.IsPlain && number.Values[0] == 1);

    public static string Ordinal(int number) => number switch
    {
        _ when number % 100 is >= 11 and <= 13 => number + "th",
        _ when number % 10 == 1 => number + "st",
        _ when number % 10 == 2 => number + "nd",
        _ when number % 10 == 3 => number + "rd",
        _ => number + "th",
    };

    /// <summary>'2', '2 and 3', '2, 3 and 4'.</summary>
    public static string List(IReadOnlyList<int> numbers) => numbers.Count switch
    {
        0 => "",
        1 => numbers[0].ToString(),
        _ => string.Join(", ", numbers.SkipLast(1)) + " and " + numbers[^1],
    };

    private static string Of(SizedNumber number, Func<int?, int?> shown)
    {
        string[] values = [.. number.Values.Select(value => shown(value)?.ToString() ?? "-")];
        return values.Length == 1 ? values[0] : $"{values[0]} ({string.Join(", ", values.Skip(1))})";
    }
}
