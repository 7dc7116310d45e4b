using System.Globalization;
using PatternStudio.Craft.Measuring;

namespace PatternStudio.Web.Shell;

/// <summary>What came of reading a field: a number in the field's own unit, or a sentence that says what is wrong and what to do.</summary>
public readonly record struct TypedNumber(double Value, string? Trouble)
{
    public static TypedNumber Wrong(string trouble) => new(0, trouble);
}

/// <summary>
/// Reads measures as people type them: '10', '10,5', '4½ in', '3 1/2"', '1 oz', '93 yd'. Without a unit the field's own is meant; what can be meant in two ways, or
/// is no such measure, is refused in words.
/// </summary>
public static class Typed
{
    private static readonly string[] CountWords = ["stitches", "stitch", "sts", "st", "rows", "row", "rounds", "round", "rnds", "rnd", "repeats", "repeat", "reps", "tiles", "tile", "balls", "ball"];

    /// <summary>A length of fabric in centimetres.</summary>
    public static TypedNumber Centimetres(string written) => Read(Length.Parse(WithUnit(written, "cm")), length => length.Centimetres);

    /// <summary>A weight in grams.</summary>
    public static TypedNumber Grams(string written) => Read(Mass.Parse(WithUnit(written, "g")), mass => mass.Grams);

    /// <summary>A length of yarn in metres.</summary>
    public static TypedNumber Metres(string written) => Read(YarnLength.Parse(WithUnit(written, "m")), length => length.Metres);

    /// <summary>A hook in millimetres.</summary>
    public static TypedNumber HookMillimetres(string written) => Read(HookSize.Parse(written.Trim()), hook => hook.Millimetres);

    /// <summary>Minutes: '50', '1:20', '1 h 20 min'.</summary>
    public static TypedNumber Minutes(string written)
    {
        string[] parts = written.ToLowerInvariant().Replace("min", "", StringComparison.Ordinal).Split([':', 'h'], StringSplitOptions.TrimEntries);
        bool hours = parts.Length == 2;
        double[] numbers = [.. parts.Where(part => part.Length > 0).Select(part => Count(part) is { Trouble: null } read ? read.Value : double.NaN)];
        double minutes = hours && parts[0].Length > 0 ? (numbers[0] * 60) + (numbers.Length > 1 ? numbers[1] : 0) : numbers is [var only] ? only : double.NaN;
        return minutes > 0 ? new(minutes, null) : TypedNumber.Wrong($"'{written.Trim()}' is no time. Write minutes, such as 50, or 1:20.");
    }

    /// <summary>A count, halves allowed: '16', '16½', '16.5 sts'.</summary>
    public static TypedNumber Count(string written)
    {
        string number = written.Trim();
        foreach (string word in CountWords)
            if (number.EndsWith(word, StringComparison.OrdinalIgnoreCase))
                number = number[..^word.Length].TrimEnd();
        return HasUnit(number)
            ? TypedNumber.Wrong($"'{written.Trim()}' is no count. Write a number above zero, such as 18 or 18½.")
            : Read(Length.Parse(number + " cm"), length => length.Centimetres, "Write a number above zero, such as 18 or 18½.");
    }

    /// <summary>A whole number, 0 allowed.</summary>
    public static TypedNumber Whole(string written) =>
        int.TryParse(written.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int whole)
            ? new(whole, null)
            : TypedNumber.Wrong($"'{written.Trim()}' is no whole number. Write one, such as 3.");

    /// <summary>An amount of money without its currency: '4.50', '4,50', '12'.</summary>
    public static TypedNumber Money(string written)
    {
        string number = written.Trim().TrimStart('€', '$', '£').Trim();
        return decimal.TryParse(number.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal amount)
            && decimal.Round(amount, 2) == amount
                ? new((double)amount, null)
                : TypedNumber.Wrong($"'{written.Trim()}' is no price. Write it such as 4.50, and the currency beside it.");
    }

    /// <summary>How a measure was taken, where that is not plain from what was typed: '4 in' in a field for centimetres.</summary>
    public static string? Echo(string written, Func<string, TypedNumber> read, string unit) =>
        HasUnit(written) && read(written) is { Trouble: null } taken && !written.TrimEnd().EndsWith(unit, StringComparison.OrdinalIgnoreCase)
            ? $"{taken.Value.ToString("0.##", CultureInfo.InvariantCulture)} {unit}"
            : null;

    private static string WithUnit(string written, string unit) => HasUnit(written) ? written : $"{written} {unit}";

    /// <summary>True where more is written than a number.</summary>
    private static bool HasUnit(string written) => written.Any(sign => char.IsLetter(sign) || sign is '"' or '″' or '”' or '\'' or '′');

    private static TypedNumber Read<T>(Parsed<T> parsed, Func<T, double> number, string? trouble = null) where T : notnull =>
        parsed.IsRead ? new(number(parsed.Value), null) : TypedNumber.Wrong(trouble is null || parsed.Message.Contains(" may be ", StringComparison.Ordinal) ? parsed.Message : trouble);
}
